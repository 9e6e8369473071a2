import { describe, expect, it } from 'vitest';
import { ounceThickness } from '../../src/core/calc/copper-ounces.ts';
import { gaugeOfOtherMetal, gaugeThickness, nearGauge } from '../../src/core/calc/gauge.ts';
import type { SheetFamily } from '../../src/core/model/sheet.ts';
import type { NamedGauge } from '../../src/core/model/thickness.ts';
import { aluminiumStockedGauge } from '../../src/core/reference/thickness/aluminium-stocked-gauge.ts';
import { brownSharpeGauge } from '../../src/core/reference/thickness/brown-sharpe-gauge.ts';
import { galvanizedGauge } from '../../src/core/reference/thickness/galvanized-gauge.ts';
import { thicknessTables } from '../../src/core/reference/thickness/index.ts';
import { manufacturersStandardGauge } from '../../src/core/reference/thickness/manufacturers-standard-gauge.ts';
import { preferredMetric } from '../../src/core/reference/thickness/preferred-metric.ts';
import { stainlessStockedGauge } from '../../src/core/reference/thickness/stainless-stocked-gauge.ts';
import { usStandardGauge } from '../../src/core/reference/thickness/us-standard-gauge.ts';
import { mmOf } from '../../src/core/units/length.ts';
import { agrees, readTable } from './read-table.ts';

/** What one column of a printed table says, and what we give for the same gauge. */
interface Column {
  readonly source: string;
  readonly table: string;
  readonly column: string;
  readonly ours: (gauge: number) => number | undefined;
}

const inch = (family: SheetFamily, named?: NamedGauge) => (gauge: number) => gaugeThickness(gauge, family, named)?.inch;

const columns: readonly Column[] = [
  { source: "Manufacturers' Standard Gauge", table: 'gauges-steel', column: 'in', ours: inch('carbon-steel') },
  { source: 'Galvanized Sheet Gauge', table: 'gauges-galvanized', column: 'in', ours: inch('galvanized-steel') },
  { source: 'Galvanized Sheet Gauge', table: 'gauges-galvanized', column: 'in', ours: inch('galvannealed-steel') },
  { source: '15 U.S.C. 206', table: 'gauges-us-standard', column: 'in', ours: inch('carbon-steel', 'us-standard') },
  { source: 'ASTM B258', table: 'gauges-awg', column: 'in', ours: inch('aluminium') },
  { source: 'ASTM B258', table: 'gauges-awg', column: 'in', ours: inch('copper') },
  { source: 'Birmingham Wire Gauge', table: 'gauges-bwg', column: 'in', ours: inch('carbon-steel', 'birmingham') },
  {
    source: '15 U.S.C. 206, as stainless charts round it',
    table: 'stainless-gauges',
    column: 'us_std_in',
    ours: inch('stainless-austenitic', 'us-standard'),
  },
  {
    source: 'stainless stock decimals',
    table: 'stainless-gauges',
    column: 'stock_in',
    ours: inch('stainless-ferritic'),
  },
  {
    source: 'stainless stock decimals, second list',
    table: 'stainless-gauges',
    column: 'other_stock_in',
    ours: (gauge) => stainlessStockedGauge.rows.find((row) => row.gauge === gauge)?.secondInch,
  },
  {
    source: 'aluminium stock decimals',
    table: 'aluminium-stock',
    column: 'in',
    ours: (gauge) => aluminiumStockedGauge.rows.find((row) => row.gauge === gauge)?.inch,
  },
];

describe.each(columns)('$source: $table, $column', ({ table, column, ours }) => {
  it.each(readTable(table).map((row) => [row.gauge ?? '', row[column] ?? '']))(
    '%s gauge is %s in',
    (gauge, printed) => {
      expect(agrees(printed, ours(Number(gauge)) ?? Number.NaN)).toBe(true);
    },
  );
});

describe('millimetres beside the gauges (calculated from the inch tables)', () => {
  it.each(readTable('gauges-mm'))('$gauge gauge', (row) => {
    const gauge = Number(row.gauge);
    expect(agrees(row.steel_mm ?? '', gaugeThickness(gauge, 'carbon-steel')?.mm ?? Number.NaN)).toBe(true);
    if (row.galvanized_mm) {
      expect(agrees(row.galvanized_mm, gaugeThickness(gauge, 'galvanized-steel')?.mm ?? Number.NaN)).toBe(true);
    }
    // Printed from the unrounded formula, so half of the fourth decimal of an inch lies between.
    const awgMm = gaugeThickness(gauge, 'aluminium')?.mm ?? Number.NaN;
    expect(Math.abs(awgMm - Number(row.awg_mm))).toBeLessThan(0.0018);
  });
});

