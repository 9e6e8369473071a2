import { describe, expect, it } from 'vitest';
import { engagementToBreakMm } from '../../src/core/calc/engagement-to-break.ts';
import { findThreadLimits } from '../../src/core/calc/thread-limits.ts';
import { externalStripAreaMm2, internalStripAreaMm2 } from '../../src/core/calc/thread-stripping.ts';
import { stripAreasOneDiameter } from '../../src/core/reference/threads/strip-areas-one-diameter.ts';
import { stripAreasPerInch } from '../../src/core/reference/threads/strip-areas-per-inch.ts';
import { agrees, readTable } from './read-table.ts';

const MM2_PER_IN2 = 25.4 ** 2;

/** Both strip areas of a thread; NaN where it is not known, which agrees with nothing. */
function areas(thread: string, engagementMm?: number): { external: number; internal: number } {
  const limits = findThreadLimits(thread);
  const engaged = engagementMm ?? limits?.diameterMm ?? 0;
  const external = limits && externalStripAreaMm2(limits, engaged);
  const internal = limits && internalStripAreaMm2(limits, engaged);
  return { external: external ?? Number.NaN, internal: internal ?? Number.NaN };
}

/** The published areas were calculated from rounded limits: one unit of the third decimal either way. */
const isNear = (printed: string, value: number) => Math.abs(value - Number(printed)) <= 0.001 + 1e-9;

describe('thread stripping', () => {
  // handbook table of strip areas at an engagement of one diameter, ASME B1.1 classes 2A and 2B
  it.each(readTable('strip-areas'))(
    '$thread at one diameter: table and formula',
    ({ thread = '', external_in2 = '', internal_in2 = '' }) => {
      const row = stripAreasOneDiameter.rows.find((one) => one.thread === thread);
      expect([
        agrees(external_in2, row?.externalIn2 ?? Number.NaN),
        agrees(internal_in2, row?.internalIn2 ?? Number.NaN),
      ]).toEqual([true, true]);
      const { external, internal } = areas(thread);
      expect([isNear(external_in2, external / MM2_PER_IN2), isNear(internal_in2, internal / MM2_PER_IN2)]).toEqual([
        true,
        true,
      ]);
    },
  );

  // handbook table of internal strip areas, class 2B
  it.each(readTable('strip-areas-per-inch'))(
    '$thread per inch: table and formula',
    ({ thread = '', internal_in2_per_in = '' }) => {
      const row = stripAreasPerInch.rows.find((one) => one.thread === thread);
      expect(agrees(internal_in2_per_in, row?.internalIn2PerIn ?? Number.NaN)).toBe(true);
      expect(isNear(internal_in2_per_in, areas(thread, 25.4).internal / MM2_PER_IN2)).toBe(true);
    },
  );

  // calculated from limits by the formulas of ISO 965-1, which differ from the tabulated limits by up to 0.008 mm: within 2 %
  it.each(readTable('strip-areas-per-mm'))(
    '$thread per mm',
    ({ thread = '', external_mm2 = '', internal_mm2 = '' }) => {
      const { external, internal } = areas(thread, 1);
      expect(Math.abs(external / Number(external_mm2) - 1)).toBeLessThan(0.02);
      expect(Math.abs(internal / Number(internal_mm2) - 1)).toBeLessThan(0.02);
    },
  );

  it('follows the worked example of 1/4-20 at 0.25 in', () => {
    // FED-STD-H28/2B: 0.1350 and 0.0920 in2
    const { external, internal } = areas('1/4-20', 0.25 * 25.4);
    expect(agrees('0.1350', internal / MM2_PER_IN2) && agrees('0.0920', external / MM2_PER_IN2)).toBe(true);
  });

  it('asks for the engagement at which screw and thread are even, and for more in weaker metal', () => {
    // FED-STD-H28/2B: Le = 2 At / (external area per unit), 1/4-20: 2 x 0.0318 / 0.368 = 0.173 in
    const limits = findThreadLimits('1/4-20');
    const even = limits ? engagementToBreakMm(limits, 1) : null;
    expect(agrees('0.173', (even ?? Number.NaN) / 25.4)).toBe(true);
    const inAluminium = limits ? engagementToBreakMm(limits, 3) : null;
    // J = 0.0920 x 3 / 0.1350 = 2.04
    expect(agrees('2.04', (inAluminium ?? Number.NaN) / (even ?? Number.NaN))).toBe(true);
  });
});
