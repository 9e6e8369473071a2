import exceljs from 'exceljs';
import { describe, expect, it } from 'vitest';
import { areForAnotherList, deedOfAnswers } from '../../src/app/answers.ts';
import { readStep } from '../../src/app/parse-steps.ts';
import { areAtOdds } from '../../src/core/answers/at-odds.ts';
import { moveAnswers } from '../../src/core/answers/move-answers.ts';
import { withOffer } from '../../src/core/answers/offered.ts';
import { type AnswerPlan, planAnswers } from '../../src/core/answers/plan-answers.ts';
import { parseRows, readAnswers } from '../../src/core/answers/read-answers.ts';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { FACT_NAMES } from '../../src/core/rollup/about.ts';
import { listRows } from '../../src/core/rollup/name-rows.ts';
import { askSender } from '../../src/core/rollup/questions.ts';
import { questionsReport } from '../../src/core/rollup/questions-report.ts';
import { readFile } from '../../src/io/read-file.ts';
import { planQuestionsSheet } from '../../src/io/write/questions-sheet.ts';
import { writeReportCsv } from '../../src/io/write/report-csv.ts';
import { writeReportWorkbook } from '../../src/io/write/report-workbook.ts';
import { writeWorkbook } from '../../src/io/write/workbook.ts';
import { judged, NUT } from './rollup-list.ts';

const PARTS = [
  `NUT-A,${NUT},,,,,,,`,
  `NUT-A-LONG,${NUT},,,,,,,`,
  'NUT-BARE,clinch nut,M4,carbon-steel-hardened,,,,,,,,,,,,,,,,,',
];
const ROWS = [
  'NUT-A,P1,,1.5,5.6,4', // row 2
  'NUT-A,P1,DC01,1.5,5.6,', // row 3
  'NUT-B,P1,DC01,1.5,5.6,4', // row 4: not on file
  'NUT-A,P2,DC01,,5.6,4', // row 5
  'NUT-A-LONG,P5,DC01,thick,5.6,4', // row 6
  'NUT-BARE,P3,DC01,1.5,,4', // row 7
  'NUT-A,P4,ALUM,1.5,5.6,4', // row 8: in 7075-T6 marginal
];
const { list, parts, catalogue } = judged(ROWS, PARTS);
const isOnFile = (part: string) => parts.find(part) !== null;

/** What a customer answers, by what the question says. */
type Answers = Readonly<Record<string, string>>;
const answerTo = (answers: Answers, question: string) =>
  Object.entries(answers).find(([said]) => question.includes(said))?.[1] ?? '';

const ANSWERS = {
  'sheet metal is missing': 'DC01',
  'quantity is missing': '12 pcs',
  '“NUT-B”': 'Yes, NUT-A please',
  'thickness is missing': 'yes, 1.5 mm',
  'the thickness “thick”': '16 ga.',
  'Our catalogue': 'see attachment',
  '“ALUM”': '5052-H32',
};

function inCsv(answers: Answers, of: AuditedList = list, escapes = true): Uint8Array {
  const report = questionsReport(of, askSender(of));
  const blocks = report.blocks.map((block) => ({
    ...block,
    rows: block.rows.map((row) => row.with(-1, answerTo(answers, String(row[4])))),
  }));
  return new TextEncoder().encode(writeReportCsv({ ...report, blocks }, { escapes }));
}

async function inWorkbook(
  bytes: Uint8Array,
  answers: Answers,
  change = (_: exceljs.Workbook) => {},
): Promise<Uint8Array> {
  const book = new exceljs.Workbook();
  await book.xlsx.load(bytes.slice().buffer as ArrayBuffer);
  book.getWorksheet('Questions')?.eachRow((row, number) => {
    const answer = answerTo(answers, row.getCell(5).text);
    if (number > 1 && answer) row.getCell(8).value = answer;
  });
  change(book);
  return new Uint8Array(await book.xlsx.writeBuffer());
}

function planFor(bytes: Uint8Array, of: AuditedList = list, name = 'back.csv'): readonly AnswerPlan[] {
  return planAnswers(of, readAnswers(readFile(bytes, name))?.answered ?? [], isOnFile);
}

const cellsIn = (plans: readonly AnswerPlan[]) =>
  plans.flatMap(({ cells, heading, isSure }) =>
    isSure ? cells.map(({ row, before, text }) => [row, heading, before, text]) : [],
  );
const noteOn = (plans: readonly AnswerPlan[], said: string) =>
  plans.find(({ question }) => question.text.includes(said))?.notes.join(' ') ?? 'no such question';

