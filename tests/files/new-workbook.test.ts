import * as spreadsheet from '@e965/xlsx';
import exceljs from 'exceljs';
import { strFromU8, unzipSync } from 'fflate';
import { readXlsx } from 'hucre';
import { beforeAll, describe, expect, it } from 'vitest';
import { concede } from '../../src/core/concede/standing.ts';
import { NO_WORK } from '../../src/core/model/change-record.ts';
import { SAFETY_SHORT } from '../../src/core/say/safety.ts';
import { readFile } from '../../src/io/read-file.ts';
import { chooseFindings } from '../../src/io/write/choose-findings.ts';
import { MOST_NOTES } from '../../src/io/write/deciding-note.ts';
import { planListSheet } from '../../src/io/write/list-sheet.ts';
import { ownColumnsOf } from '../../src/io/write/own-columns.ts';
import { planOwnSheets } from '../../src/io/write/own-sheets.ts';
import { writeWorkbook } from '../../src/io/write/workbook.ts';
import { Stopped } from '../../src/io/write/writing.ts';
import { judged, NUT } from '../contract/rollup-list.ts';

const DAY = '2026-01-02';
/** Thick enough, too thin, without a metal, and with texts that want care. */
const KINDS = [
  (at: number) => `NUT-A,P${at},DC01,1.5,5.6,${at}`,
  (at: number) => `NUT-A,P${at},DC01,0.8,5.60,4`,
  (at: number) => `NUT-A,"<&> ""P"" ${at}",,1.5,5.6,4`,
  (at: number) => `NUT-A,"  two
lines ${at}",DC01,1.50,,4`,
  (at: number) => `=NUT ${at},_x0041_,DC01,1.5,5.6,0`,
];
const rowsOf = (count: number) => Array.from({ length: count }, (_, at) => KINDS[at % KINDS.length]!(at));
const made = (count: number) =>
  judged(rowsOf(count), [
    `NUT-A,${NUT},,,,,,,`,
    'NUT-B,clinch nut,M4,carbon-steel-hardened,HRC 32,0.7,5.6,0.08,0,9,12,7,500,300,,,,,,,',
  ]);

async function load(bytes: Uint8Array): Promise<exceljs.Workbook> {
  const book = new exceljs.Workbook();
  await book.xlsx.load(bytes as unknown as ArrayBuffer);
  return book;
}

