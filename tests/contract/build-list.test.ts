import { describe, expect, it } from 'vitest';
import { buildList, type ListOptions } from '../../src/core/intake/build-list.ts';
import type { Line } from '../../src/core/model/line.ts';
import type { HardwareList, Role } from '../../src/core/model/list.ts';
import { type CellFlag, type RawFile, type RawRow, Unreadable } from '../../src/core/model/raw.ts';

function rowsOf(
  lines: readonly string[],
  flags: Readonly<Record<number, Record<number, CellFlag>>> = {},
): readonly RawRow[] {
  return lines
    .map((line, index) => ({
      number: index + 1,
      cells: line.split(';'),
      ...(flags[index + 1] ? { flags: flags[index + 1] as Record<number, CellFlag> } : {}),
    }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
}

function fileOf(rows: readonly RawRow[], format: RawFile['format'] = 'csv'): RawFile {
  return { file: `list.${format}`, format, tables: [{ name: format === 'csv' ? '' : 'Hardware', rows }], notices: [] };
}

const build = (lines: readonly string[], options: ListOptions = {}): HardwareList =>
  buildList(fileOf(rowsOf(lines)), options);
const rolesOf = (lines: readonly string[], options: ListOptions = {}): readonly Role[] =>
  build(lines, options).columns.map(({ role }) => role);
const lineOf = (lines: readonly string[], options: ListOptions = {}): Line => build(lines, options).lines[0] as Line;

const HEAD = 'Item;P/N;Description;Qty;Panel;Sheet matl;Thk (mm);Hole dia (mm);Edge (mm);Finish;Remarks';
const ROW = '1;NUT-M4-10-CS;Nut M4;4 pcs;PNL-1;5052-H32;1.5;5.6;7.0;plain;press from rear';

describe('a list', () => {
  it('is read cell by cell', () => {
    const list = build(['Recorder cabinet;;;', '', HEAD, ROW]);
    expect(list).toMatchObject({ file: 'list.csv', sheet: '', headerRow: 3, others: [], hiddenRows: 0, notices: [] });
    expect(list.columns.map(({ role }) => role)).toEqual([
      'index',
      'partNumber',
      'description',
      'quantity',
      'panel',
      'material',
      'thickness',
      'hole',
      'edge',
      'finish',
      'note',
    ]);
    expect(list.lines).toHaveLength(1);
    expect(list.lines[0]).toMatchObject({
      row: 4,
      partNumber: 'NUT-M4-10-CS',
      description: 'Nut M4',
      panel: 'PNL-1',
      quantity: { how: 'whole', value: 4 },
      material: { text: '5052-H32', how: 'named' },
      thickness: { how: 'length', mm: 1.5, unitFrom: 'heading' },
      hole: { how: 'size', mm: 5.6 },
      edge: { how: 'size', mm: 7 },
      finish: 'plain',
      note: 'press from rear',
      seemsToBe: null,
    });
  });

  it('in inches is the same list', () => {
    const inch = lineOf(['P/N;Matl;Thk (in);Hole (in);Edge (in)', 'NUT-832;CRS;.0591;.2205;.2756']);
    const metric = lineOf(['P/N;Matl;Thk (mm);Hole (mm);Edge (mm)', 'NUT-832;CRS;1.50;5.60;7.00']);
    expect(inch.thickness.mm).toBeCloseTo(metric.thickness.mm as number, 2);
    expect(inch.hole.mm).toBeCloseTo(metric.hole.mm as number, 2);
    expect(inch.edge.mm).toBeCloseTo(metric.edge.mm as number, 2);
  });

  it('keeps rows of the file apart from rows of the list, whatever they are', () => {
    const list = build([
      HEAD,
      ROW,
      'Rear door;;',
      '2;PNL-1;Front panel;1;;5052-H32;1.5',
      '3;SCR-1;Pan head screw M4x10;4',
      HEAD,
      '4;4711;What is it;2',
      ';Total;;11',
      'Note: check all finishes;',
    ]);
    expect(list.lines.map(({ row, seemsToBe }) => [row, seemsToBe])).toEqual([
      [2, null],
      [4, 'panel'],
      [5, 'screw'],
      [7, null],
    ]);
    expect(list.others.map(({ row, what }) => [row, what])).toEqual([
      [3, 'section'],
      [6, 'heading'],
      [8, 'total'],
      [9, 'note'],
    ]);
  });

  it('keeps cells beyond the headings of a workbook', () => {
    const list = buildList(fileOf(rowsOf(['P/N;Qty', 'NUT-M4-10-CS;4;;left over']), 'xlsx'));
    expect(list.lines[0]?.cells).toEqual(['NUT-M4-10-CS', '4', '', 'left over']);
  });

  it('does not trust cells that an unquoted comma has moved', () => {
    const list = build(['P/N;Description;Thk (mm);Qty', 'NUT-M4-10-CS;Nut; M4;1.5;4', 'NUT-M4-10-CS;Nut, M4;1.5;4']);
    expect(list.lines[0]).toMatchObject({
      thickness: { how: 'unreadable', mm: null },
      material: { how: 'unreadable', candidates: [] },
      quantity: { how: 'unreadable' },
    });
    expect(list.lines[1]?.thickness.mm).toBe(1.5);
    expect(list.notices).toEqual([{ sheet: '', row: 2, text: expect.stringContaining('5 cells under 4 headings') }]);
  });

  it('counts hidden rows and reads them', () => {
    const rows = rowsOf([HEAD, ROW, ROW]).map((row) => (row.number === 3 ? { ...row, hidden: true } : row));
    expect(buildList(fileOf(rows))).toMatchObject({ hiddenRows: 1, lines: [{ row: 2 }, { row: 3 }] });
  });

  it('says so when nothing stands under the headings', () =>
    expect(build([HEAD]).notices[0]?.text).toContain('No rows'));
});

describe('columns', () => {
  it.each<[string, readonly string[], readonly Role[]]>([
    ['the better filled of two quantities', ['P/N;Qty;Qty', 'A1;;4', 'B1;2;3'], ['partNumber', 'other', 'quantity']],
    ['the first of two that are filled alike', ['P/N;Qty;Qty', 'A1;1;4'], ['partNumber', 'quantity', 'other']],
    ['the plain quantity before the total', ['P/N;Total qty;Qty', 'A1;8;4'], ['partNumber', 'other', 'quantity']],
    [
      'the fuller of thickness and gauge',
      ['P/N;Thk (in);Gauge', 'A1;.060;', 'B1;.060;16', 'C1;.125;'],
      ['partNumber', 'thickness', 'other'],
    ],
    ['a gauge column alone', ['P/N;Gauge', 'A1;16'], ['partNumber', 'thickness']],
    ['item numbers', ['Item;P/N', '1;A1', '2;B1'], ['index', 'partNumber']],
    ['item names', ['Item;Qty', 'Clinch nut M4;4', 'Front panel;1'], ['description', 'quantity']],
    ['items that are part numbers', ['Item;Qty', 'NUT-M4-10-CS;4', 'STUD-M4-10-CS;1'], ['partNumber', 'quantity']],
    ['a part column of names', ['Part;Qty', 'Clinch nut, steel;4'], ['description', 'quantity']],
    [
      'a material column of item names',
      ['P/N;Material;Qty', 'A1;Clinch nut M4;4', 'B1;Pan head screw;4'],
      ['partNumber', 'description', 'quantity'],
    ],
    [
      'a material column of sheets',
      ['P/N;Material;Qty', 'A1;Steel sheet;4', 'B1;Sheet, 5052;4'],
      ['partNumber', 'material', 'quantity'],
    ],
    ['a sheet column of metals', ['P/N;Sheet', 'A1;5052-H32'], ['partNumber', 'material']],
    ['a sheet column of sizes', ['P/N;Sheet', 'A1;1.5 mm'], ['partNumber', 'thickness']],
    ['a sheet column of page numbers', ['P/N;Sheet', 'A1;2'], ['partNumber', 'other']],
    ['units that are counted', ['P/N;Units', 'A1;4'], ['partNumber', 'quantity']],
    ['units that are words', ['P/N;Qty;Units', 'A1;4;pcs'], ['partNumber', 'quantity', 'unit']],
    [
      'two materials, one of them the sheet’s',
      ['P/N;Material;Sheet material', 'A1;steel;5052-H32'],
      ['partNumber', 'fastenerMaterial', 'material'],
    ],
    [
      'two materials, one of them the fastener’s',
      ['P/N;Fastener matl;Material', 'A1;steel;5052-H32'],
      ['partNumber', 'fastenerMaterial', 'material'],
    ],
    [
      'two materials, one beside the thickness',
      ['P/N;Material;Qty;Material;Thk', 'A1;steel;4;5052-H32;1.5'],
      ['partNumber', 'fastenerMaterial', 'quantity', 'material', 'thickness'],
    ],
    [
      'two materials under group names',
      ['Fastener;;Sheet;', 'P/N;Material;Material;Thk', 'A1;steel;5052-H32;1.5'],
      ['partNumber', 'fastenerMaterial', 'material', 'thickness'],
    ],
    ['a panel and an assembly', ['P/N;Panel;Assy', 'A1;P1;X'], ['partNumber', 'panel', 'parent']],
    ['an assembly alone', ['P/N;Assy', 'A1;P1'], ['partNumber', 'panel']],
    ['a part and its fastener', ['Part No.;Fastener P/N;Qty', 'P1;A1;4'], ['panel', 'partNumber', 'quantity']],
    ['packs', ['P/N;Qty per pack;Qty', 'A1;100;4'], ['partNumber', 'other', 'quantity']],
    ['a dotted number without a heading', [';P/N', '1;A1', '1.1;B1'], ['index', 'partNumber']],
  ])('%s', (_, lines, roles) => expect(rolesOf(lines)).toEqual(roles));

  it('takes no material when two columns may be it, and says so', () => {
    const list = build(['P/N;Material;Qty;Material', 'A1;300 SS;4;5052-H32']);
    expect(list.columns.map(({ role }) => role)).toEqual(['partNumber', 'other', 'quantity', 'other']);
    expect(list.lines[0]?.material.how).toBe('blank');
    expect(list.notices[0]?.text).toContain('B and D');
  });

  it('tells of a second list beside the first', () => {
    const list = build(['P/N;Qty;;P/N;Qty', 'A1;4;;B1;2']);
    expect(list.notices[0]?.text).toContain('column D');
  });

  it('tells of missing part numbers', () =>
    expect(build(['Description;Qty', 'Clinch nut;4']).notices[0]?.text).toContain('part numbers'));

  it('obeys the user', () => {
    const options: ListOptions = { roles: { 1: 'other', 2: 'quantity' }, units: { 3: 'in' } };
    const list = build(['P/N;Qty;Spare count;Thk', 'A1;4;6;0.8'], options);
    expect(list.columns.map(({ role }) => role)).toEqual(['partNumber', 'other', 'quantity', 'thickness']);
    expect(list.columns[3]).toMatchObject({ unit: 'in', unitFrom: 'user' });
    expect(list.lines[0]?.quantity.value).toBe(6);
    expect(list.lines[0]?.thickness.otherMm ?? list.lines[0]?.thickness.mm).not.toBeNull();
  });
});

describe('units of bare numbers', () => {
  const thickness = (lines: readonly string[], options: ListOptions = {}) =>
    build(lines, options).columns.find(({ role }) => role === 'thickness');

  it.each([
    ['the heading', ['P/N;Thk (in)', 'A1;.060'], 'in', 'heading'],
    ['a row of units', ['P/N;Thk;Qty', ';mm;pcs', 'A1;0.8;4'], 'mm', 'heading'],
    ['the column', ['P/N;Thk', 'A1;.060', 'B1;.125'], 'in', 'column'],
    ['metric threads of the list', ['P/N;Description;Thk', 'A1;Nut M4;0.8', 'B1;Nut M5;1'], 'mm', 'list'],
    ['inch threads of the list', ['P/N;Description;Thk', 'A1;Nut 8-32;0.8', 'B1;Nut 6-32;1'], 'in', 'list'],
    ['nothing', ['P/N;Description;Thk', 'A1;Nut;0.8', 'B1;Nut;1'], null, null],
    ['nothing, threads being mixed', ['P/N;Description;Thk', 'A1;Nut 8-32;0.8', 'B1;Nut M5;1'], null, null],
  ] as const)('come from %s', (_, lines, unit, unitFrom) => expect(thickness(lines)).toMatchObject({ unit, unitFrom }));

  it('are no concern of other columns', () =>
    expect(build([HEAD, ROW]).columns[1]).toMatchObject({ unit: null, unitFrom: null }));
  it('leave an ambiguous cell open', () => expect(lineOf(['P/N;Thk', 'A1;0.8']).thickness.how).toBe('ambiguous-unit'));
  it('a row of units is no line', () =>
    expect(build(['P/N;Thk;Qty', ';mm;pcs', 'A1;0.8;4'])).toMatchObject({
      lines: [{ row: 3 }],
      others: [{ row: 2, what: 'units' }],
    }));
});

describe('a line', () => {
  it('takes a blank thickness from the material cell', () => {
    expect(lineOf(['P/N;Material;Thk', 'A1;CRS 1.5mm;']).thickness).toMatchObject({
      how: 'length',
      mm: 1.5,
      unitFrom: 'cell',
    });
    expect(lineOf(['P/N;Material;Thk (mm)', 'A1;CRS 16 ga;2']).thickness).toMatchObject({ how: 'length', mm: 2 });
    expect(lineOf(['P/N;Matl / Ga', 'A1;CRS 16 ga']).thickness).toMatchObject({ how: 'gauge', number: 16 });
  });

  it.each<CellFlag>(['date', 'error', 'not-calculated'])('reads no number from a cell flagged %s', (flag) => {
    const flags = { 2: { 1: flag, 2: flag, 3: flag, 4: flag } };
    const list = buildList(fileOf(rowsOf(['P/N;Qty;Thk (mm);Hole (mm);Edge (mm)', 'A1;4;1.5;5.6;7'], flags), 'xlsx'));
    expect(list.lines[0]).toMatchObject({
      quantity: { how: 'unreadable', value: null },
      thickness: { how: 'unreadable', mm: null },
      hole: { how: 'unreadable', mm: null },
      edge: { how: 'unreadable', mm: null },
    });
    expect(list.lines[0]?.flags).toEqual(flags[2]);
  });

  it('under a merged block has its words, not its numbers', () => {
    const flags = { 3: { 1: 'merged', 2: 'merged' }, 4: { 1: 'merged', 2: 'merged' } } as const;
    const list = buildList(fileOf(rowsOf(['P/N;Panel;Qty', 'A1;PNL-1;4', 'B1;;', 'C1;;'], flags), 'xlsx'));
    expect(list.lines.map(({ panel, quantity }) => [panel, quantity.value])).toEqual([
      ['PNL-1', 4],
      ['PNL-1', null],
      ['PNL-1', null],
    ]);
  });

  it('in a column of fasteners is a fastener wherever it goes', () => {
    expect(lineOf(['Fastener P/N;Description', 'AB-440;Front panel']).seemsToBe).toBeNull();
    expect(lineOf(['Fastener P/N;Description', 'AB-440;Lock washer']).seemsToBe).toBe('washer');
    expect(lineOf(['P/N;Description', 'AB-440;Front panel']).seemsToBe).toBe('panel');
  });
});

describe('where the list is', () => {
  const two: RawFile = {
    file: 'two.xlsx',
    format: 'xlsx',
    tables: [
      { name: 'Door', rows: rowsOf([HEAD, ROW, ROW]) },
      { name: 'Frame', rows: rowsOf([HEAD, ROW]) },
    ],
    notices: [
      { text: 'about the door', sheet: 'Door' },
      { text: 'about the frame', sheet: 'Frame' },
      { text: 'about all' },
    ],
  };

  it('is found, and other lists are named', () => {
    const list = buildList(two);
    expect(list.sheet).toBe('Door');
    expect(list.notices.map(({ text }) => text)).toEqual([
      'about the door',
      'about all',
      expect.stringContaining('“Frame”'),
    ]);
  });
  it('is where the user says', () => {
    expect(buildList(two, { sheet: 'Frame' }).lines).toHaveLength(1);
    expect(buildList(two, { sheet: ' frame' }).sheet).toBe('Frame');
    expect(build(['P/N;Qty', 'Part no.;Qty', 'A1;4'], { headerRow: 2 }).headerRow).toBe(2);
    expect(build(['Alpha;Beta', 'A1;4'], { headerRow: 1, roles: { 0: 'partNumber' } }).lines[0]?.partNumber).toBe('A1');
  });

  it.each<[string, RawFile, ListOptions, RegExp]>([
    ['no such sheet', two, { sheet: 'Lid' }, /two\.xlsx has no sheet “Lid”.*“Door”, “Frame”/],
    ['a blank row', two, { headerRow: 99 }, /Row 99 of two\.xlsx, sheet “Door”/],
    ['no headings', fileOf(rowsOf(['a;b', '1;2'])), {}, /No row of column headings was found in list\.csv:/],
    [
      'no headings in the sheet',
      fileOf(rowsOf(['a;b', '1;2']), 'xlsx'),
      { sheet: 'Hardware' },
      /list\.xlsx, sheet “Hardware”/,
    ],
    ['no rows', fileOf([]), {}, /list\.csv has no rows/],
    ['no tables', { ...two, tables: [] }, {}, /two\.xlsx has no rows/],
  ])('is refused with %s in one sentence', (_, file, options, message) => {
    expect(() => buildList(file, options)).toThrow(Unreadable);
    expect(() => buildList(file, options)).toThrow(message);
  });
});

describe('a long list', () => {
  it('is read in a moment', () => {
    const lines = Array.from(
      { length: 5000 },
      (_, n) => `${n};NUT-M4-${n}-CS;Nut M4;4;PNL-${n % 90};5052-H32;1.5;5.6;7.0;plain;`,
    );
    const start = performance.now();
    expect(build([HEAD, ...lines]).lines).toHaveLength(5000);
    expect(performance.now() - start).toBeLessThan(4000);
  });
});
