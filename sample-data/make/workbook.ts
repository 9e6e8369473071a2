import ExcelJS from 'exceljs';
import { unzipSync, zipSync } from 'fflate';
import { HEADINGS_B, revisionB, type SheetRow } from './revision-b.ts';

const WIDTHS = [7, 30, 7, 9, 15, 11, 15, 12, 26, 50, 24];
const HEADER_ROW = 4;
/** Item, quantity, thickness, hole, edge. Thickness and hole hold text beside numbers: "18 ga", "4.35 ±0.1". */
const NUMBER_COLUMNS = [1, 3, 6, 7, 8];
const RIGHT = { horizontal: 'right', vertical: 'middle', indent: 1 } as const;
const FONT = { name: 'Arial', size: 10 } as const;
/** Written into the file in place of the clock, so that two runs give the same bytes. */
const DAY = new Date('2025-03-14T08:00:00Z');

const TITLES = [
  'River-level recorder cabinet: hardware',
  'Alder Reach Hydrology (a made-up firm). All data invented for demonstration: not for production',
  'Revision B, 2025-03-14. Millimetres unless the cell says otherwise. Quantities for one cabinet',
];

const NOTES = [
  'About this list',
  'Everything in this workbook is invented for demonstration: the firm, the cabinet, the part numbers and every size. Nothing here is fit for production.',
  'The cabinet holds the recorder of a river-level station: a float gauge, a logger, a battery and a radio. It is pressed together from six panels, RC-01 to RC-06, and three small brackets.',
  'Part numbers are plain words: kind, thread, minimum sheet in tenths of a millimetre, length where there is one, and material (CS hardened carbon steel, S3 300-series stainless, S4 hardened 400-series stainless, AL aluminium, PH precipitation-hardened stainless).',
  'The list has faults on purpose: pairs of metals that do not hold, sheet that is too thin, holes off their size, facts that are missing.',
];

/** The bytes of revision B as a workbook with the sheets Hardware and Notes. */
export async function workbookBytes(): Promise<Uint8Array> {
  const workbook = new ExcelJS.Workbook();
  workbook.creator = 'Alder Reach Hydrology (made up)';
  workbook.lastModifiedBy = workbook.creator;
  workbook.created = DAY;
  workbook.modified = DAY;
  addHardware(workbook);
  addNotes(workbook);
  return withFixedDates(new Uint8Array(await workbook.xlsx.writeBuffer()));
}

function addHardware(workbook: ExcelJS.Workbook): void {
  const sheet = workbook.addWorksheet('Hardware', {
    views: [{ state: 'frozen', xSplit: 2, ySplit: HEADER_ROW }],
    pageSetup: {
      paperSize: 9,
      margins: { left: 0.4, right: 0.4, top: 0.4, bottom: 0.4, header: 0.2, footer: 0.2 },
      orientation: 'landscape',
      fitToPage: true,
      fitToWidth: 1,
      fitToHeight: 0,
      printTitlesRow: `${HEADER_ROW}:${HEADER_ROW}`,
    },
  });
  sheet.columns = WIDTHS.map((width) => ({ width }));
  addTitles(sheet);
  addHeadings(sheet);
  const rows = revisionB();
  rows.forEach((row, index) => {
    addRow(sheet, row, index + 1);
  });
  addTotal(sheet, rows);
  sheet.autoFilter = {
    from: { row: HEADER_ROW, column: 1 },
    to: { row: HEADER_ROW + rows.length, column: WIDTHS.length },
  };
}

function addTitles(sheet: ExcelJS.Worksheet): void {
  TITLES.forEach((title, index) => {
    const row = sheet.addRow([title]);
    row.font = index === 0 ? { ...FONT, bold: true, size: 14 } : { ...FONT, color: { argb: 'FF5C666D' } };
  });
}

function addHeadings(sheet: ExcelJS.Worksheet): void {
  const row = sheet.addRow([...HEADINGS_B]);
  row.height = 20;
  row.font = { ...FONT, bold: true };
  row.alignment = { vertical: 'middle' };
  alignNumbers(row);
  row.eachCell((cell) => {
    cell.fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFE6EEF5' } };
    cell.border = { bottom: { style: 'thin', color: { argb: 'FF1F4E79' } } };
  });
}

function addRow(sheet: ExcelJS.Worksheet, { isPanel, cells }: SheetRow, item: number): void {
  // A blank stays an empty cell: an empty text would count as filled.
  const row = sheet.addRow([item, ...cells.map((cell) => (cell === '' ? null : cell))]);
  row.font = { ...FONT, bold: isPanel };
  row.alignment = { vertical: 'middle' };
  for (let column = 1; column <= WIDTHS.length; column += 1) {
    const cell = row.getCell(column);
    cell.border = { bottom: { style: 'hair', color: { argb: 'FFD9D6CD' } } };
    if (isPanel) cell.fill = { type: 'pattern', pattern: 'solid', fgColor: { argb: 'FFF6F5F1' } };
  }
  alignNumbers(row);
}

function addTotal(sheet: ExcelJS.Worksheet, rows: readonly SheetRow[]): void {
  const first = HEADER_ROW + 1;
  const result = rows.reduce((sum, { qty }) => sum + qty, 0);
  const row = sheet.addRow([null, 'Total', { formula: `SUM(C${first}:C${HEADER_ROW + rows.length})`, result }]);
  row.font = { ...FONT, bold: true };
  alignNumbers(row);
}

function alignNumbers(row: ExcelJS.Row): void {
  for (const column of NUMBER_COLUMNS) row.getCell(column).alignment = RIGHT;
}

function addNotes(workbook: ExcelJS.Workbook): void {
  const sheet = workbook.addWorksheet('Notes', {
    pageSetup: { paperSize: 9, fitToPage: true, fitToWidth: 1, fitToHeight: 0 },
  });
  sheet.columns = [{ width: 76 }];
  NOTES.forEach((note, index) => {
    const row = sheet.addRow([note]);
    row.font = index === 0 ? { ...FONT, bold: true, size: 14 } : FONT;
    row.alignment = { wrapText: true, vertical: 'top' };
    row.height = index === 0 ? 22 : 14 * Math.ceil(note.length / 84) + 8;
  });
}

/** Zip entries carry the time of writing, in local time; with one fixed time the same content gets the same bytes anywhere. */
function withFixedDates(bytes: Uint8Array): Uint8Array {
  return zipSync(unzipSync(bytes), { mtime: new Date(2025, 2, 14, 8), level: 6 });
}
