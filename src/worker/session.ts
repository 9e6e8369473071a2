import { createBasis } from '../core/audit.ts';
import { importCatalogue } from '../core/catalogue/import.ts';
import {
  isLeftOut,
  type JudgedList,
  type JudgedRow,
  judgeList,
  judgeRow,
  toAuditedList,
} from '../core/engine/audit-list.ts';
import { rebuildLine } from '../core/intake/build-line.ts';
import { buildList, type ListOptions } from '../core/intake/build-list.ts';
import type { AuditedLine, AuditedList } from '../core/model/audited.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { Line } from '../core/model/line.ts';
import type { HardwareList, OtherRow } from '../core/model/list.ts';
import type { RawFile } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import type { CellEdit, RowState } from './protocol.ts';

/** One list under audit: every row as judged by itself, and the whole as it is shown. */
export interface Session {
  readonly judged: JudgedList;
  readonly audited: AuditedList;
}

type Progress = (share: number) => void;

/** Reads the list out of a file and judges it. Throws `Unreadable` with a sentence for the user. */
export function openSession(
  file: RawFile,
  catalogues: readonly Catalogue[],
  shop: ShopSettings,
  options: ListOptions,
  onProgress: Progress,
): Session {
  return judge(buildList(file, options), catalogues, shop, onProgress);
}

/** The same list judged by other catalogues. */
export function withCatalogues({ judged }: Session, catalogues: readonly Catalogue[], onProgress: Progress): Session {
  return judge(judged.list, catalogues, judged.basis.shop, onProgress);
}

/** The same list judged by other settings. */
export function withShop({ judged }: Session, shop: ShopSettings, onProgress: Progress): Session {
  return judge(judged.list, judged.basis.catalogues, shop, onProgress);
}

/** Reads catalogue files one by one. */
export function importCatalogues(files: readonly RawFile[]): readonly Catalogue[] {
  return files.map((file) => importCatalogue(file));
}

/**
 * Puts texts into cells and judges again. Besides the rows that were touched, those come back for which another row's change
 * matters (duplicates, conflicts on a panel). Rows that do not exist are left alone.
 */
export function editCells(
  session: Session,
  cells: readonly CellEdit[],
): { readonly session: Session; readonly rows: readonly RowState[] } {
  const { judged } = session;
  const lines = new Map(judged.list.lines.map((line) => [line.row, line]));
  const others = new Map(judged.list.others.map((other) => [other.row, other]));
  const touched = new Set<number>();
  for (const { row, column, text } of cells) {
    const line = lines.get(row);
    const other = others.get(row);
    if (line) lines.set(row, rebuildLine(line, column, text, judged.list.columns));
    else if (other) others.set(row, { ...other, cells: replaceAt(other.cells, column, text) });
    if (line || other) touched.add(row);
  }
  const list = { ...judged.list, lines: [...lines.values()], others: [...others.values()] };
  const next = rejudge(judged, list, touched);
  const audited = toAuditedList(next);
  return { session: { judged: next, audited }, rows: changedRows(session.audited, audited, touched) };
}

function judge(
  list: HardwareList,
  catalogues: readonly Catalogue[],
  shop: ShopSettings,
  onProgress: Progress,
): Session {
  const judged = judgeList(list, createBasis(catalogues, shop), { onProgress });
  return { judged, audited: toAuditedList(judged) };
}

/** Judges the touched rows anew and keeps the rest. */
function rejudge({ basis, rows, others }: JudgedList, list: HardwareList, touched: ReadonlySet<number>): JudgedList {
  const touchedLines = list.lines.filter(({ row }) => touched.has(row));
  const newRows: JudgedRow[] = [];
  const newOthers: OtherRow[] = list.others.filter(({ row }) => touched.has(row));
  for (const line of touchedLines) {
    const what = isLeftOut(line, basis.parts);
    if (what) newOthers.push(asOther(line, what));
    else newRows.push(judgeRow(line, basis));
  }
  return {
    list,
    basis,
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

function replaceAt(cells: readonly string[], column: number, text: string): readonly string[] {
  const length = Math.max(cells.length, column + 1);
  return Array.from({ length }, (_, index) => (index === column ? text : (cells[index] ?? '')));
}
