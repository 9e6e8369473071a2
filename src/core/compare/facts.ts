import { LENGTH_CLOSENESS_MM } from '../calc/closeness.ts';
import { partKey } from '../catalogue/part-key.ts';
import { foldText } from '../intake/heading-text.ts';
import { nameKey } from '../intake/tree-row.ts';
import type { Line } from '../model/line.ts';
import type { Column, Role } from '../model/list.ts';
import type { ThicknessReading } from '../model/thickness.ts';
import { mmOf, parseLength, parseNumber } from '../units/length.ts';
import { parseThreadAndLength } from '../units/thread.ts';

/** What a cell says, whatever the way it is written: words to be equal, and lengths to be equal up to the rounding of inch sizes. */
export interface Fact {
  readonly words: string;
  readonly mm: readonly number[];
  /** Equal for equal words, and nearly always for equal lengths. */
  readonly key: string;
}

/** A row as far as its cells say something together. */
export interface Reading {
  readonly line: Line;
  /** Nominal thickness of its sheet, where a gauge needs the metal to become one. */
  readonly sheetMm: () => number | null;
}

/** What stands in a column of a row, in whichever column of a spread one it stands. */
export function textOf({ cells }: Line, { index, through = index }: Column): string {
  const text = through === index ? cells[index] : cells.slice(index, through + 1).find((cell) => cell.trim() !== '');
  return (text ?? '').trim();
}

/** Reads what cells of a column say, as a column of that role; `other` goes by the text alone. Each text is read once. */
export function factReader(column: Column, role: Role): (reading: Reading) => Fact {
  const known = new Map<string, Fact>();
  return (reading) => {
    const text = textOf(reading.line, column);
    // A gauge needs the metal.
    const key = role === 'thickness' ? `${text}\n${reading.line.material.text}` : text;
    const fact = known.get(key) ?? readFact(reading, text, column, role);
    known.set(key, fact);
    return fact;
  };
}

function readFact(reading: Reading, text: string, column: Column, role: Role): Fact {
  if (nameKey(text) === '') return BLANK;
  return READERS[role]?.(reading, text, column) ?? plain(text);
}

/** Whether two cells say the same. */
export function isSameFact(one: Fact, other: Fact): boolean {
  if (one.words !== other.words || one.mm.length !== other.mm.length) return false;
  return one.mm.every((mm, at) => Math.abs(mm - (other.mm[at] ?? Number.NaN)) <= LENGTH_CLOSENESS_MM);
}

const BLANK: Fact = { words: '', mm: [], key: '' };

type Reader = (reading: Reading, text: string, column: Column) => Fact | null;

const READERS: Partial<Record<Role, Reader>> = {
  partNumber: (_, text) => words(partKey(text)),
  panel: (_, text) => words(nameKey(text)),
  index: (_, text) => words(foldText(text)),
  quantity: ({ line }) => (line.quantity.value === null ? null : number(line.quantity.value)),
  material: ({ line }) => materialFact(line),
  thickness: ({ line, sheetMm }) => thicknessFact(line.thickness, sheetMm),
  hole: ({ line: { hole } }) => (hole.how === 'size' ? sizes(hole.mm, hole.lowMm, hole.highMm) : null),
  edge: ({ line }) => (line.edge.how === 'size' ? sizes(line.edge.mm) : null),
  spacing: ({ line }) => (line.spacing.how === 'size' ? sizes(line.spacing.mm) : null),
  bend: ({ line }) => (line.bend.how === 'size' ? sizes(line.bend.mm) : null),
  length: (_, text, { unit }) => lengthFact(text, unit),
  thread: (_, text) => threadFact(text),
};

function words(text: string, mm: readonly number[] = []): Fact {
  const key = mm.length === 0 ? text : `${text} ${mm.map((length) => length.toFixed(3)).join(' ')}`;
  return { words: text, mm, key };
}

function number(value: number): Fact {
  return words(`= ${value}`);
}

function sizes(...mm: readonly (number | null)[]): Fact {
  return words(
    'mm',
    mm.filter((length) => length !== null),
  );
}

/** Case, blanks and the way a number is written make no difference. */
function plain(text: string): Fact {
  const value = parseNumber(text);
  return value === null ? words(foldText(text)) : number(value);
}

/** The metals that it could be, and whatever else was seen beside them. */
function materialFact({ material }: Line): Fact | null {
  const { candidates, coating, finish, thicknessText, writtenLimit } = material;
  if (candidates.length === 0) return null;
  const beside = [coating, finish, thicknessText, writtenLimit?.standard].map((text) => foldText(text ?? ''));
  return words([...candidates, ...beside].join('\n'));
}

function thicknessFact({ how, mm, toleranceMm }: ThicknessReading, sheetMm: () => number | null): Fact | null {
  const nominal = how === 'length' ? mm : how === 'gauge' || how === 'ounces' ? sheetMm() : null;
  if (nominal === null) return null;
  return sizes(nominal, toleranceMm?.plus ?? null, toleranceMm?.minus ?? null);
}

function lengthFact(text: string, unit: Column['unit']): Fact | null {
  const length = parseLength(text);
  if (!length) return null;
  const mm = length.mm ?? (unit && mmOf(length.value, unit));
  return mm === null ? number(length.value) : sizes(mm);
}

const TOLERANCE_CLASS = /\d[A-H](?:\d[A-H])?\b/gi;

function threadFact(text: string): Fact | null {
  const found = parseThreadAndLength(text);
  if (!found) return null;
  const classes = text.toUpperCase().match(TOLERANCE_CLASS) ?? [];
  return words([found.thread.name, ...classes].join(' '), found.lengthMm === null ? [] : [found.lengthMm]);
}
