import type { Role } from '../model/list.ts';
import { foldText } from './heading-text.ts';
import { OPEN_WORDS, PRESS_IN_WORDS } from './row-words.ts';
import { seemsToBe } from './rows.ts';

/**
 * The role of a column after a look at its cells: "Item" may head numbers, part numbers or names, "Material" may head item
 * names, "Units" may head counts or words. A heading that settles it, or an empty column, keeps its role.
 */
export function fitRole(found: { role: Role; sure: boolean } | null, heading: string, texts: readonly string[]): Role {
  const filled = texts.filter((text) => text.trim() !== '');
  if (filled.length === 0) return found?.role ?? 'other';
  if (!found) return heading.trim() === '' && most(filled, isDotted) ? 'index' : 'other';
  const fitter = (found.sure ? FITTERS_OF_SURE : FITTERS)[found.role];
  return fitter?.(filled, foldText(heading)) ?? found.role;
}

/** Looks of a column's cells that change its role; undefined leaves it. */
type Fitter = (texts: readonly string[], heading: string) => Role | undefined;

const FITTERS: Partial<Record<Role, Fitter>> = {
  index: (texts) => (most(texts, isPosition) ? undefined : most(texts, isCode) ? 'partNumber' : 'description'),
  partNumber: (texts, heading) => {
    if (/^(?:no|number|#|item no\.?)$/.test(heading) && most(texts, isPosition)) return 'index';
    return GENERAL.test(heading) && !most(texts, isCode) ? 'description' : undefined;
  },
  quantity: (texts) => (most(texts, isNumberLike) ? undefined : most(texts, isWord) ? 'unit' : undefined),
  material: (texts) => {
    if (most(texts, isSize)) return 'thickness';
    if (most(texts, isPosition)) return 'other';
    return most(texts, isItemName) ? 'description' : undefined;
  },
};

/** Even a plain "Material" heads item names on some lists, and a plain "Unit" counts. */
const FITTERS_OF_SURE: Partial<Record<Role, Fitter>> = {
  material: (texts) => (most(texts, isItemName) ? 'description' : undefined),
  unit: (texts) => (most(texts, isNumberLike) ? 'quantity' : undefined),
};

/** Headings that may stand over part numbers or over names. */
const GENERAL =
  /^(?:part|parts|item|fasteners?|hardware|nuts?|studs?|standoffs?|inserts?|screws?|component|model|code)$/;

function most(texts: readonly string[], test: (text: string) => boolean): boolean {
  return texts.filter((text) => test(text.trim())).length * 2 > texts.length;
}

const isPosition = (text: string) => /^\(?\d{1,4}(?:\.\d{1,3})*[.)]?$|^[A-Z]$/i.test(text);
const isDotted = (text: string) => /^\d{1,3}(?:\.\d{1,3})*\.?$/.test(text);
const isSize = (text: string) => /^\d*[.,]\d+ ?(?:mm|in|")?$|^\d+ ?(?:mm|ga)\.?$/i.test(text);
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
