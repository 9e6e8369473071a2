import type { AuditedLine, AuditedList } from '../model/audited.ts';
import type { Column } from '../model/list.ts';
import { type Answerable, findAbout, showAbout } from '../rollup/about.ts';
import { distinct } from '../rollup/group-by.ts';
import { askSender, headingOf, type Question } from '../rollup/questions.ts';
import { findOdds } from './at-odds.ts';
import { findRows } from './find-rows.ts';
import { withOffer } from './offered.ts';
import type { AnsweredQuestion } from './read-answers.ts';
import { type IsOnFile, readAsFact, withCell } from './read-as-fact.ts';

/** A cell that an answer would fill. */
export interface AnswerCell {
  readonly row: number;
  /** 0-based. */
  readonly column: number;
  readonly before: string;
  readonly text: string;
}

/** What one answer would do. */
export interface AnswerPlan {
  readonly question: AnsweredQuestion;
  /** The sender's heading of the column; '' where the answer goes into none. */
  readonly heading: string;
  /** None: it is left to the user. */
  readonly cells: readonly AnswerCell[];
  /** What speaks against it, and what is left out, in sentences. */
  readonly notes: readonly string[];
  /** Nothing speaks against filling it in. */
  readonly isSure: boolean;
  /** Whether the list has a row that the question is about: where no answer has one, they are about another list. */
  readonly isAboutList: boolean;
}

interface Context {
  readonly list: AuditedList;
  readonly asked: readonly Question[];
  /** "row fact" of what the list asks as it stands. */
  readonly open: ReadonlySet<string>;
  readonly isOnFile: IsOnFile;
}

/**
 * What answers would fill in. Only rows are filled that still hold the question's parts on its panel; what cannot be read, what the list
 * does not ask any more, and answers that contradict each other are not sure.
 */
export function planAnswers(
  list: AuditedList,
  answered: readonly AnsweredQuestion[],
  isOnFile: IsOnFile,
): readonly AnswerPlan[] {
  const asked = askSender(list);
  const open = new Set(asked.flatMap(({ about, rows }) => (about ? rows.map((row) => `${row} ${about}`) : [])));
  const plans = answered.map((question) => planAnswer(question, { list, asked, open, isOnFile }));
  const odds = findOdds(plans);
  return plans.map((plan, index) => {
    const notes = odds.get(index);
    return notes ? { ...plan, notes: [...notes, ...plan.notes], isSure: false } : plan;
  });
}

function planAnswer(question: AnsweredQuestion, context: Context): AnswerPlan {
  const { columns } = context.list;
  const { lines, notes } = findRows(question, context.list);
  const isAboutList = lines.length > 0;
  const leave = (...why: readonly string[]): AnswerPlan => ({
    question,
    heading: '',
    cells: [],
    notes: why,
    isSure: false,
    isAboutList,
  });
  if (question.flaw) return leave(question.flaw);
  const about = factOf(question, context);
  if (about === '') return leave('It goes into no cell of the list: it is left to you.', ...notes);
  const found = findAbout(about, columns);
  if (!found) return leave(`The list has no column “${about}”: it is left to you.`, ...notes);
  if (!found.column) return leave(`The list has no column for it (${about}): it is left to you.`, ...notes);
  const { cells, doubts } = fill(question, lines, { about: found.about, column: found.column, context });
  const changed = cells.filter(({ before, text }) => before !== text);
  const isThere = cells.length > 0 && changed.length === 0;
  return {
    question,
    heading: found.column.heading,
    cells: changed,
    notes: isThere ? ['It stands there already.', ...notes] : [...doubts, ...notes],
    isSure: doubts.length === 0 && changed.length > 0,
    isAboutList,
  };
}

/** The fact that a question asks for: as the list asks it now, else as its sheet says. */
function factOf({ text, panel, about }: AnsweredQuestion, { asked, list }: Context): string {
  const same = asked.find((one) => one.text === text && headingOf(one.panel) === panel);
  return same ? showAbout(same.about, list.columns) : about;
}

interface Target {
  readonly about: Answerable;
  readonly column: Column;
  readonly context: Context;
}

function fill(
  { answer, text: question }: AnsweredQuestion,
  lines: readonly AuditedLine[],
  { about, column, context }: Target,
) {
  const { list, isOnFile, open } = context;
  const said = withOffer(answer, about, question);
  const read = lines.map(({ row, line }) => {
    const given = { row, cells: line.cells };
    const { text, doubt } = readAsFact(said, about, given, column, list.columns, isOnFile);
    const place = withCell(given, column, text).column;
    const before = line.cells[place] ?? '';
    const isSettled = before.trim() !== '' && before !== text && !open.has(`${row} ${about}`);
    return {
      doubts: [
        doubt && `“${answer}” ${doubt}.`,
        isSettled ? `Row ${row} is not in question any more: it holds “${before}”.` : '',
      ],
      cell: { row, column: place, before, text },
    };
  });
  return { cells: read.map(({ cell }) => cell), doubts: distinct(read.flatMap(({ doubts }) => doubts)) };
}
