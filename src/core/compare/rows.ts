import { partKey } from '../catalogue/part-key.ts';
import { subjectFor } from '../engine/prepare.ts';
import { summariseSheet } from '../engine/summarise.ts';
import { buildLine } from '../intake/build-line.ts';
import { nameKey } from '../intake/tree-row.ts';
import type { AuditedLine, AuditedList } from '../model/audited.ts';
import type { Line } from '../model/line.ts';
import type { Column, OtherRow, Role } from '../model/list.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../say/safety.ts';
import type { RowName } from './comparison.ts';
import { type Fact, factReader } from './facts.ts';
import { homesOf } from './homes.ts';

/** A row of a list, fastener or not, with what is needed to find it again in another list. */
export interface Row {
  readonly name: RowName;
  readonly line: Line;
  /** Null for a row that is no press-in fastener. */
  readonly audited: AuditedLine | null;
  /** Part number for comparing. */
  readonly part: string;
  /** Panel for comparing; of a renamed panel its name in the list before. */
  readonly panel: string;
  /** The same, as this list calls it. */
  readonly ownPanel: string;
  /** What each of the matched columns says. */
  readonly facts: readonly Fact[];
  /** All of them but part and panel, as one key. */
  readonly says: string;
}

/** A column of the list with the role in which it is compared. */
export interface ReadColumn {
  readonly column: Column;
  readonly role: Role;
}

/** Rows that say nothing of their own. */
const EMPTY: ReadonlySet<string> = new Set(['heading', 'empty row', 'units']);

/** What an export of ours has put under a list is no row of it. */
const OWN_WORDS: ReadonlySet<string> = new Set([DEMO_WORDS, SAFETY_SHORT]);

/** The cells of all rows to be compared, in file order. */
export function cellsOf({ lines, others }: AuditedList): readonly { readonly cells: readonly string[] }[] {
  return [...lines.map(({ line }) => line), ...others.filter(hasContent)];
}

/** All rows that say something, in file order, each with what the given columns of it say. */
export function readRows(list: AuditedList, columns: readonly ReadColumn[]): readonly Row[] {
  const rows = [
    ...list.lines.map((audited) => ({ line: audited.line, audited, what: null })),
    ...list.others.filter(hasContent).map((other) => readOther(other, list)),
  ].sort((a, b) => a.line.row - b.line.row);
  const homes = homesOf(rows, list.columns);
  const readers = columns.map(({ column, role }) => factReader(column, role));
  const isSaid = columns.map(({ role }) => role !== 'partNumber' && role !== 'panel');
  return rows.map(({ line, audited, what }): Row => {
    const home = homes.get(line.row) ?? '';
    const sheetMm = () => (audited ? audited.sheet : sheetOf(line, list))?.thicknessMm ?? null;
    const facts = readers.map((read) => read({ line, sheetMm }));
    return {
      name: { row: line.row, partNumber: line.partNumber, panel: home, what, text: wordsOf(line) },
      line,
      audited,
      part: nameKey(line.partNumber) && partKey(line.partNumber),
      panel: nameKey(home),
      ownPanel: nameKey(home),
      facts,
      says: facts.map(({ key }, at) => (isSaid[at] ? key : '')).join('\t'),
    };
  });
}

function hasContent({ what, cells }: OtherRow): boolean {
  return !EMPTY.has(what) && !(what === 'note' && cells.some((cell) => OWN_WORDS.has(cell.trim())));
}

function readOther({ row, cells, what }: OtherRow, { columns }: AuditedList) {
  return { line: buildLine({ number: row, cells }, columns), audited: null, what };
}

function sheetOf(line: Line, { shop }: AuditedList) {
  return summariseSheet(subjectFor(line, null, shop));
}

function wordsOf({ cells }: Line): string {
  return cells
    .map((cell) => cell.replace(/\s+/g, ' ').trim())
    .filter(Boolean)
    .join(', ');
}
