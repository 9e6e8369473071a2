import { rememberText } from '../caching/remember.ts';
import type { Role } from '../model/list.ts';
import type { HeadingReading } from './headings.ts';
import { OPEN_WORDS, PRESS_IN_WORDS } from './row-words.ts';
import { seemsToBe } from './rows.ts';

/**
 * The role of a column after a look at its cells: "Item" may head numbers, part numbers or names, "Material" may head item
 * names or stock numbers, "Units" may head counts or words. A heading that settles it, or an empty column, keeps its role.
 */
export function fitRole(found: HeadingReading | null, heading: string, texts: () => readonly string[]): Role {
  const fitter = found && (found.sure ? FITTERS_OF_SURE : FITTERS)[found.role];
  if (!fitter && (found || heading.trim() !== '')) return found?.role ?? 'other';
  const filled = texts().filter((text) => text.trim() !== '');
  if (filled.length === 0) return found?.role ?? 'other';
  if (!found) return most(filled, isDotted) ? 'index' : 'other';
  return fitter?.(filled, found.words) ?? found.role;
}

/** Looks of a column's cells that change its role; undefined leaves it. Takes the heading's plain words. */
type Fitter = (texts: readonly string[], words: string) => Role | undefined;

const FITTERS: Partial<Record<Role, Fitter>> = {
  index: (texts) => (most(texts, isPosition) ? undefined : most(texts, isCode) ? 'partNumber' : 'description'),
  partNumber: (texts, words) => {
    if (/^(?:no|item no)$/.test(words) && most(texts, isPosition)) return 'index';
    if (words === 'reference' && most(texts, isDesignator)) return 'other';
    return GENERAL.test(words) && !most(texts, isCode) ? 'description' : undefined;
  },
  description: (texts) => (most(texts, isItemName) ? undefined : 'material'),
  quantity: (texts) => (most(texts, isNumberLike) ? undefined : most(texts, isWord) ? 'unit' : undefined),
  thickness: (texts) => (most(texts, isThickness) ? undefined : 'other'),
  material: (texts) => {
    if (most(texts, isSize)) return 'thickness';
    if (most(texts, isPosition)) return 'other';
    return most(texts, isItemName) ? 'description' : undefined;
  },
};

/** Even a plain "Material" heads item names or stock numbers on some lists, and a plain "Unit" counts. */
const FITTERS_OF_SURE: Partial<Record<Role, Fitter>> = {
  description: (texts, words) => (words === 'name' && most(texts, isCount) ? 'quantity' : undefined),
  material: (texts) => {
    if (most(texts, isStockNumber)) return 'partNumber';
    return most(texts, isItemName) ? 'description' : undefined;
  },
  thickness: (texts) => (most(texts, isThickness) ? undefined : 'other'),
  unit: (texts) => (most(texts, isNumberLike) ? 'quantity' : undefined),
};

/** Headings that may stand over part numbers or over names. */
const GENERAL =
  /^(?:(?:(?:clinch|press in|self clinching) )?(?:part|item|article|reference|fastener|nut|stud|standoff|insert|screw|pin|spacer)|component|model|code)$/;

/** More than half of the texts; looks no further than to where that is settled, and at each text once. */
function most(texts: readonly string[], test: (text: string) => boolean): boolean {
  const passes = rememberText((text) => test(text.trim()));
  let passed = 0;
  for (const [at, text] of texts.entries()) {
    if (passes(text)) passed += 1;
    if (passed * 2 > texts.length) return true;
    if ((passed + texts.length - at - 1) * 2 <= texts.length) return false;
  }
  return false;
}

const isPosition = (text: string) => /^\(?\d{1,4}(?:\.\d{1,3})*[.)]?$|^[A-Z]$/i.test(text);
const isDotted = (text: string) => /^\d{1,3}(?:\.\d{1,3})*\.?$/.test(text);
const isSize = (text: string) => /^\d*[.,]\d+ ?(?:mm|in|")?$|^\d+ ?(?:mm|ga)\.?$/i.test(text);
/** Anything with a digit may be a thickness; words are none. Signs for "not given" do not count against it. */
const isThickness = (text: string) => /\d/.test(text) || !/\p{L}{2}/u.test(text);
const isCount = (text: string) => /^\d{1,5}$/.test(text);
/** Stock numbers are long; alloys such as 316 or 5052 are not. */
const isStockNumber = (text: string) => /^\d{6,18}$/.test(text);
/** "C12", "J3": a place on a drawing or a circuit board. */
const isDesignator = (text: string) => /^\p{Lu}{1,2}\d{1,3}(?:[,;] ?\p{Lu}{1,2}\d{1,3})*$/u.test(text);
const isNumberLike = (text: string) => /^[x~]?\s*\d/i.test(text);
const isWord = (text: string) => /^\p{L}{1,8}\.?$/u.test(text);
/** A part number: one piece with a digit, or few pieces of which the first is joined by dashes. */
const isCode = (text: string) =>
  /\d/.test(text) && (!/\s/.test(text) || /^\S+[-_./]\S+(?: \S+){0,2}$/.test(text)) && text.length <= 40;

/** "Screw M4x10", "Front cover", "Clinch nut": a thing, not a metal. "Steel sheet" is a metal all the same. */
function isItemName(text: string): boolean {
  const thing = seemsToBe('', text);
  if (thing) return !METAL_FORMS.has(thing);
  return PRESS_IN_WORDS.test(text) || OPEN_WORDS.test(text);
}

const METAL_FORMS: ReadonlySet<string> = new Set(['sheet', 'plate', 'profile', 'panel', 'spring', 'adhesive']);
