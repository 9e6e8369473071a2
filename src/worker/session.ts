import { createBasis } from '../core/audit.ts';
import { importCatalogue } from '../core/catalogue/import.ts';
import { isLeftOut, type JudgedList, judgeList, piecesInProduct, toAuditedList } from '../core/engine/audit-list.ts';
import type { JudgedRow } from '../core/engine/judge-rows.ts';
import { buildList, type ListOptions } from '../core/intake/build-list.ts';
import type { ColumnChoices } from '../core/intake/columns.ts';
import { type HeadingSet, headingKey } from '../core/intake/heading-set.ts';
import type { AuditedLine, AuditedList } from '../core/model/audited.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { Line } from '../core/model/line.ts';
import type { HardwareList, OtherRow } from '../core/model/list.ts';
import type { RawFile } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import { type Origins, originsOf, withCells } from './edit-rows.ts';
import type { CellEdit, RowState } from './protocol.ts';

/** One list under audit: what was read, what the user chose and typed, every row as judged by itself, and the whole as shown. */
export interface Session {
  readonly file: RawFile;
  readonly options: ListOptions;
  /** Every row as it was read, for going back to it. */
  readonly origins: Origins;
  /** The last text of each cell that was edited. */
  readonly edits: readonly CellEdit[];
  readonly judged: JudgedList;
  readonly audited: AuditedList;
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
  const found = buildList(file, options);
  const key = headingKey(found.columns.map(({ heading }) => heading));
  const fitting = options.roles || options.units ? undefined : remembered.find((set) => set.key === key);
  const chosen = fitting ? { ...options, roles: fitting.roles, units: fitting.units } : options;
  const list = fitting ? buildList(file, chosen) : found;
  const origins = originsOf(file, list);
  return { file, options: chosen, origins, edits: [], ...judge(list, catalogues, shop, onProgress) };
}

/** What the user chose for the columns, now or for an earlier list with the same headings. */
export function choicesOf({ options }: Session): ColumnChoices {
  return { roles: options.roles ?? {}, units: options.units ?? {} };
}

/** The same file with other meanings and units of columns; the edits are made again in what is read. */
export function withColumns(session: Session, { roles, units }: ColumnChoices, onProgress: Progress): Session {
  const { file, edits, judged } = session;
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
  const { judged } = session;
  const list = withCells(judged.list, session.origins, cells);
  const known = new Set([...list.lines, ...list.others].map(({ row }) => row));
  const touched = new Set(cells.map(({ row }) => row).filter((row) => known.has(row)));
  const next = rejudge(judged, list, new Set([...touched, ...changedLines(judged.list, list)]));
  const audited = toAuditedList(next, session);
  return {
    session: { ...session, edits: addEdits(session.edits, cells), judged: next, audited },
    rows: changedRows(session.audited, audited, touched),
  };
}

/** Rows whose line or pieces have become others: edited themselves, or taking the sheet or the number of a panel that was. */
function changedLines(before: HardwareList, after: HardwareList): readonly number[] {
  const former = new Map(before.lines.map((line) => [line.row, line]));
  const isSame = (line: Line) =>
    former.get(line.row) === line && piecesInProduct(before, line) === piecesInProduct(after, line);
  return after.lines.filter((line) => !isSame(line)).map(({ row }) => row);
}

function addEdits(before: readonly CellEdit[], cells: readonly CellEdit[]): readonly CellEdit[] {
  return [...new Map([...before, ...cells].map((edit) => [`${edit.row} ${edit.column}`, edit])).values()];
}

function judge(
  list: HardwareList,
  catalogues: readonly Catalogue[],
  shop: ShopSettings,
  onProgress: Progress,
): Pick<Session, 'judged' | 'audited'> {
  const judged = judgeList(list, createBasis(catalogues, shop), { onProgress });
  return { judged, audited: toAuditedList(judged) };
}

/** Judges the touched rows anew and keeps the rest. */
function rejudge(
  { basis, judgeRow, rows, others }: JudgedList,
  list: HardwareList,
  touched: ReadonlySet<number>,
): JudgedList {
  const touchedLines = list.lines.filter(({ row }) => touched.has(row));
  const newRows: JudgedRow[] = [];
  const newOthers: OtherRow[] = list.others.filter(({ row }) => touched.has(row));
  for (const line of touchedLines) {
    const what = isLeftOut(line, basis.parts);
    if (what) newOthers.push(asOther(line, what));
    else newRows.push(judgeRow(line, piecesInProduct(list, line)));
  }
  return {
    list,
    basis,
    judgeRow,
    rows: [...rows.filter(({ subject }) => !touched.has(subject.line.row)), ...newRows].sort(
      (a, b) => a.subject.line.row - b.subject.line.row,
    ),
    others: [...others.filter(({ row }) => !touched.has(row)), ...newOthers].sort((a, b) => a.row - b.row),
  };
}

function changedRows(before: AuditedList, after: AuditedList, touched: ReadonlySet<number>): readonly RowState[] {
  const former = new Map<number, AuditedLine>(before.lines.map((line) => [line.row, line]));
  const lines = after.lines.filter((line) => former.get(line.row) !== line);
  const others = after.others.filter(({ row }) => touched.has(row));
  return [...lines.map((line) => ({ line })), ...others.map((other) => ({ other }))];
}

function asOther({ row, cells }: Line, what: string): OtherRow {
  return { row, cells, what };
}
