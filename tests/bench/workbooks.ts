import { strToU8, zipSync } from 'fflate';
import { readFile } from '../../src/io/read-file.ts';
import { makeList, type Repetition } from './lists.ts';

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const LINKS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const TYPES = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** The list of the bench as bytes of a workbook, written as spreadsheets write it: texts in one table, numbers as numbers. */
export function makeWorkbook(rows: number, repetition: Repetition): Uint8Array {
  const table = readFile(makeList(rows, repetition).list, 'list.csv').tables[0]?.rows ?? [];
  const texts = new Map<string, number>();
  const data = table.map(({ number, cells }) => rowOf(number, cells, texts)).join('');
  const items = [...texts.keys()].map((text) => `<si><t>${escapeXml(text)}</t></si>`).join('');
  const parts = {
    ...FRAME,
    'xl/sharedStrings.xml': `<sst xmlns="${MAIN}" uniqueCount="${texts.size}">${items}</sst>`,
    'xl/worksheets/sheet1.xml': `<worksheet xmlns="${MAIN}"><dimension ref="A1:Y${table.length}"/><sheetData>${data}</sheetData></worksheet>`,
  };
  return zipSync(Object.fromEntries(Object.entries(parts).map(([name, xml]) => [name, strToU8(HEAD + xml)])));
}

function rowOf(number: number, cells: readonly string[], texts: Map<string, number>): string {
  const written = cells.map((text, column) => {
    const at = String.fromCharCode(65 + column) + number;
    if (text === '') return `<c r="${at}" s="1"/>`;
    if (/^\d+(?:\.\d+)?$/.test(text)) return `<c r="${at}" s="0"><v>${Number(text)}</v></c>`;
    const index = texts.get(text) ?? texts.size;
    texts.set(text, index);
    return `<c r="${at}" s="1" t="s"><v>${index}</v></c>`;
  });
  return `<row r="${number}" spans="1:${cells.length}">${written.join('')}</row>`;
}

function escapeXml(text: string): string {
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
}

/** All parts but texts and sheet. */
const FRAME = {
  '[Content_Types].xml': `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>${[
    ['workbook', 'sheet.main'],
    ['worksheets/sheet1', 'worksheet'],
    ['styles', 'styles'],
    ['sharedStrings', 'sharedStrings'],
  ]
    .map(([part, type]) => `<Override PartName="/xl/${part}.xml" ContentType="${TYPES}.${type}+xml"/>`)
    .join('')}</Types>`,
  '_rels/.rels': linksTo([['officeDocument', 'xl/workbook.xml']]),
  'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${LINKS}"><sheets><sheet name="List" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  'xl/_rels/workbook.xml.rels': linksTo([
    ['worksheet', 'worksheets/sheet1.xml'],
    ['styles', 'styles.xml'],
    ['sharedStrings', 'sharedStrings.xml'],
  ]),
  'xl/styles.xml': `<styleSheet xmlns="${MAIN}"><fonts count="1"><font/></fonts><fills count="2"><fill/><fill/></fills><borders count="1"><border/></borders><cellStyleXfs count="1"><xf/></cellStyleXfs><cellXfs count="2"><xf numFmtId="0" xfId="0"/><xf numFmtId="49" xfId="0"/></cellXfs></styleSheet>`,
};

function linksTo(targets: readonly (readonly [string, string])[]): string {
  const links = targets.map(
    ([type, target], at) => `<Relationship Id="rId${at + 1}" Type="${LINKS}/${type}" Target="${target}"/>`,
  );
  return `<Relationships xmlns="${PACKAGE}/relationships">${links.join('')}</Relationships>`;
}