describe('a new workbook of some hundred rows', () => {
  const { list, parts } = made(600);
  const plans = [
    planListSheet('List', list, ownColumnsOf(list, [])),
    ...planOwnSheets(list, DAY, parts, NO_WORK, null, 'shared'),
  ];
  /** Filled cells of every sheet by name, row and column, as they were given. */
  const given = new Map(
    plans.flatMap(({ name, rows }) =>
      [...rows()].flatMap(({ cells }, row) =>
        cells.flatMap((cell, column): [string, unknown][] =>
          cell === null || cell.value === null || cell.value === '' ? [] : [[`${name} ${row} ${column}`, cell.value]],
        ),
      ),
    ),
  );
  let bytes: Uint8Array = new Uint8Array();
  beforeAll(async () => {
    bytes = await writeWorkbook(list, DAY, parts);
  }, 60_000);

  it('is read by three readers with every cell as it was given', { timeout: 60_000 }, async () => {
    expect(given.size).toBeGreaterThan(50_000);
    const all = { exceljs: new Map(), other: new Map(), third: new Map() };
    for (const sheet of (await load(bytes)).worksheets) {
      sheet.eachRow((row, at) =>
        row.eachCell((cell, column) => all.exceljs.set(`${sheet.name} ${at - 1} ${column - 1}`, cell.value)),
      );
    }
    const { Sheets, SheetNames } = spreadsheet.read(bytes, { dense: false });
    for (const name of SheetNames) {
      for (const [at, cell] of Object.entries(Sheets[name]!)) {
        if (at.startsWith('!') || cell.v === undefined) continue;
        const { r, c } = spreadsheet.utils.decode_cell(at);
        all.other.set(`${name} ${r} ${c}`, cell.v);
      }
    }
    for (const { name, rows } of (await readXlsx(bytes)).sheets) {
      for (const [row, cells] of rows.entries()) {
        for (const [column, value] of cells.entries()) {
          if (value !== null && value !== undefined && value !== '') all.third.set(`${name} ${row} ${column}`, value);
        }
      }
    }
    for (const [reader, found] of Object.entries(all)) {
      // Merged cells of the basis read as one value twice.
      const wrong = [...found].filter(([at, value]) => given.get(at) !== value && !at.startsWith('Basis'));
      expect(wrong.slice(0, 3), reader).toEqual([]);
      expect([...given.keys()].filter((at) => !found.has(at)).slice(0, 3), reader).toEqual([]);
    }
  });

  it('keeps its look: frozen heading, filter, widths, print, fills, number formats', async () => {
    const sheet = (await load(bytes)).getWorksheet('List')!;
    expect(sheet.views).toMatchObject([{ state: 'frozen', ySplit: 1 }]);
    expect(sheet.autoFilter).toBe('A1:Q601');
    expect(sheet.pageSetup).toMatchObject({
      orientation: 'landscape',
      fitToPage: true,
      fitToHeight: 0,
      paperSize: 9,
      printTitlesRow: '1:1',
    });
    expect(sheet.headerFooter.oddFooter).toContain(SAFETY_SHORT);
    const headings = (sheet.getRow(1).values as string[]).slice(1);
    const column = (heading: string) => headings.indexOf(heading) + 1;
    expect(sheet.getColumn(column('Would hold instead')).width).toBe(46);
    expect(sheet.getCell(3, column('Verdict'))).toMatchObject({
      value: 'fails',
      fill: { fgColor: { argb: 'FFFBE4E1' } },
      font: { bold: true, name: 'Calibri', size: 10 },
    });
    expect([2, 3].map((row) => sheet.getCell(row, column('Hole (mm)')).numFmt)).toEqual(['0.0', '0.00']);
    expect(sheet.getCell(6, 1)).toMatchObject({ value: '=NUT 4', numFmt: '@' });
    expect(sheet.getCell(1, 1).fill).toMatchObject({ fgColor: { argb: 'FFEEECE6' } });
    expect(sheet.getCell(1, column('Verdict')).fill).toMatchObject({ fgColor: { argb: 'FFE3E8EE' } });
    expect(sheet.getCell(3, column('What decides it')).alignment).toMatchObject({ wrapText: true, vertical: 'top' });
    expect(sheet.getRow(3).height).toBeGreaterThan(15);
  });

  it('tells how far it is, and stops when told to', async () => {
    const heard: number[] = [];
    await writeWorkbook(list, DAY, parts, NO_WORK, null, { onProgress: (share) => heard.push(share) });
    expect(heard.length).toBeGreaterThan(3);
    expect(heard).toEqual(heard.toSorted((a, b) => a - b));
    expect(heard.at(-1)).toBeGreaterThan(0.8);
    expect(heard.at(-1)).toBeLessThanOrEqual(1);
    let asked = 0;
    const stopped = writeWorkbook(list, DAY, parts, NO_WORK, null, { isCancelled: () => ++asked > 2 });
    await expect(stopped).rejects.toThrow(Stopped);
    expect(asked).toBe(3);
  });

  it('comes out in the same bytes twice', async () => {
    expect(Buffer.compare(bytes, await writeWorkbook(list, DAY, parts))).toBe(0);
  });
});

