import type { Column, Role } from '../model/list.ts';
import type { RawRow } from '../model/raw.ts';
import { foldText } from './heading-text.ts';
import {
  EXAMPLE_START,
  GROUP_START,
  LOOSE_HARDWARE,
  NOTE_START,
  OPEN_WORDS,
  OTHER_PARTS,
  type OtherThing,
  PRESS_IN_WORDS,
  TOTAL,
} from './row-words.ts';
import { findThreads } from './thread-words.ts';

/**
 * What a row under the headings is when it is no part of the list whatever the catalogue says: "heading", "total",
 * "section", "note", "example", "empty row". Null for a row to be judged; in doubt null.
 */
export function findOther(row: RawRow, columns: readonly Column[]): string | null {
  const filled = filledCells(row, columns);
  if (isRepeatedHeading(filled)) return 'heading';
  if (isTotal(filled)) return 'total';
  if (EXAMPLE_START.test(filled[0]?.text ?? '')) return 'example';
  if (!hasSubstance(filled)) return has(filled, 'quantity') || has(filled, 'price') ? 'total' : 'empty row';
  if (isNote(filled)) return 'note';
  return isSection(filled) ? 'section' : null;
}

/**
 * What the words of a row say it is, when that is clearly no press-in fastener: "panel", "screw". Null for press-in
 * fasteners, for words that could be either ("nut", "stud", "insert") and for a part beside a thread ("M4, front panel").
 */
export function seemsToBe(partNumber: string, description: string): string | null {
  const text = `${description} ; ${partNumber.replace(/[-_./]+/g, ' ')}`.normalize('NFKC');
  if (PRESS_IN_WORDS.test(text) || PRESS_IN_WORDS.test(partNumber)) return null;
  const loose = takeThings(text, LOOSE_HARDWARE);
  const parts = takeThings(loose.rest, OTHER_PARTS);
  if (OPEN_WORDS.test(parts.rest)) return null;
  if (loose.what) return loose.what;
  return findThreads(text).length > 0 ? null : parts.what;
}

/** The first thing that the text names, and the text without any of them: a "hex nut" leaves no "nut" behind. */
function takeThings(text: string, things: readonly OtherThing[]): { what: string | null; rest: string } {
  let rest = text;
  let what: string | null = null;
  for (const thing of things) {
    const without = rest.replace(thing.pattern, ' ');
    if (without !== rest) what ??= thing.what;
    rest = without;
  }
  return { what, rest };
}

interface FilledCell {
  readonly text: string;
  readonly role: Role;
  readonly heading: string;
}

const PLACEHOLDER = /^(?:[-‐-―−.]*|n\/?a)$/i;

function filledCells({ cells, flags }: RawRow, columns: readonly Column[]): readonly FilledCell[] {
  return cells.flatMap((cell, index) => {
    const text = cell.replace(/\s+/g, ' ').trim();
    if (PLACEHOLDER.test(text) || flags?.[index] === 'merged') return [];
    const column = columns[index];
    return [{ text, role: column?.role ?? 'other', heading: column?.heading ?? '' }];
  });
}

function has(filled: readonly FilledCell[], role: Role): boolean {
  return filled.some((cell) => cell.role === role && !/^0+(?:[.,]0+)?$/.test(cell.text));
}

function textOf(filled: readonly FilledCell[], role: Role): string {
  return filled.find((cell) => cell.role === role)?.text ?? '';
}

function isRepeatedHeading(filled: readonly FilledCell[]): boolean {
  const same = filled.filter(({ text, heading }) => heading !== '' && foldText(text) === foldText(heading)).length;
  return same > 0 && same * 2 >= filled.length && (same >= 2 || filled.length === 1);
}

/** A label of a sum in any column, on a row that names no part beside it. */
function isTotal(filled: readonly FilledCell[]): boolean {
  const label = filled.find(({ text }) => TOTAL.test(text));
  if (!label) return false;
  const part = textOf(filled, 'partNumber');
  const description = textOf(filled, 'description');
  return TOTAL.test(part) || (part === '' && (description === '' || TOTAL.test(description)));
}

/** Columns that are often filled down over rows with nothing in them. */
const FILLED_DOWN: ReadonlySet<Role> = new Set(['level', 'unit', 'price', 'stock', 'index', 'quantity']);

/** Of those, columns at the left edge in which titles and remarks are often written. */
const AT_THE_EDGE: ReadonlySet<Role> = new Set(['level', 'index', 'quantity']);

function hasSubstance(filled: readonly FilledCell[]): boolean {
  if (has(filled, 'index') && has(filled, 'quantity')) return true;
  return filled.some(({ role, text }) => {
    if (FILLED_DOWN.has(role)) return AT_THE_EDGE.has(role) && isWords(text);
    return role !== 'other' || /\p{L}/u.test(text);
  });
}

function isWords(text: string): boolean {
  return /\p{L}{3}/u.test(text) || /^[*†‡(]/.test(text);
}

const FACTS: readonly Role[] = ['quantity', 'material', 'thickness', 'hole', 'thread'];

/** A sentence on its own: it says nothing in the columns of facts and has no part number beside it. */
function isNote(filled: readonly FilledCell[]): boolean {
  const longest = filled.reduce((a, b) => (b.text.length > a.text.length ? b : a));
  const others = filled.filter((cell) => cell !== longest);
  if (others.some(({ role }) => role === 'partNumber' || FACTS.includes(role))) return false;
  if (filled.length > 3) return false;
  const wordCount = longest.text.split(' ').length;
  if (filled.length <= 2 && NOTE_START.test(filled[0]?.text ?? '')) return true;
  const isLone = others.length === 0 || longest.role !== 'description';
  return isLone && (wordCount >= 7 || (wordCount >= 4 && /[^.]\.$/.test(longest.text)));
}

/** One text on its own, with at most its number in the tree before it. A part number or words of a fastener keep the row. */
function isSection(filled: readonly FilledCell[]): boolean {
  const [only, ...more] = filled.filter(({ role, text }) => (role !== 'index' && role !== 'level') || isWords(text));
  if (!only || more.length > 0 || !/\p{L}{2}/u.test(only.text)) return false;
  const hasDigit = /\d/.test(only.text);
  if (only.role === 'partNumber' && hasDigit && !GROUP_START.test(only.text)) return false;
  if (only.role !== 'description' && !hasDigit) return true;
  return !PRESS_IN_WORDS.test(only.text) && !OPEN_WORDS.test(only.text) && findThreads(only.text).length === 0;
}

/** Whether a word of `seemsToBe` names threaded or driven hardware rather than a sheet part or the like. */
export function isLooseHardware(what: string): boolean {
  return LOOSE_HARDWARE.some((thing) => thing.what === what);
}
