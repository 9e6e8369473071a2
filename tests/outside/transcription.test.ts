import { describe, expect, it } from 'vitest';
import { countOutsideValues } from './count.ts';
import { agrees, isPrintedNumber, isWordColumn, readTable, tableNames } from './read-table.ts';
import { outsideTables } from './sources.ts';

const marks = new Set(['printed', 'memory', 'derived']);
/** Arrows of a sampling plan stand where a number would: use the plan above or below. */
const arrows = new Set(['^', 'v']);
/** Tables of names hold no number. */
const nameTables = new Set(['aliases', 'alias-traps', 'misspellings', 'temper-words']);

describe('the transcribed tables', () => {
  it('are each named once in the list of sources', () => {
    expect(outsideTables.map((table) => table.file).sort()).toEqual(
      tableNames()
        .map((name) => `${name}.csv`)
        .sort(),
    );
  });

  it('come from named standards and handbooks, never from an address', () => {
    for (const { standard, place } of outsideTables) expect(`${standard} ${place}`).not.toMatch(/https?:|www\.|\.com/);
  });

  it('amount to at least 400 printed values over at least 20 standards', () => {
    const count = countOutsideValues();
    expect(count.printed).toBeGreaterThanOrEqual(400);
    expect(count.standardsPrinted).toBeGreaterThanOrEqual(20);
    expect(count.total).toBe(count.printed + count.memory + count.derived);
  });
});

describe.each(outsideTables)('$file', ({ file, mark, keys }) => {
  const name = file.replace(/\.csv$/, '');
  const rows = readTable(name);

  it('has rows of one shape', () => {
    expect(rows.length).toBeGreaterThan(0);
    const columns = Object.keys(rows[0] ?? {});
    expect(columns.length).toBeGreaterThan(keys - 1);
    for (const row of rows) expect(Object.keys(row)).toEqual(columns);
  });

  it('holds finite numbers in every number column', () => {
    const wrong = rows.flatMap((row) => Object.entries(row).filter(isWrongNumber));
    expect(wrong).toEqual([]);
    const numbers = rows.flatMap((row) => Object.entries(row).filter(isNumberCell));
    expect(numbers.length > 0).toBe(!nameTables.has(name));
  });

  it('marks its values by row or as a whole', () => {
    const hasMarks = rows.every((row) => marks.has(row.mark ?? ''));
    expect(hasMarks).toBe(mark === 'by row');
  });

  it('has no row twice', () => {
    expect(new Set(rows.map((row) => JSON.stringify(row))).size).toBe(rows.length);
  });
});

describe('agreement with a printed figure', () => {
  it.each([
    ['82', 82.5, true],
    ['82', 82.51, false],
    ['82.0', 82.5, false],
    ['0.0598', 0.05975, true],
    ['0.0598', 0.0599, false],
    ['.539', 0.5394, true],
    ['-0.8', -0.84, true],
    ['-0.8', 0.8, false],
    ['+1.2', 1.2, true],
    ['', 0, false],
    ['off table', 0, false],
    ['82', Number.NaN, false],
    ['82', Number.POSITIVE_INFINITY, false],
  ])('%s against %d is %s', (printed, value, expected) => {
    expect(agrees(printed, value)).toBe(expected);
  });
});

function isNumberCell([column, cell]: [string, string]): boolean {
  return !isWordColumn(column) && isPrintedNumber(cell);
}

function isWrongNumber([column, cell]: [string, string]): boolean {
  if (isWordColumn(column) || cell === '' || arrows.has(cell)) return false;
  return !isPrintedNumber(cell) || !Number.isFinite(Number(cell));
}
