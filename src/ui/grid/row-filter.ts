import type { GridRow } from '../../app/state.ts';
import type { Verdict } from '../../core/model/outcome.ts';

/** Which rows are shown. */
export interface RowFilter {
  /** Verdicts; none means all rows. */
  readonly filter: ReadonlySet<Verdict>;
  /** Rows shown alone; null: all. */
  readonly only: ReadonlySet<number> | null;
  /** A text that one of the cells, or what decides the row, has in it; case makes no difference. */
  readonly search: string;
}

export function isFilteringRows({ filter, only, search }: RowFilter): boolean {
  return filter.size > 0 || only !== null || search !== '';
}

export function passesRow(row: GridRow, { filter, only, search }: RowFilter): boolean {
  if (only && !only.has(row.row)) return false;
  if (filter.size > 0 && !(row.line && filter.has(row.line.verdict))) return false;
  return search === '' || searched(row).includes(search.toLowerCase());
}

/** All texts of a row, made once: every letter that is typed asks for all rows again. */
const texts = new WeakMap<GridRow, string>();

function searched(row: GridRow): string {
  const text = texts.get(row) ?? [...row.cells, row.line?.decidedBy?.brief ?? ''].join('\n').toLowerCase();
  texts.set(row, text);
  return text;
}
