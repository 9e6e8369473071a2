import { describe, expect, it } from 'vitest';
import { bakingHoursByHrc, bakingHoursByStrength } from '../../src/core/calc/baking-hours.ts';
import { closedHoleMm, pitchDiameterChangeMm } from '../../src/core/calc/coating-closing.ts';
import { embrittlementCare } from '../../src/core/calc/embrittlement.ts';
import { finishBuildUp } from '../../src/core/reference/finish/build-up.ts';
import { embrittlementThresholds } from '../../src/core/reference/finish/embrittlement.ts';
import { agrees, readTable } from './read-table.ts';

describe('build-up per side', () => {
  const plain = readTable('build-up').filter(({ finish = '' }) => !finish.startsWith('anodise'));
  const rows = finishBuildUp.rows.filter(({ id }) => !id.startsWith('anodise') && id !== 'chem-film');

  // ASTM B633, QQ-P-416, powder coating handbook
  it.each(rows.map((row, at) => ({ row, record: plain[at] ?? {} })))('$record.finish', ({ row, record }) => {
    expect(agrees(record.um || record.um_low || '', row.minUm)).toBe(true);
    expect(row.maxUm === null ? '' : String(row.maxUm)).toBe(record.um_high ?? '');
    expect(row.mark).toBe(record.mark);
  });

  it('grows an anodised surface by a third to a half of the film', () => {
    // MIL-A-8625, from memory: type II films 2 to 25, type III 13 to 115 um
    const [two, three] = finishBuildUp.rows.filter(({ id }) => id.startsWith('anodise'));
    expect([two?.minUm, two?.maxUm, three?.minUm, three?.maxUm]).toEqual([0.7, 25 / 2, 13 / 2, 115 / 2]);
  });

  it('closes a hole by twice the build and a thread by four times', () => {
    // common practice, no source: 80 um of powder close a hole by 0.16 mm
    expect(agrees('5.44', closedHoleMm(5.6, 80) ?? Number.NaN)).toBe(true);
    // SC2 zinc, 8 um: pitch diameter 0.032 mm (geometry of 60 degree flanks)
    expect(agrees('0.032', pitchDiameterChangeMm(8) ?? Number.NaN)).toBe(true);
    expect([closedHoleMm(0.1, 80), closedHoleMm(5.6, -1), pitchDiameterChangeMm(Number.NaN)]).toEqual([
      null,
      null,
      null,
    ]);
  });
});

describe('hydrogen embrittlement', () => {
  // thresholds as printed in ISO 4042, ASTM F1941, ASTM B633, QQ-P-416, SAE J1648; those in ksi are kept in HRC
  it('keeps every printed threshold', () => {
    const printed = readTable('embrittlement').map((record) => {
      const inHrc = record.unit === 'ksi';
      const limit = inHrc ? record.also : record.value || record.low;
      const above = record.sign === '<' ? '' : limit;
      const below = record.sign === '<' ? limit : record.high;
      return [inHrc ? record.also_unit : record.unit, above ?? '', below ?? '', record.mark].join(' ');
    });
    expect(
      embrittlementThresholds.rows.map((row) => [row.scale, row.above ?? '', row.below ?? '', row.mark].join(' ')),
    ).toEqual(printed);
  });

  it.each([
    [319, 'none'], // below 320 HV, ISO 4042:1999 clause 6
    [320, 'note'],
    [390, 'note'], // baking above 390 HV, ISO 4042:2018 4.4
    [391, 'bake'],
    [458, 'bake'], // HRC 46 by ASTM E140 Table 1: do not electroplate above, ASTM B633-15 1.3
    [459, 'do-not-plate'],
  ] as const)('zinc on %d HV: %s', (hv, care) => {
    expect(embrittlementCare(hv, 'zinc')).toBe(care);
  });

  it('forbids cadmium earlier and bakes whatever is case-hardened', () => {
    // HRC 43 by ASTM E140 Table 1, QQ-P-416F 3.2.1; ASTM F1941M-05 for case-hardened parts
    expect([embrittlementCare(423, 'cadmium'), embrittlementCare(424, 'cadmium')]).toEqual(['bake', 'do-not-plate']);
    expect(embrittlementCare(250, 'zinc', true)).toBe('bake');
  });
});

describe('baking', () => {
  // ASTM B850-98 (2009)
  it.each(readTable('baking'))('$uts_from_mpa to $uts_to_mpa MPa', (record) => {
    const found = [record.uts_from_mpa, record.uts_to_mpa].map((mpa) => String(bakingHoursByStrength(Number(mpa))));
    expect(found).toEqual([record.hours, record.hours]);
    // the upper Rockwell value belongs to the next row as well, and the longer time is the safe one
    expect(String(bakingHoursByHrc(Number(record.hrc_from) + 0.5))).toBe(record.hours);
    expect(String(bakingHoursByHrc(Number(record.hrc_from)))).toBe(record.hours);
  });

  it('says nothing outside the table', () => {
    const outside = [
      bakingHoursByStrength(1000),
      bakingHoursByStrength(1801),
      bakingHoursByHrc(30),
      bakingHoursByHrc(52),
      bakingHoursByHrc(Number.NaN),
    ];
    expect(outside).toEqual([null, null, null, null, null]);
  });
});
