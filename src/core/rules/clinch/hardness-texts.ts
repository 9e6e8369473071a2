import type { Text } from '../../model/finding.ts';
import { SOME_TEXTS } from '../each-candidate.ts';
import { NO_SHEET_METAL } from '../texts.ts';

/** How the sheet is described: with its maximum; `-typical` where no maximum is published; `-soft` where it is too soft for the scale. */
const SHEET = '{sheet} {sheetHrbTypical} typical ({typicalGiven}) to {sheetHrbMax} at most ({maxGiven}) on Rockwell B';
const SHEET_TYPICAL = '{sheet} {sheetHrbTypical} typical ({typicalGiven}) on Rockwell B, no maximum published';
const SHEET_SOFT = '{sheet} below {sheetHrbTypical} ({typicalGiven}), the foot of its Rockwell B scale';
const RANGE = '{marginWorst} to {marginTypical}';
const RANGE_TYPICAL = '{marginTypical}';
const RANGE_SOFT = 'more than {marginTypical}';

/** The margin between fastener and sheet. */
function marginTexts(sheet: string, range: string) {
  const numbers = `fastener at least {fastenerHrb} ({fastenerGiven}), ${sheet}; margin ${range} points, {needed} needed, scatter {scatter}. {remark}`;
  return {
    holds: { brief: `Margin ${range}`, full: `The sheet is soft enough: ${numbers}` },
    marginal: {
      brief: `Margin ${range}, {needed} needed`,
      full: `The sheet may be too hard: ${numbers}A mill certificate with the hardness of the sheet would settle this{how}.`,
    },
    forbidden: {
      brief: `Forbidden by practice; margin ${range}`,
      full: `By the numbers alone the pair might do, but practice forbids it: ${numbers}Another fastener metal would cure it.`,
    },
    fails: {
      brief: 'Fastener only {marginTypical} points harder, {needed} needed',
      full: `The sheet is too hard: ${numbers}A harder fastener or a softer sheet would cure it.`,
    },
    softer: {
      brief: 'Fastener softer than the sheet',
      full: `The fastener is softer than the sheet: ${numbers}A harder fastener or a softer sheet would cure it.`,
    },
    assumed: {
      brief: `Hardness assumed; margin ${range}`,
      full: `By an assumed hardness the sheet would be too hard: ${numbers}Ask the maker for the hardness of the fastener or its sheet limit.`,
    },
  };
}

/** A limit that the catalogue states. */
function limitTexts(sheet: string) {
  const numbers = `the catalogue allows {limitGiven}; ${sheet}. {remark}`;
  return {
    'limit-holds': {
      brief: 'Within the catalogue limit {limitGiven}',
      full: `The sheet is within the limit: ${numbers}`,
    },
    'limit-marginal': {
      brief: 'Sheet may exceed {limitGiven}',
      full: `The sheet may be harder than the limit: ${numbers}Ask for the mill certificate{how}.`,
    },
    'limit-forbidden': {
      brief: 'Forbidden by practice; limit {limitGiven}',
      full: `By the catalogue limit alone the pair might do, but practice forbids it: ${numbers}Another fastener metal would cure it.`,
    },
    'limit-fails': {
      brief: 'Sheet harder than {limitGiven}',
      full: `The sheet is harder than the limit: ${numbers}A softer sheet or a harder fastener would cure it.`,
    },
  };
}

/** The same texts under keys with an ending; of a sheet too soft for the scale only some can be said. */
function ending(end: string, texts: Record<string, Text>, keys = Object.keys(texts)): Record<string, Text> {
  return Object.fromEntries(keys.flatMap((key) => (texts[key] ? [[`${key}${end}`, texts[key]]] : [])));
}

/** Everything that the hardness check can say. */
export const hardnessTexts: Readonly<Record<string, Text>> = {
  ...SOME_TEXTS,
  'no-sheet': NO_SHEET_METAL,
  ...marginTexts(SHEET, RANGE),
  ...ending('-typical', marginTexts(SHEET_TYPICAL, RANGE_TYPICAL)),
  ...ending('-soft', marginTexts(SHEET_SOFT, RANGE_SOFT), ['holds', 'marginal']),
  ...limitTexts(SHEET),
  ...ending('-typical', limitTexts(SHEET_TYPICAL)),
  ...ending('-soft', limitTexts(SHEET_SOFT), ['limit-holds', 'limit-marginal']),
  'off-scale': {
    brief: 'No conversion for {sheet}',
    full: 'No published table puts {what} on one scale with the other side in {sheet}: a hardness in HRB or HRC would settle this.',
  },
  'no-fastener': {
    brief: 'Fastener hardness unknown',
    full: 'The catalogue gives neither a hardness nor a sheet limit nor a known material class for {partNumber}: any of them would settle this.',
  },
};
