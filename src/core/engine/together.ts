import type { Finding } from '../model/finding.ts';
import type { Outcome } from '../model/outcome.ts';
import { listRules } from '../rules/index.ts';
import type { ListRule, Subject } from '../rules/rule.ts';
import { isBroken, listFindings } from './audit-line.ts';
import { saySame } from './say-finding.ts';

type FindingOf = (subject: Subject) => Finding | undefined;

/** Rows that a rule judges together, in file order, and what it says of each. */
interface Group {
  readonly rows: readonly Subject[];
  readonly findingOf: FindingOf;
}

/** What one rule over the whole list says of its rows. */
interface SaidByRule {
  readonly rule: ListRule;
  readonly findingOf: FindingOf;
  readonly isBroken: boolean;
  /** The rows by the rule's own groups; put together when first asked for. */
  readonly groups: () => ReadonlyMap<string, Group>;
}

/** What every rule over the whole list says of its rows. */
export type Together = readonly SaidByRule[];

/** Rows that are no longer what they were, and what they have become; both in file order. */
export interface ChangedRows {
  readonly gone: readonly Subject[];
  readonly come: readonly Subject[];
}

/** Asks every rule over the whole list. */
export function judgeTogether(subjects: readonly Subject[]): Together {
  return listRules.map((rule) => judgeAll(rule, subjects));
}

/**
 * Asks again for the groups that rows have left or joined, and for no others. `touched` gathers the rows of these groups of which
 * something else is said than of the row of that number before. `all` gives every row as it is now.
 */
export function judgeTogetherAgain(
  before: Together,
  changed: ChangedRows,
  all: () => readonly Subject[],
  touched: Set<Subject>,
): Together {
  return before.map((said) => judgeGroupsAgain(said, changed, touched) ?? judgeAnew(said.rule, all(), touched));
}

/**
 * The outcomes of the rules over the whole list for rows that have become others, by row: for trying parts, without sentences and
 * without looking at groups that these rows do not join.
 */
export function tryTogether(before: Together, { gone, come }: ChangedRows): ReadonlyMap<number, readonly Outcome[]> {
  const outcomes = new Map<number, Outcome[]>(come.map(({ line }) => [line.row, []]));
  for (const { rule, groups } of before) {
    const left = rowsByGroup(rule, gone);
    for (const [key, joined] of rowsByGroup(rule, come)) {
      const rows = exchange(groups().get(key)?.rows ?? [], left.get(key) ?? [], joined);
      const outcomeOf = listOutcomes(rule, rows);
      for (const subject of joined) outcomes.get(subject.line.row)?.push(...outcomeOf(subject));
    }
  }
  return outcomes;
}

/** What the rules over the whole list say of a row, in their order. */
export function findingsOf(together: Together, subject: Subject): readonly Finding[] {
  const found: Finding[] = [];
  for (const { findingOf } of together) {
    const finding = findingOf(subject);
    if (finding) found.push(finding);
  }
  return found;
}

function judgeAnew(rule: ListRule, all: readonly Subject[], touched: Set<Subject>): SaidByRule {
  for (const subject of all) touched.add(subject);
  return judgeAll(rule, all);
}

function judgeAll(rule: ListRule, subjects: readonly Subject[]): SaidByRule {
  const findingOf = listFindings(rule, subjects);
  let groups: ReadonlyMap<string, Group> | undefined;
  return {
    rule,
    findingOf,
    isBroken: isBrokenIn(findingOf, subjects),
    groups: () => {
      groups ??= new Map([...rowsByGroup(rule, subjects)].map(([key, rows]) => [key, { rows, findingOf }]));
      return groups;
    },
  };
}

/** Null where a rule breaks or broke before: then nobody knows which rows it would have named. */
function judgeGroupsAgain(said: SaidByRule, { gone, come }: ChangedRows, touched: Set<Subject>): SaidByRule | null {
  const { rule } = said;
  if (said.isBroken) return null;
  const groups = new Map(said.groups());
  const left = rowsByGroup(rule, gone);
  const joined = rowsByGroup(rule, come);
  for (const key of new Set([...left.keys(), ...joined.keys()])) {
    const group = groups.get(key);
    const rows = exchange(group?.rows ?? [], left.get(key) ?? [], joined.get(key) ?? []);
    const findingOf = listFindings(rule, rows);
    if (isBrokenIn(findingOf, rows)) return null;
    if (rows.length > 0) groups.set(key, { rows, findingOf });
    else groups.delete(key);
    for (const subject of rows) if (!saySame(group?.findingOf(subject), findingOf(subject))) touched.add(subject);
  }
  const findingOf = (subject: Subject) => groups.get(rule.groupOf(subject) ?? '')?.findingOf(subject);
  return { rule, findingOf, isBroken: false, groups: () => groups };
}

/** A rule that throws makes every row unknown. */
function listOutcomes(rule: ListRule, rows: readonly Subject[]): (subject: Subject) => readonly Outcome[] {
  try {
    const judgements = rule.checkList(rows);
    return (subject) => {
      const judgement = judgements.get(subject);
      return judgement ? [judgement.outcome] : [];
    };
  } catch {
    return () => ['unknown'];
  }
}

function rowsByGroup(rule: ListRule, subjects: readonly Subject[]): Map<string, Subject[]> {
  const groups = new Map<string, Subject[]>();
  for (const subject of subjects) {
    const key = rule.groupOf(subject);
    if (key === null) continue;
    const group = groups.get(key);
    if (group) group.push(subject);
    else groups.set(key, [subject]);
  }
  return groups;
}

function exchange(rows: readonly Subject[], left: readonly Subject[], joined: readonly Subject[]): readonly Subject[] {
  const isLeft = new Set(left);
  const stay = rows.filter((subject) => !isLeft.has(subject));
  return joined.length > 0 ? [...stay, ...joined].sort((a, b) => a.line.row - b.line.row) : stay;
}

function isBrokenIn(findingOf: FindingOf, [first]: readonly Subject[]): boolean {
  return first !== undefined && isBroken(findingOf(first));
}
