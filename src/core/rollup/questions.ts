import type { AuditedLine, AuditedList } from '../model/audited.ts';
import { panelKey } from '../rules/list/group.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../say/safety.ts';
import type { Answerable } from './about.ts';
import { askRow, type RowAsk } from './ask-row.ts';
import { distinct, groupBy } from './group-by.ts';
import { capital, joinNames, nameEveryRow } from './name-rows.ts';

const MOST_PARTS = 10;
const MOST_REASONS = 3;

/** One question to whoever sent the list. */
export interface Question {
  /** From 1 on, through all panels. */
  readonly number: number;
  /** As first written; '' where the rows name none; null for a question over several panels. */
  readonly panel: string | null;
  readonly rows: readonly number[];
  /** The sender's own part numbers in those rows, as written. */
  readonly partNumbers: readonly string[];
  readonly text: string;
  /** The fact of those rows that the answer gives; null where it belongs into no cell of the list. */
  readonly about: Answerable | null;
  /** What hangs on the answer, where the question does not say. */
  readonly because: readonly string[];
}

/**
 * Everything to ask the sender of a list, each question once with all its rows: what is unknown or marginal, and quantities that
 * cannot be used. What concerns several panels comes first, then panel by panel in the order of the list.
 */
export function askSender({ lines, columns, shop }: AuditedList): readonly Question[] {
  const asks = lines.flatMap((line) => askRow(line, { columns, units: shop.units }));
  const panels = panelsOf(lines);
  const places = new Map([...panels.values()].map((panel, index) => [panel, index]));
  const place = ({ panel }: Omit<Question, 'number'>) => (panel === null ? -1 : (places.get(panel) ?? -1));
  return groupBy(asks, ({ key }) => key)
    .map((same) => toQuestion(same, panels))
    .sort((a, b) => place(a) - place(b) || (a.rows[0] ?? 0) - (b.rows[0] ?? 0))
    .map((question, index) => ({ number: index + 1, ...question }));
}

/** The questions as a plain letter that names nobody, with the safety words once at its foot. */
export function showQuestions({ file, sheet, catalogues }: AuditedList, questions: readonly Question[]): string {
  const place = sheet ? `“${file}” (sheet “${sheet}”)` : `“${file}”`;
  const opening =
    questions.length === 0
      ? [`Thank you for the list ${place}. We have no questions about it.`]
      : [
          `Thank you for the list ${place}. Before we can say of every row whether it will hold, please answer ${questions.length === 1 ? 'this question' : `these ${questions.length} questions`}. Row numbers are those of your file.`,
        ];
  const groups = groupBy(questions, ({ panel }) => headingOf(panel));
  return [
    'Hello,',
    '',
    ...opening,
    ...groups.flatMap((group) => ['', headingOf(group[0].panel), ...group.map(showQuestion)]),
    '',
    ...(questions.length === 0 ? [] : ['Please answer by the numbers, or correct the list and send it again.', '']),
    'Kind regards',
    '',
    ...(catalogues.some(({ demo }) => demo) ? [DEMO_WORDS] : []),
    SAFETY_SHORT,
    '',
  ].join('\n');
}

/** By what a question is known again after the list has changed. */
export function questionKey({ panel, text }: Question): string {
  return JSON.stringify([panel, text]);
}

/** What stands above the questions of a panel. */
export function headingOf(panel: string | null): string {
  if (panel === null) return 'Whole list';
  return panel === '' ? 'No panel named' : `Panel ${panel}`;
}

function toQuestion(
  asks: readonly [RowAsk, ...RowAsk[]],
  panels: ReadonlyMap<string, string>,
): Omit<Question, 'number'> {
  const [first] = asks;
  return {
    panel: sharedPanel(asks, panels),
    rows: [...new Set(asks.map(({ line }) => line.row))].sort((a, b) => a - b),
    partNumbers: distinct(asks.map(({ line }) => line.line.partNumber)),
    text: first.isData ? askData(first, distinct(asks.map(({ text }) => text))) : first.text,
    about: first.about,
    because: distinct(asks.map(({ because }) => because)),
  };
}

/** Panels of the list in its order, by key, each as first written; case and spaces make no difference between them. */
function panelsOf(lines: readonly AuditedLine[]): ReadonlyMap<string, string> {
  return new Map(groupBy(lines, keyOf).map(([first]) => [keyOf(first), first.line.panel.trim()]));
}

function keyOf(line: Pick<AuditedLine, 'line'>): string {
  return panelKey(line) ?? '';
}

/** A question that happens to concern one panel only stands with that panel. */
function sharedPanel(asks: readonly [RowAsk, ...RowAsk[]], panels: ReadonlyMap<string, string>): string | null {
  const [key, ...others] = new Set(asks.map(({ line }) => keyOf(line)));
  return others.length > 0 ? null : (panels.get(key ?? '') ?? '');
}

function askData({ line }: RowAsk, missing: readonly string[]): string {
  const part = line.fastener?.partNumber ?? line.line.partNumber.trim();
  return `Our catalogue does not give everything for ${part}: ${joinNames(missing)}. Can you send its data sheet?`;
}

function showQuestion({ number, rows, partNumbers, text, because }: Question): string {
  const parts = partNumbers.length > 0 ? ` (${showFirst(partNumbers, MOST_PARTS, ', ')})` : '';
  const why = because.length > 0 ? ` Why it matters: ${showFirst(because, MOST_REASONS, '; ')}.` : '';
  return `${number}. ${capital(nameEveryRow(rows))}${parts}: ${text}${why}`;
}

/** The first of many, and how many more there are. */
function showFirst(texts: readonly string[], most: number, between: string): string {
  const more = texts.length - most;
  return [...texts.slice(0, most), ...(more > 0 ? [`${more} more`] : [])].join(between);
}
