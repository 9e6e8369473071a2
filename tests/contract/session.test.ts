import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { findUnclearUnit, hasChoices, withChoice } from '../../src/app/column-choices.ts';
import { recallColumns, rememberColumns } from '../../src/app/column-memory.ts';
import type { ListOptions } from '../../src/core/intake/build-list.ts';
import { type ColumnChoices, NO_CHOICES } from '../../src/core/intake/columns.ts';
import { type HeadingSet, headingKey } from '../../src/core/intake/heading-set.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';
import { choicesOf, editCells, importCatalogues, openSession, withColumns } from '../../src/worker/session.ts';
import { plain } from '../plain.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const CATALOGUE = importCatalogues([
  readFile(
    bytes(
      'partNumber,kind,thread,material,sheetMinMm,holeMm,edgeMm\nOWN-1,clinch nut,M4,carbon-steel-hardened,1,5.6,9\n',
    ),
    'own.csv',
  ),
]);
const MISREAD = 'Part number,Material,Depth (mm),Qty\nOWN-1,DC01,1.5,2\nOWN-1,DC01,0.5,4\nTotal,,,6\n';
const UNCLEAR = 'Part number,Material,Thk,Qty\nOWN-1,DC01,1,2\nOWN-1,DC01,0.8,4\n';
const THICKNESS: ColumnChoices = { roles: { 2: 'thickness' }, units: {} };

const open = (text: string, options: ListOptions = {}, remembered: readonly HeadingSet[] = []) =>
  openSession(readFile(bytes(text), 'list.csv'), CATALOGUE, DEFAULT_SHOP, options, () => {}, remembered);
const verdicts = ({ audited }: ReturnType<typeof open>) => audited.lines.map(({ row, verdict }) => `${row} ${verdict}`);
const cellsOf = ({ audited }: ReturnType<typeof open>, row: number) =>
  [...audited.lines.map(({ line }) => line), ...audited.others].find((one) => one.row === row)?.cells;

describe('columns of an open list', () => {
  it('are read as the user says, and judged by that', () => {
    const before = open(MISREAD);
    expect(verdicts(before)).toEqual(['2 unknown', '3 unknown']);
    const after = withColumns(before, THICKNESS, () => {});
    expect(after.audited.columns[2]).toMatchObject({ role: 'thickness', unit: 'mm', unitFrom: 'heading' });
    expect(verdicts(after)).toEqual(['2 holds', '3 fails']);
    expect(choicesOf(after)).toEqual(THICKNESS);
    expect(plain(withColumns(after, NO_CHOICES, () => {}).audited)).toEqual(plain(before.audited));
  });

  it('keep the edits, in rows that are judged and in others', () => {
    const edited = editCells(open(MISREAD), [
      { row: 3, column: 2, text: '1.1' },
      { row: 3, column: 2, text: '1.2' },
      { row: 4, column: 3, text: '8' },
    ]).session;
    const after = withColumns(edited, THICKNESS, () => {});
    expect(verdicts(after)).toEqual(['2 holds', '3 holds']);
    expect(cellsOf(after, 3)?.[2]).toBe('1.2');
    expect(cellsOf(after, 4)?.[3]).toBe('8');
    expect(after.edits).toHaveLength(2);
    const undone = editCells(after, [{ row: 3, column: 2, text: '0.5' }]).session;
    expect(verdicts(undone)).toEqual(['2 holds', '3 fails']);
  });

  it('come out the same whether edited before or after', () => {
    const edit = [{ row: 2, column: 2, text: '0.9' }];
    const first = withColumns(editCells(open(MISREAD), edit).session, THICKNESS, () => {});
    const last = editCells(
      withColumns(open(MISREAD), THICKNESS, () => {}),
      edit,
    ).session;
    expect(plain(first.audited)).toEqual(plain(last.audited));
  });

  it('are asked about when their unit is unclear, until it is given', () => {
    const before = open(UNCLEAR);
    expect(findUnclearUnit(before.audited)).toMatchObject({ index: 2, heading: 'Thk' });
    const after = withColumns(before, { roles: {}, units: { 2: 'mm' } }, () => {});
    expect(findUnclearUnit(after.audited)).toBeNull();
    expect(verdicts(after)).toEqual(['2 holds', '3 fails']);
  });

  it('are not asked about when every cell says its unit, or none is given', () => {
    expect(findUnclearUnit(open('Part number,Material,Thk,Qty\nOWN-1,DC01,1 mm,2\n').audited)).toBeNull();
    expect(findUnclearUnit(open('Part number,Material,Thk,Qty\nOWN-1,DC01,,2\n').audited)).toBeNull();
  });
});

