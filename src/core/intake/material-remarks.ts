import type { MaterialReading } from '../model/sheet.ts';
import { findAlloy } from '../reference/alloys/index.ts';
import type { MaterialGroup } from './material-groups.ts';
import type { MaterialToken } from './material-tokens.ts';

/** Why a cell, or a part of it, was not read. */
export const UNREAD = {
  date: 'A date stands here, perhaps made by a spreadsheet from a name such as 18-8 or a temper such as 1/4',
  unlisted: (words: string, cell: string): string =>
    /^A[24]\b/i.test(words.slice(1)) || /\bA[24]\b/i.test(cell)
      ? 'A2 and A4 are names for stainless fasteners, and A2 is a tool steel too: ask for the grade of the sheet'
      : `No sheet hardness is held for ${words}`,
  coating: (words: string): string => `${words} is a coating: which steel is under it?`,
  words: (words: string): string => `Not understood: ${words}`,
  temper: (code: string): string => `No hardness is held for this alloy in temper ${TEMPER_NAMES[code] ?? code}`,
} as const;

const TEMPER_NAMES: Readonly<Record<string, string>> = {
  O: 'O (annealed)',
  H: 'full hard',
  SH: 'spring hard',
  HT: 'hardened',
  CW: 'cold worked',
  EH: 'extra hard',
};

/** What is worth telling about a cell that was understood. */
export function remarksOn(
  groups: readonly MaterialGroup[],
  tokens: readonly MaterialToken[],
  candidates: readonly string[],
  how: MaterialReading['how'],
): readonly string[] {
  const own = groups.flatMap((group) => (group.kind === 'alloy' ? group.alloy.remark : group.metal.remark) ?? []);
  const [only] = how === 'condition-assumed' ? candidates : [];
  const entry = only === undefined ? undefined : findAlloy(only);
  const lacking = groups.some(({ tempers }) => tempers.length > 0) ? 'alloy' : 'condition';
  const assumed = entry ? [`No ${lacking} is written: judged by ${entry.standard}, ${entry.temper}`] : [];
  const clad = tokens.some(({ kind }) => kind === 'clad')
    ? ['The clad skin is softer than the core, and a pressed-in part displaces the skin first']
    : [];
  const several =
    groups.length > 1 && candidates.length > 1 ? ['More than one metal is written: judged against each'] : [];
  return [...several, ...own, ...clad, ...assumed];
}
