import { buildLine } from '../intake/build-line.ts';
import type { Line } from '../model/line.ts';
import type { Column } from '../model/list.ts';
import type { Answerable } from '../rollup/about.ts';

/** What a row needs to be read with an answer in it. */
export interface AnswerRow {
  readonly row: number;
  readonly cells: readonly string[];
}

/** Finds out whether a text is a part on file. */
export type IsOnFile = (partNumber: string) => boolean;

/** An answer as the text of a cell. */
export interface CellAnswer {
  readonly text: string;
  /** Why it should not be filled in without a look; '' where nothing speaks against it. */
  readonly doubt: string;
}

const OPENING = /^(?:yes|yeah|yep|ok|okay|ja|oui|si|sí|no|nein|non)\b[\s,.:;–—-]*/i;
const DENIAL = /\b(?:not|nicht|kein\w*|never|instead|rather)\b/i;

/** Words by which an answer takes back half of what it says. */
const HEDGE =
  /[?？]|\b(?:probably|maybe|perhaps|possibly|likely|assum\w*|guess\w*|think|approx\w*|similar|equivalent|equal|better|tbc|tbd|vermutlich|wahrscheinlich|evtl|ähnlich\w*|gleichwertig\w*|peut-être|environ|équivalent)\b/i;
/** Words by which it speaks of some of the question's rows alone. */
const SOME_ROWS = /\b(?:only|except|nur|außer|ausser|sauf)\b|\b(?:rows?|lines?|items?|pos|zeilen?|lignes?)\.?\s*\d/i;

/** The text that an answer puts into a cell, as the list itself would be read. A courtesy before it ("yes, 1.5 mm") is left out. */
export function readAsFact(
  answer: string,
  about: Answerable,
  row: AnswerRow,
  column: Column,
  columns: readonly Column[],
  isOnFile: IsOnFile,
): CellAnswer {
  const plain = answer.replace(/\s+/g, ' ').trim();
  const texts = [plain, plain.replace(OPENING, ''), plain.replace(OPENING, '').replace(/\.$/, '')];
  if (about === 'partNumber') return readPart(plain, texts, isOnFile);
  const read = (text: string) => buildLine({ number: row.row, cells: withCell(row, column, text).cells }, columns);
  const text = texts.find((one) => one !== '' && UNDERSTOOD[about](read(one)));
  if (text === undefined || DENIAL.test(text)) return { text: plain, doubt: `cannot be read as ${NAMES[about]}` };
  const { how, candidates } = read(text).material;
  const isOpen = about === 'material' && how === 'vague' && candidates.length > 1;
  return { text, doubt: isOpen ? 'can still be several metals or tempers' : doubtOf(plain) };
}

/** The cell that an answer goes into: where texts are spread over columns, the one that the row has its text in. */
export function withCell(
  { cells }: AnswerRow,
  { index, through = index }: Column,
  text: string,
): { readonly column: number; readonly cells: readonly string[] } {
  const column =
    index +
    Math.max(
      cells.slice(index, through + 1).findIndex((cell) => cell.trim() !== ''),
      0,
    );
  const length = Math.max(cells.length, column + 1);
  return { column, cells: Array.from({ length }, (_, at) => (at === column ? text : (cells[at] ?? ''))) };
}

function doubtOf(answer: string): string {
  if (HEDGE.test(answer)) return 'does not sound certain';
  return SOME_ROWS.test(answer) ? 'may not be meant for every row of the question' : '';
}

/** Among more words, the one part on file that they name. */
function readPart(plain: string, texts: readonly string[], isOnFile: IsOnFile): CellAnswer {
  const whole = texts.find((text) => text !== '' && isOnFile(text));
  if (whole !== undefined) return { text: whole, doubt: '' };
  const named = [...new Set(plain.split(/[\s,;:()“”"'?!]+/).map((word) => word.replace(/\.$/, '')))].filter(
    (word) => word !== '' && isOnFile(word),
  );
  if (named.length === 1 && named[0] && !DENIAL.test(plain)) return { text: named[0], doubt: doubtOf(plain) };
  return { text: texts[1] || plain, doubt: 'is a part in none of the catalogues' };
}

const isSize = ({ how }: { readonly how: string }) => how === 'size';
const UNDERSTOOD: Readonly<Record<Exclude<Answerable, 'partNumber'>, (line: Line) => boolean>> = {
  quantity: ({ quantity }) => quantity.how === 'whole',
  material: ({ material }) =>
    (material.how === 'named' || material.how === 'condition-assumed' || material.how === 'vague') &&
    material.candidates.length > 0,
  thickness: ({ thickness }) => thickness.how === 'length' || thickness.how === 'gauge' || thickness.how === 'ounces',
  hole: ({ hole }) => isSize(hole),
  edge: ({ edge }) => isSize(edge),
  spacing: ({ spacing }) => isSize(spacing),
  bend: ({ bend }) => isSize(bend),
};
const NAMES: Readonly<Record<Exclude<Answerable, 'partNumber'>, string>> = {
  quantity: 'a whole number of pieces',
  material: 'a sheet metal',
  thickness: 'a thickness',
  hole: 'a hole',
  edge: 'an edge distance',
  spacing: 'a spacing',
  bend: 'a distance to a bend',
};
