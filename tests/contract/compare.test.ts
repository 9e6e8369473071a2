import { describe, expect, it } from 'vitest';
import { compareLists } from '../../src/core/compare/compare-lists.ts';
import { judge, type Listed, type ListedRow, makeList, NOTHING, shuffle, told } from './compare-list.ts';

const LISTS = {
  'item numbers and positions': makeList(500, 20_250_314),
  'nothing that names a row': makeList(250, 20_250_315, false),
} as const;

interface Edit {
  readonly name: string;
  readonly edit: (list: Listed) => Listed;
  readonly expected: Partial<typeof NOTHING>;
}

const setCells = (list: Listed, id: string, cells: ListedRow['cells']): Listed => ({
  ...list,
  rows: list.rows.map((row) => (row.id === id ? { ...row, cells: { ...row.cells, ...cells } } : row)),
});
const fasteners = ({ rows }: Listed) => rows.filter(({ cells }) => /^(?:NUT|STUD)/.test(cells['Part number'] ?? ''));
const cell = (row: ListedRow | undefined, heading: string) => row?.cells[heading] ?? '';
const placeOf = ({ cells: { Item, Position, ...rest } }: ListedRow) => JSON.stringify(rest);
const partAndPanel = ({ cells }: ListedRow) => `${cells['Part number']} ${cells.Panel}`;

/** The nth fastener that is the only one of its part on its panel, so that nothing about it is open. */
function lone(list: Listed, nth: number): ListedRow {
  const all = list.rows.map(partAndPanel);
  const found = fasteners(list).filter((row) => all.filter((other) => other === partAndPanel(row)).length === 1);
  const row = found[nth];
  if (!row) throw new Error('the list has no such row');
  return row;
}

/** A row that nothing is open about, and a panel on which its part does not stand yet. */
function movable(list: Listed): readonly [row: ListedRow, panel: string] {
  for (let nth = 0; ; nth++) {
    const row = lone(list, nth);
    const part = cell(row, 'Part number');
    const taken = list.rows.filter((other) => cell(other, 'Part number') === part).map((other) => other.cells.Panel);
    const free = list.rows.find(({ cells }) => !taken.includes(cells.Panel))?.cells.Panel;
    if (free) return [row, free];
  }
}

