import { rememberSome } from '../../caching/remember.ts';
import { isAtMost } from '../../calc/closeness.ts';
import type { Subject } from '../rule.ts';

/** Rows that share a key: groups and the rows in them in file order, whatever the order given. Rows whose key is null are left out. */
export function groupBy(
  subjects: readonly Subject[],
  keyOf: (subject: Subject) => string | null,
): readonly (readonly Subject[])[] {
  const groups = new Map<string, Subject[]>();
  for (const subject of inFileOrder(subjects)) {
    const key = keyOf(subject);
    if (key === null) continue;
    const group = groups.get(key);
    if (group) group.push(subject);
    else groups.set(key, [subject]);
  }
  return [...groups.values()];
}

function inFileOrder(subjects: readonly Subject[]): readonly Subject[] {
  const isOrdered = subjects.every(({ line }, at) => at === 0 || (subjects[at - 1]?.line.row ?? 0) <= line.row);
  if (isOrdered) return subjects;
  return [...subjects].sort((a, b) => a.line.row - b.line.row);
}

/** The panel of a row for comparing: case and spaces make no difference. Null: the row names none. */
export function panelKey({ line }: Pick<Subject, 'line'>): string | null {
  return keyOf(line.panel) || null;
}

const keyOf = rememberSome((panel) => panel.normalize('NFKC').replace(/\s+/g, '').toUpperCase());

/** Rows of one length, up to the rounding of inch sizes. */
export interface SameLength {
  readonly mm: number;
  /** In file order. */
  readonly rows: readonly Subject[];
}

/** Rows put together that have the same length, the smallest first. Rows whose length is no number are left out. */
export function groupByLength(
  subjects: readonly Subject[],
  lengthMm: (subject: Subject) => number,
): readonly SameLength[] {
  const measured = subjects
    .map((subject) => ({ subject, mm: lengthMm(subject) }))
    .filter(({ mm }) => Number.isFinite(mm));
  const groups: { readonly mm: number; readonly rows: Subject[] }[] = [];
  for (const { subject, mm } of measured.sort((a, b) => a.mm - b.mm)) {
    const last = groups.at(-1);
    if (last && isAtMost(mm, last.mm)) last.rows.push(subject);
    else groups.push({ mm, rows: [subject] });
  }
  return groups.map(({ mm, rows }) => ({ mm, rows: inFileOrder(rows) }));
}

const NAMED_ROWS = 4;

/** Rows in a phrase: "row 5", "rows 5 and 7", "rows 5, 7, 9, 12 and 30 more"; `except` is one of them that is left out. */
export function nameRows(subjects: readonly Subject[], except?: Subject): string {
  const count = subjects.length - (except ? 1 : 0);
  const first = subjects.slice(0, NAMED_ROWS + 1).filter((subject) => subject !== except);
  const named = first.slice(0, NAMED_ROWS).map(({ line }) => String(line.row));
  const all = count > named.length ? [...named, `${count - named.length} more`] : named;
  if (all.length === 1) return `row ${all[0]}`;
  return `rows ${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;
}
