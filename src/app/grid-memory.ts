import type { OpenMemory } from './shop-memory.ts';

/** How the columns of a grid stand, where the user changed it. Columns are named as in the grid. */
export interface GridLayout {
  /** All columns from left to right. */
  readonly order: readonly string[];
  readonly hidden: readonly string[];
  /** Columns that stay in sight at the left. */
  readonly frozen: readonly string[];
  /** Widths in pixels that the user set. */
  readonly widths: Readonly<Record<string, number>>;
}

const KEY = 'clinchsheet-grid';
const MOST_LISTS = 50;
const MOST_COLUMNS = 500;
const [NARROWEST, WIDEST] = [20, 2000];

/** The layout for lists with these headings; null where there is none, or what is kept is not understood. */
export function recallLayout(open: OpenMemory, key: string): GridLayout | null {
  return recallAll(open).find((kept) => kept.key === key)?.layout ?? null;
}

/** Keeps the layout for lists with these headings in place of an earlier one; null forgets it. */
export function rememberLayout(open: OpenMemory, key: string, layout: GridLayout | null): void {
  const others = recallAll(open).filter((kept) => kept.key !== key);
  const lists = layout ? [...others, { key, layout }] : others;
  try {
    open().setItem(KEY, JSON.stringify(lists.slice(-MOST_LISTS)));
  } catch {
    // Without memory the layout lives as long as the page.
  }
}

interface Kept {
  readonly key: string;
  readonly layout: GridLayout;
}

function recallAll(open: OpenMemory): readonly Kept[] {
  try {
    const kept: unknown = JSON.parse(open().getItem(KEY) ?? '[]');
    return Array.isArray(kept) ? kept.flatMap(readKept).slice(-MOST_LISTS) : [];
  } catch {
    return [];
  }
}

function readKept(kept: unknown): readonly Kept[] {
  if (!isRecord(kept) || typeof kept.key !== 'string' || !isRecord(kept.layout)) return [];
  const { order, hidden, frozen, widths } = kept.layout;
  const layout = {
    order: readIds(order),
    hidden: readIds(hidden),
    frozen: readIds(frozen),
    widths: readWidths(widths),
  };
  return [{ key: kept.key, layout }];
}

function readIds(kept: unknown): readonly string[] {
  const ids = Array.isArray(kept) ? kept.filter((id): id is string => typeof id === 'string') : [];
  return [...new Set(ids)].slice(0, MOST_COLUMNS);
}

function readWidths(kept: unknown): Readonly<Record<string, number>> {
  if (!isRecord(kept)) return {};
  const pairs = Object.entries(kept).filter(
    (pair): pair is [string, number] => typeof pair[1] === 'number' && pair[1] >= NARROWEST && pair[1] <= WIDEST,
  );
  return Object.fromEntries(pairs.slice(0, MOST_COLUMNS));
}

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null;
