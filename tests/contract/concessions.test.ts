import { readFileSync } from 'node:fs';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { describeConceded, describeStanding } from '../../src/core/concede/describe.ts';
import { concede, standing } from '../../src/core/concede/standing.ts';
import type { ChangeRecord } from '../../src/core/model/change-record.ts';
import type { Concession } from '../../src/core/model/concession.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';
import { writeWorkbook } from '../../src/io/write/workbook.ts';
import { editCells, openSession, type Session, withShop } from '../../src/worker/session.ts';

const demo = new URL('../../sample-data/demo-catalogue.csv', import.meta.url);
const CATALOGUE = importCatalogue(readFile(readFileSync(demo), 'demo-catalogue.csv'));
const HEADINGS = 'Part number,Panel,Material,Thickness (mm),Edge (mm),Remark,Qty';
const WHY = { reason: 'fixture holds the edge', by: 'R. Alder', date: '2025-03-14' };

function open(...rows: readonly string[]): Session {
  const text = `${HEADINGS}\n${rows.join('\n')}\n`;
  return openSession(readFile(new TextEncoder().encode(text), 'list.csv'), [CATALOGUE], DEFAULT_SHOP, {}, () => {});
}

function lineOf({ audited }: Session, row: number) {
  const line = audited.lines.find((one) => one.row === row);
  if (!line) throw new Error(`row ${row} is not judged`);
  return line;
}

function accept(session: Session, row: number, rule: string): Concession {
  const line = lineOf(session, row);
  const finding = line.findings.find((one) => one.rule === rule);
  const concession = finding && concede(line, finding, WHY);
  if (!concession) throw new Error(`${rule} of row ${row} cannot be accepted`);
  return concession;
}

const edit = (session: Session, row: number, column: number, text: string) =>
  editCells(session, [{ row, column, text }]).session;
const shop = (session: Session, change: Partial<ShopSettings>) =>
  withShop(session, { ...DEFAULT_SHOP, ...change }, () => {});

const CLOSE_TO_EDGE = 'NUT-M4-10-CS,P1,DC01,1.5,4,,4';

describe('a concession', () => {
  const session = open(CLOSE_TO_EDGE);
  const concession = accept(session, 2, 'clinch/edge');

  it('records what was said, and rests on what the check rested on', () => {
    expect(concession).toMatchObject({ row: 2, rule: 'clinch/edge', outcome: 'fails', ...WHY });
    expect(concession.says).toBe(lineOf(session, 2).decidedBy?.brief);
    expect(JSON.parse(concession.facts)).toContainEqual(['edge', '4 mm']);
  });

  it('stands while all of that is as it was', () => {
    expect(standing(concession, lineOf(session, 2))).toEqual({ kind: 'stands' });
    for (const [column, text] of [
      [0, 'nut-m4-10-cs'],
      [2, 'cold rolled DC01'],
      [3, '2'],
      [4, '4.0 mm'],
      [5, 'anything else'],
      [6, '9'],
    ] as const) {
      expect(standing(concession, lineOf(edit(session, 2, column, text), 2)), text).toEqual({ kind: 'stands' });
    }
    expect(standing(concession, lineOf(shop(session, { units: 'in' }), 2))).toEqual({ kind: 'stands' });
  });

  it.each([
    [0, 'NUT-M4-08-CS', 'part was NUT-M4-10-CS, is NUT-M4-08-CS'],
    [4, '4.5', 'edge distance was 4 mm, is 4.5 mm'],
    [4, '20', 'edge distance was 4 mm, is 20 mm'],
    [4, '', 'edge distance was 4 mm, is not there'],
  ])('lapses when cell %i becomes “%s”, and says what has changed', (column, text, says) => {
    const state = standing(concession, lineOf(edit(session, 2, column, text), 2));
    expect(state.kind).toBe('lapsed');
    expect(describeStanding(state)).toContain(says);
  });

  it('lapses when a setting changes what the check found', () => {
    const hard = open('NUT-M4-10-S3,P1,304,1.5,20,,4');
    const accepted = accept(hard, 2, 'clinch/hardness');
    expect(standing(accepted, lineOf(shop(hard, { sparesPercent: 5 }), 2)).kind).toBe('stands');
    expect(standing(accepted, lineOf(shop(hard, { hardnessMarginHrb: 1 }), 2)).kind).toBe('lapsed');
  });

  it('lapses when another row changes what a check of the list found', () => {
    const rows = ['NUT-M4-10-CS,P1,DC01,1.5,20,,4', 'NUT-M3-08-CS,P1,DC01,2,20,,4', 'NUT-M5-15-CS,P1,DC01,1.5,20,,4'];
    const disputed = open(...rows);
    const accepted = accept(disputed, 2, 'list/panel-conflict');
    expect(standing(accepted, lineOf(edit(disputed, 4, 5, 'a remark'), 2)).kind).toBe('stands');
    expect(standing(accepted, lineOf(edit(disputed, 3, 3, '3'), 2)).kind).toBe('lapsed');
    expect(standing(accepted, lineOf(edit(disputed, 3, 3, '1.5'), 2)).kind).toBe('lapsed');
  });

  it('lapses when the row is judged no more, or its facts cannot be read', () => {
    expect(standing(concession, null).kind).toBe('lapsed');
    expect(standing({ ...concession, facts: 'garbled' }, lineOf(session, 2)).kind).toBe('lapsed');
  });

  it('is not made of a check that holds or only notes', () => {
    const line = lineOf(session, 2);
    for (const finding of line.findings) {
      const isOpen = finding.outcome !== 'holds' && finding.outcome !== 'note';
      expect(concede(line, finding, WHY) !== null, finding.rule).toBe(isOpen);
    }
  });
});

