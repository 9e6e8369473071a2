import { rememberText } from '../caching/remember.ts';
import type { Column, Role } from '../model/list.ts';
import type { RawRow } from '../model/raw.ts';
import { foldText } from './heading-text.ts';
import { cutCell } from './long-cells.ts';
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
export type OtherFinder = (row: RawRow) => string | null;

/** Tells the other rows of a list with those columns; it keeps what it has seen in each column for as long as it lives. */
export function createOtherFinder(columns: readonly Column[]): OtherFinder {
  const cellsOf = createCellFinder(columns);
  const isPlainly = createPlainTest(columns);
  return (row) => {
    if (isPlainly(row)) return null;
    const filled = cellsOf(row);
    if (isRepeatedHeading(filled)) return 'heading';
    if (isTotal(filled)) return 'total';
    if (EXAMPLE_START.test(filled[0]?.text ?? '')) return 'example';
    if (!hasSubstance(filled)) return has(filled, 'quantity') || has(filled, 'price') ? 'total' : 'empty row';
    if (isNote(filled)) return 'note';
    return isSection(filled) ? 'section' : null;
  };
}

/** The same for one row by itself. */
export function findOther(row: RawRow, columns: readonly Column[]): string | null {
  return createOtherFinder(columns)(row);
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

/**
 * Whether a row is to be judged, seen at a glance: it names a part, and most of its cells begin like a word or number that is not their
 * heading. False leaves it to a closer look.
 */
function createPlainTest(columns: readonly Column[]): (row: RawRow) => boolean {
  const headings = columns.map(({ heading }) => foldText(heading).charCodeAt(0));
  const part = columns.find(({ role }) => role === 'partNumber')?.index ?? -1;
  const isLabel = rememberText((text) => TOTAL.test(cutCell(text).replace(/\s+/g, ' ').trim()));
  return ({ cells, flags }) => {
    if (flags) return false;
    let first = 0;
    let [filled, plain] = [0, 0];
    for (let index = 0; index < cells.length; index++) {
      const cell = cells[index] ?? '';
      if (cell === '') continue;
      filled += 1;
      const letter = plainLetter(cell);
      if (filled === 1) first = letter;
      if (letter !== 0 && letter !== headings[index]) plain += 1;
    }
    const isExample = first === 0 || first === LETTER_B || first === LETTER_E;
    if (isExample || plain < FEW || filled >= 2 * plain) return false;
    const partNumber = cells[part] ?? '';
    return plainLetter(partNumber) !== 0 && !isLabel(partNumber);
  };
}

/** Enough cells that a row is neither a note nor a title beside its number and level. */
const FEW = 4;
const [LETTER_B, LETTER_E, LETTER_N] = ['b', 'e', 'n'].map((letter) => letter.charCodeAt(0));

/** The small letter or digit that a cell begins with; 0 for any other sign, and for what may stand for nothing ("n/a"). */
function plainLetter(cell: string): number {
  const code = cell.charCodeAt(0);
  if (code >= 0x30 && code <= 0x39) return code;
  const small = code | 0x20;
  const isLetter = code < 0x80 && small >= 0x61 && small <= 0x7a;
  return isLetter && !(small === LETTER_N && cell.length <= 4) ? small : 0;
}

interface FilledCell {
  readonly text: string;
  readonly role: Role;
  readonly isHeading: boolean;
}

const PLACEHOLDER = /^(?:[-‐-―−.]*|n\/?a)$/i;

function createCellFinder(columns: readonly Column[]): (row: RawRow) => readonly FilledCell[] {
  const readers = columns.map((column) => rememberText(createCellReader(column)));
  const readBeyond = createCellReader({ role: 'other', heading: '' });
  return ({ cells, flags }) => {
    const filled: FilledCell[] = [];
    for (const [index, text] of cells.entries()) {
      const cell = text === '' ? null : (readers[index] ?? readBeyond)(text);
      if (cell && flags?.[index] !== 'merged') filled.push(cell);
    }
    return filled;
  };
}

/** Null: the cell holds nothing, or a sign for it. */
function createCellReader({ role, heading }: Pick<Column, 'role' | 'heading'>): (cell: string) => FilledCell | null {
  const folded = foldText(heading);
  return (cell) => {
    const text = cutCell(cell).replace(/\s+/g, ' ').trim();
    if (PLACEHOLDER.test(text)) return null;
    return { text, role, isHeading: heading !== '' && isFoldedTo(folded, text) };
  };
}

/** Folding leaves plain text as long as it is, which settles most cells at a glance. */
function isFoldedTo(folded: string, text: string): boolean {
  const isPlain = /^[\x20-\x7e]*$/.test(text);
  return (!isPlain || text.length === folded.length) && foldText(text) === folded;
}

function has(filled: readonly FilledCell[], role: Role): boolean {
  return filled.some((cell) => cell.role === role && !/^0+(?:[.,]0+)?$/.test(cell.text));
}

function textOf(filled: readonly FilledCell[], role: Role): string {
  return filled.find((cell) => cell.role === role)?.text ?? '';
}

function isRepeatedHeading(filled: readonly FilledCell[]): boolean {
  let same = 0;
  for (const { isHeading } of filled) if (isHeading) same += 1;
  return same > 0 && same * 2 >= filled.length && (same >= 2 || filled.length === 1);
}

/** A label of a sum in any column, on a row that names no part beside it. */
function isTotal(filled: readonly FilledCell[]): boolean {
  const part = textOf(filled, 'partNumber');
  if (part !== '') return TOTAL.test(part);
  const description = textOf(filled, 'description');
  return (description === '' || TOTAL.test(description)) && filled.some(({ text }) => TOTAL.test(text));
}

/** Columns that are often filled down over rows with nothing in them. */
const FILLED_DOWN: ReadonlySet<Role> = new Set(['level', 'unit', 'price', 'stock', 'index', 'quantity']);

/** Of those, columns at the left edge in which titles and remarks are often written. */
const AT_THE_EDGE: ReadonlySet<Role> = new Set(['level', 'index', 'quantity']);

function hasSubstance(filled: readonly FilledCell[]): boolean {
  if (filled.some(({ role }) => role !== 'other' && !FILLED_DOWN.has(role))) return true;
  if (has(filled, 'index') && has(filled, 'quantity')) return true;
  return filled.some(({ role, text }) => {
    if (FILLED_DOWN.has(role)) return AT_THE_EDGE.has(role) && isWords(text);
    return /\p{L}/u.test(text);
  });
}

function isWords(text: string): boolean {
  return /\p{L}{3}/u.test(text) || /^[*†‡(]/.test(text);
}

const FACTS: readonly Role[] = ['quantity', 'material', 'thickness', 'hole', 'thread'];

/** A sentence on its own: it says nothing in the columns of facts and has no part number beside it. */
function isNote(filled: readonly FilledCell[]): boolean {
  if (filled.length > 3) return false;
  const longest = filled.reduce((a, b) => (b.text.length > a.text.length ? b : a));
  const others = filled.filter((cell) => cell !== longest);
  if (others.some(({ role }) => role === 'partNumber' || FACTS.includes(role))) return false;
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
