import type { Column, LengthUnit, Role } from '../model/list.ts';
import { fitRole } from './column-content.ts';
import type { TextsOf } from './column-texts.ts';
import { columnUnit } from './column-unit.ts';
import { headingText } from './heading-text.ts';
import { findRole } from './headings.ts';
import { OPEN_WORDS, PRESS_IN_WORDS } from './row-words.ts';
import { isSizeRole } from './size-spans.ts';
import { threadSystem } from './thread-words.ts';

/** Corrections by the user, by 0-based column. */
export interface ColumnChoices {
  readonly roles: Readonly<Record<number, Role>>;
  readonly units: Readonly<Record<number, LengthUnit>>;
}

export const NO_CHOICES: ColumnChoices = { roles: {}, units: {} };

/**
 * What each column means: by its heading, checked against the cells under it, which `textsOf` gives where they are needed. One column per role; the rest become `other`. A choice of the user stands above everything.
 */
export function findColumns(
  headings: readonly string[],
  textsOf: TextsOf,
  { roles = {}, units = {} }: Partial<ColumnChoices> = {},
): readonly Column[] {
  const guesses = headings.map((heading, index) => guess(heading, index, () => textsOf(index), roles[index]));
  const settled = contest(guesses);
  return withUnits(headings, textsOf, settled, units);
}

/** One column's claim to a role while the columns are compared. */
interface Claim {
  readonly index: number;
  readonly heading: string;
  readonly role: Role;
  readonly strength: 'chosen' | 'sure' | 'unsure';
  readonly texts: () => readonly string[];
}

function guess(heading: string, index: number, texts: () => readonly string[], chosen: Role | undefined): Claim {
  if (chosen) return { index, heading, role: chosen, strength: 'chosen', texts };
  const found = findRole(heading);
  const role = fitRole(found, heading, texts);
  return { index, heading, role, strength: found?.sure && role === found.role ? 'sure' : 'unsure', texts };
}

/** Gives each role to one column and what is left to the next best reading. */
function contest(claims: readonly Claim[]): readonly Role[] {
  const winners = new Map<Role, Claim | null>();
  for (const role of new Set(claims.map((claim) => claim.role))) {
    winners.set(
      role,
      pickWinner(
        role,
        claims.filter((claim) => claim.role === role),
        claims,
      ),
    );
  }
  const roles = claims.map((claim) => (winners.get(claim.role) === claim ? claim.role : 'other'));
  return claims.map((claim, index) =>
    roles[index] === 'other' ? secondRole(claim, roles, winners) : (roles[index] ?? 'other'),
  );
}

const SHEET_WORDS = /sheet|sht|panel|base|pnl|plate|parent|host|blech|tôle|板/i;

function pickWinner(role: Role, claims: readonly Claim[], all: readonly Claim[]): Claim | null {
  const chosen = claims.find(({ strength }) => strength === 'chosen');
  if (chosen || role === 'other') return chosen ?? null;
  if (claims.length === 1) return claims[0] ?? null;
  const filled = claims.filter(({ texts }) => texts().some(isFilled));
  const present = filled.length > 0 ? filled : claims;
  const sure = present.filter(({ strength }) => strength === 'sure');
  const rivals = sure.length > 0 ? sure : present;
  if (role === 'material' && rivals.length > 1) return pickSheetMaterial(rivals, all);
  const fastener = role === 'partNumber' ? rivals.find(({ heading }) => namesFastener(heading)) : undefined;
  if (fastener) return fastener;
  const filledIn = new Map(rivals.map((claim) => [claim, claim.texts().filter(isFilled).length]));
  return rivals.reduce((best, claim) => ((filledIn.get(claim) ?? 0) > (filledIn.get(best) ?? 0) ? claim : best));
}

function isFilled(text: string): boolean {
  return text.trim() !== '';
}

/**
 * Two columns called "Material": one that says sheet, panel or base, else the one beside the thickness. When neither tells,
 * none is taken, because a fastener's metal read as the sheet's could call a bad pair good.
 */
function pickSheetMaterial(rivals: readonly Claim[], all: readonly Claim[]): Claim | null {
  const named = rivals.filter(({ heading }) => SHEET_WORDS.test(heading));
  if (named[0]) return named[0];
  const thickness = all.find(({ role }) => role === 'thickness');
  const beside = rivals.filter(({ index }) => thickness && Math.abs(index - thickness.index) === 1);
  return beside.length === 1 ? (beside[0] ?? null) : null;
}

const FASTENER_WORDS = /fast(?:e?n)|hardware|hdwr?e?\b|insert|\b(?:clinch|nut|stud)\b/i;

/** Whether a heading speaks of the fastener itself: "Fastener P/N", "Hardware No.". */
export function namesFastener(heading: string): boolean {
  return FASTENER_WORDS.test(heading) || PRESS_IN_WORDS.test(heading) || OPEN_WORDS.test(heading);
}

/** What the loser of a contest may still be, where that place is free. */
function secondRole({ role, heading }: Claim, roles: readonly Role[], winners: ReadonlyMap<Role, Claim | null>): Role {
  const winner = winners.get(role);
  if (!winner) return 'other';
  const second = SECOND[role]?.(heading, winner.heading);
  return second && !roles.includes(second) ? second : 'other';
}

const SECOND: Partial<Record<Role, (heading: string, winner: string) => Role | null>> = {
  panel: () => 'parent',
  material: (heading) => (SHEET_WORDS.test(heading) ? null : 'fastenerMaterial'),
  // Beside "Fastener P/N" a plain "Part No." is the part that the fastener goes into.
  partNumber: (heading, winner) => (namesFastener(winner) && headingText(heading).words === 'part no' ? 'panel' : null),
};

/** Columns whose text may name threads. */
const THREADED: ReadonlySet<Role> = new Set(['partNumber', 'description', 'thread']);

function withUnits(
  headings: readonly string[],
  textsOf: TextsOf,
  roles: readonly Role[],
  units: Readonly<Record<number, LengthUnit>>,
): readonly Column[] {
  let system: LengthUnit | null | undefined;
  const settle = () => (system ??= threadSystem(roles.flatMap((role, at) => (THREADED.has(role) ? textsOf(at) : []))));
  return headings.map((heading, index) => {
    const role = roles[index] ?? 'other';
    const column = { index, heading, role };
    const chosen = units[index];
    if (!isSizeRole(role)) return { ...column, unit: null, unitFrom: null };
    if (chosen) return { ...column, unit: chosen, unitFrom: 'user' };
    const found = columnUnit(heading, textsOf(index), role);
    if (found.from) return { ...column, unit: found.unit, unitFrom: found.from };
    const unit = settle();
    return { ...column, unit, unitFrom: unit && 'list' };
  });
}
