import type { GridApi } from 'ag-grid-community';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { GridRow } from '../../src/app/state.ts';
import { RowFeed } from '../../src/ui/grid/row-feed.ts';

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

const IN_SIGHT = 10;
const rowsOf = (count: number, text: string): GridRow[] =>
  Array.from({ length: count }, (_, at) => {
    const other = { row: at + 2, cells: [text], what: 'note' };
    return { row: other.row, cells: other.cells, other };
  });

/** What the feed asks of a grid; the first rows are in sight. */
function gridOf() {
  const shown = new Map<string, GridRow>();
  const put = (rows: readonly GridRow[]) => {
    for (const row of rows) shown.set(String(row.row), row);
  };
  const grid = {
    setGridOption: (_: 'rowData', rows: readonly GridRow[]) => {
      shown.clear();
      put(rows);
    },
    applyTransaction: ({ add }: { add: readonly GridRow[] }) => put(add),
    getRenderedNodes: () => [...shown.keys()].slice(0, IN_SIGHT).map((id) => ({ id })),
    getRowNode: (id: string) => shown.has(id) && { updateData: (row: GridRow) => put([row]) },
  };
  const texts = () => [...shown.values()].map(({ cells: [text = ''] }) => text);
  return { grid: grid as unknown as GridApi<GridRow>, texts };
}

function feedOf(count: number) {
  const { grid, texts } = gridOf();
  const box = new EventTarget();
  const feed = new RowFeed(grid, box as HTMLElement, () => {});
  feed.show(rowsOf(count, 'old'));
  vi.runAllTimers();
  expect(texts()).toHaveLength(count);
  return { feed, box, count: (text: string) => texts().filter((one) => one === text).length };
}

describe('rows of a grid that have become others', () => {
  it('are renewed at once in sight, and the others soon after', () => {
    const { feed, count } = feedOf(3000);
    feed.show(rowsOf(3000, 'new'));
    expect(count('new')).toBe(IN_SIGHT);
    vi.runAllTimers();
    expect(count('new')).toBe(3000);
  });

  it('are all renewed for whatever works on all rows', () => {
    const { feed, box, count } = feedOf(3000);
    feed.show(rowsOf(3000, 'new'));
    box.dispatchEvent(new Event('copy'));
    expect(count('new')).toBe(3000);
  });

  it('are what they became last, also those that were still to come', () => {
    const { feed, count } = feedOf(3000);
    feed.show(rowsOf(3000, 'new'));
    const [first, ...others] = rowsOf(3000, 'new');
    feed.show([{ ...first!, cells: ['newest'] }, ...others.map((row) => ({ ...row, cells: ['newer'] }))]);
    vi.runAllTimers();
    expect([count('newest'), count('newer')]).toEqual([1, 2999]);
  });

  it('and of a long list that is still coming come as they are now', () => {
    const { grid, texts } = gridOf();
    const feed = new RowFeed(grid, new EventTarget() as HTMLElement, () => {});
    feed.show(rowsOf(12_000, 'old'));
    vi.advanceTimersToNextTimer();
    feed.show(rowsOf(12_000, 'new'));
    vi.runAllTimers();
    expect(texts().filter((text) => text === 'new')).toHaveLength(12_000);
  });

  it('leave no trace in another list', () => {
    const { feed, count } = feedOf(3000);
    feed.show(rowsOf(3000, 'new'));
    feed.show(rowsOf(2000, 'other list'));
    vi.runAllTimers();
    expect([count('other list'), count('new'), count('old')]).toEqual([2000, 0, 0]);
  });
});
