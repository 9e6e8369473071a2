import type { SheetFamily } from '../model/sheet.ts';
import type { Table } from '../model/table.ts';
import type { NamedGauge } from '../model/thickness.ts';
import { aluminiumStockedGauge } from '../reference/thickness/aluminium-stocked-gauge.ts';
import { birminghamGauge } from '../reference/thickness/birmingham-gauge.ts';
import { britishStandardWireGauge } from '../reference/thickness/british-standard-wire-gauge.ts';
import { brownSharpeGauge } from '../reference/thickness/brown-sharpe-gauge.ts';
import { galvanizedGauge } from '../reference/thickness/galvanized-gauge.ts';
import { manufacturersStandardGauge } from '../reference/thickness/manufacturers-standard-gauge.ts';
import type { GaugeRow } from '../reference/thickness/row-types.ts';
import { stainlessStockedGauge } from '../reference/thickness/stainless-stocked-gauge.ts';
import { usStandardGauge } from '../reference/thickness/us-standard-gauge.ts';

type Tables = readonly Table<GaugeRow>[];

// Stainless: the stocked decimals come first because they are thinner, and a minimum is judged by the thinner.
const STAINLESS: Tables = [stainlessStockedGauge, usStandardGauge];

const BY_FAMILY: Readonly<Record<SheetFamily, Tables>> = {
  'carbon-steel': [manufacturersStandardGauge],
  'galvanized-steel': [galvanizedGauge],
  'galvannealed-steel': [galvanizedGauge],
  'stainless-austenitic': STAINLESS,
  'stainless-ferritic': STAINLESS,
  'stainless-martensitic': STAINLESS,
  aluminium: [brownSharpeGauge, aluminiumStockedGauge],
  copper: [brownSharpeGauge],
  brass: [brownSharpeGauge],
  bronze: [brownSharpeGauge],
  titanium: [],
};

/** Gauge tables in use for a metal, the one to judge by first; none for titanium. Electro-galvanized sheet goes by `carbon-steel`. */
export function gaugeTablesOf(family: SheetFamily): Tables {
  return BY_FAMILY[family];
}

const BY_NAME: Readonly<Record<NamedGauge, Tables>> = {
  msg: [manufacturersStandardGauge],
  galvanized: [galvanizedGauge],
  'us-standard': [usStandardGauge],
  'brown-sharpe': [brownSharpeGauge],
  birmingham: [birminghamGauge],
  swg: [britishStandardWireGauge],
  // Met now and then, but no table of them was read: such a cell stays a question.
  'birmingham-sheet': [],
  zinc: [],
};

/** The table of a gauge system that the list names itself; empty where we have none. */
export function gaugeTablesNamed(name: NamedGauge): Tables {
  return BY_NAME[name];
}