describe('what is shown of it', () => {
  it('stands behind the verdict and never changes it', () => {
    const session = open(CLOSE_TO_EDGE);
    const before = lineOf(session, 2);
    const words = describeConceded(before, [accept(session, 2, 'clinch/edge')]);
    expect(words).toBe('conceded: fixture holds the edge');
    expect(lineOf(session, 2)).toBe(before);
    expect(before.verdict).toBe('fails');
    expect(session.audited.totals.fails).toBe(1);
  });

  it('says how many of the open checks are accepted, and nothing of one that has lapsed', () => {
    const session = open('NUT-M4-10-S3,P1,304,0.8,4,,4');
    const line = lineOf(session, 2);
    const open_ = line.findings.filter(({ outcome }) => outcome !== 'holds' && outcome !== 'note');
    expect(open_.length).toBeGreaterThan(1);
    const concession = accept(session, 2, 'clinch/edge');
    expect(describeConceded(line, [concession])).toContain(`conceded 1 of ${open_.length}:`);
    expect(describeConceded(lineOf(edit(session, 2, 4, '5'), 2), [concession])).toBe('');
  });

  it('goes into the workbook with whether it stands, and so do the changes', async () => {
    const session = open(CLOSE_TO_EDGE, 'NUT-M4-10-CS,P2,DC01,1.5,4,,4');
    const concessions = [accept(session, 2, 'clinch/edge'), accept(session, 3, 'clinch/edge')];
    const later = edit(session, 3, 4, '5');
    const changes: readonly ChangeRecord[] = [
      {
        when: '2025-03-14T10:00:00.000Z',
        by: 'R. Alder',
        what: 'edit Edge (mm) in row 3',
        undone: true,
        details: [{ row: 3, where: 'Edge (mm)', before: '4', after: '=5' }],
      },
    ];
    const { parts } = later.judged.basis;
    const bytes = await writeWorkbook(later.audited, '2025-03-14', parts, { concessions, changes });
    const workbook = new exceljs.Workbook();
    await workbook.xlsx.load(bytes as unknown as ArrayBuffer);
    const texts = (sheet: string, row: number) =>
      ((workbook.getWorksheet(sheet)?.getRow(row).values ?? []) as unknown[]).slice(1).map(String);
    expect(texts('Concessions', 2)).toEqual(
      expect.arrayContaining(['2', 'NUT-M4-10-CS', 'fails', WHY.reason, WHY.by, WHY.date, 'stands']),
    );
    expect(texts('Concessions', 3).at(-2)).toBe('lapsed: edge distance was 4 mm, is 5 mm; short by was 5 mm, is 4 mm');
    expect(texts('Changes', 2)).toEqual([
      '2025-03-14 10:00:00',
      'R. Alder',
      'edit Edge (mm) in row 3',
      '3',
      'Edge (mm)',
      '4',
      '=5',
      'undone',
    ]);
    expect(workbook.getWorksheet('Changes')?.getRow(2).getCell(7).font.strike).toBe(true);
  });
});
