import { columnOf } from '../xlsx/address.ts';
import { isOn, XmlScanner } from '../xlsx/scan.ts';
import { type Block, LAST_COLUMN, LAST_ROW, parseBlocks } from './ranges.ts';

/** Where a cell stands in the text of its sheet. */
export interface CellPlace {
  readonly column: number;
  readonly start: number;
  /** Where its start tag ends. */
  readonly tagEnd: number;
  end: number;
  readonly type: string | undefined;
  readonly style: number;
  readonly hasReference: boolean;
  /** Holds no value, text or formula. */
  isBlank: boolean;
  hasFormula: boolean;
  /** Group of a formula that this cell holds for other cells too. */
  sharedFormula?: string;
}

/** Where a row stands in the text of its sheet. */
export interface RowPlace {
  readonly number: number;
  readonly start: number;
  readonly tagEnd: number;
  readonly isEmpty: boolean;
  readonly end: number;
  readonly cells: readonly CellPlace[];
}

/** Where a tag stands. */
export interface TagPlace {
  readonly start: number;
  readonly end: number;
}

/** A worksheet part as far as writing into it needs to know. */
export interface SheetOutline {
  readonly rows: readonly RowPlace[];
  readonly sheetData: number;
  readonly dimension: TagPlace | null;
  /** The `cols` element: where its end tag begins, and its `col` tags. */
  readonly columns: { readonly end: number; readonly tags: readonly TagPlace[] } | null;
  readonly isProtected: boolean;
  /** Merged blocks and filters: what our columns must not run into. */
  readonly taken: readonly Block[];
  /** Validations and conditional formats: what our columns should rather not lie under. */
  readonly touchy: readonly Block[];
  /** Blocks that one formula fills. */
  readonly filledByOne: readonly Block[];
  /** How many cells take part in each shared formula. */
  readonly sharers: ReadonlyMap<string, number>;
}

interface Draft {
  rows: RowPlace[];
  sheetData: number;
  dimension: TagPlace | null;
  columns: { end: number; tags: TagPlace[] } | null;
  isProtected: boolean;
  taken: Block[];
  touchy: Block[];
  filledByOne: Block[];
  sharers: Map<string, number>;
}

/** Walks a worksheet part once. Rows and cells without a reference are counted, as the reader counts them. */
export function outlineSheet(xml: string): SheetOutline {
  const scanner = new XmlScanner(xml);
  const draft: Draft = {
    rows: [],
    sheetData: -1,
    dimension: null,
    columns: null,
    isProtected: false,
    taken: [],
    touchy: [],
    filledByOne: [],
    sharers: new Map(),
  };
  while (scanner.next()) {
    if (scanner.name === 'row' && !scanner.isClose && draft.sheetData >= 0) draft.rows.push(readRow(scanner, draft));
    else noteTag(scanner, draft);
  }
  return draft;
}

function noteTag(scanner: XmlScanner, draft: Draft): void {
  const { name, isClose, start, position: end } = scanner;
  if (name === 'cols' && isClose && draft.columns) draft.columns.end = start;
  if (name === 'sqref' && isClose) draft.touchy.push(...parseBlocks(scanner.text()));
  if (isClose) return;
  if (name === 'dimension') draft.dimension = { start, end };
  else if (name === 'cols') draft.columns = scanner.isEmpty ? null : { end, tags: [] };
  else if (name === 'col') draft.columns?.tags.push({ start, end });
  else if (name === 'sheetData') draft.sheetData = start;
  else if (name === 'sheetProtection') draft.isProtected = isOn(scanner.attribute('sheet'));
  else if (name === 'mergeCell' || name === 'autoFilter') draft.taken.push(...parseBlocks(scanner.attribute('ref')));
  else if (name === 'dataValidation' || name === 'conditionalFormatting') {
    draft.touchy.push(...parseBlocks(scanner.attribute('sqref')));
  }
}

function readRow(scanner: XmlScanner, draft: Draft): RowPlace {
  const { start, position: tagEnd, isEmpty } = scanner;
  const written = Number(scanner.attribute('r'));
  const isNumbered = Number.isInteger(written) && written > 0 && written <= LAST_ROW;
  let number = isNumbered ? written : (draft.rows.at(-1)?.number ?? 0) + 1;
  const cells: CellPlace[] = [];
  while (!isEmpty && scanner.next() && !(scanner.name === 'row' && scanner.isClose)) {
    if (scanner.name !== 'c' || scanner.isClose) continue;
    const reference = scanner.attribute('r');
    const own = Number(/\d+$/.exec(reference ?? '')?.[0]);
    if (!isNumbered && own > 0 && own <= LAST_ROW) number = own;
    cells.push(readCell(scanner, reference, cells.at(-1)?.column ?? -1, draft));
  }
  return { number, start, tagEnd, isEmpty, end: scanner.position, cells };
}

function readCell(scanner: XmlScanner, reference: string | undefined, before: number, draft: Draft): CellPlace {
  const named = reference === undefined ? -1 : columnOf(reference);
  const hasReference = named >= 0 && named <= LAST_COLUMN;
  const cell: CellPlace = {
    column: hasReference ? named : Math.min(before + 1, LAST_COLUMN),
    start: scanner.start,
    tagEnd: scanner.position,
    end: scanner.position,
    type: scanner.attribute('t'),
    style: Number(scanner.attribute('s') ?? 0),
    hasReference,
    isBlank: true,
    hasFormula: false,
  };
  while (!scanner.isEmpty && scanner.next() && scanner.name !== 'c') noteContent(scanner, cell, draft);
  cell.end = scanner.position;
  return cell;
}

function noteContent(scanner: XmlScanner, cell: CellPlace, draft: Draft): void {
  if (scanner.name === 'is' || scanner.name === 'v') cell.isBlank = false;
  if (scanner.name !== 'f' || scanner.isClose) return;
  cell.isBlank = false;
  cell.hasFormula = true;
  const group = scanner.attribute('si');
  if (scanner.attribute('t') === 'shared' && group !== undefined) {
    draft.sharers.set(group, (draft.sharers.get(group) ?? 0) + 1);
    if (scanner.attribute('ref') !== undefined) cell.sharedFormula = group;
  } else draft.filledByOne.push(...parseBlocks(scanner.attribute('ref')));
}
