import type { Table } from '../../model/table.ts';
import { generalTolerance } from './general-tolerance.ts';
import { iso286Grades } from './iso286.ts';
import { iso9013Class1 } from './iso9013.ts';
import { letterDrills } from './letter-drills.ts';
import { numberDrills } from './number-drills.ts';
import { punchingLimits } from './punching.ts';

/** Every table about holes and drills, for the page of sources and for the checks that all tables share. */
export const holeTables: readonly Table<unknown>[] = [
  numberDrills,
  letterDrills,
  iso286Grades,
  generalTolerance,
  iso9013Class1,
  punchingLimits,
];
