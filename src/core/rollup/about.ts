import type { Finding } from '../model/finding.ts';
import type { Column, Role } from '../model/list.ts';
import type { AskText } from './ask-texts.ts';

/** Facts that an answer can put into a cell of its row, by what the columns that hold them mean. */
export const ANSWERABLE = [
  'partNumber',
  'quantity',
  'material',
  'thickness',
  'hole',
  'edge',
  'spacing',
  'bend',
] as const satisfies readonly Role[];
export type Answerable = (typeof ANSWERABLE)[number];

/** What such a fact is called where the list has no column for it. */
export const FACT_NAMES: Readonly<Record<Answerable, string>> = {
  partNumber: 'part number',
  quantity: 'quantity',
  material: 'sheet metal',
  thickness: 'sheet thickness',
  hole: 'hole',
  edge: 'edge distance',
  spacing: 'spacing',
  bend: 'distance to bend',
};

const BY_TOPIC: Partial<Record<NonNullable<AskText['topic']>, Answerable>> = {
  part: 'partNumber',
  metal: 'material',
  thickness: 'thickness',
};
const BY_RULE: Readonly<Record<string, Answerable>> = {
  'clinch/hole': 'hole',
  'clinch/edge': 'edge',
  'clinch/spacing': 'spacing',
  'clinch/bend': 'bend',
  'list/quantity': 'quantity',
};
/** What these rules say when it is the row's own cell that is missing, unreadable, or too loose. */
const OWN_CELL = /^(?:blank|zero|not-whole|unreadable|impossible|call-out|leaves|leaves-general)$/;

/** The fact of the row that a finding asks for; null where the answer belongs into no cell: a certificate, a data sheet, a unit. */
export function aboutOf({ rule, says }: Finding, askText: AskText | null): Answerable | null {
  const topic = askText?.topic ?? null;
  if (topic !== null && topic !== 'quantity') return BY_TOPIC[topic] ?? null;
  return OWN_CELL.test(says) ? (BY_RULE[rule] ?? null) : null;
}

/** The sender's own heading of the column that a question is about; the fact's name where there is none. */
export function showAbout(about: Answerable | null, columns: readonly Column[]): string {
  if (about === null) return '';
  return columns.find(({ role }) => role === about)?.heading.trim() || FACT_NAMES[about];
}

/** The fact that such words name, and its column in a list; null for words that name none. */
export function findAbout(
  text: string,
  columns: readonly Column[],
): { readonly about: Answerable; readonly column: Column | null } | null {
  const wanted = tidy(text);
  const headed = columns.find(({ heading, role }) => tidy(heading) === wanted && isAnswerable(role));
  const about = headed
    ? ANSWERABLE.find((one) => one === headed.role)
    : ANSWERABLE.find((one) => FACT_NAMES[one] === wanted);
  if (wanted === '' || !about) return null;
  return { about, column: headed ?? columns.find(({ role }) => role === about) ?? null };
}

function isAnswerable(role: Role): boolean {
  return ANSWERABLE.some((one) => one === role);
}

function tidy(text: string): string {
  return text.replace(/\s+/g, ' ').trim().toLowerCase();
}