describe('a row that is edited', () => {
  const spoiled = openSession(
    {
      file: 'list.xlsx',
      format: 'xlsx',
      notices: [],
      tables: [
        {
          name: 'List',
          rows: [
            { number: 1, cells: ['Part number', 'Material', 'Thk (mm)', 'Qty'] },
            { number: 2, cells: ['OWN-1', 'DC01', '1.5', '2'], flags: { 2: 'date' } },
          ],
        },
      ],
    },
    CATALOGUE,
    DEFAULT_SHOP,
    {},
    () => {},
  );
  const set = (session: typeof spoiled, row: number, column: number, text: string) =>
    editCells(session, [{ row, column, text }]).session;

  it('keeps what the reader noticed about its other cells, and loses it with the cell', () => {
    expect(verdicts(spoiled)).toEqual(['2 unknown']);
    expect(verdicts(set(spoiled, 2, 3, '9'))).toEqual(['2 unknown']);
    expect(verdicts(set(spoiled, 2, 2, '1.6'))).toEqual(['2 holds']);
  });

  it('is what it was when the edit is taken back', () => {
    const back = set(set(spoiled, 2, 2, '1.6'), 2, 2, '1.5');
    expect(plain(back.audited)).toEqual(plain(spoiled.audited));
  });

  it('becomes a fastener, or stops being one, as it would if the file had held it so', () => {
    const list = open(MISREAD, { roles: THICKNESS.roles });
    const filled = editCells(list, [
      { row: 4, column: 0, text: 'OWN-1' },
      { row: 4, column: 1, text: 'DC01' },
      { row: 4, column: 2, text: '1.5' },
    ]).session;
    expect(verdicts(filled)).toEqual(['2 holds', '3 fails', '4 holds']);
    const emptied = editCells(
      filled,
      [0, 1, 2, 3].map((column) => ({ row: 3, column, text: '' })),
    ).session;
    expect(verdicts(emptied)).toEqual(['2 holds', '4 holds']);
    expect(emptied.audited.others.map(({ row, what }) => `${row} ${what}`)).toEqual(['3 empty row']);
  });

  it('is trusted no more than before where cells beyond the headings show that they have shifted', () => {
    const shifted = open('Part number,Material,Thk (mm),Qty\nOWN-1,DC01,1.5,2,0.5\n');
    expect(verdicts(shifted)).toEqual(['2 unknown']);
    expect(verdicts(set(shifted, 2, 3, '4'))).toEqual(['2 unknown']);
    expect(verdicts(set(shifted, 2, 4, ''))).toEqual(['2 holds']);
  });
});

describe('columns remembered for a set of headings', () => {
  const key = headingKey(['Part number', 'Material', 'Depth (mm)', 'Qty']);

  it('are taken for the next list with these headings, whatever their case and spaces', () => {
    const next = open(MISREAD.replace('Part number', ' PART  Number '), {}, [{ key, ...THICKNESS }]);
    expect(verdicts(next)).toEqual(['2 holds', '3 fails']);
    expect(choicesOf(next)).toEqual(THICKNESS);
  });

  it('are not taken for other headings, nor over what the user chose', () => {
    const other = open(MISREAD.replace('Qty', 'Count'), {}, [{ key, ...THICKNESS }]);
    expect(choicesOf(other)).toEqual(NO_CHOICES);
    const chosen = open(MISREAD, { roles: { 2: 'note' } }, [{ key, ...THICKNESS }]);
    expect(chosen.audited.columns[2]?.role).toBe('note');
  });

  it('do no harm where they speak of columns that the list does not have', () => {
    const odd = open(MISREAD, {}, [{ key, roles: { 2: 'thickness', 40: 'hole' }, units: { 41: 'in' } }]);
    expect(verdicts(odd)).toEqual(['2 holds', '3 fails']);
  });
});

