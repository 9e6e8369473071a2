import { ROLE_NAMES, UNIT_NAMES } from '../../app/role-names.ts';
import { isSizeRole } from '../../core/intake/size-spans.ts';
import type { Column, Role } from '../../core/model/list.ts';
import { listRules, rules } from '../../core/rules/index.ts';
import type { OwnColumn } from './cell-text.ts';

/** More checks than this are counted. */
const MOST_NAMED = 14;

/** What one of the sender's columns is read as, in what unit, and which checks read it. */
export function helpForColumn({ role, unit }: Column): string {
  if (role === 'other') return 'Not used: no check reads it, and it stays as it is.';
  const where = isSizeRole(role) ? ` Bare numbers ${unit ? `are ${UNIT_NAMES[unit]}` : 'have no unit yet'}.` : '';
  const checks = checksThatRead(role);
  const read = checks.length > 0 ? nameChecks(checks) : (PURPOSES[role] ?? 'No check reads it.');
  return `Read as ${ROLE_NAMES[role]}.${where} ${read}`;
}

/** What one of our columns says. */
export function helpForOwn(column: OwnColumn): string {
  return OWN[column];
}

/** Titles of the checks that look at a column with this meaning, in the order in which findings are shown. */
export function checksThatRead(role: Role): readonly string[] {
  return [...rules, ...listRules].filter(({ reads }) => reads.some((one) => one === role)).map(({ title }) => title);
}

function nameChecks(titles: readonly string[]): string {
  const all = rules.length + listRules.length;
  return titles.length > MOST_NAMED ? `Read by ${titles.length} of ${all} checks.` : `Read by: ${titles.join(', ')}.`;
}

/** What columns are for that no check reads. */
const PURPOSES: Partial<Record<Role, string>> = {
  level: 'Says how deep a row stands, so that pieces are counted through every level.',
  parent: 'Says what a row belongs to, so that pieces are counted through every level.',
  index: 'Numbers the rows; numbers such as 1.2.1 say what belongs to what.',
};

const OWN: Readonly<Record<OwnColumn, string>> = {
  sheet: 'Sheet metal and thickness as they were understood from the row, or from its panel.',
  'sheet-min': 'The thinnest sheet that the part is made for, by the catalogue.',
  'hole-required': 'The mounting hole that the part needs, with its tolerance: what to call out on the drawing.',
  margin:
    'Points on Rockwell B by which the fastener is harder than the hardest that the sheet may be; where only a typical hardness is known, than that.',
  verdict: 'The worst finding of all checks of the row.',
  decision: 'The finding that decides the verdict, in short; all findings stand in the panel of the row.',
};
