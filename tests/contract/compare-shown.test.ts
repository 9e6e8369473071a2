import { describe, expect, it } from 'vitest';
import { carriedOver, deedOfCarried } from '../../src/app/compare-deeds.ts';
import { compareLists } from '../../src/core/compare/compare-lists.ts';
import { compareReport } from '../../src/core/compare/compare-report.ts';
import { concede } from '../../src/core/concede/standing.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import type { Concession } from '../../src/core/model/concession.ts';
import { writeReportCsv } from '../../src/io/write/report-csv.ts';
import { toCompared } from '../../src/worker/compared.ts';
import { HEADINGS, judge, makeList } from './compare-list.ts';

const COLUMNS = ['Part number', 'Panel', 'Material', 'Thickness (mm)', 'Edge (mm)', 'Qty'];
const NUT = 'NUT-M4-10-CS;P1;DC01;1.5;20;4';
const STUD = 'STUD-M4-10-12-CS;P2;DC01;1.5;20;6';
const WHY = { reason: 'fixture holds the edge', by: 'R. Alder', date: '2025-03-14' };

/** A list of lines of cells parted by `;`, rows from 2 on. */
function listOf(lines: readonly string[], headings = COLUMNS, shop = {}): AuditedList {
  const rows = lines.map((line, at) => {
    const texts = line.split(';');
    return { id: `n${at}`, cells: Object.fromEntries(headings.map((heading, place) => [heading, texts[place] ?? ''])) };
  });
  return judge({ headings, rows, titles: [] }, shop);
}

function accept({ lines }: AuditedList, row: number, rule: string): Concession {
  const line = lines.find((one) => one.row === row);
  const finding = line?.findings.find((one) => one.rule === rule);
  const concession = line && finding && concede(line, finding, WHY);
  if (!concession) throw new Error(`${rule} of row ${row} cannot be accepted`);
  return concession;
}

describe('what is newly wrong', () => {
  const wrong = (before: AuditedList, after: AuditedList) => compareLists(before, after).newlyWrong;

  it('is a row whose verdict got worse, and none whose verdict got better', () => {
    const [thin, thick] = [listOf([NUT.replace('1.5', '0.5'), STUD]), listOf([NUT, STUD])];
    expect(wrong(thick, thin)).toMatchObject([
      { before: { row: 2 }, after: { row: 2 }, verdictBefore: 'holds', verdictAfter: 'fails', cellsChanged: true },
    ]);
    expect(wrong(thick, thin)[0]?.why).toMatch(/sheet/i);
    expect(wrong(thin, thick)).toEqual([]);
  });

  it('is a new row that does not hold, and no new row that holds', () => {
    const found = wrong(listOf([STUD]), listOf([STUD, NUT.replace('1.5', '0.5'), 'NUT-M5-15-CS;P2;DC01;1.5;20;4']));
    expect(found).toMatchObject([{ before: null, after: { row: 3 }, verdictBefore: null, verdictAfter: 'fails' }]);
  });

  it('is a row that was not judged before and does not hold', () => {
    const headings = [...COLUMNS, 'Description'];
    const was = listOf(['ZZ-1;P1;DC01;1.5;20;4;cable tie', `${STUD};`], headings);
    const is = listOf(['ZZ-1;P1;DC01;1.5;20;4;clinch nut', `${STUD};`], headings);
    expect(wrong(was, is)).toMatchObject([{ before: { row: 2 }, verdictBefore: null, verdictAfter: 'unknown' }]);
    expect(wrong(is, was)).toEqual([]);
  });

  it('is a further check that fails behind a verdict that stays', () => {
    const [one, two] = [
      listOf([NUT.replace(';20;', ';4;')]),
      listOf([NUT.replace(';20;', ';4;').replace('1.5', '0.5')]),
    ];
    expect(compareLists(one, two).verdicts).toEqual([]);
    expect(wrong(one, two)).toMatchObject([{ verdictBefore: 'fails', verdictAfter: 'fails' }]);
    expect(wrong(one, two)[0]?.why).not.toMatch(/edge/i);
    expect(wrong(two, one)).toEqual([]);
  });

  it('is told of a row that did not change itself', () => {
    const rows = ['NUT-M4-10-CS;P1;DC01;1.0;20;4', STUD];
    const found = wrong(listOf(rows), listOf(rows, COLUMNS, { judgeThicknessAt: 'thinnest' }));
    expect(found).toMatchObject([{ verdictAfter: 'marginal', cellsChanged: false }]);
  });

  it('stands first in the report', () => {
    const [before, after] = [listOf([NUT]), listOf([NUT.replace('1.5', '0.5')])];
    const { blocks } = compareReport(compareLists(before, after), before, after);
    expect(blocks[1]).toMatchObject({
      title: 'Newly wrong',
      rows: [[2, 2, 'NUT-M4-10-CS', 'P1', 'holds', 'fails', expect.any(String), 'yes']],
    });
  });
});