describe('the laws behind the gauges', () => {
  const printedAt = (inches: number, decimals: number) => inches.toFixed(decimals);

  it("Manufacturers' Standard: ounces over 16 x 41.82 lb/ft2", () => {
    for (const { ouncesPerSqFt = Number.NaN, inch: ours } of manufacturersStandardGauge.rows) {
      expect(printedAt(ouncesPerSqFt / (16 * 41.82), 4)).toBe(printedAt(ours, 4));
    }
  });

  it('Galvanized: the same with 2.5 ounces of zinc', () => {
    for (const { gauge, inch: ours } of galvanizedGauge.rows) {
      const steel = manufacturersStandardGauge.rows.find((row) => row.gauge === gauge)?.ouncesPerSqFt ?? Number.NaN;
      expect(printedAt((steel + 2.5) / (16 * 41.82), 4)).toBe(printedAt(ours, 4));
    }
  });

  it('US Standard (15 U.S.C. 206): ounces over 640, exactly', () => {
    for (const { ouncesPerSqFt = Number.NaN, inch: ours } of usStandardGauge.rows)
      expect(ouncesPerSqFt / 640).toBe(ours);
  });

  it('Brown & Sharpe (ASTM B258): 0.005 x 92^((36 - n)/39)', () => {
    for (const { gauge, inch: ours } of brownSharpeGauge.rows) {
      expect(printedAt(0.005 * 92 ** ((36 - gauge) / 39), 4)).toBe(printedAt(ours, 4));
    }
  });
});

describe('British sheet', () => {
  it('16 SWG is the printed 1.63 mm', () => {
    const printed = readTable('british-gauge-16').find(({ system }) => system === 'SWG')?.mm ?? '';
    expect(agrees(printed, gaugeThickness(16, 'brass', 'swg')?.mm ?? Number.NaN)).toBe(true);
  });

  it('has no table of the sheet-iron gauge, so such a cell stays a question', () => {
    expect(gaugeThickness(16, 'carbon-steel', 'birmingham-sheet')).toBeNull();
  });
});

describe('copper by weight (ASTM B370, from memory)', () => {
  it.each(readTable('copper-ounces').map((row) => [row.oz ?? '', row.in ?? '']))(
    '%s oz is %s in',
    (ounces, printed) => {
      expect(agrees(printed, ounceThickness(Number(ounces))?.inch ?? Number.NaN)).toBe(true);
    },
  );

  it('is not a gauge: 16 oz is far from 16 gauge, and other weights are not guessed', () => {
    expect(ounceThickness(16)?.inch).toBeLessThan((gaugeThickness(16, 'copper')?.inch ?? 0) / 2);
    expect(ounceThickness(17)).toBeNull();
  });
});

describe('preferred metric sizes (from memory)', () => {
  const heading = (series: string) => series.replaceAll('_', ' ').replace('european stock', 'European stock,');

  it.each(readTable('preferred-metric').map((row) => [row.series ?? '', row.mm ?? '']))(
    '%s has %s mm',
    (series, printed) => {
      const listed = preferredMetric.rows.find((row) => row.series === heading(series))?.thicknessesMm ?? [];
      expect(listed.some((mm) => agrees(printed, mm))).toBe(true);
    },
  );
});

// The classic mix-up: one number, seven thicknesses (gauge laws and stock decimals).
describe('16 gauge', () => {
  it.each<[SheetFamily, string, string | null]>([
    ['carbon-steel', '0.0598', null],
    ['galvanized-steel', '0.0635', null],
    ['galvannealed-steel', '0.0635', null],
    ['stainless-austenitic', '0.0595', '1.588'],
    ['stainless-ferritic', '0.0595', '1.588'],
    ['stainless-martensitic', '0.0595', '1.588'],
    ['aluminium', '0.0508', '1.270'],
    ['copper', '0.0508', null],
    ['brass', '0.0508', null],
    ['bronze', '0.0508', null],
  ])('in %s is %s in, other %s mm', (family, printed, otherMm) => {
    const found = gaugeThickness(16, family);
    expect(agrees(printed, found?.inch ?? Number.NaN)).toBe(true);
    if (otherMm === null) expect(found?.other).toBeNull();
    else expect(agrees(otherMm, found?.other?.mm ?? Number.NaN)).toBe(true);
  });

  it('means nothing in titanium, nor without a metal unless the system is named', () => {
    expect(gaugeThickness(16, 'titanium')).toBeNull();
    expect(gaugeThickness(16, null)).toBeNull();
    expect(gaugeThickness(16, null, 'msg')?.inch).toBe(0.0598);
  });
});

