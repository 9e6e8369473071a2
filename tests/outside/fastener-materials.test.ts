import { describe, expect, it } from 'vitest';
import { metalClassOf, toRockwellB } from '../../src/core/calc/rockwell-b.ts';
import {
  type FastenerMaterialEntry,
  fastenerMaterials,
  findFastenerMaterial,
} from '../../src/core/reference/fastener-materials.ts';
import { parseHardness, showHardness } from '../../src/core/units/hardness.ts';

/** Id, least and greatest hardness as printed ("-" for none). */
type Printed = readonly [id: string, min: string, max: string];

const printed: Readonly<Record<string, readonly Printed[]>> = {
  'ISO 898-1, from memory': [
    ['iso-898-1-4-6', 'HRB 67', 'HRB 95'],
    ['iso-898-1-4-8', 'HRB 71', 'HRB 95'],
    ['iso-898-1-5-6', 'HRB 79', 'HRB 95'],
    ['iso-898-1-5-8', 'HRB 82', 'HRB 95'],
    ['iso-898-1-6-8', 'HRB 89', 'HRB 99.5'],
    ['iso-898-1-8-8', 'HRC 22', 'HRC 32'],
    ['iso-898-1-8-8-over-m16', 'HRC 23', 'HRC 34'],
    ['iso-898-1-9-8', 'HRC 28', 'HRC 37'],
    ['iso-898-1-10-9', 'HRC 32', 'HRC 39'],
    ['iso-898-1-12-9', 'HRC 39', 'HRC 44'],
  ],
  'ISO 898-2, from memory': [
    ['iso-898-2-5', 'HV 130', 'HRC 30'],
    ['iso-898-2-6', 'HV 150', 'HRC 30'],
    ['iso-898-2-8', 'HV 188', 'HRC 30'],
    ['iso-898-2-10', 'HRC 26', 'HRC 36'],
    ['iso-898-2-12', 'HV 272', 'HRC 36'],
  ],
  'ISO 898-6': [
    ['iso-898-6-04', 'HV 188', 'HRC 30'],
    ['iso-898-6-05', 'HRC 26', 'HRC 36'],
    ['iso-898-6-5', 'HV 175', 'HRC 30'],
  ],
  'ISO 898-5, from memory': [
    ['iso-898-5-14h', 'HRB 75', 'HRB 105'],
    ['iso-898-5-22h', 'HRB 95', 'HRC 30'],
    ['iso-898-5-33h', 'HRC 33', 'HRC 44'],
    ['iso-898-5-45h', 'HRC 45', 'HRC 53'],
  ],
  'SAE J429': [
    ['sae-j429-1', 'HRB 70', 'HRB 100'],
    ['sae-j429-2', 'HRB 80', 'HRB 100'],
    ['sae-j429-2-over-3-4-in', 'HRB 70', 'HRB 100'],
    ['sae-j429-5', 'HRC 25', 'HRC 34'],
    ['sae-j429-5-over-1-in', 'HRC 19', 'HRC 30'],
    ['sae-j429-5-2', 'HRC 26', 'HRC 36'],
    ['sae-j429-8', 'HRC 33', 'HRC 39'],
  ],
  'SAE J995, from memory': [
    ['sae-j995-2', '-', 'HRC 32'],
    ['sae-j995-5', '-', 'HRC 32'],
    ['sae-j995-8', 'HRC 24', 'HRC 32'],
  ],
  'ISO 2702, from memory': [['case-hardened-steel', 'HRC 45', '-']],
  'ASTM F593, annealed and cold worked': [
    ['astm-f593-af', '-', 'HRB 85'],
    ['astm-f593-a', 'HRB 65', 'HRB 95'],
    ['astm-f593-cw1', 'HRB 95', 'HRC 32'],
    ['astm-f593-cw2', 'HRB 80', 'HRC 32'],
  ],
  'ASTM F593, from memory': [
    ['astm-f593-sh1', 'HRC 24', 'HRC 36'],
    ['astm-f593-410-h', 'HRC 20', 'HRC 30'],
    ['astm-f593-410-ht', 'HRC 34', 'HRC 45'],
    ['astm-f593-430', '-', 'HRB 98'],
    ['astm-f593-630-ah', 'HRC 28', 'HRC 38'],
  ],
  'ISO 3506-1, which states no hardness for austenitic classes': [
    ['iso-3506-1-a-50', '-', '-'],
    ['iso-3506-1-a-70', '-', '-'],
    ['iso-3506-1-a-80', '-', '-'],
  ],
  'ISO 3506-1, -3 and -4, from memory': [
    ['iso-3506-1-c1-50', 'HV 155', 'HV 220'],
    ['iso-3506-1-c1-70', 'HRC 20', 'HRC 34'],
    ['iso-3506-1-c1-110', 'HRC 36', 'HRC 45'],
    ['iso-3506-1-c3-80', 'HRC 21', 'HRC 35'],
    ['iso-3506-1-c4-70', 'HRC 20', 'HRC 34'],
    ['iso-3506-1-f1-45', 'HV 135', 'HV 220'],
    ['iso-3506-3-12h', 'HV 125', 'HV 209'],
    ['iso-3506-3-21h', 'HV 210', '-'],
    ['iso-3506-4-20h', 'HV 200', '-'],
    ['iso-3506-4-25h', 'HV 250', '-'],
    ['iso-3506-4-30h', 'HV 300', '-'],
  ],
  'JIS G4305 SUS630': [
    ['sus630-s', '-', 'HRC 38'],
    ['sus630-h900', 'HRC 40', '-'],
    ['sus630-h1025', 'HRC 35', '-'],
    ['sus630-h1075', 'HRC 31', '-'],
    ['sus630-h1150', 'HRC 28', '-'],
  ],
  'ASTM A693, AMS 5731 and trade practice, from memory': [
    ['astm-a693-630-h900', 'HRC 40', 'HRC 48'],
    ['a286-aged', 'HRC 24', 'HRC 37'],
    ['416-hardened', 'HRC 35', 'HRC 42'],
  ],
  'ASTM A276 and data sheets, which give typical values only': [
    ['410-as-quenched', 'HRC 35', '-'],
    ['410-tempered', '-', '-'],
    ['410-annealed', '-', '-'],
    ['7075-t6', '-', '-'],
  ],
  'ASTM F468 and F467, from memory': [
    ['2024-t4', 'HRB 70', 'HRB 85'],
    ['6061-t6', 'HRB 40', 'HRB 50'],
    ['7075-t73', 'HRB 80', 'HRB 90'],
    ['6262-t9', 'HRB 60', '-'],
    ['c11000', 'HRF 65', 'HRF 90'],
    ['c26000', 'HRF 55', 'HRF 80'],
    ['c27000', 'HRF 55', 'HRF 80'],
    ['c46200', 'HRB 65', 'HRB 90'],
    ['c46400', 'HRB 55', 'HRB 75'],
    ['c51000', 'HRB 60', 'HRB 95'],
    ['c65100', 'HRB 70', 'HRB 95'],
    ['c65500', 'HRB 60', 'HRB 80'],
    ['c61300', 'HRB 70', 'HRB 95'],
  ],
  'class minima, common practice, no source': [
    ['carbon-steel-hardened', 'HRC 26', '-'],
    ['stainless-300', 'HRB 95', '-'],
    ['stainless-400-hardened', 'HRC 34', '-'],
    ['stainless-ph', 'HRC 38', '-'],
    ['aluminium-2024-t4', 'HRB 70', 'HRB 85'],
    ['brass', '-', '-'],
    ['bronze', '-', '-'],
  ],
};

