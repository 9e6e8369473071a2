import { GENERAL, type NumberFormat, parseNumberFormat } from './number-format.ts';
import { XmlScanner } from './scan.ts';

/** Formats that every spreadsheet knows by number (ECMA-376 part 1, 18.8.30, from memory); 0 is General, 49 is text. */
const BUILT_IN: Readonly<Record<number, string>> = {
  1: '0',
  2: '0.00',
  3: '#,##0',
  4: '#,##0.00',
  9: '0%',
  10: '0.00%',
  11: '0.00E+00',
  12: '# ?/?',
  13: '# ??/??',
  37: '#,##0',
  38: '#,##0',
  39: '#,##0.00',
  40: '#,##0.00',
  46: '[h]:mm:ss',
  48: '##0.0E+0',
};

/** As long as a spreadsheet lets a format be (ECMA-376 part 1, from memory). */
const LONGEST_CODE = 255;

/** Built-in dates and times, the East Asian ones included. */
const BUILT_IN_DATES: readonly (readonly [number, number])[] = [
  [14, 22],
  [27, 36],
  [45, 47],
  [50, 58],
];

/** Number format of each cell style, by the index that cells refer to. Empty when the workbook has no styles. */
export function readStyles(xml: string): NumberFormat[] {
  const scanner = new XmlScanner(xml);
  const custom = new Map<number, string>();
  const known = new Map<number, NumberFormat>();
  const formats: NumberFormat[] = [];
  let isInCellFormats = false;
  while (scanner.next()) {
    if (scanner.name === 'cellXfs') isInCellFormats = !scanner.isClose && !scanner.isEmpty;
    if (scanner.isClose) continue;
    if (scanner.name === 'numFmt') custom.set(numberOf(scanner, 'numFmtId'), scanner.attribute('formatCode') ?? '');
    if (scanner.name !== 'xf' || !isInCellFormats) continue;
    const id = numberOf(scanner, 'numFmtId');
    const format = known.get(id) ?? formatOf(id, custom);
    known.set(id, format);
    formats.push(format);
  }
  return formats;
}

function formatOf(id: number, custom: ReadonlyMap<number, string>): NumberFormat {
  const code = custom.get(id) ?? BUILT_IN[id];
  if (code !== undefined) return parseNumberFormat(code.slice(0, LONGEST_CODE));
  const isDate = BUILT_IN_DATES.some(([first, last]) => id >= first && id <= last);
  return isDate ? { kind: 'date', isElapsed: false } : GENERAL;
}

function numberOf(scanner: XmlScanner, attribute: string): number {
  return Number(scanner.attribute(attribute) ?? 0);
}
