import type { Words } from '../../model/finding.ts';
import type { Subject } from '../rule.ts';
import { groupBy, nameRows } from './group.ts';

/** What the rows of a panel that share their candidates say of the metal. */
interface Stated {
  readonly rows: readonly Subject[];
  readonly entries: ReadonlySet<string>;
  readonly alloys: ReadonlySet<string>;
  readonly families: ReadonlySet<string>;
}

/** The first two statements of the metal among the rows of a panel that cannot both be true; null where all can. */
export function findMetalConflict(rows: readonly Subject[]): Words | null {
  const stated = groupBy(rows, candidatesOf).map(statedBy);
  for (const [index, one] of stated.entries()) {
    const other = stated.slice(index + 1).find((later) => !agree(one, later));
    if (!other) continue;
    return {
      metal: textOf(one),
      metalRows: nameRows(one.rows),
      otherMetal: textOf(other),
      otherMetalRows: nameRows(other.rows),
    };
  }
  return null;
}

function candidatesOf({ line }: Subject): string | null {
  return line.material.candidates.join(' ') || null;
}

function statedBy(rows: readonly Subject[]): Stated {
  const entries = rows[0]?.sheets.flatMap(({ entry }) => entry ?? []) ?? [];
  return {
    rows,
    entries: new Set(entries.map(({ id }) => id)),
    alloys: new Set(entries.map(({ alloy }) => alloy)),
    families: new Set(entries.map(({ family }) => family)),
  };
}

/**
 * Candidates of a vague word are the usual ones, not all there are: a word for a metal ("ALUM") leaves room for every alloy of its
 * families, an alloy without temper ("5052") for every temper of it.
 */
function agree(one: Stated, other: Stated): boolean {
  if (overlap(one.entries, other.entries)) return true;
  if (one.alloys.size > 1 || other.alloys.size > 1) return overlap(one.families, other.families);
  return (one.entries.size > 1 || other.entries.size > 1) && overlap(one.alloys, other.alloys);
}

function overlap(one: ReadonlySet<string>, other: ReadonlySet<string>): boolean {
  return [...one].some((item) => other.has(item));
}

function textOf({ rows }: Stated): string {
  return rows[0]?.line.material.text.trim() ?? '';
}
