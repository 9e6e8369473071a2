import { describe, expect, it } from 'vitest';
import { compareLists } from '../../src/core/compare/compare-lists.ts';
import { compareReport } from '../../src/core/compare/compare-report.ts';
import { concede, standing } from '../../src/core/concede/standing.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import type { Concession } from '../../src/core/model/concession.ts';
import { SAFETY_SHORT } from '../../src/core/say/safety.ts';
import { judge } from './compare-list.ts';

const HEADINGS = ['Part number', 'Panel', 'Material', 'Thickness (mm)', 'Edge (mm)', 'Qty'];
const WHY = { reason: 'fixture holds the edge', by: 'R. Alder', date: '2025-03-14' };

/** A list of lines of cells parted by `;`, rows from 2 on; `headings` replace those above. */
function listOf(lines: readonly string[], headings = HEADINGS, shop = {}): AuditedList {
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

const NUT = 'NUT-M4-10-CS;P1;DC01;1.5;4;4';
const STUD = 'STUD-M4-10-12-CS;P2;DC01;1.5;20;6';
const LARGE = 'NUT-M6-15-CS;P3;DC01;2;30;2';

describe('a concession given on the list before', () => {
  const before = listOf([NUT, STUD, LARGE]);
  const given = accept(before, 2, 'clinch/edge');
  const fate = (after: AuditedList, concession = given, former = before) =>
    compareLists(former, after, [concession]).concessions[0];

  it('goes with its row wherever that stands, and stands there', () => {
    const after = listOf([STUD, LARGE, NUT.replace(';4;4', ';4.0 mm;9')]);
    const found = fate(after);
    expect(found).toMatchObject({ state: 'carried', before: { row: 2 }, after: { row: 4 }, changed: [] });
    expect(found?.rekeyed).toMatchObject({ row: 4, rule: 'clinch/edge', ...WHY });
    const line = after.lines.find(({ row }) => row === 4);
    expect(found?.rekeyed && line && standing(found.rekeyed, line)).toEqual({ kind: 'stands' });
  });

  it('lapses with what has changed', () => {
    const found = fate(listOf([STUD, NUT.replace(';4;4', ';4.5;4'), LARGE]));
    expect(found).toMatchObject({ state: 'lapsed', after: { row: 3 } });
    expect(found?.changed).toContainEqual({ name: 'edge distance', before: '4 mm', after: '4.5 mm' });
  });

  it('lapses where the part was swapped, and where the row is judged no more', () => {
    const swapped = fate(listOf([NUT.replace('NUT-M4-10-CS', 'NUT-M4-08-CS'), STUD, LARGE]));
    expect(swapped?.changed).toContainEqual({ name: 'part', before: 'NUT-M4-10-CS', after: 'NUT-M4-08-CS' });
    const headings = [...HEADINGS, 'Description'];
    const was = listOf(['ZZ-1;P1;DC01;1.5;4;4;clinch nut'], headings);
    const is = listOf(['ZZ-1;P1;DC01;1.5;4;4;cable tie', STUD], headings);
    const lapsed = fate(is, accept(was, 2, 'part/listed'), was);
    expect(lapsed).toMatchObject({ state: 'lapsed', changed: [{ name: 'row', after: 'not judged' }] });
  });

  it('is gone with its row', () => {
    expect(fate(listOf([STUD, LARGE]))).toMatchObject({
      state: 'gone',
      before: { row: 2 },
      after: null,
      rekeyed: null,
    });
    expect(fate(before, { ...given, row: 99 })).toMatchObject({ state: 'gone', before: null });
  });

  it('that rests on other rows goes by those rows, not by their numbers', () => {
    const rows = ['NUT-M4-10-CS;P1;DC01;1.5;20;4', 'NUT-M3-08-CS;P1;DC01;2;20;4', 'NUT-M5-15-CS;P1;DC01;1.5;20;4'];
    const disputed = listOf(rows);
    const accepted = accept(disputed, 2, 'list/panel-conflict');
    const shifted = fate(listOf([STUD, LARGE, ...rows]), accepted, disputed);
    expect(shifted).toMatchObject({ state: 'carried', after: { row: 4 } });
    const settled = fate(listOf([STUD, LARGE, ...rows.map((row) => row.replace(';2;', ';1.5;'))]), accepted, disputed);
    expect(settled?.state).toBe('lapsed');
    const more = fate(listOf([STUD, LARGE, ...rows, 'NUT-M6-15-CS;P1;DC01;2;20;4']), accepted, disputed);
    expect(more?.state).toBe('lapsed');
  });
});

describe('verdicts', () => {
  it('that another setting changes are told though no cell changed', () => {
    const rows = ['NUT-M4-10-CS;P1;DC01;1.0;20;4', STUD];
    const { changed, verdicts } = compareLists(listOf(rows), listOf(rows, HEADINGS, { judgeThicknessAt: 'thinnest' }));
    expect(changed).toEqual([]);
    expect(verdicts).toMatchObject([
      { after: { row: 2 }, verdictBefore: 'holds', verdictAfter: 'marginal', cellsChanged: false, whyBefore: '' },
    ]);
    expect(verdicts[0]?.whyAfter).not.toBe('');
  });

  it('of a row that is judged no more, and of one that was not before', () => {
    const headings = [...HEADINGS, 'Description'];
    const was = listOf(['ZZ-1;P1;DC01;1.5;4;4;clinch nut', `${STUD};`], headings);
    const is = listOf(['ZZ-1;P1;DC01;1.5;4;4;cable tie', `${STUD};`], headings);
    expect(compareLists(was, is).verdicts).toMatchObject([{ verdictBefore: 'unknown', verdictAfter: null }]);
    expect(compareLists(is, was).verdicts).toMatchObject([{ verdictBefore: null, verdictAfter: 'unknown' }]);
  });

  it('of rows that take their sheet from their panel, with the sheet', () => {
    const panel = 'PANEL P1;P1;DC01;1.5;;1';
    const rows = ['NUT-M4-10-CS;P1;;;20;4', 'NUT-M4-10-S3;P1;;;20;4'];
    const { changed, sheets, verdicts } = compareLists(
      listOf([panel, ...rows]),
      listOf([panel.replace('DC01', '304'), ...rows]),
    );
    expect(changed).toMatchObject([{ after: { row: 2, what: 'panel' }, cells: [{ before: 'DC01', after: '304' }] }]);
    expect(sheets.map(({ after }) => after.row)).toEqual([3, 4]);
    expect(verdicts).toMatchObject([
      { after: { row: 3 }, verdictAfter: 'fails', cellsChanged: false },
      { after: { row: 4 }, verdictAfter: 'fails', cellsChanged: false },
    ]);
  });
});

describe('columns', () => {
  it('whose heading says another unit change every size under it', () => {
    const inches = HEADINGS.map((heading) => heading.replace('Edge (mm)', 'Edge (in)'));
    const { columns, changed } = compareLists(listOf([STUD]), listOf([STUD], inches));
    expect(columns).toMatchObject([{ change: 'renamed', before: { heading: 'Edge (mm)' } }]);
    expect(changed).toMatchObject([{ cells: [{ role: 'edge', before: '20 (20 mm)', after: '20 (508 mm)' }] }]);
  });

  it('of item numbers that were given anew are told once', () => {
    const headings = ['Item', ...HEADINGS];
    const rows = Array.from({ length: 12 }, (_, at) => `NUT-M4-10-CS;P${at % 3};DC01;1.5;${at + 10};4`);
    const numbered = (from: number) => rows.map((row, at) => `${at + from};${row}`);
    const anew = listOf([`1;${STUD}`, ...numbered(2)], headings);
    const comparison = compareLists(listOf(numbered(1), headings), anew);
    expect(comparison).toMatchObject({
      renumbered: true,
      changed: [],
      rewritten: [],
      added: [{ row: 2 }],
      removed: [],
    });
    const kept = compareLists(listOf(numbered(1), headings), listOf(numbered(1).with(3, `99;${rows[3]}`), headings));
    expect(kept).toMatchObject({ renumbered: false, changed: [{ cells: [{ before: '4', after: '99' }] }] });
  });
});

describe('rows under titles', () => {
  const titled = (first: readonly string[], second: readonly string[]) =>
    listOf(
      ['PANEL A - DC01 1.5 mm;;;;', ...first, 'PANEL B - DC01 1.5 mm;;;;', ...second],
      ['Part number', 'Edge (mm)', 'Qty', 'Remark'],
    );

  it('move when they come to stand under another one', () => {
    const [one, two, three] = ['NUT-M4-10-CS;20;4', 'NUT-M3-08-CS;20;4', 'STUD-M4-10-12-CS;20;6'];
    const before = titled([one, two], [three]);
    const moved = compareLists(before, titled([one], [two, three]));
    expect(moved).toMatchObject({
      moved: [
        { before: { row: 4, panel: 'PANEL A - DC01 1.5 mm' }, after: { row: 5, panel: 'PANEL B - DC01 1.5 mm' } },
      ],
      changed: [],
      orderChanged: false,
    });
    expect(compareLists(before, titled([two, one], [three]))).toMatchObject({ moved: [], orderChanged: true });
  });
});

describe('quantities', () => {
  it('are pieces in one product by part, rows without a usable one apart', () => {
    const before = listOf([NUT, STUD, 'NUT-M4-10-CS;P2;DC01;1.5;20;6']);
    const after = listOf([NUT, STUD.replace(';6', ';as needed'), 'nut-m4-10-cs;P2;DC01;1.5;20;8', LARGE]);
    const uncounted = { uncountedBefore: 0, uncountedAfter: 0 };
    expect(compareLists(before, after).quantities).toEqual([
      { partNumber: 'NUT-M4-10-CS', before: 10, after: 12, difference: 2, ...uncounted },
      { partNumber: 'STUD-M4-10-12-CS', before: 6, after: 0, difference: -6, uncountedBefore: 0, uncountedAfter: 1 },
      { partNumber: 'NUT-M6-15-CS', before: 0, after: 2, difference: 2, ...uncounted },
    ]);
  });
});

describe('the report', () => {
  it('says in short that nothing has changed, and nothing else', () => {
    const list = listOf([NUT, STUD]);
    const { blocks, foot } = compareReport(compareLists(list, list), list, list);
    expect(blocks).toHaveLength(1);
    expect(blocks[0]?.notes).toEqual(['Nothing has changed.']);
    expect(foot.at(-1)).toBe(SAFETY_SHORT);
  });

  it('has a table for each kind of change', () => {
    const before = listOf([NUT, STUD, 'NUT-M3-08-CS;P1;DC01;1.5;20;4', 'NUT-M5-15-CS;P2;DC01;1.5;20;4']);
    const after = listOf([
      NUT.replace(';4;4', ';20;4'),
      STUD.replace(';P2', ';P1').replace('DC01', 'dc01'),
      'NUT-M5-15-CS;P2;DC01;1.5;20;4',
      LARGE,
    ]);
    const comparison = compareLists(before, after, [accept(before, 2, 'clinch/edge')]);
    const { blocks } = compareReport(comparison, before, after);
    expect(blocks.map(({ title }) => title)).toEqual([
      '',
      'Rows changed',
      'Rows added',
      'Rows removed',
      'Rows moved to another panel',
      'Verdicts changed',
      'Quantities by part, pieces in one product',
      'Concessions',
      'Written differently, meaning the same',
    ]);
    expect(blocks.every(({ headings, rows }) => rows.every((row) => row.length === headings.length))).toBe(true);
    expect(blocks[0]?.notes).toEqual([
      '1 row changed, 1 row added, 1 row removed, 1 row moved to another panel.',
      'Another verdict on 1 row, worse on 0.',
      '1 row only written differently.',
      'Concessions: 0 carried over, 1 lapsed, 0 gone with their rows.',
    ]);
  });
});
