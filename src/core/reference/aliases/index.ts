import type { Table } from '../../model/table.ts';
import { aluminiumNames } from './aluminium.ts';
import { carbonSteelNames } from './carbon-steel.ts';
import { coatedSteelNames } from './coated-steel.ts';
import type { Designation } from './designation.ts';
import { otherMetalNames } from './other-metals.ts';
import { stainlessNames } from './stainless.ts';

/** Every table of names of sheet alloys. */
export const aliasTables: readonly Table<Designation>[] = [
  carbonSteelNames,
  coatedSteelNames,
  stainlessNames,
  aluminiumNames,
  otherMetalNames,
];
