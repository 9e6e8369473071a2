import { rememberFor, rememberSome } from '../../caching/remember.ts';
import { isAtMost } from '../../calc/closeness.ts';
import type { Fastener } from '../../model/fastener.ts';
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

/** Rows in file order; the same array where they are. Found once for the same rows. */
export const inFileOrder: (subjects: readonly Subject[]) => readonly Subject[] = rememberFor(putInFileOrder);

function putInFileOrder(subjects: readonly Subject[]): readonly Subject[] {
  let last = 0;
  for (const { line } of subjects) {
    if (line.row < last) return sorted(subjects);
    last = line.row;
  }
  return subjects;
}

function sorted(subjects: readonly Subject[]): readonly Subject[] {
  return [...subjects].sort((a, b) => a.line.row - b.line.row);
}

/** The rows of each panel in file order, by `panelKey`; rows that name no panel are left out. Found once for the rows of one list. */
export const groupByPanel: (subjects: readonly Subject[]) => ReadonlyMap<string, readonly Subject[]> =
  rememberFor(findPanels);

function findPanels(subjects: readonly Subject[]): ReadonlyMap<string, readonly Subject[]> {
  return new Map(groupBy(subjects, panelKey).map((rows) => [rows[0] ? (panelKey(rows[0]) ?? '') : '', rows]));
}

/** The parts on file among rows, each once: what only depends on these is soon settled for a long list. Found once for the same rows. */
export const partsAmong: (subjects: readonly Subject[]) => readonly Fastener[] = rememberFor(findParts);

function findParts(subjects: readonly Subject[]): readonly Fastener[] {
  const parts = new Set<Fastener | null>();
  for (const { fastener } of subjects) parts.add(fastener);
  parts.delete(null);
  return [...parts] as readonly Fastener[];
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

/** As many rows of a group are named; any row behind these is told of the same ones. */
export const NAMED_ROWS = 4;

/** Rows in a phrase: "row 5", "rows 5 and 7", "rows 5, 7, 9, 12 and 30 more"; `except` is one of them that is left out. */
export function nameRows(subjects: readonly Subject[], except?: Subject): string {
  const count = subjects.length - (except ? 1 : 0);
  const first = subjects.slice(0, NAMED_ROWS + 1).filter((subject) => subject !== except);
  const named = first.slice(0, NAMED_ROWS).map(({ line }) => String(line.row));
  const all = count > named.length ? [...named, `${count - named.length} more`] : named;
  if (all.length === 1) return `row ${all[0]}`;
  return `rows ${all.slice(0, -1).join(', ')} and ${all.at(-1)}`;
}
