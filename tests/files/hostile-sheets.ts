import { HEAD, type HostileFiles, LAST_COLUMN, LAST_ROW, LIST, listWith, noise, repeat, text } from './hostile-file.ts';
import { oneSheet, row } from './make.ts';

/** Sheets. */
export const HOSTILE_SHEETS: HostileFiles = {
  'a dimension of the whole sheet': { make: () => oneSheet(LIST, { before: `<dimension ref="A1:XFD${LAST_ROW}"/>` }) },
  'a million rows of style only': {
    make: () =>
      oneSheet(LIST + repeat(LAST_ROW - 2, (at) => `<row r="${at + 3}" s="1" ht="15"><c r="A${at + 3}" s="1"/></row>`)),
  },
  'a cell at the far end': {
    make: () => oneSheet(`${LIST}<row r="${LAST_ROW}"><c r="XFD${LAST_ROW}"><v>1</v></c></row>`),
  },
  'every column of a row': { make: () => oneSheet(`${LIST}<row r="3">${'<c><v>7</v></c>'.repeat(LAST_COLUMN)}</row>`) },
  'every column as a heading, over some rows': {
    make: () =>
      oneSheet(
        `<row r="1">${repeat(LAST_COLUMN, (at) => text(['Qty', 'Material', 'Thickness', 'Part number', 'Hole'][at % 5] + (at > 4 ? ` ${at}` : '')))}</row>` +
          repeat(20, (at) => `<row r="${at + 2}">${'<c><v>7</v></c>'.repeat(LAST_COLUMN)}</row>`),
      ),
  },
  'a formula without result in every column': {
    make: () =>
      oneSheet(`${LIST}${repeat(20, (at) => `<row r="${at + 3}">${'<c><f>1</f></c>'.repeat(LAST_COLUMN)}</row>`)}`),
  },
  'cells as long as cells may be': { make: () => listWith('M4 x 10, '.repeat(3640)) },
  'a cell far longer than cells may be': { make: () => listWith(noise(5_000_000)) },
  'ten million empty cells': {
    make: () => oneSheet(`${LIST}${repeat(100_000, (at) => `<row r="${at + 3}">${'<c/>'.repeat(100)}</row>`)}`),
  },
  'ten thousand merged blocks over everything': {
    make: () =>
      oneSheet(LIST + repeat(2000, (at) => row(at + 3, 'x', 1)), {
        after: `<mergeCells>${repeat(10_000, (at) => `<mergeCell ref="A${at + 3}:XFD${LAST_ROW}"/>`)}</mergeCells>`,
      }),
  },
  'a million merged blocks over everything': {
    make: () =>
      oneSheet(LIST + repeat(2000, (at) => row(at + 3, 'x', 1)), {
        after: `<mergeCells>${repeat(1_000_000, (at) => `<mergeCell ref="A${(at % 9) + 3}:XFD${LAST_ROW - at}"/>`)}</mergeCells>`,
      }),
    says: /spreads over millions of cells/,
  },
  'a million spans of hidden columns': {
    make: () =>
      oneSheet(`${LIST}<row r="3"><c r="XFD3"><v>1</v></c></row>`, {
        before: `<cols>${repeat(1_000_000, (at) => `<col min="${(at % 90) + 9}" max="${16_384 - (at % 999)}" hidden="1"/>`)}</cols>`,
      }),
  },
  'a table of texts that counts wrong': {
    make: () =>
      oneSheet(row(1, '#0', '#1') + row(2, '#2', '#4000000000'), {
        strings: ['Part number', 'Qty', 'NUT-M4-10-CS'],
        change: (parts) => ({
          ...parts,
          'xl/sharedStrings.xml': (parts['xl/sharedStrings.xml'] ?? '').replace(
            '<sst',
            '<sst count="-1" uniqueCount="4000000000"',
          ),
        }),
      }),
  },
  'seven million texts': {
    make: () =>
      oneSheet(row(1, '#0') + row(2, '#1'), {
        change: (parts) => ({
          ...parts,
          'xl/sharedStrings.xml': `<sst>${repeat(100_000, (at) => `<si><t>${at.toString(36)}</t></si>`).repeat(70)}</sst>`,
        }),
      }),
    says: /more than .* texts/,
  },
  'more filled rows than a list needs': {
    make: () => oneSheet(HEAD + repeat(260_000, (at) => `<row r="${at + 2}"><c><v>${at}</v></c></row>`)),
    says: /more than 250,000 filled rows/,
  },
  'long texts in another script, inline': {
    make: () => oneSheet(HEAD + repeat(3000, (at) => `<row r="${at + 2}">${text(`螺母${noise(1200, at)}`)}</row>`)),
  },
};
