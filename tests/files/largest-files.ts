import { oneSheet, row, utf8, zip } from './make.ts';

const LAST_ROW = 1_048_576;
const HEAD = row(1, 'Part', 'Qty') + row(2, 'Nut', 4);

/** Files whose size or shape could take the reader's memory or time, made when asked for. */
export const largestFiles: Readonly<Record<string, () => Uint8Array>> = {
  'a million styled but empty rows': () => oneSheet(HEAD + ghostRows(LAST_ROW)),
  'strays in the last row and column': () =>
    oneSheet(`${HEAD}<row r="${LAST_ROW}"><c r="XFD${LAST_ROW}"><v>1</v></c></row>`, {
      after: `<mergeCells><mergeCell ref="C1:XFD${LAST_ROW - 1}"/></mergeCells><dataValidations><dataValidation sqref="B2:D${LAST_ROW}"/></dataValidations>`,
    }),
  'a stray at the far right of every row': () =>
    oneSheet(HEAD + repeat(50_000, (at) => `<row r="${at + 3}"><c r="XFD${at + 3}"><v>1</v></c></row>`)),
  'a hundred thousand rows': () => oneSheet(HEAD + repeat(100_000, (at) => row(at + 3, 'N-4', 4, 'Al 5052', 1.5))),
  'a part that unpacks a thousandfold': () =>
    zip({ 'xl/workbook.xml': '<workbook/>', 'xl/worksheets/sheet1.xml': new Uint8Array(20_000_000) }),
  'a text of half a million rows': () => utf8(`Part,Qty,Note\n${'N-4,4,"flush, both sides"\n'.repeat(500_000)}`),
  'a million rows of commas': () => utf8(`Part,Qty\nNut,4\n${',,,,\n'.repeat(LAST_ROW)}`),
  'quotes that never close in every row': () => utf8(`Part,Size,Qty\n${'Plate,"6 in,2\n'.repeat(300_000)}`),
  'one quote that never closes, before a long text': () => utf8(`Part,Qty\n"Nut,4\n${'Nut,4\n'.repeat(500_000)}`),
};

function ghostRows(last: number): string {
  return repeat(last - 2, (at) => `<row r="${at + 3}" s="1" ht="15"><c r="A${at + 3}" s="1"/></row>`);
}

function repeat(count: number, make: (at: number) => string): string {
  return Array.from({ length: count }, (_, at) => make(at)).join('');
}