describe('choosing a meaning', () => {
  it('takes it away from the column that was chosen for it before', () => {
    const first = withChoice(NO_CHOICES, { index: 2, role: 'thickness', unit: 'in' });
    const second = withChoice(first, { index: 4, role: 'thickness' });
    expect(second).toEqual({ roles: { 4: 'thickness' }, units: { 2: 'in' } });
  });

  it('lets several columns be of no use', () => {
    const first = withChoice(NO_CHOICES, { index: 2, role: 'other' });
    expect(withChoice(first, { index: 4, role: 'other' }).roles).toEqual({ 2: 'other', 4: 'other' });
  });
});

describe('the memory for columns', () => {
  function memory(start: string | null = null) {
    let kept = start;
    const setItem = (_: string, text: string) => {
      kept = text;
    };
    return { open: () => ({ getItem: () => kept, setItem }) };
  }

  it('gives back what was kept, the latest choice for each set of headings', () => {
    const { open } = memory();
    rememberColumns(open, 'a', THICKNESS);
    rememberColumns(open, 'b', { roles: {}, units: { 1: 'in' } });
    rememberColumns(open, 'a', { roles: { 3: 'hole' }, units: {} });
    expect(recallColumns(open)).toEqual([
      { key: 'b', roles: {}, units: { 1: 'in' } },
      { key: 'a', roles: { 3: 'hole' }, units: {} },
    ]);
    rememberColumns(open, 'a', NO_CHOICES);
    expect(recallColumns(open).map(({ key }) => key)).toEqual(['b']);
  });

  it('keeps the last fifty sets', () => {
    const { open } = memory();
    for (let at = 0; at < 60; at++) rememberColumns(open, `set ${at}`, THICKNESS);
    expect(recallColumns(open).map(({ key }) => key)).toEqual(Array.from({ length: 50 }, (_, at) => `set ${at + 10}`));
  });

  it.each([
    ['no JSON', '{"broken'],
    ['something else', '{"a":1}'],
    ['entries of other forms', '[null,7,{"key":1},{"key":"a"},{"key":"a","roles":[],"units":"mm"}]'],
    ['unknown meanings and units', '[{"key":"a","roles":{"0":"colour","x":"hole"},"units":{"1":"cm"}}]'],
  ])('makes nothing of %s', (_, text) => {
    const { open } = memory(text);
    expect(recallColumns(open)).toEqual([]);
    rememberColumns(open, 'b', THICKNESS);
    expect(recallColumns(open).filter(hasChoices)).toEqual([{ key: 'b', ...THICKNESS }]);
  });

  it('is done without where the browser forbids it', () => {
    const forbidden = () => {
      throw new Error('forbidden');
    };
    expect(recallColumns(forbidden)).toEqual([]);
    expect(() => rememberColumns(forbidden, 'a', THICKNESS)).not.toThrow();
  });
});

describe('the sheets of a file', () => {
  it('are named with the list, so that another can be chosen', () => {
    const demo = resolve(import.meta.dirname, '../../sample-data/recorder-cabinet.xlsx');
    const file = readFile(readFileSync(demo), 'recorder-cabinet.xlsx');
    const { audited } = openSession(file, CATALOGUE, DEFAULT_SHOP, {}, () => {});
    expect(audited.sheets).toEqual(file.tables.map(({ name }) => name));
    expect(audited.sheets).toContain(audited.sheet);
    expect(open(MISREAD).audited.sheets).toEqual([]);
  });
});
