import { createBasis } from '../core/audit.ts';
import { exchangeBy, exchangeRows, itemBy, itemOfRow } from '../core/caching/in-order.ts';
import { importCatalogue } from '../core/catalogue/import.ts';
import {
  type Audit,
  auditAgain,
  auditJudged,
  isLeftOut,
  type JudgedList,
  judgeList,
  piecesInProduct,
  seekRemedies,
} from '../core/engine/audit-list.ts';
import type { JudgedRow } from '../core/engine/judge-rows.ts';
import type { ChangedRows } from '../core/engine/together.ts';
import { buildList, type ListOptions } from '../core/intake/build-list.ts';
import type { ColumnChoices } from '../core/intake/columns.ts';
import { type HeadingSet, headingKey } from '../core/intake/heading-set.ts';
import { isApartFrom } from '../core/intake/relate-edited.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { Line } from '../core/model/line.ts';
import type { HardwareList, OtherRow } from '../core/model/list.ts';
import type { RawFile } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import { type Origins, originsOf, withCells } from './edit-rows.ts';
import type { CellEdit, RowState } from './protocol.ts';

/** One list under audit: what was read, what the user chose and typed, and how it is judged. */
export interface Session extends Audit {
  readonly file: RawFile;
  readonly options: ListOptions;
  /** Every row as it was read, for going back to it. */
  readonly origins: Origins;
  /** Texts put into cells, in their order; of one cell the last counts. */
  readonly edits: readonly CellEdit[];
}

type Progress = (share: number) => void;

/**
 * Reads the list out of a file and judges it. Where the headings are those of a remembered set, its columns are read as
 * remembered, unless the options choose them. Throws `Unreadable` with a sentence for the user.
 */
export function openSession(
  file: RawFile,
  catalogues: readonly Catalogue[],
  shop: ShopSettings,
  options: ListOptions,
  onProgress: Progress,
  remembered: readonly HeadingSet[] = [],
): Session {
  const { list, chosen } = readList(file, options, remembered);
  const origins = originsOf(file, list);
  return { file, options: chosen, origins, edits: [], ...judge(list, catalogues, shop, onProgress) };
}

/** The list in a file, and the options that it was read by: its columns as remembered for such headings, unless the options choose them. */
export function readList(
  file: RawFile,
  options: ListOptions,
  remembered: readonly HeadingSet[],
): { readonly list: HardwareList; readonly chosen: ListOptions } {
  const found = buildList(file, options);
  const key = headingKey(found.columns.map(({ heading }) => heading));
  const fitting = options.roles || options.units ? undefined : remembered.find((set) => set.key === key);
  if (!fitting) return { list: found, chosen: options };
  const chosen = { ...options, roles: fitting.roles, units: fitting.units };
  return { list: buildList(file, chosen), chosen };
}

/** What the user chose for the columns, now or for an earlier list with the same headings. */
export function choicesOf({ options }: Session): ColumnChoices {
  return { roles: options.roles ?? {}, units: options.units ?? {} };
}

/** The same file with other meanings and units of columns; the edits are made again in what is read. */
export function withColumns(session: Session, { roles, units }: ColumnChoices, onProgress: Progress): Session {
  const { file, judged } = session;
  const edits = lastOfEach(session.edits);
  const options = { ...session.options, roles, units };
  const read = buildList(file, options);
  const origins = originsOf(file, read);
  const list = withCells(read, origins, edits);
  return { file, options, origins, edits, ...judge(list, judged.basis.catalogues, judged.basis.shop, onProgress) };
}

/** The same list judged by other catalogues. */
export function withCatalogues(session: Session, catalogues: readonly Catalogue[], onProgress: Progress): Session {
  const { list, basis } = session.judged;
  return { ...session, ...judge(list, catalogues, basis.shop, onProgress) };
}

/** The same list judged by other settings. */
export function withShop(session: Session, shop: ShopSettings, onProgress: Progress): Session {
  const { list, basis } = session.judged;
  return { ...session, ...judge(list, basis.catalogues, shop, onProgress) };
}

/** Reads catalogue files one by one. */
export function importCatalogues(files: readonly RawFile[]): readonly Catalogue[] {
  return files.map((file) => importCatalogue(file));
}

/**
 * Puts texts into cells and judges again. Besides the rows that were touched, those come back for which another row's change
 * matters (the sheet taken from a panel, pieces through the tree, duplicates, conflicts on a panel). Rows that do not exist are left alone.
 */
