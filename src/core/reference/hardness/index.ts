import type { Table } from '../../model/table.ts';
import { aluminiumHardness } from './aluminium.ts';
import { aluminiumDataSheets } from './aluminium-data-sheets.ts';
import { austeniticBorrowed } from './austenitic-borrowed.ts';
import { austeniticRockwellB } from './austenitic-rockwell-b.ts';
import { cartridgeBrass } from './cartridge-brass.ts';
import { copperTempers } from './copper-tempers.ts';
import { rockwellBThickness } from './rockwell-b-thickness.ts';
import { scatterContributions } from './scatter-contributions.ts';
import { scatterWorking } from './scatter-working.ts';
import { steelBrinellLed } from './steel-brinell-led.ts';
import { steelIso18265 } from './steel-iso-18265.ts';
import { steelRockwellB } from './steel-rockwell-b.ts';
import { steelRockwellC } from './steel-rockwell-c.ts';

/** Every table about hardness, for the page of sources and for the checks that all tables share. */
export const hardnessTables: readonly Table<unknown>[] = [
  steelRockwellB,
  steelRockwellC,
  steelBrinellLed,
  steelIso18265,
  austeniticRockwellB,
  austeniticBorrowed,
  aluminiumHardness,
  aluminiumDataSheets,
  cartridgeBrass,
  copperTempers,
  rockwellBThickness,
  scatterContributions,
  scatterWorking,
];
