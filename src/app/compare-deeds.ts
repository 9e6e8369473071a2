import { standing } from '../core/concede/standing.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { Concession } from '../core/model/concession.ts';
import type { Compared } from '../worker/compared.ts';
import type { EarlierList } from '../worker/protocol.ts';
import { concessionsAfter, type Deed, NO_HISTORY } from './history.ts';
import { cellsAfter, type OpenWork, type Project } from './project.ts';

/** An earlier list that was chosen, and how it is called. */
export interface EarlierChoice {
  readonly name: string;
  readonly how: ComparedState['how'];
  readonly list: EarlierList;
}

/** The comparison on show. */
export interface ComparedState {
  /** Name of the earlier list's file. */
  readonly name: string;
  /** How the earlier list was worked on: kept at a time, with so many steps, or the open one as it was opened; null for a bare file. */
  readonly how: { readonly savedAt: string; readonly steps: number } | 'as opened' | null;
  readonly shown: Compared;
  /** The open list as it was compared. */
  readonly list: AuditedList;
  /** The kind of change that is shown alone; null: all kinds. */
  readonly kind: string | null;
}

/** Kept work as an earlier list. */
export function earlierOf({ list: file, options, steps, savedAt }: Project): EarlierChoice {
  const concessions = concessionsAfter({ ...NO_HISTORY, done: steps });
  const list = { file, options, cells: cellsAfter(steps), concessions };
  return { name: file.name, how: { savedAt, steps: steps.length }, list };
}

/** The open list as its file has it. */
export function openAsRead({ list: file, options }: OpenWork): EarlierChoice {
  return { name: file.name, how: 'as opened', list: { file, options, cells: [], concessions: null } };
}

/** Concessions of the earlier list that stand in the open one and are not in it yet. One of the user's that stands there is kept. */
export function carriedOver(
  { shown }: Pick<ComparedState, 'shown'>,
  { lines }: AuditedList,
  own: readonly Concession[],
): readonly Concession[] {
  const byRow = new Map(lines.map((line) => [line.row, line]));
  const standingOnes = own.filter((one) => standing(one, byRow.get(one.row) ?? null).kind === 'stands');
  const has = new Set(standingOnes.map(keyOf));
  return shown.concessions.flatMap(({ state, rekeyed }) =>
    state === 'carried' && rekeyed && !has.has(keyOf(rekeyed)) ? [rekeyed] : [],
  );
}

/** Takes concessions of the earlier list into the open one, in the place of own ones that have lapsed; null where there are none to take. */
export function deedOfCarried(
  compared: Pick<ComparedState, 'shown' | 'name'>,
  list: AuditedList,
  own: readonly Concession[],
): Deed | null {
  const carried = carriedOver(compared, list, own);
  if (carried.length === 0) return null;
  const taken = new Set(carried.map(keyOf));
  const kept = own.filter((one) => !taken.has(keyOf(one)));
  const count = carried.length === 1 ? 'a concession' : `${carried.length} concessions`;
  return {
    name: `take over ${count} of ${compared.name}`,
    after: { concessions: [...kept, ...carried].sort((a, b) => a.row - b.row) },
    before: { concessions: own },
  };
}

function keyOf({ row, rule }: Concession): string {
  return `${row} ${rule}`;
}