export function editCells(
  session: Session,
  cells: readonly CellEdit[],
): { readonly session: Session; readonly rows: readonly RowState[] } {
  const list = withCells(session.judged.list, session.origins, cells);
  const touched = new Set(cells.map(({ row }) => row).filter((row) => isInList(list, row)));
  const { judged, rows } = rejudge(session.judged, list, touched);
  const { changed, ...audit } = auditAgain(session, judged, rows);
  const others = [...touched].flatMap((row) => itemOfRow(audit.audited.others, row) ?? []);
  return {
    session: { ...session, ...audit, edits: addEdits(session.edits, cells) },
    rows: [...changed.map((line) => ({ line })), ...others.map((other) => ({ other }))],
  };
}

function isInList({ lines, others }: HardwareList, row: number): boolean {
  return (itemOfRow(lines, row) ?? itemOfRow(others, row)) !== undefined;
}

/** So many edits are kept as they came; of more, only the last of each cell. */
const MOST_EDITS = 50_000;

function addEdits(before: readonly CellEdit[], cells: readonly CellEdit[]): readonly CellEdit[] {
  const edits = [...before, ...cells];
  return edits.length > MOST_EDITS ? lastOfEach(edits) : edits;
}

function lastOfEach(edits: readonly CellEdit[]): readonly CellEdit[] {
  return [...new Map(edits.map((edit) => [`${edit.row} ${edit.column}`, edit])).values()];
}

/** Share of the work that is done when all rows are judged; remedies are the rest. */
const JUDGING = 0.5;

function judge(list: HardwareList, catalogues: readonly Catalogue[], shop: ShopSettings, onProgress: Progress): Audit {
  const judged = judgeList(list, createBasis(catalogues, shop), { onProgress: (share) => onProgress(share * JUDGING) });
  const audit = auditJudged(judged);
  seekRemedies(audit.audited.lines, { onProgress: (share) => onProgress(JUDGING + share * (1 - JUDGING)) });
  return audit;
}

/** Judges the touched rows anew, and those that take another sheet or other pieces with them; keeps the rest. */
function rejudge(judged: JudgedList, list: HardwareList, touched: ReadonlySet<number>): Rejudged {
  const { basis, judgeRow } = judged;
  const rows = new Map<number, JudgedRow | null>();
  const others = new Map<number, OtherRow | null>();
  for (const row of touched) {
    rows.set(row, null);
    others.set(row, itemOfRow(list.others, row) ?? null);
  }
  const touchedLines = [...touched].flatMap((row) => itemOfRow(list.lines, row) ?? []);
  for (const line of new Set([...touchedLines, ...changedLines(judged.list, list)])) {
    const what = isLeftOut(line, basis.parts);
    rows.set(line.row, what ? null : judgeRow(line, piecesInProduct(list, line)));
    others.set(line.row, what ? { row: line.row, cells: line.cells, what } : null);
  }
  const gone = [...rows.keys()].flatMap((row) => itemBy(judged.rows, row, rowOf) ?? []);
  const come = [...rows.values()].filter((row) => row !== null);
  return {
    judged: {
      list,
      basis,
      judgeRow,
      rows: exchangeBy(judged.rows, rows, rowOf),
      others: exchangeRows(judged.others, others),
    },
    rows: { gone: inFileOrder(gone), come: inFileOrder(come) },
  };
}

/** A list after some rows were judged anew, and which these are. */
interface Rejudged {
  readonly judged: JudgedList;
  readonly rows: ChangedRows;
}

const rowOf = ({ subject }: JudgedRow) => subject.line.row;

function inFileOrder(rows: readonly JudgedRow[]): ChangedRows['come'] {
  return rows.map(({ subject }) => subject).sort((a, b) => a.line.row - b.line.row);
}

/** Rows whose line or pieces have become others because another row was edited: they take the sheet or the number of a panel from it. */
function changedLines(before: HardwareList, after: HardwareList): readonly Line[] {
  if (isApartFrom(before, after)) return [];
  const isSame = (former: Line | undefined, line: Line) =>
    former === line && piecesInProduct(before, line) === piecesInProduct(after, line);
  return after.lines.filter(
    (line, at) => !isSame(before.lines[at], line) && !isSame(itemOfRow(before.lines, line.row), line),
  );
}
