import { describe, expect, it } from 'vitest';
import { findHeader, findList } from '../../src/core/intake/find-header.ts';
import type { RawFile, RawTable } from '../../src/core/model/raw.ts';

function tableOf(name: string, lines: readonly string[], hidden = false): RawTable {
  const rows = lines.map((line, index) => ({ number: index + 1, cells: line.split(';') }));
  return { name, rows: rows.filter(({ cells }) => cells.some((cell) => cell !== '')), ...(hidden ? { hidden } : {}) };
}

const fileOf = (...tables: readonly RawTable[]): RawFile => ({
  file: 'list.xlsx',
  format: 'xlsx',
  tables,
  notices: [],
});
const headerRow = (lines: readonly string[]) => findHeader(tableOf('', lines))?.row.number ?? null;

const LIST = ['Item;P/N;Description;Qty;Matl;Thk', '1;NUT-M4-10-CS;Nut;4;CRS;1.5', '2;STUD-M4-10-CS;Stud;4;CRS;1.5'];
const blank = (count: number) => Array.from({ length: count }, () => ';');

describe('the row of headings', () => {
  it.each([0, 1, 3, 10, 17, 28])('is found below %d other rows', (count) => {
    const above = Array.from({ length: count }, (_, n) => `Recorder cabinet, line ${n};;;`);
    expect(headerRow([...above, ...LIST])).toBe(count + 1);
    expect(headerRow([...blank(count), ...LIST])).toBe(count + 1);
  });

  it('is not the title block of labels and values', () =>
    expect(headerRow(['Part number;PNL-100;Material;5052-H32;Thickness;.060', 'Rev;B;Qty;12', ';;', ...LIST])).toBe(4));
  it('is the first where headings are repeated', () => expect(headerRow([...LIST, ...LIST])).toBe(1));
  it('may carry a total at its end', () =>
    expect(headerRow(['P/N;Qty;Matl;Source;Total:;226.34', 'NUT;4;CRS;x;;'])).toBe(1));
  it('may hold columns of the sender’s own', () =>
    expect(headerRow(['ECO;Done;P/N;Checked by;Qty;Torque wrench', ';;NUT;;4;'])).toBe(1));
  it('may have line feeds, full-width letters and blanks', () =>
    expect(headerRow([';Part\nNumber ;Ｑｔｙ', ';NUT;4'])).toBe(1));
  it('may be a single column', () => expect(headerRow(['Part number', 'NUT-M4-10-CS'])).toBe(1));
  it('may be in another language', () =>
    expect(headerRow(['Stückliste;;', 'Teilenummer;Menge;Werkstoff', 'NUT;4;DC01'])).toBe(2));

  it.each([
    ['data alone', ['NUT-M4-10-CS;4;CRS;1.5', 'STUD-M4;4;CRS;1.5']],
    ['prose', ['Dear all, please find the quantity and material below;', 'Kind regards;']],
    ['other headings', ['Name of ship;Port;Captain', 'Anna;Hull;Smith']],
    ['nothing', []],
  ])('is not found in %s', (_, lines) => expect(headerRow(lines)).toBeNull());
});

describe('the sheet that is the list', () => {
  const list = tableOf('Hardware', LIST);
  const chosen = (...tables: readonly RawTable[]) => findList(fileOf(...tables))?.table.name ?? null;

  it.each([
    tableOf('README', ['This file lists the hardware.', 'Part number;what it is', 'Qty;how many']),
    tableOf('Disclaimer', ['No warranty']),
    tableOf('Export Summary', ['Sheet;Part number;Qty', 'Hardware;2;8']),
    tableOf('Info', ['Item;Description', 'Author;Alder Reach', 'Rev;B']),
    tableOf('Sheet3', []),
    tableOf('Cover', ['Part number;PNL-100;Material;5052-H32;Thickness;1.5']),
  ])('is not $name', (aside) => {
    expect(chosen(aside, list)).toBe('Hardware');
    expect(chosen(list, aside)).toBe('Hardware');
  });

  it('is the fuller of two', () =>
    expect(
      chosen(tableOf('Old', LIST.slice(0, 2)), tableOf('New', [...LIST, ...LIST.slice(1), ...LIST.slice(1)])),
    ).toBe('New'));
  it('is not hidden, unless all are', () => {
    expect(chosen(tableOf('Hidden', [...LIST, ...LIST.slice(1)], true), list)).toBe('Hardware');
    expect(chosen(tableOf('Hidden', LIST, true))).toBe('Hidden');
  });
  it('names the others that read like lists', () => {
    const found = findList(fileOf(list, tableOf('Door', LIST), tableOf('Notes', ['Nothing'])));
    expect(found?.others.map(({ name }) => name)).toEqual(['Door']);
  });
  it('is none where there is none', () => expect(chosen(tableOf('A', ['x;y']))).toBeNull());
});