describe('notes on cells', () => {
  const textOf = (note: exceljs.Cell['note']) =>
    typeof note === 'string' ? note : (note?.texts ?? []).map(({ text }) => text).join('');

  it('stand on the cell that decides, with the sentence, its cure and what would hold', async () => {
    const { list, parts } = made(5);
    const sheet = (await load(await writeWorkbook(list, DAY, parts))).getWorksheet('List')!;
    const [, thin, bare] = list.lines;
    expect(thin?.decidedBy?.rule).toBe('clinch/sheet-thickness');
    expect(textOf(sheet.getCell('D3').note)).toBe(
      `Fails: ${thin?.decidedBy?.text}\nWould hold instead: ${thin?.remedies[0]?.partNumber} (${thin?.remedies[0]?.change})`,
    );
    // The metal that is not there is asked for in its own, blank cell.
    expect(textOf(sheet.getCell('C4').note)).toBe(`Unknown: ${bare?.decidedBy?.text}`);
    expect(sheet.getCell('C4').value).toBeNull();
    expect(sheet.getCell('A2').note).toBeUndefined();
    expect(spreadsheet.read(await writeWorkbook(list, DAY, parts)).Sheets.List?.D3?.c?.[0]?.t).toContain('Fails: ');
  });

  it('are as many as keep a file quick to open, and the heading says so', async () => {
    const { list, parts } = made(3500);
    const bytes = await writeWorkbook(list, DAY, parts);
    const comments = strFromU8(unzipSync(bytes)['xl/comments1.xml']!);
    expect(comments.match(/<comment /g)).toHaveLength(MOST_NOTES + 1);
    const open = list.lines.filter(({ verdict }) => verdict !== 'holds').length;
    expect(open).toBeGreaterThan(MOST_NOTES);
    expect(comments).toContain(`${open} rows do not hold. The first ${MOST_NOTES} have a note`);
    expect(strFromU8(unzipSync(bytes)['xl/drawings/vmlDrawing1.vml']!).match(/<v:shape /g)).toHaveLength(
      MOST_NOTES + 1,
    );
  });

  it('are none where every row holds', async () => {
    const { list, parts } = judged(['NUT-A,P1,DC01,1.5,5.6,4'], [`NUT-A,${NUT},,,,,,,`]);
    expect(list.totals.holds).toBe(1);
    const names = Object.keys(unzipSync(await writeWorkbook(list, DAY, parts)));
    expect(names.filter((name) => /comments|drawing/.test(name))).toEqual([]);
  });
});

describe('the column of concessions', () => {
  const { list, parts } = made(5);
  const line = list.lines[1]!;
  const concession = concede(line, line.decidedBy!, {
    reason: `tried ${'and tried '.repeat(20)}`,
    by: 'R. Vale',
    date: DAY,
  })!;

  it('says who, when and why in short, beside the verdict', async () => {
    const bytes = await writeWorkbook(list, DAY, parts, { ...NO_WORK, concessions: [concession] });
    const sheet = (await load(bytes)).getWorksheet('List')!;
    const headings = (sheet.getRow(1).values as string[]).slice(1);
    const at = headings.indexOf('Conceded') + 1;
    expect(headings[at - 2]).toBe('Verdict');
    expect(sheet.getCell(3, at).text).toMatch(/^(\d of \d: )?tried and tried .{20,70}… \(R\. Vale, 2026-01-02\)$/);
    expect(sheet.getCell(2, at).value).toBeNull();
  });

  it('is not there where none stands', async () => {
    const lapsed = { ...concession, facts: '[]' };
    for (const concessions of [[], [lapsed]]) {
      const book = readFile(await writeWorkbook(list, DAY, parts, { ...NO_WORK, concessions }), 'x.xlsx');
      expect(book.tables[0]?.rows[0]?.cells).not.toContain('Conceded');
    }
  });
});

describe('findings that there is no room for', () => {
  const { list } = made(50);
  const findings = list.lines.flatMap((line) => line.findings);
  const count = (outcome: string) => findings.filter((finding) => finding.outcome === outcome).length;

  it('are left out from the least grave on, and counted', () => {
    const fails = count('fails');
    expect(fails).toBeGreaterThan(5);
    const most = fails + count('unknown') + 2;
    const chosen = chooseFindings(list, most);
    const shown = findings.filter(chosen.isChosen);
    expect(shown).toHaveLength(most);
    expect(chosen.count).toBe(most);
    expect(shown.filter(({ outcome }) => outcome === 'fails')).toHaveLength(fails);
    expect(shown.filter(({ outcome }) => outcome === 'holds')).toHaveLength(0);
    expect(chosen.leftOut).toContain(`${count('holds')} that hold are left out`);
  });

  it('are none where all have room', () => {
    const chosen = chooseFindings(list, findings.length);
    expect(findings.every(chosen.isChosen)).toBe(true);
    expect(chosen).toMatchObject({ count: findings.length, leftOut: '' });
  });
});