describe('gauge numbers outside the tables', () => {
  it.each([2, 31, 0, -16, 16.5, Number.NaN])('%s gauge of steel is no thickness', (gauge) => {
    expect(gaugeThickness(gauge, 'carbon-steel')).toBeNull();
  });

  it('stainless falls back to the US Standard where nothing is stocked under the number', () => {
    expect(gaugeThickness(9, 'stainless-austenitic')).toMatchObject({
      inch: 0.15625,
      table: 'us-standard-gauge',
      other: null,
    });
  });
});

describe('the gauge that a thickness stands for', () => {
  it.each<[number, SheetFamily, number | null]>([
    [1.519, 'carbon-steel', 16],
    [mmOf(0.06, 'in'), 'carbon-steel', 16],
    [mmOf(0.06, 'in'), 'stainless-austenitic', 16],
    [mmOf(0.0625, 'in'), 'stainless-austenitic', 16],
    [mmOf(0.05, 'in'), 'aluminium', 16],
    [mmOf(0.063, 'in'), 'aluminium', 14],
    [1.5, 'carbon-steel', 16],
    [2, 'carbon-steel', null],
    [1.519, 'titanium', null],
    [Number.NaN, 'carbon-steel', null],
  ])('%d mm of %s: %s', (mm, family, gauge) => {
    expect(nearGauge(mm, family)?.gauge ?? null).toBe(gauge);
  });
});

describe("another metal's gauge", () => {
  it.each<[string, number, SheetFamily, number, SheetFamily]>([
    ['0.0598 in', mmOf(0.0598, 'in'), 'aluminium', 16, 'carbon-steel'],
    ['1.519 mm', 1.519, 'aluminium', 16, 'carbon-steel'],
    ['0.0478 in', mmOf(0.0478, 'in'), 'aluminium', 18, 'carbon-steel'],
    ['0.0508 in', mmOf(0.0508, 'in'), 'carbon-steel', 16, 'aluminium'],
    ['0.0635 in', mmOf(0.0635, 'in'), 'carbon-steel', 16, 'galvanized-steel'],
    ['0.0598 in', mmOf(0.0598, 'in'), 'galvanized-steel', 16, 'carbon-steel'],
    ['0.0598 in', mmOf(0.0598, 'in'), 'copper', 16, 'carbon-steel'],
  ])('%s (%d mm) of %s is %i gauge of %s', (_, mm, family, gauge, other) => {
    expect(gaugeOfOtherMetal(mm, family)).toEqual({ gauge, family: other });
  });

  it.each<[string, number, SheetFamily]>([
    ['own gauge', mmOf(0.0598, 'in'), 'carbon-steel'],
    ['own gauge', mmOf(0.0508, 'in'), 'aluminium'],
    ['a hair from its own stocked decimals', mmOf(0.0598, 'in'), 'stainless-austenitic'],
    ['1/16 in', mmOf(0.0625, 'in'), 'aluminium'],
    ['1/16 in', mmOf(0.0625, 'in'), 'carbon-steel'],
    ['5/64 in to four decimals', mmOf(0.0781, 'in'), 'carbon-steel'],
    ['0.050 in', mmOf(0.05, 'in'), 'carbon-steel'],
    ['0.060 in', mmOf(0.06, 'in'), 'aluminium'],
    ['0.060 in rounded in mm', 1.52, 'aluminium'],
    ['0.032 in', mmOf(0.032, 'in'), 'carbon-steel'],
    ['1/8 in', mmOf(0.125, 'in'), 'galvanized-steel'],
    ['1.15 mm, also 17 gauge of aluminium', 1.15, 'carbon-steel'],
    ['not a number', Number.NaN, 'aluminium'],
  ])('%s (%d mm) of %s is no cause for doubt', (_, mm, family) => {
    expect(gaugeOfOtherMetal(mm, family)).toBeNull();
  });

  it('is never suspected in a preferred metric size of any metal', () => {
    const families: readonly SheetFamily[] = [
      'carbon-steel',
      'galvanized-steel',
      'stainless-austenitic',
      'aluminium',
      'brass',
    ];
    const sizes = preferredMetric.rows.flatMap(({ thicknessesMm }) => thicknessesMm);
    for (const family of families) for (const mm of sizes) expect(gaugeOfOtherMetal(mm, family)).toBeNull();
  });
});

describe('the thickness tables', () => {
  it('have distinct ids and at least one row each', () => {
    expect(new Set(thicknessTables.map(({ id }) => id)).size).toBe(thicknessTables.length);
    for (const { rows } of thicknessTables) expect(rows.length).toBeGreaterThan(0);
  });
});
