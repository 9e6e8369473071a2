import { mkdtempSync, readFileSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { describeStanding } from '../../src/core/concede/describe.ts';
import { concede, standing } from '../../src/core/concede/standing.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import type { ChangeRecord, WorkRecord } from '../../src/core/model/change-record.ts';
import type { Concession } from '../../src/core/model/concession.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { holdsConcessions, readBack } from '../../src/core/readback/read-back.ts';
import { annotateWorkbook } from '../../src/io/annotate/annotate-workbook.ts';
import { readFile } from '../../src/io/read-file.ts';
import { writeWorkbook } from '../../src/io/write/workbook.ts';

const bytes = (name: string) => new Uint8Array(readFileSync(resolve(import.meta.dirname, '../../sample-data', name)));
const basis = createBasis([importCatalogue(readFile(bytes('demo-catalogue.csv'), 'demo-catalogue.csv'))], DEFAULT_SHOP);
const upload = bytes('recorder-cabinet.xlsx');
const list = auditFile(readFile(upload, 'recorder-cabinet.xlsx'), basis);
const SIGNED = { reason: 'pressed and pulled, “0.8” holds', by: 'R. Vale', date: '2026-11-02' };

/** Every failing row is accepted, by the check that decides it. */
const given = list.lines.flatMap((line): Concession[] => {
  const concession = line.verdict === 'fails' && line.decidedBy ? concede(line, line.decidedBy, SIGNED) : null;
  return concession ? [concession] : [];
});
const row = given[0]?.row ?? 0;
const changes: readonly ChangeRecord[] = [
  {
    when: '2026-11-01T09:30:00Z',
    by: 'R. Vale',
    what: `edit Qty in row ${row}`,
    undone: false,
    details: [{ row, where: 'Qty', before: '4', after: '=6' }],
  },
  {
    when: '',
    by: '',
    what: 'set 2 shop settings',
    undone: true,
    details: [
      { row: null, where: 'Press capacity', before: 'not said', after: '60 kN' },
      { row: null, where: 'Spares', before: '0 %', after: '5 %' },
    ],
  },
];
const work: WorkRecord = { concessions: given, changes };

const HOW = ['new', 'in-place'] as const;
type How = (typeof HOW)[number];

async function exported(how: How, from: Uint8Array = upload, of = list, done: WorkRecord = work): Promise<Uint8Array> {
  if (how === 'new') return writeWorkbook(of, '2026-11-02', basis.parts, done);
  const hadConcessions = holdsConcessions(readFile(from, 'before.xlsx'), of.sheet);
  const annotated = await annotateWorkbook(from, of, '2026-11-02', basis.parts, { ...done, hadConcessions });
  if (!('bytes' in annotated)) throw new Error(annotated.refused);
  return annotated.bytes;
}

function read(workbook: Uint8Array, sheet?: string) {
  const raw = readFile(workbook, 'back.xlsx');
  const again = auditFile(raw, basis, sheet === undefined ? {} : { sheet });
  return { workbook, again, ...readBack(raw, again) };
}

async function changed(
  workbook: Uint8Array,
  change: (book: exceljs.Workbook) => void,
): Promise<Uint8Array<ArrayBuffer>> {
  const book = new exceljs.Workbook();
  await book.xlsx.load(workbook.slice().buffer as ArrayBuffer);
  change(book);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

const column = (role: string) => (list.columns.find((one) => one.role === role)?.index ?? 0) + 1;
const sheetOf = (book: exceljs.Workbook, name = list.sheet) => book.getWorksheet(name) ?? book.addWorksheet(name);
const standingOf = ({ lines }: AuditedList, concession: Concession) =>
  standing(concession, lines.find((line) => line.row === concession.row) ?? null);
const stands = (of: AuditedList, concession: Concession) => standingOf(of, concession).kind === 'stands';
const signatures = (concessions: readonly Concession[]) =>
  concessions.map(({ rule, outcome, says, reason, by, date }) => ({ rule, outcome, says, reason, by, date }));
/** The sender's cells of each row, whatever it is, without empty ones at the end. */
const cells = ({ lines, others }: AuditedList) =>
  [...lines.map((line) => ({ row: line.row, cells: line.line.cells })), ...others]
    .sort((a, b) => a.row - b.row)
    .map((one) => one.cells.slice(0, one.cells.findLastIndex((cell) => cell !== '') + 1));
const verdicts = ({ lines }: AuditedList) => lines.map(({ line, verdict }) => [line.partNumber, line.panel, verdict]);
const PRESSED = { row: null, where: 'Order of pressing', before: 'as suggested', after: 'nothing' };
/** The last column of the last sheet of changes. */
async function marks(workbook: Uint8Array): Promise<readonly string[]> {
  const sheet = readFile(workbook, 'back.xlsx').tables.findLast(({ name }) => name.startsWith('Changes'));
  return (sheet?.rows ?? []).slice(1).map(({ cells: texts }) => texts[8] ?? '');
}
/** What a record says apart from the rows, which have other numbers in a new workbook. */
const told = (records: readonly ChangeRecord[]) =>
  records.map(({ what, details, earlier: _, ...record }) => ({
    ...record,
    what: what.replace(/\d+$/, ''),
    details: details.map(({ where, before, after }) => ({ where, before, after })),
  }));

describe.each(HOW)('an exported workbook (%s) read again', (how) => {
  it('is the same list with the same verdicts; concessions stand, changes are told as they were', async () => {
    const { again, concessions, changes: before, notices } = read(await exported(how));
    expect(cells(again)).toEqual(cells(list));
    expect(verdicts(again)).toEqual(verdicts(list));
    expect(given.length).toBe(9);
    expect(notices).toEqual([]);
    expect(signatures(concessions)).toEqual(signatures(given));
    expect(concessions.filter((concession) => !stands(again, concession))).toEqual([]);
    expect(told(before)).toEqual(told(changes));
    const edited = before[0]?.details[0]?.row ?? 0;
    expect(again.lines.find((line) => line.row === edited)?.line.cells).toEqual(
      list.lines.find((line) => line.row === row)?.line.cells,
    );
    expect(before[0]?.what).toBe(`edit Qty in row ${edited}`);
  });

  it.each(HOW)('tells changes once, however often it goes out (%s) and comes back', async (next) => {
    let [workbook, of, known] = [await exported(how), list, changes];
    for (const round of [1, 2]) {
      const back = read(workbook, undefined);
      expect(told(back.changes)).toEqual(told(known));
      expect(back.changes.every(({ earlier }) => earlier === true)).toBe(true);
      const made = {
        when: `2026-11-0${round + 2}T08:00:00Z`,
        by: '',
        what: `step ${round}`,
        undone: false,
        details: [PRESSED],
      };
      known = [...known, made];
      of = back.again;
      workbook = await exported(next, workbook, of, {
        concessions: back.concessions,
        changes: [...back.changes, made],
      });
      expect(await marks(workbook)).toEqual([
        ...known.slice(0, -1).flatMap(({ details }) => details.map(() => 'earlier')),
        '',
      ]);
    }
  });

  it.each(HOW)('gives the same once more when it is exported (%s) and read again', async (next) => {
    const first = read(await exported(how));
    const second = read(await exported(next, first.workbook, first.again, first));
    expect(verdicts(second.again)).toEqual(verdicts(list));
    expect(signatures(second.concessions)).toEqual(signatures(given));
    expect(second.concessions.every((concession) => stands(second.again, concession))).toBe(true);
    expect(told(second.changes)).toEqual(told(changes));
    expect(cells(second.again)).toEqual(cells(list));
  });
});

describe('a workbook exported in place several times', () => {
  it('gives what the last export left: fewer concessions, or none', async () => {
    let workbook = await exported('in-place');
    for (const left of [given, given.slice(0, 2), [], given.slice(3)]) {
      const { again } = read(workbook);
      workbook = await exported('in-place', workbook, again, { concessions: left, changes });
      expect(signatures(read(workbook).concessions)).toEqual(signatures(left));
    }
  });

  it('keeps the lists of two sheets apart', async () => {
    const two = await changed(upload, (book) => {
      const copy = book.addWorksheet('Second');
      sheetOf(book).eachRow((from, number) => {
        copy.getRow(number).values = from.values;
      });
    });
    const [one, other] = [list.sheet, 'Second'].map((sheet) => read(two, sheet).again);
    if (!one || !other) throw new Error('not read');
    const first = await exported('in-place', two, one, { concessions: given.slice(0, 3), changes });
    const both = await exported('in-place', first, read(first, 'Second').again, {
      concessions: given.slice(4),
      changes: [],
    });
    expect(signatures(read(both, list.sheet).concessions)).toEqual(signatures(given.slice(0, 3)));
    expect(told(read(both, list.sheet).changes)).toEqual(told(changes));
    expect(signatures(read(both, 'Second').concessions)).toEqual(signatures(given.slice(4)));
    expect(read(both, 'Second').changes).toEqual([]);
  });
});

describe.each(HOW)('a concession in a workbook (%s) that was changed since', (how) => {
  const at = async (former: number) => {
    const { again } = read(await exported(how));
    const index = list.lines.findIndex((line) => line.row === former);
    return { row: again.lines[index]?.row ?? 0, sheet: again.sheet, headerRow: again.headerRow };
  };

  it('lapses and says so when its cell holds another thickness', async () => {
    const thin = given.find(({ rule }) => rule === 'clinch/sheet-thickness')?.row ?? 0;
    const place = await at(thin);
    const { again, concessions } = read(
      await changed(await exported(how), (book) => {
        sheetOf(book, place.sheet).getRow(place.row).getCell(column('thickness')).value = 0.5;
      }),
    );
    const one = concessions.find((concession) => concession.row === place.row);
    expect(one && describeStanding(standingOf(again, one))).toMatch(/^lapsed: sheet thickness was .* is 0\.5 mm/);
  });

  it('lapses and says which part it was given for when its row holds another', async () => {
    const place = await at(row);
    const { again, concessions, notices } = read(
      await changed(await exported(how), (book) => {
        sheetOf(book, place.sheet).getRow(place.row).getCell(column('partNumber')).value = 'NUT-M5-15-S4';
      }),
    );
    const one = concessions.find((concession) => concession.row === place.row);
    const said = one ? describeStanding(standingOf(again, one)) : notices.join(' ');
    expect(said).toMatch(/lapsed/);
    expect(concessions.filter((concession) => stands(again, concession))).toHaveLength(given.length - 1);
  });

  it('follows its row when rows were put in above', async () => {
    const place = await at(row);
    const { again, concessions } = read(
      await changed(await exported(how), (book) => {
        sheetOf(book, place.sheet).insertRow(place.headerRow + 1, ['9', 'NUT-M4-10-CS', 1]);
      }),
    );
    expect(concessions[0]?.row).toBe(place.row + 1);
    expect(signatures(concessions)).toEqual(signatures(given));
    expect(concessions.every((concession) => stands(again, concession))).toBe(true);
  });

  it('is not taken over where the hidden cell was changed or taken out, and that is told and kept among the changes', async () => {
    const {
      again,
      concessions,
      notices,
      changes: before,
    } = read(
      await changed(await exported(how), (book) => {
        const sheet = sheetOf(book, 'Concessions');
        sheet.getRow(2).getCell(10).value = null;
        sheet.getRow(3).getCell(10).value = '{"rule":1}';
        sheet.getRow(4).getCell(1).value = 999;
      }),
    );
    expect(concessions).toHaveLength(given.length - 3);
    expect(concessions.every((concession) => stands(again, concession))).toBe(true);
    expect(notices).toHaveLength(3);
    expect(notices[0]).toContain(`(row ${row} of the file before) has lapsed: what it rests on`);
    expect(before.slice(changes.length).map(({ by }) => by)).toEqual(Array(3).fill('R. Vale'));
  });

  it('lapses where the facts that it rests on were cut', async () => {
    const { again, concessions } = read(
      await changed(await exported(how), (book) => {
        const cell = sheetOf(book, 'Concessions').getRow(2).getCell(10);
        cell.value = JSON.stringify({ ...JSON.parse(String(cell.value)), facts: '[["partNumber","N' });
      }),
    );
    expect(concessions[0] && describeStanding(standingOf(again, concessions[0]))).toBe(
      'lapsed: what it rests on was on record, is not readable',
    );
  });

  it('says that the sheet has lost its headings', async () => {
    const { concessions, notices } = read(
      await changed(await exported(how), (book) => sheetOf(book, 'Concessions').spliceRows(1, 1)),
    );
    expect(concessions).toEqual([]);
    expect(notices).toEqual(['The sheet “Concessions” has lost its headings: nothing was taken over from it.']);
  });
});

/** A small list in which one part stands on a panel once and another twice. */
describe('a row whose number is gone', () => {
  const ROWS = ['NUT-M4-10-CS,P1,DC01,1.5,4,4', 'NUT-M3-08-CS,P1,DC01,1.5,3,4', 'NUT-M3-08-CS,P1,DC01,1.5,3,2'];
  const small = auditFile(
    readFile(
      new TextEncoder().encode(['Part number,Panel,Material,Thickness (mm),Edge (mm),Qty', ...ROWS].join('\n')),
      'a.csv',
    ),
    basis,
  );
  const accepted = small.lines.flatMap((line) => {
    const edge = line.findings.find(({ rule }) => rule === 'clinch/edge');
    return (edge && concede(line, edge, SIGNED)) ?? [];
  });
  const saved = () => writeWorkbook(small, '2026-11-02', basis.parts, { concessions: accepted, changes: [] });
  const OWN = 7;

  it('is found by part and panel where they name one row, then and now', async () => {
    const workbook = await changed(await saved(), (book) => {
      const sheet = sheetOf(book, 'List');
      for (const number of [2, 3, 4]) sheet.getRow(number).getCell(OWN).value = null;
      sheet.insertRow(2, []);
      sheet.getRow(2).getCell(1).value = 'NUT-M4-10-CS';
      sheet.getRow(2).getCell(2).value = 'P2';
    });
    const { again, concessions, notices } = read(workbook);
    expect(concessions.map((one) => [one.row, stands(again, one)])).toEqual([[3, true]]);
    expect(notices).toHaveLength(2);
    expect(notices[0]).toContain('2 rows hold its part on its panel');
  });

  it('never passes to a row that was another one, when its own got another part', async () => {
    const workbook = await changed(await saved(), (book) => {
      sheetOf(book, 'List').getRow(3).getCell(1).value = 'NUT-M4-10-CS';
    });
    const { again, concessions } = read(workbook);
    const standing_ = concessions.filter((one) => stands(again, one));
    expect(standing_.map((one) => one.row)).toEqual([2, 4]);
  });

  it('is not guessed where two rows say that they were it', async () => {
    const workbook = await changed(await saved(), (book) => {
      sheetOf(book, 'List').getRow(4).getCell(OWN).value = 3;
    });
    const { concessions, notices } = read(workbook);
    expect(concessions.map((one) => one.row)).toEqual([2]);
    expect(notices[0]).toContain('rows 3, 4 each say that they were its row');
  });

  it('is found where the sender’s columns were sorted without ours', async () => {
    const workbook = await changed(await saved(), (book) => {
      const sheet = sheetOf(book, 'List');
      const own = [2, 3, 4].map((number) => sheet.getRow(number).getCell(OWN).value);
      [own[2], own[0], own[1]].forEach((value, index) => {
        sheet.getRow(index + 2).getCell(OWN).value = value ?? null;
      });
    });
    const { again, concessions } = read(workbook);
    expect(concessions.filter((one) => stands(again, one)).map(({ row: now, says }) => [now, says])).toEqual(
      accepted
        .filter(({ row: former }) => former === 2 || former === 3)
        .map(({ row: former, says }) => [former === 2 ? 2 : 4, says]),
    );
  });
});

describe('a check over the list', () => {
  it('stands under the row numbers of a new workbook', async () => {
    const text =
      'Kabinett\n\nPart number,Panel,Material,Thickness (mm),Qty\nNUT-M4-10-CS,P1,DC01,1.5,4\nNUT-M3-08-CS,P1,DC01,2,4\n';
    const before = auditFile(readFile(new TextEncoder().encode(text), 'a.csv'), basis);
    const line = before.lines[0];
    const conflict = line?.findings.find(({ rule }) => rule === 'list/panel-conflict');
    const one = line && conflict && concede(line, conflict, SIGNED);
    if (!one) throw new Error('no conflict');
    const { again, concessions } = read(
      await writeWorkbook(before, '2026-11-02', basis.parts, { concessions: [one], changes: [] }),
    );
    expect(again.lines[0]?.row).not.toBe(one.row);
    expect(concessions.map((concession) => stands(again, concession))).toEqual([true]);
  });
});

describe('changes of rows that have moved', () => {
  const detail = { row, where: 'Qty', before: '4', after: '5' };
  const rows = given.slice(0, 3).map((one) => one.row);
  const made: readonly ChangeRecord[] = [
    { when: '', by: '', what: `edit Qty in row ${row}`, undone: false, details: [detail] },
    {
      when: '',
      by: '',
      what: 'press it first',
      undone: false,
      details: [{ row: null, where: 'Order of pressing', before: 'as suggested', after: `rows ${rows.join(', ')}` }],
    },
  ];
  const saved = () => exported('in-place', upload, list, { concessions: [], changes: made });

  it('are told by the rows as they stand now', async () => {
    const { changes: before } = read(
      await changed(await saved(), (book) => sheetOf(book).insertRow(list.headerRow + 1, ['9', 'NUT-M4-10-CS', 1])),
    );
    expect(before[0]).toMatchObject({ what: `edit Qty in row ${row + 1}`, details: [{ ...detail, row: row + 1 }] });
    expect(before[1]?.details[0]?.after).toBe(`rows ${rows.map((one) => one + 1).join(', ')}`);
  });

  it('say so where the row is gone, and no later export makes a row of it again', async () => {
    const first = read(await changed(await saved(), (book) => sheetOf(book).spliceRows(row, 1)));
    const gone = {
      what: `edit Qty in row ${row} of the file before`,
      details: [{ ...detail, row: null, where: `Qty, row ${row} of the file before` }],
    };
    expect(first.changes[0]).toMatchObject(gone);
    expect(first.changes[1]?.details[0]?.after).toBe(`rows ${rows.join(', ')} of the file before`);
    const second = read(await exported('new', first.workbook, first.again, first));
    expect(second.changes).toEqual(first.changes);
  });
});

describe('the command line', () => {
  it('hands concessions and changes of the workbook on to the next, and says what is lost', async () => {
    const folder = mkdtempSync(join(tmpdir(), 'read-back-'));
    const [from, out] = [join(folder, 'judged.xlsx'), join(folder, 'again.xlsx')];
    writeFileSync(
      from,
      await changed(await exported('in-place'), (book) => {
        sheetOf(book, 'Concessions').getRow(2).getCell(10).value = '{}';
      }),
    );
    const errors: string[] = [];
    const argv = [from, '--format', 'xlsx', '--out', out, '--fail-on', 'never'];
    expect(await run(argv, { out: () => {}, error: (text) => errors.push(text) })).toBe(0);
    expect(errors).toEqual([expect.stringMatching(/^judged\.xlsx: The concession “.* has lapsed: what it rests on/)]);
    const back = read(new Uint8Array(readFileSync(out)));
    expect(signatures(back.concessions)).toEqual(signatures(given.slice(1)));
    expect(told(back.changes).slice(0, 2)).toEqual(told(changes));
    expect(back.changes.slice(2).map(({ what }) => what)).toEqual([expect.stringMatching(/^concession of .* lapsed$/)]);
  });
});

describe('a file that is no export', () => {
  it('holds nothing to take over', () => {
    expect(readBack(readFile(upload, 'recorder-cabinet.xlsx'), list)).toEqual({
      concessions: [],
      changes: [],
      notices: [],
    });
  });
});
