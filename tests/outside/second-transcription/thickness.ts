import { aluminiumStockedGauge } from '../../../src/core/reference/thickness/aluminium-stocked-gauge.ts';
import { astmA480Inch } from '../../../src/core/reference/thickness/astm-a480-inch.ts';
import { astmA480m } from '../../../src/core/reference/thickness/astm-a480m.ts';
import { astmB209 } from '../../../src/core/reference/thickness/astm-b209.ts';
import { birminghamGauge } from '../../../src/core/reference/thickness/birmingham-gauge.ts';
import { britishStandardWireGauge } from '../../../src/core/reference/thickness/british-standard-wire-gauge.ts';
import { brownSharpeGauge } from '../../../src/core/reference/thickness/brown-sharpe-gauge.ts';
import { copperOunces } from '../../../src/core/reference/thickness/copper-ounces.ts';
import { en485Group1 } from '../../../src/core/reference/thickness/en-485-4-group-1.ts';
import { en485Group2 } from '../../../src/core/reference/thickness/en-485-4-group-2.ts';
import { en10051 } from '../../../src/core/reference/thickness/en-10051.ts';
import { en10051CategoryA } from '../../../src/core/reference/thickness/en-10051-category-a.ts';
import { en10131 } from '../../../src/core/reference/thickness/en-10131.ts';
import { en10131HigherYield } from '../../../src/core/reference/thickness/en-10131-higher-yield.ts';
import { en10131Special } from '../../../src/core/reference/thickness/en-10131-special.ts';
import { en10143 } from '../../../src/core/reference/thickness/en-10143.ts';
import { en10259 } from '../../../src/core/reference/thickness/en-10259.ts';
import { galvanizedGauge } from '../../../src/core/reference/thickness/galvanized-gauge.ts';
import { manufacturersStandardGauge } from '../../../src/core/reference/thickness/manufacturers-standard-gauge.ts';
import { preferredMetric } from '../../../src/core/reference/thickness/preferred-metric.ts';
import { stainlessStockedGauge } from '../../../src/core/reference/thickness/stainless-stocked-gauge.ts';
import { usColdRolledTolerance } from '../../../src/core/reference/thickness/us-cold-rolled-tolerance.ts';
import { usGalvanizedTolerance } from '../../../src/core/reference/thickness/us-galvanized-tolerance.ts';
import { usHotRolledTolerance } from '../../../src/core/reference/thickness/us-hot-rolled-tolerance.ts';
import { usStandardGauge } from '../../../src/core/reference/thickness/us-standard-gauge.ts';
import { compareTable, type Line } from '../compare-table.ts';

const GAUGE = { gauge: 'gauge' } as const;
const GAUGE_INCH = { key: GAUGE, columns: { in: 'inch' } } as const;
const OVER_TO = { t_over_mm: 'lowMm', t_to_mm: 'highMm' } as const;
const BY_WIDTH = { w_to_1200: 'narrowMm', w_to_1500: 'mediumMm', w_over_1500: 'wideMm' } as const;

const isGauge =
  (from: number, to: number) =>
  ({ gauge = '' }: Line) =>
    Number(gauge) >= from && Number(gauge) <= to;

const gauges = [
  compareTable({
    csv: 'gauges-us-standard',
    table: usStandardGauge,
    key: GAUGE,
    columns: { oz_per_ft2: 'ouncesPerSqFt', in: 'inch' },
    surplus: [{ of: ({ gauge }) => gauge > 30, reason: 'read to gauge 30; the thinner ones are from memory' }],
  }),
  compareTable({
    csv: 'stainless-gauges',
    table: usStandardGauge,
    key: GAUGE,
    columns: { us_std_in: 'inch' },
    part: true,
  }),
  compareTable({ csv: 'gauges-steel', table: manufacturersStandardGauge, ...GAUGE_INCH }),
  // Both gauges go by the same ounces; they differ in the weight that an inch is taken to have.
  compareTable({
    csv: 'gauges-us-standard',
    table: manufacturersStandardGauge,
    key: GAUGE,
    columns: { oz_per_ft2: 'ouncesPerSqFt' },
  }),
  compareTable({ csv: 'gauges-galvanized', table: galvanizedGauge, ...GAUGE_INCH }),
  compareTable({ csv: 'gauges-awg', table: brownSharpeGauge, ...GAUGE_INCH }),
  compareTable({ csv: 'gauges-bwg', table: birminghamGauge, ...GAUGE_INCH }),
  compareTable({
    csv: 'british-gauge-16',
    table: britishStandardWireGauge,
    lines: ({ system = '', mm = '' }) => [{ system, gauge: '16', mm }],
    rows: ({ gauge, inch }) => [{ system: 'SWG', gauge, mm: inch * 25.4 }],
    key: { system: 'system', gauge: 'gauge' },
    columns: { mm: 'mm' },
    missing: [{ of: ({ system }) => system === 'BG', reason: 'the product has no Birmingham sheet gauge' }],
    surplus: [{ of: ({ gauge }) => gauge !== 16, reason: 'only gauge 16 was read; the others are from memory' }],
  }),
  compareTable({
    csv: 'stainless-gauges',
    table: stainlessStockedGauge,
    key: GAUGE,
    columns: { stock_in: 'inch', other_stock_in: 'secondInch' },
  }),
  compareTable({ csv: 'aluminium-stock', table: aluminiumStockedGauge, ...GAUGE_INCH }),
  compareTable({ csv: 'copper-ounces', table: copperOunces, key: { oz: 'ouncesPerSqFt' }, columns: { in: 'inch' } }),
  compareTable({
    csv: 'preferred-metric',
    table: preferredMetric,
    rows: ({ series, thicknessesMm }) => thicknessesMm.map((mm) => ({ series, mm })),
    key: { series: 'series', mm: 'mm' },
    columns: {},
    words: {
      'ASME_B32.3M_first_choice': 'ASME B32.3M first choice',
      'ASME_B32.3M_second_choice': 'ASME B32.3M second choice',
      european_stock_steel: 'European stock, steel',
      european_stock_aluminium: 'European stock, aluminium',
    },
  }),
];

