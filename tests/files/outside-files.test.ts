import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ExcelJS from 'exceljs';
import { describe, expect, it } from 'vitest';
import { readFile } from '../../src/io/read-file.ts';

const SPECTRUM = join(import.meta.dirname, '../../node_modules/csv-spectrum');
/** location_coordinates: its expected table is one object instead of a list, and its telephone number is another. */
const FAULTY = new Set(['location_coordinates']);
const NAMES = readdirSync(join(SPECTRUM, 'csvs')).map((name) => name.replace(/\.csv$/, ''));

describe('published delimited files (csv-spectrum 2.0.0)', () => {
  it.each(NAMES.filter((name) => !FAULTY.has(name)))('%s', (name) => {
    const wanted: Record<string, string>[] = JSON.parse(readFileSync(join(SPECTRUM, 'json', `${name}.json`), 'utf8'));
    const read = readFile(readFileSync(join(SPECTRUM, 'csvs', `${name}.csv`)), `${name}.csv`);
    const [headings, ...rows] = read.tables[0]!.rows.map((row) => row.cells);
    expect(headings).toEqual(Object.keys(wanted[0]!));
    expect(rows).toEqual(wanted.map((record) => Object.values(record)));
    expect(read.notices).toEqual([]);
  });

  it('covers eleven of the twelve', () => expect(NAMES.filter((name) => !FAULTY.has(name))).toHaveLength(11));
});

describe('a workbook written by another library', () => {
  it('reads back cell for cell', async () => {
    const book = new ExcelJS.Workbook();
    const sheet = book.addWorksheet('Parts & more');
    sheet.addRow(['Part', 'Größe', 'Qty', 'Note']);
    sheet.addRow(['Nut <M4>', 'M4 ⌀5.6', 4, '"flush"\nboth sides']);
    sheet.addRow(['007', '1/4"', 0.5, { richText: [{ text: 'two ' }, { font: { bold: true }, text: 'runs' }] }]);
    sheet.addRow([]);
    sheet.addRow(['Stud', true, { formula: 'C2*2', result: 8 }, new Date(Date.UTC(2024, 2, 5))]);
    sheet.getCell('C3').numFmt = '0.00" mm"';
    sheet.getCell('A7').value = 'Total';
    sheet.mergeCells('A7:B7');
    sheet.getCell('C7').value = { formula: 'SUM(C2:C5)' };
    sheet.getRow(3).hidden = true;
    book.addWorksheet('Prices', { state: 'hidden' }).addRow(['Part', 1.25]);

    const read = readFile(new Uint8Array(await book.xlsx.writeBuffer()), 'list.xlsx');
    expect(read.tables).toEqual([
      {
        name: 'Parts & more',
        rows: [
          { number: 1, cells: ['Part', 'Größe', 'Qty', 'Note'] },
          { number: 2, cells: ['Nut <M4>', 'M4 ⌀5.6', '4', '"flush"\nboth sides'] },
          { number: 3, cells: ['007', '1/4"', '0.50 mm', 'two runs'], hidden: true },
          { number: 5, cells: ['Stud', 'TRUE', '8', '2024-03-05'], flags: { 3: 'date' } },
          { number: 7, cells: ['Total', '', ''], flags: { 1: 'merged', 2: 'not-calculated' } },
        ],
      },
      { name: 'Prices', hidden: true, rows: [{ number: 1, cells: ['Part', '1.25'] }] },
    ]);
    expect(read.notices.map((notice) => notice.sheet)).toEqual(['Parts & more', 'Parts & more']);
  });
});