describe('fastener materials as printed', () => {
  for (const [source, rows] of Object.entries(printed)) {
    it.each(rows)(`${source}: %s from %s to %s`, (id, min, max) => {
      const entry = findFastenerMaterial(id);
      const shown = [entry?.hardnessMin, entry?.hardnessMax].map((hardness) =>
        hardness ? showHardness(hardness) : '-',
      );
      expect(shown).toEqual([min, max]);
      if (source.includes('memory')) expect(entry?.mark).toBe('memory');
    });
  }

  it('holds no row beyond these', () => {
    const known = Object.values(printed).flatMap((rows) => rows.map(([id]) => id));
    expect(fastenerMaterials.rows.map(({ id }) => id).sort()).toEqual([...known].sort());
  });

  it('finds nothing under a name that is none', () => {
    expect(findFastenerMaterial('unobtainium')).toBeUndefined();
  });
});

describe('fastener materials among themselves', () => {
  const hrbOf = (entry: FastenerMaterialEntry, end: 'hardnessMin' | 'hardnessMax') => {
    const given = entry[end];
    return given && toRockwellB(given, metalClassOf(entry.family));
  };

  // SAE grade 5 above 1 in begins at HRC 19, one below the Rockwell C conversion.
  it('every stated minimum but one converts to the common scale', () => {
    const unread = fastenerMaterials.rows
      .filter((entry) => entry.hardnessMin && !hrbOf(entry, 'hardnessMin'))
      .map(({ id }) => id);
    expect(unread).toEqual(['sae-j429-5-over-1-in']);
  });

  it('no minimum lies above its maximum', () => {
    for (const entry of fastenerMaterials.rows) {
      const [min, max] = [hrbOf(entry, 'hardnessMin'), hrbOf(entry, 'hardnessMax')];
      if (min && max) expect(min.hrb, entry.id).toBeLessThanOrEqual(max.hrb);
    }
  });

  // ISO 898-1 in HV and Rockwell side by side, from memory: the tables agree with the standard within three points.
  it.each([
    ['iso-898-1-4-6', 'HV 120'],
    ['iso-898-1-4-8', 'HV 130'],
    ['iso-898-1-5-6', 'HV 155'],
    ['iso-898-1-5-8', 'HV 160'],
    ['iso-898-1-6-8', 'HV 190'],
    ['iso-898-1-8-8', 'HV 250'],
    ['iso-898-1-9-8', 'HV 290'],
    ['iso-898-1-10-9', 'HV 320'],
    ['iso-898-2-10', 'HV 272'],
  ])('%s begins at %s', (id, vickers) => {
    const own = hrbOf(findFastenerMaterial(id)!, 'hardnessMin')!.hrb;
    const other = toRockwellB(parseHardness(vickers)!, 'steel')!.hrb;
    expect(Math.abs(own - other)).toBeLessThanOrEqual(3);
  });

  it('hardened steel and stainless are harder than unhardened steel at their minimum', () => {
    const soft = ['iso-898-1-4-8', 'iso-898-1-5-8'].map((id) => hrbOf(findFastenerMaterial(id)!, 'hardnessMin')!.hrb);
    const hard = ['carbon-steel-hardened', 'stainless-300', 'stainless-400-hardened', 'stainless-ph'];
    for (const id of hard)
      expect(hrbOf(findFastenerMaterial(id)!, 'hardnessMin')!.hrb).toBeGreaterThan(Math.max(...soft));
  });
});
