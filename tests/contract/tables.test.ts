import { describe, expect, it } from 'vitest';
import type { Mark } from '../../src/core/model/table.ts';
import { findCited, referenceTables } from '../../src/core/reference/index.ts';
import { practices } from '../../src/core/reference/practices.ts';
import { rules } from '../../src/core/rules/index.ts';

const MARKS: readonly Mark[] = ['printed', 'memory', 'derived'];
const tables = referenceTables.flatMap((group) => group.tables);

describe('the reference tables', () => {
  it('have ids of their own, in kebab-case, which practices do not share', () => {
    const ids = [...tables, ...practices].map(({ id }) => id);
    expect(ids.filter((id, place) => ids.indexOf(id) !== place)).toEqual([]);
    expect(ids.filter((id) => !/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id))).toEqual([]);
  });

  it('stand under subjects with tables', () => {
    expect(referenceTables.filter((group) => group.subject === '' || group.tables.length === 0)).toEqual([]);
  });
});

describe.each(tables)('$id', ({ title, sources, rows }) => {
  it('names where it comes from: document, place and mark, and no web address', () => {
    expect(title.trim()).not.toBe('');
    expect(sources.length).toBeGreaterThan(0);
    for (const { document, place, mark } of sources) {
      expect(document.trim()).not.toBe('');
      expect(place.trim()).not.toBe('');
      expect(MARKS).toContain(mark);
    }
    expect(textsIn([title, sources, rows]).filter(isAddress)).toEqual([]);
  });

  it('has rows, with marks of the three kinds', () => {
    expect(rows.length).toBeGreaterThan(0);
    const marks = rows.flatMap((row) => (isRecord(row) && row.mark !== undefined ? [row.mark] : []));
    expect(marks.filter((mark) => !MARKS.some((known) => known === mark))).toEqual([]);
  });

  it('holds finite numbers only, and says each row once', () => {
    expect(numbersIn(rows).filter((value) => !Number.isFinite(value))).toEqual([]);
    expect(new Set(rows.map((row) => JSON.stringify(row))).size).toBe(rows.length);
  });
});

describe('what findings cite', () => {
  it('is found by its id: every table and practice, and nothing else', () => {
    for (const { id, title } of [...tables, ...practices]) expect(findCited(id)).toMatchObject({ id, title });
    expect(findCited('unobtainium')).toBeUndefined();
  });

  it.each(rules)('$id needs tables and practices that exist', ({ needs }) => {
    expect(needs.filter((id) => findCited(id) === undefined)).toEqual([]);
  });

  it('says of a practice that it has no source', () => {
    for (const { id } of practices) expect(findCited(id)?.sources[0]?.document).toContain('common practice, no source');
  });
});

function isAddress(text: string): boolean {
  return /https?:|www\.|\.(com|org|net|gov|mil|edu|io|de)\b/i.test(text);
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null;
}

/** Every value inside, however deep. */
function leavesIn(value: unknown): readonly unknown[] {
  return isRecord(value) ? Object.values(value).flatMap(leavesIn) : [value];
}

function numbersIn(value: unknown): readonly number[] {
  return leavesIn(value).filter((leaf) => typeof leaf === 'number');
}

function textsIn(value: unknown): readonly string[] {
  return leavesIn(value).filter((leaf) => typeof leaf === 'string');
}
