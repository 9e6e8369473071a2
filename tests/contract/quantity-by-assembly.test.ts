import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { rollUpPurchase } from '../../src/core/rollup/purchase.ts';
import { askSender } from '../../src/core/rollup/questions.ts';
import { editCells, openSession } from '../../src/worker/session.ts';
import { textFile } from './list-file.ts';

const PART = 'clinch nut;M4;carbon-steel-hardened;HRC 32;1;5.6;0.08;0;9';
const CATALOGUE = importCatalogue({
  ...textFile([
    'partNumber;kind;thread;material;hardnessMin;sheetMinMm;holeMm;holePlusMm;holeMinusMm;edgeMm',
    `A-1;${PART}`,
  ]),
  file: 'parts.csv',
});
const BASIS = createBasis([CATALOGUE], DEFAULT_SHOP);
const SHEET = 'DC01;1.5;5.6;12';
const LIST = textFile([
  'P/N;Description;Qty;DR-1;FR-1;Material;Thickness (mm);Hole (mm);Edge (mm)',
  'DR-1;Door;2;;;;;;',
  'FR-1;Frame;1;;;;;;',
  `A-1;Clinch nut M4;10;4;6;${SHEET}`, // row 4
  `A-1;Clinch nut M4;;4;6;${SHEET}`, // row 5: 4 in each of 2 doors, 6 in the frame
  `A-1;Clinch nut M4;as drawn;4;;${SHEET}`, // row 6
  `A-1;Clinch nut M4;0;;3;${SHEET}`, // row 7
  `A-1;Clinch nut M4;;;;${SHEET}`, // row 8
  `A-1;Clinch nut M4;as drawn;;;${SHEET}`, // row 9
  `A-1;Clinch nut M4;;some;2;${SHEET}`, // row 10
]);

const said = (lines: ReturnType<typeof auditFile>['lines']) =>
  Object.fromEntries(
    lines.map(({ row, findings }) => {
      const found = findings.find(({ rule }) => rule === 'list/quantity');
      return [row, [found?.outcome, found?.says]];
    }),
  );

describe('the quantity of a row that columns of single assemblies count', () => {
  const list = auditFile(LIST, BASIS);

  it('is said as it is ordered', () => {
    expect(said(list.lines)).toEqual({
      4: ['holds', 'whole'],
      5: ['holds', 'counted'],
      6: ['note', 'otherwise'],
      7: ['note', 'otherwise'],
      8: ['note', 'blank'],
      9: ['note', 'unreadable'],
      10: ['note', 'blank'],
    });
    const text = (row: number) =>
      list.lines.find((line) => line.row === row)?.findings.find(({ rule }) => rule === 'list/quantity')?.text;
    expect(text(5)).toBe('14 pieces, by the columns of single assemblies.');
    expect(text(6)).toMatch(/“as drawn” is no number.*give 8, and those are ordered/);
  });

  it('stays out of the purchase exactly where the finding says so', () => {
    const { lines, uncounted } = rollUpPurchase(list, BASIS.parts);
    expect(lines.flatMap(({ rows }) => rows)).toEqual([4, 5, 6, 7]);
    expect(lines[0]?.perBuild).toBe(14 + 14 + 8 + 3);
    expect(uncounted.flatMap(({ rows }) => rows.map(({ row }) => row))).toEqual([8, 9, 10]);
    const out = list.lines.filter(({ findings }) => findings.some(({ text }) => /stays out/.test(text)));
    expect(out.map(({ row }) => row)).toEqual([8, 9, 10]);
    expect(
      askSender(list)
        .filter(({ text }) => /quantity/i.test(text))
        .flatMap(({ rows }) => rows),
    ).toEqual([8, 10, 9]);
  });

  it('is said anew when a number on the way is edited', () => {
    const session = openSession(LIST, [CATALOGUE], DEFAULT_SHOP, {}, () => {});
    const { session: after, rows } = editCells(session, [{ row: 2, column: 2, text: 'several' }]);
    const changed = rows.flatMap((row) => ('line' in row ? row.line : []));
    expect(said(changed)).toMatchObject({ 5: ['note', 'blank'], 6: ['note', 'unreadable'] });
    const back = editCells(after, [{ row: 2, column: 2, text: '2' }]).session;
    expect(said(back.audited.lines)).toEqual(said(list.lines));
  });
});
