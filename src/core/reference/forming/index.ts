import type { Table } from '../../model/table.ts';
import { bendClearanceRules } from './bend-clearance.ts';
import { bendRadii } from './bend-radii.ts';
import { bendRadiusSteel } from './bend-radius-steel.ts';
import { holeSpacingRules } from './hole-spacing.ts';

/** Every table about forming, for the page of sources and for the checks that all tables share. */
export const formingTables: readonly Table<unknown>[] = [
  bendClearanceRules,
  holeSpacingRules,
  bendRadii,
  bendRadiusSteel,
];
