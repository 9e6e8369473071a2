import { isOn, XmlScanner } from '../xlsx/scan.ts';
import { type Block, LAST_COLUMN, LAST_ROW, parseBlocks } from './ranges.ts';

/** Where a cell stands in the text of its stretch. */
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

/** Where a row stands in the text of its stretch. */
export interface RowPlace {
  readonly number: number;
  readonly start: number;
  readonly tagEnd: number;
  readonly isEmpty: boolean;
  /** Where its end tag begins. */
  readonly inside: number;
  readonly end: number;
  readonly cells: readonly CellPlace[];
}

/** Where a tag stands. */
export interface TagPlace {
  readonly start: number;
  readonly end: number;
}

/** A stretch of a worksheet part as far as writing into it needs to know. */
export interface SheetOutline {
  readonly rows: readonly RowPlace[];
  /** Where `sheetData` begins; -1 where it does not begin here. */
  readonly sheetData: number;
  readonly dimension: TagPlace | null;
  /** The `cols` element: where its end tag begins, and its `col` tags. */
  readonly columns: { readonly end: number; readonly tags: readonly TagPlace[] } | null;
}

/** What is known of a sheet beside its rows. */
export interface SheetTraits {
  isProtected: boolean;
  /** Every row says its number. */
  isNumbered: boolean;
  /** Print is made to fit pages, and so many across. */
  fitsPages: boolean;
  pagesAcross: number;
  /** Merged blocks and filters: what our columns must not run into. */
  readonly taken: Block[];
  /** Validations and conditional formats: what our columns should rather not lie under. */
  readonly touchy: Block[];
  /** Blocks that one formula fills. */
  readonly filledByOne: Block[];
  /** How many cells take part in each shared formula. */
  readonly sharers: Map<string, number>;
}

interface Draft {
  rows: RowPlace[];
  sheetData: number;
  dimension: TagPlace | null;
  columns: { end: number; tags: TagPlace[] } | null;
  /** Number of the row before. */
  before: number;
  readonly traits: SheetTraits;
}

/** Walks the stretches of a worksheet part in their order. Rows and cells without a reference are counted, as the reader counts them. */
export class SheetWalk {
  readonly traits: SheetTraits = {
    isProtected: false,
    isNumbered: true,
    fitsPages: false,
    pagesAcross: 1,
    taken: [],
    touchy: [],
    filledByOne: [],
    sharers: new Map(),
  };
  /** The rows have begun. */
  #hasBegun = false;
  #before = 0;

  get hasBegun(): boolean {
    return this.#hasBegun;
  }

  /** Steps over a stretch that ends with a row of that number. */
  pass(row: number): void {
    this.#before = row;
  }

  outline(stretch: string): SheetOutline {
    const draft: Draft = {
      rows: [],
      sheetData: -1,
      dimension: null,
      columns: null,
      before: this.#before,
      traits: this.traits,
    };
    const scanner = new XmlScanner(stretch);
    while (scanner.next()) {
      this.#hasBegun ||= draft.sheetData >= 0;
      if (scanner.name === 'row' && !scanner.isClose && this.#hasBegun) draft.rows.push(readRow(scanner, draft));
      else noteTag(scanner, draft);
    }
    this.#before = draft.before;
    return draft;
  }
}

function noteTag(scanner: XmlScanner, draft: Draft): void {
  const { name, isClose, start, position: end } = scanner;
  const { traits } = draft;
  if (name === 'cols' && isClose && draft.columns) draft.columns.end = start;
  if (name === 'sqref' && isClose) traits.touchy.push(...parseBlocks(scanner.text()));
  if (isClose) return;
  if (name === 'dimension') draft.dimension = { start, end };
  else if (name === 'cols') draft.columns = scanner.isEmpty ? null : { end, tags: [] };
  else if (name === 'col') draft.columns?.tags.push({ start, end });
  else if (name === 'sheetData') draft.sheetData = start;
  else noteTrait(scanner, traits);
}

function noteTrait(scanner: XmlScanner, traits: SheetTraits): void {
  const { name } = scanner;
  if (name === 'sheetProtection') traits.isProtected = isOn(scanner.attribute('sheet'));
  else if (name === 'pageSetUpPr') traits.fitsPages = isOn(scanner.attribute('fitToPage'));
  else if (name === 'pageSetup') traits.pagesAcross = Number(scanner.attribute('fitToWidth') ?? 1);
  else if (name === 'mergeCell' || name === 'autoFilter') traits.taken.push(...parseBlocks(scanner.attribute('ref')));
  else if (name === 'dataValidation' || name === 'conditionalFormatting') {
    traits.touchy.push(...parseBlocks(scanner.attribute('sqref')));
  }
}

function readRow(scanner: XmlScanner, draft: Draft): RowPlace {
  const { start, position: tagEnd, isEmpty } = scanner;
  const written = Number(scanner.attribute('r'));
  const isNumbered = Number.isInteger(written) && written > 0 && written <= LAST_ROW;
  let number = isNumbered ? written : draft.before + 1;
  const cells: CellPlace[] = [];
  let column = -1;
  while (!isEmpty && scanner.next() && !(scanner.name === 'row' && scanner.isClose)) {
    if (scanner.name !== 'c' || scanner.isClose) continue;
    if (!isNumbered) number = numberIn(scanner.attribute('r')) ?? number;
    const cell = readCell(scanner, column, draft.traits);
    column = cell.column;
    cells.push(cell);
  }
  draft.before = number;
  draft.traits.isNumbered &&= isNumbered;
  return { number, start, tagEnd, isEmpty, inside: scanner.start, end: scanner.position, cells };
}

/** Row of a cell reference. */
function numberIn(reference: string | undefined): number | undefined {
  const number = Number(/\d+$/.exec(reference ?? '')?.[0]);
  return number > 0 && number <= LAST_ROW ? number : undefined;
}

function readCell(scanner: XmlScanner, before: number, traits: SheetTraits): CellPlace {
  const named = scanner.columnIn('r');
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
  if (!scanner.isEmpty && scanner.onlyChild('<v>', '</v></c>') !== undefined) cell.isBlank = false;
  else while (!scanner.isEmpty && scanner.next() && scanner.name !== 'c') noteContent(scanner, cell, traits);
  cell.end = scanner.position;
  return cell;
}

function noteContent(scanner: XmlScanner, cell: CellPlace, traits: SheetTraits): void {
  if (scanner.name === 'is' || scanner.name === 'v') cell.isBlank = false;
  if (scanner.name !== 'f' || scanner.isClose) return;
  cell.isBlank = false;
  cell.hasFormula = true;
  const group = scanner.attribute('si');
  if (scanner.attribute('t') === 'shared' && group !== undefined) {
    traits.sharers.set(group, (traits.sharers.get(group) ?? 0) + 1);
    if (scanner.attribute('ref') !== undefined) cell.sharedFormula = group;
  } else traits.filledByOne.push(...parseBlocks(scanner.attribute('ref')));
}