describe('the report as CSV', () => {
  it('tells added rows from removed ones, and changed cells from those only written differently', () => {
    const csvOf = (before: AuditedList, after: AuditedList) =>
      writeReportCsv(compareReport(compareLists(before, after), before, after)).split('\r\n');
    const other = 'NUT-M5-15-CS;P3;DC01;1.5;20;4';
    const apart = csvOf(listOf([NUT, STUD]), listOf([STUD, other]));
    expect(apart.indexOf('Rows removed')).toBeGreaterThan(apart.indexOf('Rows added'));
    expect(apart.findIndex((line) => line.startsWith('2,NUT-M4'))).toBeGreaterThan(apart.indexOf('Rows removed'));
    const cells = csvOf(listOf([NUT, STUD]), listOf([NUT.replace(';20;', ';22;'), STUD.replace('DC01', 'dc01')]));
    const written = cells.indexOf('"Written differently, meaning the same"');
    expect(written).toBeGreaterThan(cells.indexOf('Rows changed'));
    expect(cells.findIndex((line) => line.endsWith(',DC01,dc01'))).toBeGreaterThan(written);
  });
});

describe('how rows were found again', () => {
  const found = (before: readonly string[], after: readonly string[]) =>
    compareLists(listOf(before), listOf(after)).found;

  it.each([
    ['the same throughout', NUT],
    ['part and panel', NUT.replace(';4', ';9')],
    ['part', NUT.replace('P1', 'P3').replace(';4', ';9')],
  ])('%s', (way, now) => {
    expect(found([NUT, STUD], [now, STUD])).toContainEqual({ way, rows: way === 'the same throughout' ? 2 : 1 });
  });

  it('adds up to the rows that are on both lists, each way once', () => {
    const list = makeList(120, 3);
    const rows = list.rows
      .map((row, at) => (at % 5 === 0 ? { ...row, cells: { ...row.cells, Qty: '7', Item: '' } } : row))
      .filter((_, at) => at % 11 !== 0);
    const comparison = compareLists(judge(list), judge({ headings: HEADINGS, rows, titles: [] }));
    expect(comparison.found.reduce((sum, one) => sum + one.rows, 0)).toBe(comparison.pairs.length);
    expect(new Set(comparison.found.map(({ way }) => way)).size).toBe(comparison.found.length);
  });
});

describe('what the page shows', () => {
  const before = listOf([NUT, STUD, 'NUT-M3-08-CS;P1;DC01;1.5;20;4', 'SCREW-M4x10;P1;;;;8']);
  const after = listOf([
    NUT.replace('1.5', '0.5').replace('DC01', 'dc01'),
    STUD,
    'NUT-M5-15-CS;P2;DC01;1.5;20;4',
    'WASHER-M4;P9;;;;2',
  ]);
  const shown = toCompared(compareLists(before, after), before, after, []);

  it('counts the rows of both lists and survives being handed between threads', () => {
    expect([shown.before.rows, shown.after.rows]).toEqual([4, 4]);
    expect(structuredClone(shown)).toEqual(shown);
  });

  it('has verdicts on changed, added and removed rows, and a cell that is only written differently apart', () => {
    expect(shown.changed).toMatchObject([
      { cells: [{ heading: 'Thickness (mm)' }], verdictBefore: 'holds', verdictAfter: 'fails' },
    ]);
    expect(shown.rewritten).toMatchObject([{ cells: [{ heading: 'Material', after: 'dc01' }] }]);
    expect(shown.added.map(({ partNumber, verdict }) => [partNumber, verdict])).toEqual([
      ['NUT-M5-15-CS', 'holds'],
      ['WASHER-M4', null],
    ]);
    expect(shown.removed.map(({ partNumber, verdict }) => [partNumber, verdict])).toEqual([
      ['NUT-M3-08-CS', 'holds'],
      ['SCREW-M4x10', null],
    ]);
  });

  it('tells of no verdict twice', () => {
    expect(shown.newlyWrong.map(({ after: { row } }) => row)).toEqual([2]);
    expect(shown.verdicts).toEqual([]);
  });
});

describe('concessions of the earlier list', () => {
  const near = NUT.replace(';20;', ';4;');
  const before = listOf([near, STUD, near.replace('P1', 'P4').replace(';4;4', ';4;6')]);
  const given = [accept(before, 2, 'clinch/edge'), accept(before, 4, 'clinch/edge')];
  const after = listOf([STUD, near, near.replace('P1', 'P4').replace(';4;4', ';4.5;6')]);
  const compared = { name: 'a.csv', shown: toCompared(compareLists(before, after, given), before, after, []) };

  it('are taken over where they still stand, on the rows that they have now', () => {
    expect(compared.shown.concessions.map(({ state }) => state)).toEqual(['carried', 'lapsed']);
    const deed = deedOfCarried(compared, after, []);
    expect(deed).toMatchObject({ name: 'take over a concession of a.csv', before: { concessions: [] } });
    expect(deed?.after).toMatchObject({ concessions: [{ row: 3, rule: 'clinch/edge', ...WHY }] });
  });

  it('leave one of the user’s that stands, replace one that has lapsed, and do nothing twice', () => {
    const own = { ...accept(after, 3, 'clinch/edge'), reason: 'mine' };
    expect(carriedOver(compared, after, [own])).toEqual([]);
    expect(deedOfCarried(compared, after, [own])).toBeNull();
    const lapsed = { ...own, facts: '[["edge","9 mm"]]' };
    const other = { ...own, row: 2, rule: 'clinch/other' };
    const deed = deedOfCarried(compared, after, [lapsed, other]);
    expect(deed?.after).toMatchObject({ concessions: [{ row: 2 }, { row: 3, reason: WHY.reason }] });
    expect(deed?.before).toEqual({ concessions: [lapsed, other] });
  });
});
