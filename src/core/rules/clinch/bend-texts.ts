import type { Text } from '../../model/finding.ts';
import { SOME_TEXTS } from '../each-candidate.ts';
import type { Example } from '../rule.ts';
import { NO_THICKNESS } from '../texts.ts';
import { LENGTH_NOT_READ, LENGTH_NOT_READ_EXAMPLES } from '../unread-length.ts';

const TAKEN =
  'Taken as hole centre to the outside face of a right-angled flange, with an inside radius of one sheet thickness.';

/** What the bend rule says. The list tells neither from where a distance is measured nor the radius: each text says what was taken. */
export const BEND_TEXTS: Readonly<Record<string, Text>> = {
  ...LENGTH_NOT_READ('bend distance'),
  'some-may': SOME_TEXTS['some-may'],
  clear: {
    brief: 'Bend {bendMm}, strictest rule {bendMostMm:unit}',
    full: `Bend at {bendMm}: clear by all sources, the widest of which, with {room}, asks {bendMostMm:unit}. ${TAKEN}`,
  },
  between: {
    brief: 'Bend {bendMm}, needs {bendMinMm:unit}',
    full: `Bend at {bendMm}, needs {bendMinMm:unit} here. Sources ask 1.5 to 3 sheet thicknesses beyond the tangent: 1.5 is {bendLeastMm}, 3 with {room} {bendMostMm:unit}. ${TAKEN}`,
  },
  near: {
    brief: 'Bend {bendMm}, needs {bendMinMm:unit}',
    full: `Bend at {bendMm}, needs {bendMinMm:unit}: the hole may be drawn oval. Sources ask 1.5 to 3 sheet thicknesses beyond the tangent: 1.5 is {bendLeastMm}, 3 with {room} {bendMostMm:unit}. ${TAKEN} The drawing's bend radius, or a trial piece, would settle this.`,
  },
  flange: {
    brief: 'Flange reaches into the bend',
    full: `Bend at {bendMm}, needs {bendMinMm:unit}: half the flange reaches over the tangent, where the sheet is not flat. ${TAKEN} The drawing's bend radius, or a trial piece, would settle this.`,
  },
  inside: {
    brief: 'Hole reaches {insideMm:unit} into the bend',
    full: `Bend at {bendMm}, needs {bendMinMm:unit}: the hole reaches {insideMm:unit} into the bend. Move the hole or the bend. ${TAKEN}`,
  },
  'no-flange': {
    brief: 'No flange in the catalogue',
    full: 'The catalogue gives no flange for {partNumber}: whether it clears the bend at {bendMm:unit} depends on its diameter, which would settle this.',
  },
  'no-hole': {
    brief: 'Hole beside the bend unknown',
    full: 'Neither the list nor the catalogue gives the hole of {partNumber}: its diameter would settle how near the bend is.',
  },
  'no-thickness': NO_THICKNESS,
};

/** Rows for the page of the rule. */
export const BEND_EXAMPLES: readonly Example[] = [
  { cells: { bend: '20' }, outcome: 'holds', says: 'clear' },
  { cells: { bend: '10' }, outcome: 'holds', says: 'between' },
  { cells: { bend: '8.5' }, outcome: 'marginal', says: 'near' },
  { cells: { bend: '10' }, shop: { bendMultiplier: 3 }, outcome: 'marginal', says: 'near' },
  { cells: { bend: '5', thickness: '0.5' }, part: { flangeMm: 9 }, outcome: 'marginal', says: 'flange' },
  { cells: { bend: '5' }, outcome: 'fails', says: 'inside' },
  { cells: { bend: '5.9', thickness: '16 ga', material: 'STEEL' }, outcome: 'unknown', says: 'some-may' },
  { cells: { bend: '10' }, part: { flangeMm: null }, outcome: 'unknown', says: 'no-flange' },
  { cells: { bend: '10', hole: '' }, part: { holeMm: null }, outcome: 'unknown', says: 'no-hole' },
  { cells: { bend: '10', thickness: '' }, outcome: 'unknown', says: 'no-thickness' },
  ...LENGTH_NOT_READ_EXAMPLES('bend', '900 in'),
];
