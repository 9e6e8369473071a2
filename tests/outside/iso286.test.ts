import { describe, expect, it } from 'vitest';
import { holeGradeLimits } from '../../src/core/calc/hole-grade.ts';
import { generalTolerance } from '../../src/core/reference/holes/general-tolerance.ts';
import { iso286Grades } from '../../src/core/reference/holes/iso286.ts';
import { iso9013Class1 } from '../../src/core/reference/holes/iso9013.ts';
import { agrees, readTable } from './read-table.ts';

const GRADES = [5, 6, 7, 8, 9, 10, 11, 12, 13, 14];

describe('ISO 286-1 standard tolerances', () => {
  // both ends of each band: just above the lower size, and the upper size itself
  it.each(readTable('iso286'))('over $over_mm to $to_mm mm', (record) => {
    for (const grade of GRADES) {
      const printed = record[`it${grade}`] ?? '';
      for (const nominal of [Number(record.over_mm) + 0.01, Number(record.to_mm)]) {
        const limits = holeGradeLimits(nominal, 'H', grade);
        expect(limits?.lowMm).toBe(nominal);
        expect(agrees(printed, ((limits?.highMm ?? Number.NaN) - nominal) * 1000), `IT${grade} at ${nominal}`).toBe(
          true,
        );
      }
    }
  });

  it('marks IT12 as from memory and no other', () => {
    expect(iso286Grades.rows.filter(({ mark }) => mark !== 'printed').map(({ grade }) => grade)).toEqual([12]);
  });

  it('halves the width for JS and knows no other class', () => {
    // ISO 286-1: IT12 over 3 to 6 mm is 120 um
    const js = holeGradeLimits(5.6, 'JS', 12);
    expect([js?.lowMm, js?.highMm].map((mm) => mm?.toFixed(3))).toEqual(['5.540', '5.660']);
    expect([holeGradeLimits(5.6, 'F', 7), holeGradeLimits(5.6, 'H', 4), holeGradeLimits(30.1, 'H', 7)]).toEqual([
      null,
      null,
      null,
    ]);
  });
});

describe('tolerances of processes', () => {
  // ISO 9013 class 1
  it.each(readTable('iso9013'))('thermal cutting, sheet to $t_to_mm mm', (record) => {
    const row = iso9013Class1.rows.find(({ toMm }) => String(toMm) === record.t_to_mm);
    expect(agrees(record.t_over_mm ?? '', row?.overMm ?? Number.NaN)).toBe(true);
    expect(agrees(record.nominal_to_3 ?? '', row?.nominalTo3Mm ?? Number.NaN)).toBe(true);
    expect(agrees(record.nominal_to_10 ?? '', row?.nominalTo10Mm ?? Number.NaN)).toBe(true);
    expect(agrees(record.nominal_to_35 ?? '', row?.nominalTo35Mm ?? Number.NaN)).toBe(true);
  });

  // ISO 2768-1 class m
  it.each(readTable('iso2768-m'))('general tolerance to $to_mm mm', (record) => {
    const row = generalTolerance.rows.find(({ toMm }) => String(toMm) === record.to_mm);
    expect(agrees(record.over_mm ?? '', row?.fromMm ?? Number.NaN)).toBe(true);
    expect(agrees(record.tol_mm ?? '', row?.plusMinusMm ?? Number.NaN)).toBe(true);
  });
});