const FILLED = [
  [2, 'Material', '', 'DC01'],
  [3, 'Qty', '', '12 pcs'],
  [4, 'Part number', 'NUT-B', 'NUT-A'],
  [5, 'Thickness (mm)', '', '1.5 mm'],
  [6, 'Thickness (mm)', 'thick', '16 ga.'],
  [8, 'Material', 'ALUM', '5052-H32'],
];

describe('an answered question sheet', () => {
  const sheet = () => writeReportWorkbook(planQuestionsSheet('Questions', list));

  it.each([
    ['CSV', async () => inCsv(ANSWERS), 'back.csv'],
    [
      'CSV with semicolons',
      async () =>
        new TextEncoder().encode(
          new TextDecoder().decode(inCsv(ANSWERS)).replace(/,(?=(?:[^"]*"[^"]*")*[^"]*$)/g, ';'),
        ),
      'back.csv',
    ],
    ['XLSX', async () => inWorkbook(await sheet(), ANSWERS), 'back.xlsx'],
    [
      'XLSX under another name and below a letterhead',
      async () =>
        inWorkbook(await sheet(), ANSWERS, (book) => {
          const target = book.getWorksheet('Questions');
          if (!target) throw new Error('no sheet');
          target.name = 'Antworten';
          target.insertRow(1, ['Alder Reach Hydrology']);
        }),
      'back.xlsx',
    ],
  ])('fills the facts that it gives (%s)', async (_, bytes, name) => {
    const plans = planFor(await bytes(), list, name);
    expect(cellsIn(plans)).toEqual(expect.arrayContaining(FILLED));
    expect(cellsIn(plans)).toHaveLength(FILLED.length);
    expect(noteOn(plans, 'Our catalogue')).toBe('It goes into no cell of the list: it is left to you.');
    expect(readAnswers(readFile(await bytes(), name))?.isAlone).toBe(true);
  });

  it('leaves nothing open of what it has answered', () => {
    const filled = new Map(
      planFor(inCsv(ANSWERS))
        .flatMap(({ cells, isSure }) => (isSure ? cells : []))
        .map((cell) => [cell.row, cell]),
    );
    const rows = ROWS.map((line, index) => {
      const cell = filled.get(index + 2);
      return cell ? line.split(',').with(cell.column, cell.text).join(',') : line;
    });
    const after = judged(rows, PARTS).list;
    expect(askSender(after).map(({ text }) => text)).toEqual([expect.stringContaining('Our catalogue')]);
    expect(planFor(inCsv(ANSWERS), after).flatMap(({ cells }) => cells)).toEqual([]);
    expect(noteOn(planFor(inCsv(ANSWERS), after), 'thickness is missing')).toBe('It stands there already.');
  });

  it.each([
    ['thickness is missing', 'as drawn', '“as drawn” cannot be read as a thickness.'],
    ['thickness is missing', 'not 1.5 mm', '“not 1.5 mm” cannot be read as a thickness.'],
    ['sheet metal is missing', 'blue', '“blue” cannot be read as a sheet metal.'],
    ['sheet metal is missing', 'aluminium', '“aluminium” can still be several metals or tempers.'],
    ['quantity is missing', 'as needed', '“as needed” cannot be read as a whole number of pieces.'],
    ['quantity is missing', '2.5', '“2.5” cannot be read as a whole number of pieces.'],
    ['sheet metal is missing', 'probably DC01', '“probably DC01” does not sound certain.'],
    ['sheet metal is missing', '304?', '“304?” does not sound certain.'],
    ['sheet metal is missing', '304 or equivalent', '“304 or equivalent” does not sound certain.'],
    ['sheet metal is missing', 'DC01 for row 2', '“DC01 for row 2” may not be meant for every row of the question.'],
    ['“NUT-B”', 'I think NUT-A', '“I think NUT-A” does not sound certain.'],
    ['“NUT-B”', 'NUT-C', '“NUT-C” is a part in none of the catalogues.'],
    ['“NUT-B”', 'it is not NUT-A', '“it is not NUT-A” is a part in none of the catalogues.'],
    ['“NUT-B”', 'NUT-A or NUT-BARE', '“NUT-A or NUT-BARE” is a part in none of the catalogues.'],
  ])('to “%s” with “%s” is shown and not ticked', (said, answer, note) => {
    const plans = planFor(inCsv({ [said]: answer }));
    expect(noteOn(plans, said)).toBe(note);
    expect(plans.map(({ isSure, cells }) => [isSure, cells.length])).toEqual([[false, 1]]);
  });

  it('keeps a text that begins like a formula as the sender wrote it', () => {
    const rows = ['-NUT,P1,DC01,1.5,5.6,4'];
    const odd = judged(rows, PARTS).list;
    const plans = planFor(inCsv({ '“-NUT”': 'NUT-A' }, odd), odd);
    expect(cellsIn(plans)).toEqual([[2, 'Part number', '-NUT', 'NUT-A']]);
  });

  it('leaves out rows that hold another part, another panel, or nothing by now', () => {
    const bytes = inCsv(ANSWERS);
    const moved = judged(['NUT-A,P9,DC01,1.5,5.6,4', ...ROWS], PARTS).list;
    expect(cellsIn(planFor(bytes, moved)).map(([row]) => row)).not.toContain(6);
    expect(noteOn(planFor(bytes, moved), 'sheet metal is missing')).toBe(
      'Row 2 is left out: it does not hold what the question was about any more.',
    );
    const short = judged(ROWS.slice(0, 3), PARTS).list;
    expect(noteOn(planFor(bytes, short), 'thickness is missing')).toContain('Row 5 is left out');
  });

  it('is left to the user where the list has no such column', () => {
    const basis = createBasis([catalogue], DEFAULT_SHOP);
    const text = 'Part number,Panel,Material,Qty\nNUT-A,P1,DC01,4\n';
    const without = auditFile(readFile(new TextEncoder().encode(text), 'a.csv'), basis);
    const [question] = askSender(without);
    expect(question?.about).toBe('thickness');
    expect(questionsReport(without, askSender(without)).blocks[0]?.rows[0]?.[6]).toBe(FACT_NAMES.thickness);
    const plans = planFor(inCsv({ thickness: '1.5 mm' }, without), without);
    expect(plans).toMatchObject([{ cells: [], isSure: false }]);
    expect(plans[0]?.notes[0]).toBe('The list has no column for it (sheet thickness): it is left to you.');
  });

  it('without an answer is one all the same, and any other file is none', () => {
    expect(readAnswers(readFile(inCsv({}), 'a.csv'))).toEqual({ answered: [], isAlone: true });
    const text = 'No.,Panel,Part numbers,Question\n1,P1,NUT-A,2\n';
    expect(readAnswers(readFile(new TextEncoder().encode(text), 'a.csv'))).toBeNull();
  });
});

describe('a question sheet that was changed on the way', () => {
  const sheet = () => writeReportWorkbook(planQuestionsSheet('Questions', list));
  const back = async (change: (target: exceljs.Worksheet) => void) =>
    planFor(
      await inWorkbook(await sheet(), ANSWERS, (book) =>
        change(book.getWorksheet('Questions') ?? book.addWorksheet('x')),
      ),
      list,
      'back.xlsx',
    );
  const rowOf = (target: exceljs.Worksheet, said: string) => {
    let found = 0;
    target.eachRow((row, number) => {
      if (row.getCell(5).text.includes(said)) found = number;
    });
    return target.getRow(found);
  };
  const sorted = (plans: readonly AnswerPlan[]) => cellsIn(plans).toSorted((a, b) => Number(a[0]) - Number(b[0]));

  it.each<[string, (target: exceljs.Worksheet) => void]>([
    [
      'its rows sorted otherwise and numbered anew',
      (target) => {
        const rows = target.getRows(2, 7)?.map((row) => row.values) ?? [];
        rows.reverse().forEach((values, index) => {
          target.getRow(index + 2).values = values;
          target.getRow(index + 2).getCell(1).value = index + 1;
        });
      },
    ],
    ['a column put in before the others', (target) => target.spliceColumns(1, 0, ['Pos', 'x', 'y'])],
    ['the column “About” taken out', (target) => target.spliceColumns(7, 1)],
    [
      'what it is about changed',
      (target) => {
        rowOf(target, 'thickness is missing').getCell(7).value = 'Qty';
      },
    ],
  ])('fills the same with %s', async (_, change) => {
    expect(sorted(await back(change))).toEqual(FILLED);
  });

  it('has nothing to say where an answer is blank, and says what is wrong with a formula', async () => {
    const plans = await back((target) => {
      rowOf(target, 'sheet metal is missing').getCell(8).value = '  ';
      rowOf(target, 'thickness is missing').getCell(8).value = { formula: '0.5+1', result: 1.5 };
      rowOf(target, 'quantity is missing').getCell(8).value = { formula: 'Gone!A1', result: { error: '#REF!' } };
      rowOf(target, 'the thickness “thick”').getCell(8).value = { formula: 'A1+1' } as exceljs.CellFormulaValue;
    });
    expect(noteOn(plans, 'sheet metal is missing')).toBe('no such question');
    expect(sorted(plans)).toContainEqual([5, 'Thickness (mm)', '', '1.5']);
    expect(noteOn(plans, 'quantity is missing')).toBe('The answer is a spreadsheet error.');
    expect(noteOn(plans, 'the thickness “thick”')).toBe('The answer is a formula that was never calculated.');
    expect(sorted(plans).map(([row]) => row)).toEqual([4, 5, 8]);
  });

  it('leaves two answers to one question to the user, and an answer without a question too', async () => {
    const plans = await back((target) => {
      const { values } = rowOf(target, 'sheet metal is missing');
      const second = target.addRow(values);
      second.getCell(1).value = 99;
      second.getCell(8).value = '304';
      target.addRow(['', '', '', '', '', '', '', 'and the rest by Friday']);
    });
    const twice = plans.filter(({ question }) => question.text.includes('sheet metal is missing'));
    expect(twice.map(({ isSure, cells }) => [isSure, cells[0]?.text])).toEqual([
      [false, 'DC01'],
      [false, '304'],
    ]);
    expect(twice[0]?.notes).toEqual([
      'Question 99 has another answer for the same cell, “304”: tick the one that counts.',
    ]);
    const [one, other] = twice;
    expect(one && other && areAtOdds(one, other)).toBe(true);
    expect(one && areAtOdds(one, one)).toBe(false);
    expect(plans.at(-1)).toMatchObject({ cells: [], isSure: false, question: { answer: 'and the rest by Friday' } });
    expect(plans.at(-1)?.notes[0]).toContain('a row of the sheet without a question');
  });

  it('does not write over a cell that was settled in the meantime', () => {
    const settled = judged(ROWS.with(3, 'NUT-A,P2,DC01,2,5.6,4'), PARTS).list;
    const plans = planFor(inCsv(ANSWERS), settled);
    expect(noteOn(plans, 'sheet thickness is missing')).toBe('Row 5 is not in question any more: it holds “2”.');
    expect(cellsIn(plans).map(([row]) => row)).not.toContain(5);
  });

  it('is about another list where no row holds what was asked about', () => {
    const other = judged(['NUT-Z,P1,DC01,1.5,5.6,4', 'NUT-Z,P7,,1.5,5.6,4'], PARTS).list;
    const plans = planFor(inCsv(ANSWERS), other);
    expect(plans.flatMap(({ cells }) => cells)).toEqual([]);
    expect(areForAnotherList(plans)).toBe(true);
    expect(areForAnotherList(planFor(inCsv(ANSWERS)))).toBe(false);
  });
});

describe('a plain yes', () => {
  it('to a call-out fills in what the question offers', () => {
    const silent = judged(['NUT-A,P1,DC01,1.5,,4'], PARTS, { silence: 'unknown' }).list;
    const plans = planFor(inCsv({ 'gives no hole': 'Yes.' }, silent), silent);
    expect(cellsIn(plans)).toEqual([[2, 'Hole (mm)', '', '5.60 +0.08/-0 mm']]);
    const after = judged(['NUT-A,P1,DC01,1.5,5.60 +0.08/-0 mm,4'], PARTS, { silence: 'unknown' }).list;
    expect(after.lines[0]?.findings.find(({ rule }) => rule === 'clinch/hole')?.outcome).toBe('holds');
  });

  it('to an edge distance that the list has no column for is left to the user', () => {
    const silent = judged(['NUT-A,P1,DC01,1.5,5.6,4'], PARTS, { silence: 'unknown' }).list;
    const plans = planFor(inCsv({ 'gives no edge distance': 'yes' }, silent), silent);
    expect(plans).toMatchObject([{ cells: [], isSure: false }]);
    expect(plans[0]?.notes).toEqual(['The list has no column for it (edge distance): it is left to you.']);
  });

  it.each([
    ['hole', 'The list gives no hole. Will it be 5.6 +0.08/-0 mm?', 'yes', '5.6 +0.08/-0 mm'],
    ['edge', 'The list gives no edge distance. Is it at least 9 mm from hole centre to edge?', 'OK', '9 mm min'],
    ['edge', 'The list gives no edge distance. Is it at least 9 mm from hole centre to edge?', 'no', 'no'],
    ['hole', 'The list gives no hole. Will it be 5.6 +0.08/-0 mm?', 'yes, but 5.7', 'yes, but 5.7'],
    ['thickness', 'The sheet thickness is missing. What is it?', 'yes', 'yes'],
  ] as const)('to a question on %s', (about, question, answer, said) => {
    expect(withOffer(answer, about, question)).toBe(said);
  });
});

describe('answers as one step', () => {
  const plans = planFor(inCsv({ ...ANSWERS, 'sheet metal is missing': 'blue' }));
  const chosen = new Set(plans.filter(({ isSure }) => isSure));
  const deed = deedOfAnswers('back.csv', plans, chosen);

  it('fill each cell once and are told as the sender’s, the unused ones too', () => {
    expect(deed.name).toBe('fill in 5 answers of the sender from “back.csv”');
    expect(deed.cells.map(({ row, text }) => [row, text]).toSorted()).toEqual(
      FILLED.slice(1).map(([row, , , text]) => [row, text]),
    );
    expect(deed.told).toHaveLength(7);
    expect(deed.told.find(({ after }) => after === 'blue')).toMatchObject({ row: null, before: 'not filled in' });
    expect(deed.told.find(({ after }) => after === 'yes, 1.5 mm')).toMatchObject({
      where: expect.stringMatching(/^Sender’s answer to question \d: The sheet thickness is missing/),
      before: 'filled in',
    });
  });

  it('come through a project file, and a damaged one is refused', () => {
    const change = { cells: deed.cells };
    const step = { name: deed.name, after: change, before: change, when: '', by: '', told: deed.told };
    expect(readStep(JSON.parse(JSON.stringify(step)), 'steps[0]')).toEqual(step);
    expect(() => readStep({ ...step, told: [{ row: 0 }] }, 'steps[0]')).toThrow();
  });

  it('are kept in words alone where none is chosen', () => {
    const kept = deedOfAnswers('back.csv', plans, new Set());
    expect([kept.name, kept.cells]).toEqual(['keep 7 answers of the sender from “back.csv”', []]);
    expect(kept.told.every(({ before }) => before === 'not filled in')).toBe(true);
  });
});

describe('answers in a workbook of ours', () => {
  it('are read beside its list, from the last sheet that has any', async () => {
    const bytes = await inWorkbook(await writeWorkbook(list, '2026-11-02', parts), ANSWERS, (book) => {
      const copy = book.addWorksheet('Questions 2');
      copy.getRow(1).values = book.getWorksheet('Questions')?.getRow(1).values ?? [];
    });
    expect(readAnswers(readFile(bytes, 'back.xlsx'))?.isAlone).toBe(false);
    expect(cellsIn(planFor(bytes, list, 'back.xlsx'))).toHaveLength(FILLED.length);
  });

  it('fill the rows of its own list, wherever they stand by now', async () => {
    const basis = createBasis([catalogue], DEFAULT_SHOP);
    const bytes = await inWorkbook(await writeWorkbook(list, '2026-11-02', parts), ANSWERS, (book) => {
      book.getWorksheet('List')?.insertRow(2, ['NUT-A', 'P7', 'DC01', 1.5, 5.6, 4]);
      book.getWorksheet('List')?.spliceRows(6, 1);
    });
    const raw = readFile(bytes, 'back.xlsx');
    const again = auditFile(raw, basis);
    const own = moveAnswers(readAnswers(raw)?.answered ?? [], raw, again);
    const plans = planAnswers(again, own, isOnFile);
    expect(cellsIn(plans)).toEqual(
      expect.arrayContaining(
        FILLED.filter(([row]) => row !== 5).map(([row, ...rest]) => [Number(row) < 5 ? Number(row) + 1 : row, ...rest]),
      ),
    );
    expect(noteOn(plans, 'thickness is missing')).toBe('One of its rows is not in the list any more.');
  });
});

describe('rows of a question', () => {
  it.each([[[4]], [[4, 5]], [[12, 14, 19]], [[2, 3, 4, 5, 9]], [[2, 3, 4, 5, 9, 10, 11, 40]]])(
    '%j are read as written',
    (rows) => {
      expect(parseRows(listRows(rows))).toEqual(rows);
    },
  );

  it.each(['', 'all', '4 to', '9 to 2', '1 to 9999999', '4; 5', '3.2'])('“%s” names none', (text) => {
    expect(parseRows(text)).toEqual([]);
  });
});
