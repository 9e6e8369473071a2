import { showColumn } from '../xlsx/address.ts';
import { type CellBook, cellXml } from './cell-xml.ts';
import type { PlannedRow, SheetPlan } from './sheet-plan.ts';
import { escapeXml } from './xml-text.ts';

export const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
export const LINKS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
/** Characters across a page before print becomes too small to read. */
const PAGE_WIDTH = 210;
/** Characters handed on at once. */
const PIECE = 1 << 16;

/** A note on a cell; row and column are 0-based. */
export interface Note {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/**
 * A sheet as XML without prefixes, in pieces: the first holds all that names a namespace. Notes on its cells are put into `notes`; where
 * there are any, the sheet names their drawing by the relationship `rId1`. `onRow` hears of each row.
 */
export function* sheetXml(plan: SheetPlan, book: CellBook, notes: Note[], onRow: () => void): Generator<string> {
  yield head(plan);
  const columns: string[] = [];
  const merged: string[] = [];
  let piece = '';
  let number = 0;
  for (const row of plan.rows()) {
    number++;
    for (let at = columns.length; at < row.cells.length; at++) columns.push(showColumn(at));
    piece += rowXml(number, row, columns, book, notes);
    if (row.across) merged.push(`<mergeCell ref="A${number}:${showColumn(row.across - 1)}${number}"/>`);
    onRow();
    if (piece.length < PIECE) continue;
    yield piece;
    piece = '';
  }
  yield piece + tail(plan, merged, notes.length > 0);
}

function rowXml(
  number: number,
  { cells, height }: PlannedRow,
  columns: readonly string[],
  book: CellBook,
  notes: Note[],
): string {
  let xml = height === undefined ? `<row r="${number}">` : `<row r="${number}" ht="${height}" customHeight="1">`;
  for (let at = 0; at < cells.length; at++) {
    const cell = cells[at];
    if (!cell) continue;
    xml += cellXml(columns[at] + String(number), cell, book);
    if (cell.note !== undefined) notes.push({ row: number - 1, column: at, text: cell.note });
  }
  return `${xml}</row>`;
}

function head({ widths, hidden, isFrozen }: SheetPlan): string {
  const pane = '<pane ySplit="1" topLeftCell="A2" activePane="bottomLeft" state="frozen"/>';
  const view = `<sheetView workbookViewId="0"${isFrozen ? `>${pane}</sheetView>` : '/>'}`;
  const columns = widths.map(
    (width, at) =>
      `<col min="${at + 1}" max="${at + 1}" width="${width}"${at === hidden ? ' hidden="1"' : ''} customWidth="1"/>`,
  );
  const cols = columns.length > 0 ? `<cols>${columns.join('')}</cols>` : '';
  return `<worksheet xmlns="${MAIN}" xmlns:r="${LINKS}"><sheetPr><pageSetUpPr fitToPage="1"/></sheetPr><sheetViews>${view}</sheetViews><sheetFormatPr defaultRowHeight="15"/>${cols}<sheetData>`;
}

/** Landscape, page numbers, and as many pages across as can be read. */
function tail({ filter, widths, footer }: SheetPlan, merged: readonly string[], hasNotes: boolean): string {
  const width = widths.reduce((sum, one) => sum + one, 0);
  const across = Math.max(1, Math.round(width / PAGE_WIDTH));
  return [
    '</sheetData>',
    filter ? `<autoFilter ref="A1:${showColumn(filter.columns - 1)}${filter.rows}"/>` : '',
    merged.length > 0 ? `<mergeCells count="${merged.length}">${merged.join('')}</mergeCells>` : '',
    '<pageMargins left="0.4" right="0.4" top="0.5" bottom="0.7" header="0.3" footer="0.3"/>',
    `<pageSetup paperSize="9" fitToWidth="${across}" fitToHeight="0" pageOrder="overThenDown" orientation="landscape"/>`,
    `<headerFooter><oddFooter>${escapeXml(footer)}</oddFooter></headerFooter>`,
    hasNotes ? '<legacyDrawing r:id="rId1"/>' : '',
    '</worksheet>',
  ].join('');
}
