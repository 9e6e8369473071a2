import { describe, expect, it } from 'vitest';
import { findLetterDrillMm, findNumberDrillMm } from '../../src/core/calc/drill-size.ts';
import { letterDrills } from '../../src/core/reference/holes/letter-drills.ts';
import { numberDrills } from '../../src/core/reference/holes/number-drills.ts';
import { agrees, readTable } from './read-table.ts';

const inches = (mm: number | null) => (mm ?? Number.NaN) / 25.4;

describe('drill sizes, ASME B94.11M', () => {
  const numbers = readTable('number-drills');
  const letters = readTable('letter-drills');

  it('has every number drill and no other', () => {
    expect(numberDrills.rows.map(({ number }) => String(number))).toEqual(numbers.map(({ number }) => number));
  });

  it.each(numbers)('#$number is $in in', ({ number, in: printed = '' }) => {
    expect(agrees(printed, inches(findNumberDrillMm(Number(number))))).toBe(true);
  });

  it('has every letter drill and no other', () => {
    expect(letterDrills.rows.map(({ letter }) => letter)).toEqual(letters.map(({ letter }) => letter));
  });

  it.each(letters)('$letter is $in in', ({ letter = '', in: printed = '' }) => {
    expect(agrees(printed, inches(findLetterDrillMm(letter)))).toBe(true);
  });

  it('has none beyond', () => {
    expect([findNumberDrillMm(0), findNumberDrillMm(81), findNumberDrillMm(1.5), findLetterDrillMm('AA')]).toEqual([
      null,
      null,
      null,
      null,
    ]);
  });
});