const millTolerances = [
  compareTable({
    csv: 'mill-us-steel',
    table: usColdRolledTolerance,
    key: GAUGE,
    columns: { cr_tol_in: 'plusMinusInch', cr_nom_in: 'inch' },
  }),
  compareTable({
    csv: 'mill-us-steel',
    table: usGalvanizedTolerance,
    key: GAUGE,
    columns: { galv_tol_in: 'plusMinusInch', galv_nom_in: 'inch' },
  }),
  compareTable({
    csv: 'mill-us-steel',
    table: usHotRolledTolerance,
    key: GAUGE,
    columns: { hr_tol_in: 'plusMinusInch' },
  }),
  // The thickness of hot-rolled gauges is that of uncoated steel.
  compareTable({ csv: 'gauges-steel', table: usHotRolledTolerance, of: isGauge(4, 18), ...GAUGE_INCH }),
  compareTable({ csv: 'en-10131', table: en10131, key: OVER_TO, columns: BY_WIDTH }),
  compareTable({
    csv: 'en-10131',
    table: en10131Special,
    key: OVER_TO,
    columns: { special_to_1200: 'narrowMm', special_to_1500: 'mediumMm', special_over_1500: 'wideMm' },
  }),
  compareTable({ csv: 'en-10131-yield-260-340', table: en10131HigherYield, key: OVER_TO, columns: BY_WIDTH }),
  compareTable({ csv: 'en-10143', table: en10143, key: OVER_TO, columns: BY_WIDTH }),
  compareTable({
    csv: 'en-10051',
    table: en10051,
    key: OVER_TO,
    columns: { en10111_to_1200: 'narrowMm', en10111_to_1500: 'mediumMm' },
  }),
  compareTable({
    csv: 'en-10051',
    table: en10051CategoryA,
    key: OVER_TO,
    columns: { cat_a_to_1200: 'narrowMm', cat_a_to_1500: 'mediumMm' },
  }),
  compareTable({
    csv: 'en-10259',
    table: en10259,
    key: { t_from_mm: 'lowMm', t_below_mm: 'highMm' },
    columns: { w_below_1000: 'narrowMm', w_below_1300: 'mediumMm', w_below_2100: 'wideMm' },
  }),
  compareTable({
    csv: 'a480m',
    table: astmA480m,
    key: { t_mm: 'thicknessMm' },
    columns: { w_to_1000: 'narrowMm', w_to_1300: 'mediumMm', w_to_2100: 'wideMm' },
  }),
  compareTable({
    csv: 'a480-inch',
    table: astmA480Inch,
    key: { t_over_in: 'lowInch' },
    columns: { t_to_in: 'highInch', tol_in: ['narrowInch', 'mediumInch', 'wideInch'] },
    except: { '0.145 t_to_in': 'sheet ends below 3/16 in, where plate begins' },
  }),
  compareTable({
    csv: 'en-485-4',
    table: en485Group1,
    key: OVER_TO,
    columns: { i_to_1000: 'narrowMm', i_to_1250: 'mediumMm', i_to_1600: 'wideMm' },
  }),
  compareTable({
    csv: 'en-485-4',
    table: en485Group2,
    key: OVER_TO,
    columns: { ii_to_1000: 'narrowMm', ii_to_1250: 'mediumMm', ii_to_1600: 'wideMm' },
  }),
  compareTable({
    csv: 'b209',
    table: astmB209,
    key: { t_from_in: 'lowInch', t_to_in: 'highInch' },
    columns: { w_36: 'narrowInch', w_48: 'mediumInch' },
  }),
];

export const thicknessCompared = [...gauges, ...millTolerances];
