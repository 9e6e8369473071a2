import { findList } from '../intake/find-header.ts';
import { ownSheetKind } from '../intake/own-sheets.ts';
import type { CellFlag, RawFile, RawRow, RawTable } from '../model/raw.ts';

/** A question of a sheet that has come back, with its answer. Texts as they stand on the sheet. */
export interface AnsweredQuestion {
  /** Without the point behind it; '' where the answer stands in a row without a question. */
  readonly number: string;
  /** What stood above the question: "Panel P1", "Whole list". */
  readonly panel: string;
  readonly rows: readonly number[];
  /** How many of its rows could not be found again. */
  readonly rowsGone?: number;
  readonly partNumbers: string;
  readonly text: string;
  /** Heading of the column that the answer belongs into; '' where it belongs into none. */
  readonly about: string;
  readonly answer: string;
  /** Why the answer cannot be used whatever it says, as a sentence; '' otherwise. */
  readonly flaw: string;
}

/** A question sheet of ours that has come back. */
export interface AnswerSheet {
  /** Only questions with an answer. */
  readonly answered: readonly AnsweredQuestion[];
  /** Whether the file is nothing but a question sheet, so that it cannot be opened as a list. */
  readonly isAlone: boolean;
}

const NEEDED = ['no.', 'panel', 'rows', 'part numbers', 'question', 'answer'];
/** The heading row may have been pushed down by a letterhead. */
const ROWS_SEARCHED = 20;
/** More rows than a sheet has are no row numbers. */
const MOST_ROWS = 100_000;
const FLAWS: Partial<Record<CellFlag, string>> = {
  error: 'The answer is a spreadsheet error.',
  'not-calculated': 'The answer is a formula that was never calculated.',
};
const NO_QUESTION = 'It stands in a row of the sheet without a question: it is left to you.';

/** The question sheet of ours that a file holds, whatever the sheet is called by now; of several the last with answers. Null: none. */
export function readAnswers(file: RawFile): AnswerSheet | null {
  const sheets = file.tables.flatMap((table) => {
    const header = table.rows.slice(0, ROWS_SEARCHED).find(isHeader);
    return header ? [{ table, answered: readTable(table, header) }] : [];
  });
  const last = sheets.findLast(({ answered }) => answered.length > 0) ?? sheets.at(-1);
  if (!last) return null;
  const others = file.tables.filter(
    (table) => ownSheetKind(table) === null && sheets.every((sheet) => sheet.table !== table),
  );
  return { answered: last.answered, isAlone: findList({ ...file, tables: others }) === null };
}

function isHeader({ cells }: RawRow): boolean {
  const headings = cells.map((cell) => cell.trim().toLowerCase());
  return NEEDED.every((heading) => headings.includes(heading));
}

function readTable({ rows }: RawTable, header: RawRow): readonly AnsweredQuestion[] {
  const columns = new Map(header.cells.map((cell, index) => [cell.trim().toLowerCase(), index]));
  return rows.filter(({ number }) => number > header.number).flatMap((row) => readRow(row, columns));
}

function readRow({ cells, flags }: RawRow, columns: ReadonlyMap<string, number>): readonly AnsweredQuestion[] {
  const cell = (heading: string) => withoutMark(cells[columns.get(heading) ?? -1] ?? '').trim();
  const flag = flags?.[columns.get('answer') ?? -1];
  const flaw = (flag && FLAWS[flag]) ?? '';
  const [number, answer, text] = [cell('no.').replace(/\.$/, ''), cell('answer'), cell('question')];
  if (answer === '' && flaw === '') return [];
  return [
    {
      number,
      panel: cell('panel'),
      rows: parseRows(cell('rows')),
      partNumbers: cell('part numbers'),
      text,
      about: cell('about'),
      answer,
      flaw: text === '' ? NO_QUESTION : flaw,
    },
  ];
}

/** Rows as the sheet names them: "2 to 5, 9 and 12". None where it is anything else. */
export function parseRows(text: string): readonly number[] {
  if (!/^\d+(?:(?: to |, | and |,)\d+)*$/.test(text)) return [];
  const runs = [...text.matchAll(/(\d+)(?: to (\d+))?/g)].map(([, first, last = first]) => [
    Number(first),
    Number(last),
  ]);
  const counts = runs.map(([first = 0, last = 0]) => last - first + 1);
  if (counts.some((count) => count < 1) || counts.reduce((sum, count) => sum + count, 0) > MOST_ROWS) return [];
  return runs.flatMap(([first = 0], index) => Array.from({ length: counts[index] ?? 0 }, (_, at) => first + at));
}

/** CSV for spreadsheets has an apostrophe before what begins like a formula. */
function withoutMark(text: string): string {
  return text.replace(/^'(?=\s*[=+\-@＝＋－＠﹦﹢﹣﹫])/, '');
}
