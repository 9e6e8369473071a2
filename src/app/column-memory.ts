import { type ColumnChoices, NO_CHOICES } from '../core/intake/columns.ts';
import type { HeadingSet } from '../core/intake/heading-set.ts';
import { ROLES, type Role } from '../core/model/list.ts';
import { hasChoices } from './column-choices.ts';
import type { OpenMemory } from './shop-memory.ts';

const KEY = 'clinchsheet-columns';
const MOST_SETS = 50;

/** Column choices for earlier lists, oldest first. What is not understood is left out; nothing where there is no memory. */
export function recallColumns(open: OpenMemory): readonly HeadingSet[] {
  try {
    const kept: unknown = JSON.parse(open().getItem(KEY) ?? '[]');
    return Array.isArray(kept) ? kept.flatMap(readSet).slice(-MOST_SETS) : [];
  } catch {
    return [];
  }
}

/** Keeps the choices for lists with these headings, in place of earlier ones; no choices forgets them. */
export function rememberColumns(open: OpenMemory, key: string, choices: ColumnChoices): void {
  const others = recallColumns(open).filter((set) => set.key !== key);
  const sets = hasChoices(choices) ? [...others, { key, ...choices }] : others;
  try {
    open().setItem(KEY, JSON.stringify(sets.slice(-MOST_SETS)));
  } catch {
    // Without memory the choices live as long as the page.
  }
}

function readSet(kept: unknown): readonly HeadingSet[] {
  if (!isRecord(kept) || typeof kept.key !== 'string') return [];
  const roles = readByColumn(kept.roles, isRole);
  const units = readByColumn(kept.units, isUnit);
  const choices = { ...NO_CHOICES, roles, units };
  return hasChoices(choices) ? [{ key: kept.key, ...choices }] : [];
}

function readByColumn<T>(kept: unknown, is: (value: unknown) => value is T): Readonly<Record<number, T>> {
  if (!isRecord(kept)) return {};
  const pairs = Object.entries(kept).flatMap(([column, value]) =>
    /^\d{1,5}$/.test(column) && is(value) ? [[column, value] as const] : [],
  );
  return Object.fromEntries(pairs);
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
const isRole = (value: unknown): value is Role => ROLES.some((role) => role === value);
const isUnit = (value: unknown): value is 'mm' | 'in' => value === 'mm' || value === 'in';
