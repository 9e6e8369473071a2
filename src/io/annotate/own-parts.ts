import type { Worksheet } from 'exceljs';
import { strFromU8, unzipSync } from 'fflate';
import type { AuditedList } from '../../core/model/audited.ts';
import { font, paintOwnHeading, QUIET } from '../write/look.ts';
import { listRows, type OwnColumn, writeOwnCells } from '../write/own-columns.ts';
import type { OwnSheet } from '../write/workbook.ts';
import { columnOf } from '../xlsx/address.ts';

/** Characters beyond the longest text, for indents and bold type. */
const ROOM = 3;
const WIDEST = 60;

/** A cell of ours as XML without prefixes, its style an index into our own styles. */
export interface OwnCell {
  readonly column: number;
  readonly xml: string;
}

/** What we put into a workbook, as XML without prefixes. Texts stand in their cells, styles are indexes into `styles`. */
export interface OwnParts {
  readonly styles: string;
  /** Our cells beside the list, by row. */
  readonly cells: ReadonlyMap<number, readonly OwnCell[]>;
  /** Widths of our columns, in characters. */
  readonly widths: readonly number[];
  /** Our sheets in order. */
  readonly sheets: readonly { readonly name: string; readonly xml: string }[];
}

/** Writes our columns from a 0-based column on, sentences under the list by row, and our sheets with the library that writes new workbooks, and takes the result apart. */
export async function writeOwnParts(
  list: AuditedList,
  start: number,
  own: readonly OwnColumn[],
  notes: ReadonlyMap<number, string>,
  sheets: readonly OwnSheet[],
): Promise<OwnParts> {
  const { default: exceljs } = await import('exceljs');
  const workbook = new exceljs.Workbook();
  const sheet = workbook.addWorksheet('List');
  for (const [index, { heading }] of own.entries()) {
    const cell = sheet.getRow(list.headerRow).getCell(start + 1 + index);
    cell.value = heading;
    paintOwnHeading(cell);
  }
  for (const row of listRows(list)) writeOwnCells(sheet.getRow(row.row), start + 1, row, own);
  const widths = own.map((_, index) => flatten(sheet, start + 1 + index));
  for (const [row, text] of notes) {
    const cell = sheet.getRow(row).getCell(start + 1);
    cell.value = text;
    cell.font = font({ italic: true, colour: QUIET });
  }
  for (const { write } of sheets) write(workbook.addWorksheet());
  const taken = takeApart(unzipSync(new Uint8Array(await workbook.xlsx.writeBuffer())));
  return {
    styles: taken.styles,
    cells: cellsOf(taken.sheet(1)),
    widths,
    sheets: sheets.map(({ name }, index) => ({ name, xml: taken.sheet(index + 2) })),
  };
}

/** Rows keep the height that the sender gave them, so nothing wraps: the column is made wide enough, within reason. */
function flatten(sheet: Worksheet, column: number): number {
  let widest = 0;
  sheet.getColumn(column).eachCell((cell) => {
    cell.alignment = { ...cell.alignment, wrapText: false };
    widest = Math.max(widest, cell.text.length);
  });
  return Math.min(widest + ROOM, WIDEST);
}

function takeApart(parts: Readonly<Record<string, Uint8Array>>) {
  const part = (name: string) => strFromU8(parts[name] ?? new Uint8Array());
  const strings = [...part('xl/sharedStrings.xml').matchAll(/<si>(.*?)<\/si>/gs)].map(([, text = '']) => text);
  const sheet = (number: number) => inlineStrings(part(`xl/worksheets/sheet${number}.xml`), strings);
  return { styles: part('xl/styles.xml'), sheet };
}

/** Texts put into the cells that refer to the table of texts. */
function inlineStrings(xml: string, strings: readonly string[]): string {
  return xml.replace(
    /<c ([^>]*) t="s"><v>(\d+)<\/v><\/c>/g,
    (_, attributes: string, index: string) =>
      `<c ${attributes} t="inlineStr"><is>${strings[Number(index)] ?? ''}</is></c>`,
  );
}

/** Filled cells by row. */
function cellsOf(xml: string): ReadonlyMap<number, readonly OwnCell[]> {
  const rows = new Map<number, OwnCell[]>();
  for (const [cell, reference = ''] of xml.matchAll(/<c r="([A-Z]+\d+)"[^>]*[^/]>.*?<\/c>/gs)) {
    const row = Number(/\d+$/.exec(reference)?.[0]);
    rows.set(row, [...(rows.get(row) ?? []), { column: columnOf(reference), xml: cell }]);
  }
  return rows;
}
