import { foldText } from '../intake/heading-text.ts';
import type { Column } from '../model/list.ts';

/** Texts of a column, each with how often it stands there. */
export type Content = ReadonlyMap<string, number>;

/** What stands in the columns of a table, blanks left out; each column is read once. */
export function contentOf(rows: readonly { readonly cells: readonly string[] }[]): (column: Column) => Content {
  const known = new Map<number, Content>();
  return ({ index }) => {
    const content = known.get(index) ?? count(rows.map(({ cells }) => foldText(cells[index] ?? '')).filter(Boolean));
    known.set(index, content);
    return content;
  };
}

/** Share of the texts that two columns have in common, 0 to 1. */
export function overlap(one: Content, other: Content): number {
  let common = 0;
  for (const [text, times] of one) common += Math.min(times, other.get(text) ?? 0);
  return common / Math.max(1, total(one), total(other));
}

function count(texts: readonly string[]): Content {
  const counts = new Map<string, number>();
  for (const text of texts) counts.set(text, (counts.get(text) ?? 0) + 1);
  return counts;
}

function total(content: Content): number {
  return [...content.values()].reduce((sum, times) => sum + times, 0);
}