function editsOf(list: Listed): readonly Edit[] {
  const [a, b, c] = [lone(list, 1), lone(list, 3), lone(list, 5)];
  const own = list.rows.find(({ cells }) => cells['Part number'] === 'PANEL P04');
  const bare = list.rows.find(({ cells }) => cells['Thickness (mm)'] === '1.5' && cells['Hole (mm)'] === '5.6');
  const last = list.rows.length + 1;
  const [mover, free] = movable(list);
  // Of two rows that are wholly the same, which is the new one is open.
  const twin = 'Item' in c.cells ? 'twin' : c.id;
  const named = (number: number) => ('Item' in a.cells ? { Item: String(number), Position: `Z${number}` } : {});
  return [
    {
      name: 'a changed cell',
      edit: (it) => setCells(it, a.id, { 'Edge (mm)': '4' }),
      expected: { changed: [`${a.id}>${a.id} Edge (mm): 12 -> 4`] },
    },
    {
      name: 'a swapped part',
      edit: (it) => setCells(it, b.id, { 'Part number': 'NUT-M8-15-CS' }),
      expected: { changed: [`${b.id}>${b.id} Part number: ${cell(b, 'Part number')} -> NUT-M8-15-CS`] },
    },
    {
      name: 'an added row',
      edit: (it) => ({
        ...it,
        rows: [
          ...it.rows,
          {
            id: 'new',
            cells: {
              'Part number': 'PIN-4-10-12-CS',
              Description: 'Clinch pin',
              Panel: 'P05',
              Qty: '3',
              ...named(last),
            },
          },
        ],
      }),
      expected: { added: ['new'] },
    },
    {
      name: 'a removed row',
      edit: (it) => ({ ...it, rows: it.rows.filter(({ id }) => id !== c.id) }),
      expected: { removed: [c.id] },
    },
    {
      name: 'a row on another panel',
      edit: (it) => setCells(it, mover.id, { Panel: free }),
      expected: { moved: [`${mover.id}>${mover.id} ${cell(mover, 'Panel')} -> ${free}`] },
    },
    {
      name: 'a changed quantity',
      edit: (it) => setCells(it, b.id, { Qty: '77' }),
      expected: { changed: [`${b.id}>${b.id} Qty: ${cell(b, 'Qty')} -> 77`] },
    },
    {
      name: 'another metal on the row of a panel',
      edit: (it) => setCells(it, own?.id ?? '', { Material: '6061-T6' }),
      expected: { changed: [`${own?.id}>${own?.id} Material: DC01 -> 6061-T6`] },
    },
    {
      name: 'a thickness in another unit, case and blanks',
      edit: (it) =>
        setCells(it, bare?.id ?? '', {
          'Thickness (mm)': '0.05906 in',
          Description: cell(bare, 'Description').toUpperCase(),
        }),
      expected: {
        rewritten: [
          `${bare?.id}>${bare?.id} Description: ${cell(bare, 'Description')} -> ${cell(bare, 'Description').toUpperCase()} (written)`,
          `${bare?.id}>${bare?.id} Thickness (mm): 1.5 -> 0.05906 in (written)`,
        ],
      },
    },
    {
      name: 'a row that stands there once more',
      edit: (it) => ({ ...it, rows: [...it.rows, { id: twin, cells: { ...c.cells, ...named(last) } }] }),
      expected: { added: [twin] },
    },
    {
      name: 'a panel under another name',
      edit: (it) => ({
        ...it,
        rows: it.rows.map((row) =>
          row.cells.Panel === 'P07' ? { ...row, cells: { ...row.cells, Panel: 'DOOR' } } : row,
        ),
      }),
      expected: { panels: ['P07 -> DOOR'] },
    },
    {
      name: 'a column under another heading',
      edit: (it) => ({
        ...it,
        headings: it.headings.map((heading) => (heading === 'Remark' ? 'Notes' : heading)),
        rows: it.rows.map((row) => ({ ...row, cells: { ...row.cells, Notes: cell(row, 'Remark') } })),
      }),
      expected: { columns: ['renamed Remark -> Notes'] },
    },
    {
      name: 'a new column and one less',
      edit: (it) => ({
        ...it,
        headings: it.headings.map((heading) => (heading === 'Edge (mm)' ? 'Drawing' : heading)),
        rows: it.rows.map((row, at) => ({ ...row, cells: { ...row.cells, Drawing: `D-${at % 7}` } })),
      }),
      expected: { columns: ['added  -> Drawing', 'removed Edge (mm) -> '] },
    },
    { name: 'title lines', edit: (it) => ({ ...it, titles: ['Recorder cabinet', 'Revision B'] }), expected: {} },
    { name: 'nothing', edit: (it) => it, expected: {} },
  ];
}

describe.each(Object.entries(LISTS))('a list with %s', (_, list) => {
  const before = judge(list);
  const edits = editsOf(list);

  it('has several panels, references, quantities and rows that stand there twice', () => {
    const { length } = list.rows;
    expect(before.lines.length).toBeGreaterThan(length * 0.7);
    expect(new Set(list.rows.map(({ cells }) => cells.Panel)).size).toBe(length / 25);
    expect(new Set(list.rows.map(({ cells }) => cells.Qty)).size).toBeGreaterThan(5);
    expect(new Set(list.rows.map(placeOf)).size).toBeLessThan(length * 0.95);
  });

  it.each(edits)('finds $name, and nothing else', ({ edit, expected }) => {
    const edited = edit(list);
    const comparison = compareLists(before, judge(edited));
    expect(told(comparison, list, edited)).toEqual({ ...NOTHING, ...expected });
    expect(comparison.orderChanged).toBe(false);
    expect(comparison.columnsMoved).toBe(false);
  });

  it.each(edits)('finds $name among rows and columns in another order', ({ edit, expected }) => {
    const edited = shuffle(edit(list), 7);
    const comparison = compareLists(before, judge(edited));
    expect(told(comparison, list, edited)).toEqual({ ...NOTHING, ...expected });
    expect(comparison.orderChanged).toBe(true);
    expect(comparison.columnsMoved).toBe(true);
  });

  it('finds all of them together', () => {
    const together = edits.filter(({ name }) => !/metal|column|once more|another panel|swapped/.test(name));
    const edited = shuffle(
      together.reduce((it, { edit }) => edit(it), list),
      11,
    );
    const found = told(compareLists(before, judge(edited)), list, edited);
    for (const kind of Object.keys(NOTHING) as (keyof typeof NOTHING)[])
      expect(found[kind], kind).toEqual(together.flatMap(({ expected }) => expected[kind] ?? []).sort());
  });
});
