/** Which cells of a column a row must have to be shown. */
export interface ColumnFilter {
  readonly how: FilterWay;
  readonly text: string;
}

export type FilterWay = 'contains' | 'equals' | 'empty';

export const FILTER_WAYS: Readonly<Record<FilterWay, string>> = {
  contains: 'contains',
  equals: 'equals',
  empty: 'is empty',
};

/** Whether anything is left out; a text not yet typed leaves out nothing. */
export function isFiltering({ how, text }: ColumnFilter): boolean {
  return how === 'empty' || text.trim() !== '';
}

/** Case and surrounding spaces do not matter. */
export function passesFilter(cell: string, { how, text }: ColumnFilter): boolean {
  const [held, wanted] = [cell.trim().toLowerCase(), text.trim().toLowerCase()];
  if (how === 'empty') return held === '';
  return how === 'equals' ? held === wanted : held.includes(wanted);
}

/** "Thk contains “0.8”". */
export function describeFilter(column: string, { how, text }: ColumnFilter): string {
  return how === 'empty' ? `${column} is empty` : `${column} ${FILTER_WAYS[how]} “${text.trim()}”`;
}
