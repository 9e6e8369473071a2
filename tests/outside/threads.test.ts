import { describe, expect, it } from 'vitest';
import { findClearanceHole } from '../../src/core/calc/clearance-hole.ts';
import { metricStressAreaMm2, unifiedStressAreaIn2 } from '../../src/core/calc/stress-area.ts';
import { clearanceAsme } from '../../src/core/reference/threads/clearance-asme-b18-2-8.ts';
import { clearanceIso273 } from '../../src/core/reference/threads/clearance-iso273.ts';
import { metricBasicDiameters } from '../../src/core/reference/threads/metric-basic-diameters.ts';
import { metricCoarse } from '../../src/core/reference/threads/metric-coarse.ts';
import { metricLimits } from '../../src/core/reference/threads/metric-limits.ts';
import { unifiedThreads } from '../../src/core/reference/threads/unified.ts';
import { unifiedLimits } from '../../src/core/reference/threads/unified-limits.ts';
import { METRIC_SIZES, UNIFIED_SIZES } from '../../src/core/units/thread-sizes.ts';
import { agrees, readTable } from './read-table.ts';

/** Printed cells of a record, by column, that differ from the values given for them. */
function differing(
  record: Record<string, string>,
  values: Readonly<Record<string, number | null | undefined>>,
): readonly string[] {
  return Object.entries(values).flatMap(([column, value]) =>
    agrees(record[column] ?? '', value ?? Number.NaN) ? [] : [`${column}: printed ${record[column]}, have ${value}`],
  );
}

const inchName = (printed = '') => printed.split(' ')[0];

describe('metric coarse threads', () => {
  // ISO 261 pitches, ISO 898-1 stress areas, ISO 2306 drills
  it.each(readTable('iso-coarse'))('$thread as printed', (record) => {
    const row = metricCoarse.rows.find(({ thread }) => thread === record.thread);
    const values = {
      d_mm: row?.diameterMm,
      pitch_mm: row?.pitchMm,
      stress_area_mm2: row?.stressAreaMm2,
      core_drill_mm: row?.coreDrillMm,
    };
    expect(differing(record, values)).toEqual([]);
    const size = METRIC_SIZES.find(({ diameterMm }) => diameterMm === row?.diameterMm);
    expect(size?.coarseMm).toBe(row?.pitchMm);
  });

  // ISO 724 basic dimensions, ISO 898-1 formula of the stress area
  it.each(readTable('iso-coarse-diameters'))('$thread: diameters and the formula of the stress area', (record) => {
    const row = metricBasicDiameters.rows.find(({ thread }) => thread === record.thread);
    const size = metricCoarse.rows.find(({ thread }) => thread === record.thread);
    const area = metricStressAreaMm2(size?.diameterMm ?? 0, size?.pitchMm ?? 0);
    const values = {
      d2_mm: row?.pitchDiameterMm,
      d1_mm: row?.internalMinorMm,
      d3_mm: row?.externalMinorMm,
      stress_area_mm2: area,
    };
    expect(differing(record, values)).toEqual([]);
  });

  // ISO 965-2, from memory
  it.each(readTable('iso-limits'))('$thread: limits 6g and 6H', (record) => {
    const row = metricLimits.rows.find(({ thread }) => thread === record.thread);
    const values = {
      ext_major_min: row?.externalMajorMinMm,
      ext_pitch_min: row?.externalPitchMinMm,
      int_minor_max: row?.internalMinorMaxMm,
      int_pitch_max: row?.internalPitchMaxMm,
    };
    expect(differing(record, values)).toEqual([]);
  });
});

describe('Unified threads', () => {
  // ASME B1.1
  it.each(readTable('unified'))('$thread: size and stress area, table and formula', (record) => {
    const row = unifiedThreads.rows.find(({ thread, series }) => `${thread} ${series}` === record.thread);
    const values = { d_in: row?.diameterIn, tpi: row?.threadsPerInch, stress_area_in2: row?.stressAreaIn2 };
    expect(differing(record, values)).toEqual([]);
    const area = unifiedStressAreaIn2(row?.diameterIn ?? 0, row?.threadsPerInch ?? 0);
    // the printed areas are rounded unevenly: 4-40 up, 5/16-24 down; one unit of the last digit covers it
    const unit = 10 ** -(record.stress_area_in2?.split('.')[1]?.length ?? 0);
    expect(Math.abs((area ?? Number.NaN) - Number(record.stress_area_in2))).toBeLessThan(unit);
    const size = UNIFIED_SIZES.find((one) => `${one.size}-${row?.threadsPerInch}` === row?.thread);
    expect([size?.inch, row?.series === 'UNC' ? size?.unc : size?.unf]).toEqual([row?.diameterIn, row?.threadsPerInch]);
  });

  // ASME B1.1, basic dimensions
  it.each(readTable('unified-basic'))('$thread: basic diameters', (record) => {
    const row = unifiedLimits.rows.find(({ thread }) => thread === inchName(record.thread));
    const values = { pitch_dia_in: row?.pitchBasicIn, minor_dia_in: row?.minorBasicIn };
    expect(differing(record, values)).toEqual([]);
  });

  // ASME B1.1, classes 2A and 2B, from memory
  it.each(readTable('unified-limits'))('$thread: limits 2A and 2B', (record) => {
    const row = unifiedLimits.rows.find(({ thread }) => thread === inchName(record.thread));
    const values = {
      major_min_in: row?.externalMajorMinIn,
      pitch_min_in: row?.externalPitchMinIn,
      minor_max_in: row?.internalMinorMaxIn,
      pitch_max_in: row?.internalPitchMaxIn,
    };
    expect(differing(record, values)).toEqual([]);
  });
});

describe('clearance holes', () => {
  // ISO 273
  it.each(readTable('clearance-iso273'))('$thread', (record) => {
    const row = clearanceIso273.rows.find(({ thread }) => thread === record.thread);
    expect(differing(record, { fine: row?.fineMm, medium: row?.mediumMm, coarse: row?.coarseMm })).toEqual([]);
    expect(differing(record, { medium: findClearanceHole(record.thread ?? '', 'normal')?.mm })).toEqual([]);
  });

  // ASME B18.2.8
  it.each(readTable('clearance-asme'))('$size', (record) => {
    const row = clearanceAsme.rows.find(({ size }) => size === record.size);
    expect([row?.closeDrill, row?.normalDrill, row?.looseDrill]).toEqual([
      record.close_drill,
      record.normal_drill,
      record.loose_drill,
    ]);
    const values = {
      close_in: row?.closeIn,
      normal_in: row?.normalIn,
      loose_in: row?.looseMinIn,
      loose_max_in: row?.looseMaxIn,
    };
    expect(differing(record, values)).toEqual([]);
  });

  it('finds the hole of a thread by its short name', () => {
    // ASME B18.2.8: #8 close 0.180, 1/4 normal 0.281; ISO 273: M8 loose 10
    expect(findClearanceHole('8-32', 'close')?.mm).toBeCloseTo(0.18 * 25.4, 9);
    expect(findClearanceHole('1/4-28', 'normal')?.mm).toBeCloseTo(0.281 * 25.4, 9);
    expect(findClearanceHole('M8x1', 'loose')).toEqual({ mm: 10, table: 'clearance-iso-273' });
    expect(findClearanceHole('M12', 'normal')).toBeNull();
  });
});
