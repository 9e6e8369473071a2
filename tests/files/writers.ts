import * as spreadsheet from '@e965/xlsx';
import ExcelJS from 'exceljs';
import { type Cell, type WriteSheet, writeXlsx } from 'hucre';

/** A formula and the result that its writer knew. */
export interface Formula {
  readonly formula: string;
  readonly result: number | string;
}

export type Value = string | number | boolean | Date | Formula | null;

/** A sheet as data: no writer's own types. */
export interface Given {
  readonly name: string;
  readonly rows: readonly (readonly Value[])[];
  /** Merged block, rows and columns 0-based, ends included. */
  readonly merge?: { readonly top: number; readonly left: number; readonly bottom: number; readonly right: number };
  readonly isHidden?: boolean;
}

/** Writes sheets as a workbook. */
export type Writer = (sheets: readonly Given[]) => Promise<Uint8Array>;

const DATE_FORMAT = 'yyyy-mm-dd';

/** Writers that share no code with each other nor with the reader. */
export const WRITERS: Readonly<Record<string, Writer>> = {
  'exceljs 4.4.0': writeByExceljs,
  'hucre 1.0.0': writeByHucre,
  '@e965/xlsx 0.20.3': writeBySpreadsheet,
};

async function writeByExceljs(sheets: readonly Given[]): Promise<Uint8Array> {
  const book = new ExcelJS.Workbook();
  for (const { name, rows, merge, isHidden } of sheets) {
    const sheet = book.addWorksheet(name, isHidden ? { state: 'hidden' } : {});
    rows.forEach((values, row) => {
      values.forEach((value, column) => {
        if (value !== null) sheet.getCell(row + 1, column + 1).value = isFormula(value) ? { ...value } : value;
      });
    });
    if (merge) sheet.mergeCells(merge.top + 1, merge.left + 1, merge.bottom + 1, merge.right + 1);
  }
  return new Uint8Array(await book.xlsx.writeBuffer());
}

async function writeByHucre(sheets: readonly Given[]): Promise<Uint8Array> {
  return writeXlsx({ sheets: sheets.map(toHucreSheet) });
}

function toHucreSheet({ name, rows, merge, isHidden }: Given): WriteSheet {
  const cells = new Map<string, Partial<Cell>>();
  rows.forEach((values, row) => {
    values.forEach((value, column) => {
      if (value instanceof Date) cells.set(`${row},${column}`, { value, style: { numFmt: DATE_FORMAT } });
      if (isFormula(value)) cells.set(`${row},${column}`, { formula: value.formula, formulaResult: value.result });
    });
  });
  const merges = merge && [{ startRow: merge.top, startCol: merge.left, endRow: merge.bottom, endCol: merge.right }];
  return {
    name,
    rows: rows.map((values) => values.map((value) => (isFormula(value) ? null : value))),
    cells,
    ...(merges && { merges }),
    ...(isHidden && { hidden: true }),
  };
}

async function writeBySpreadsheet(sheets: readonly Given[]): Promise<Uint8Array> {
  const book = spreadsheet.utils.book_new();
  for (const { name, rows, merge } of sheets) {
    const sheet = spreadsheet.utils.aoa_to_sheet(
      rows.map((values) => values.map(toSpreadsheetCell)),
      { UTC: true, dateNF: DATE_FORMAT, cellDates: false },
    );
    if (merge) sheet['!merges'] = [{ s: { r: merge.top, c: merge.left }, e: { r: merge.bottom, c: merge.right } }];
    spreadsheet.utils.book_append_sheet(book, sheet, name);
  }
  book.Workbook = { Sheets: sheets.map(({ isHidden }) => ({ Hidden: isHidden ? 1 : 0 })) };
  return new Uint8Array(spreadsheet.write(book, { type: 'array', bookType: 'xlsx', bookSST: true, compression: true }));
}

function toSpreadsheetCell(value: Value): unknown {
  if (!isFormula(value)) return value;
  return { t: typeof value.result === 'string' ? 's' : 'n', v: value.result, f: value.formula };
}

function isFormula(value: Value): value is Formula {
  return typeof value === 'object' && value !== null && 'formula' in value;
}
