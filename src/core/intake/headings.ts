import type { LengthUnit, Role } from '../model/list.ts';
import { ROLES } from '../model/list.ts';
import { translateHeading } from './heading-abroad.ts';
import { foldText, headingText } from './heading-text.ts';
import { HEADING_PATTERNS } from './heading-words.ts';
import { HEADINGS_ABROAD } from './heading-words-abroad.ts';

/** What a heading says its column holds. */
export interface HeadingReading {
  readonly role: Role;
  /** Length unit written in the heading: `Thk (in)`. */
  readonly unit: LengthUnit | null;
  /** The heading in plain English words, abbreviations written out. */
  readonly words: string;
  /** False where the cells below should have a say: `Item`, `Size`, `Part`. */
  readonly sure: boolean;
}

/** The role that a heading names; null for one that names none of ours, such as "Qty per pack" or "Status". */
export function findRole(heading: string): HeadingReading | null {
  if (heading.length > LONGEST_CELL) return null;
  const { words, spelt, unit } = headingText(heading);
  if (words === '' || words.length > LONGEST_HEADING || UNIT_PRICE.test(heading)) return null;
  const exact = EXACT.get(compact(heading));
  if (exact) return { role: exact, sure: true, words, unit };
  const wholly = ABROAD.get(compact(heading)) ?? ABROAD.get(compact(words));
  for (const english of [words, ...(wholly ? [] : translateHeading(spelt))]) {
    const known = HEADING_PATTERNS.find(({ pattern }) => pattern.test(english));
    if (known) return known.role && { role: known.role, sure: known.sure, words: english, unit };
  }
  return wholly ? { role: wholly, sure: true, words, unit } : null;
}

/** `EP` heads German unit prices; `Ép.` and `Ep` head French thicknesses. */
const UNIT_PRICE = /^\s*EP\s*$/;

/** Signs and blanks do not count as words, yet there are not that many of them. */
const LONGEST_CELL = 300;

/** A cell longer than this is a sentence, not a heading. */
const LONGEST_HEADING = 60;

/** Our own role names head our own exports, so they always work. */
const EXACT: ReadonlyMap<string, Role> = new Map(
  ROLES.filter((role) => role !== 'other' && role !== 'index').map((role) => [compact(role), role]),
);

const ABROAD: ReadonlyMap<string, Role> = new Map(
  Object.entries(HEADINGS_ABROAD).flatMap(([role, headings]) =>
    headings.split(',').map((heading) => [compact(heading), role as Role] as const),
  ),
);

function compact(text: string): string {
  return foldText(text)
    .replace(/[(（[](?:mm|in|st|kr)[)）\]]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, '');
}
