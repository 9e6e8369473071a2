import type { Table } from '../../model/table.ts';
import { aluminiumStockedGauge } from './aluminium-stocked-gauge.ts';
import { astmA480Inch } from './astm-a480-inch.ts';
import { astmA480m } from './astm-a480m.ts';
import { astmB209 } from './astm-b209.ts';
import { birminghamGauge } from './birmingham-gauge.ts';
import { britishStandardWireGauge } from './british-standard-wire-gauge.ts';
import { brownSharpeGauge } from './brown-sharpe-gauge.ts';
import { copperOunces } from './copper-ounces.ts';
import { en485Group1 } from './en-485-4-group-1.ts';
import { en485Group2 } from './en-485-4-group-2.ts';
import { en485Groups } from './en-485-4-groups.ts';
import { en10051 } from './en-10051.ts';
import { en10051CategoryA } from './en-10051-category-a.ts';
import { en10131 } from './en-10131.ts';
import { en10131HigherYield } from './en-10131-higher-yield.ts';
import { en10131Special } from './en-10131-special.ts';
import { en10143 } from './en-10143.ts';
import { en10259 } from './en-10259.ts';
import { galvanizedGauge } from './galvanized-gauge.ts';
import { manufacturersStandardGauge } from './manufacturers-standard-gauge.ts';
import { preferredMetric } from './preferred-metric.ts';
import { stainlessStockedGauge } from './stainless-stocked-gauge.ts';
import { usColdRolledTolerance } from './us-cold-rolled-tolerance.ts';
import { usGalvanizedTolerance } from './us-galvanized-tolerance.ts';
import { usHotRolledTolerance } from './us-hot-rolled-tolerance.ts';
import { usStandardGauge } from './us-standard-gauge.ts';

/** Every table about sheet thickness: gauges, preferred sizes, mill tolerances. */
export const thicknessTables = [
  aluminiumStockedGauge,
  astmA480Inch,
  astmA480m,
  astmB209,
  birminghamGauge,
  britishStandardWireGauge,
  brownSharpeGauge,
  copperOunces,
  en10051CategoryA,
  en10051,
  en10131HigherYield,
  en10131Special,
  en10131,
  en10143,
  en10259,
  en485Group1,
  en485Group2,
  en485Groups,
  galvanizedGauge,
  manufacturersStandardGauge,
  preferredMetric,
  stainlessStockedGauge,
  usColdRolledTolerance,
  usGalvanizedTolerance,
  usHotRolledTolerance,
  usStandardGauge,
] as const satisfies readonly Table<unknown>[];
