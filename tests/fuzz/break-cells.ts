import { COLUMNS, type Column, type Row } from './base.ts';
import type { Random } from './random.ts';

/** A list after a change, and what the change has not touched. */
export interface Changed {
  readonly what: string;
  readonly rows: readonly Row[];
  /** Rows whose cells for part, sheet and hole, and the headings over them, are as they were. */
  readonly untouched: ReadonlySet<Row>;
  /** Rows of which the part, the metal or the thickness is nowhere to be found any more: none of them can hold. */
  readonly blanked: ReadonlySet<Row>;
  /** The meaning is the same: every row must be judged as before. */
  readonly isSame: boolean;
}

const ESSENTIAL: readonly Column[] = ['part', 'material', 'thickness', 'hole'];
const isEssential = (at: number) => ESSENTIAL.includes(COLUMNS[at]!);

/** What a cell should never hold. */
const NASTY = [
  '',
  ' ',
  '?',
  '-',
  '0',
  '-1',
  'NaN',
  'Infinity',
  '1e308',
  '1e-308',
  '99999999999999999999999999',
  '0x10',
  '1,5',
  '1.5.2',
  '1/0',
  '3/8"',
  '.060',
  '16 ga',
  '16 ga or 14 ga',
  '1.5 furlong',
  '1.5 µm',
  '1500 um',
  '0.15 cm',
  '1.5 ± 5',
  '+0.1/-0.1',
  'M4x0.7',
  '#4-40',
  '=1+1',
  '#REF!',
  'TRUE',
  '__proto__',
  'constructor',
  'toString',
  '\u202e5.1',
  '１．５',
  'Ø5,6',
  '5.6-5.7',
  '<b>&amp;</b>',
  'a"b',
  '"',
  'a\nb',
  'a;b,c|d\te',
  '\0',
  '\ufeff',
  '\ud800',
  '💥'.repeat(40),
  'x'.repeat(3000),
  '1 '.repeat(1500),
  'DC01 / 304 / 5052-H32',
  'none',
  'see note',
];

/** Of a part, a metal or a thickness, these name none. */
const SAYS_NOTHING = ['', ' ', '-', '?', 'tbd', 'n/a', 'see drawing', '#REF!', 'unobtainium', '\u00a0', '\0', '???'];

type Change = (rows: readonly Row[], random: Random) => Changed;

/** Changes that keep the meaning, and every cell in its place. */
export const REWRITINGS: readonly Change[] = [nothing, changeCase, writeUnits, padCells];

/** All that can be done to a list as a table. */
export const CHANGES: readonly Change[] = [
  ...REWRITINGS,
  orderColumns,
  addBlankRows,
  breakCells,
  breakCells,
  breakCells,
  blankCells,
  blankCells,
  dropColumn,
  doubleColumn,
  shiftColumns,
  renameHeading,
  repeatRows,
  dropRows,
  addJunkRows,
  shiftRow,
];

/** The same rows with other cells, each still known by the row that it was. */
function rewritten(rows: readonly Row[], change: (cells: readonly string[], at: number) => string[]): Row[] {
  rows.forEach((row, at) => {
    const cells = change(row.cells, at);
    row.cells.splice(0, row.cells.length, ...cells);
  });
  return [...rows];
}

const same = (what: string, rows: readonly Row[]): Changed => ({
  what,
  rows,
  untouched: new Set(rows),
  blanked: new Set(),
  isSame: true,
});
const harmed = (what: string, rows: readonly Row[], touched: Iterable<Row>): Changed => {
  const untouched = new Set(rows);
  for (const row of touched) untouched.delete(row);
  return { what, rows, untouched, blanked: new Set(), isSame: false };
};

function nothing(rows: readonly Row[]): Changed {
  return same('nothing', rows);
}

function orderColumns(rows: readonly Row[], random: Random): Changed {
  const order = random.shuffle(COLUMNS.map((_, at) => at));
  return same(
    'columns in another order',
    rewritten(rows, (cells) => order.map((at) => cells[at]!)),
  );
}

function addBlankRows(rows: readonly Row[], random: Random): Changed {
  const more = rows.flatMap((row) => [
    ...(random.oneIn(3) ? [{ cells: random.oneOf([[], [''], ['', '', ' ']]) }] : []),
    row,
  ]);
  return same('blank rows', more);
}

function changeCase(rows: readonly Row[], random: Random): Changed {
  const change = random.oneOf([(text: string) => text.toUpperCase(), (text: string) => text.toLowerCase()]);
  return same(
    'headings in other capitals',
    rewritten(rows, (cells, at) => (at === 0 ? cells.map(change) : [...cells])),
  );
}

/** The unit written into the cell says no more than the heading does. */
function writeUnits(rows: readonly Row[], random: Random): Changed {
  const unit = random.oneOf([' mm', 'mm', ' MM', ' millimeters']);
  const column = COLUMNS.indexOf(random.oneOf(['thickness', 'hole', 'edge'] as const));
  const write = (cells: readonly string[], at: number) =>
    at === 0 ? [...cells] : cells.with(column, addUnit(cells[column] ?? '', unit));
  return same(`${unit} in the cells`, rewritten(rows, write));
}

function addUnit(text: string, unit: string): string {
  return /^[\d.]+$/.test(text) ? text + unit : text;
}

function padCells(rows: readonly Row[], random: Random): Changed {
  const pad = random.oneOf([' ', '  ', '\u00a0']);
  return same(
    'blanks around cells',
    rewritten(rows, (cells) => cells.map((cell) => (cell === '' ? cell : pad + cell + pad))),
  );
}

function breakCells(rows: readonly Row[], random: Random): Changed {
  const touched = new Set<Row>();
  for (let times = 1 + random.below(4); times > 0; times--) {
    const row = random.oneOf(rows);
    const column = random.below(COLUMNS.length);
    if (isEssential(column)) for (const each of row === rows[0] ? rows : [row]) touched.add(each);
    row.cells[column] = breakText(row.cells[column] ?? '', random);
  }
  return harmed('cells', rows, touched);
}

/** A cell that decides says nothing any more. Rows of one panel lend each other their sheet, so they all lose it. */
function blankCells(rows: readonly Row[], random: Random): Changed {
  const column = COLUMNS.indexOf(random.oneOf(['part', 'material', 'thickness'] as const));
  const row = random.oneOf(rows.slice(1));
  const panel = row.cells[COLUMNS.indexOf('panel')];
  const isAlone = COLUMNS[column] === 'part';
  const blanked = rows.filter(
    (each, at) => at > 0 && (isAlone ? each === row : each.cells[COLUMNS.indexOf('panel')] === panel),
  );
  for (const each of blanked) each.cells[column] = random.oneOf(SAYS_NOTHING);
  return { ...harmed('cells that say nothing', rows, blanked), blanked: new Set(blanked) };
}

export function breakText(text: string, random: Random): string {
  const at = random.below(text.length + 1);
  return random.oneOf([
    () => random.oneOf(NASTY),
    () => random.oneOf(NASTY),
    () => text + random.oneOf(NASTY),
    () => text.slice(0, at) + text.slice(at + 1),
    () => text.slice(0, at) + String.fromCharCode(32 + random.below(95)) + text.slice(at),
    () => text.repeat(2),
  ])();
}

function dropColumn(rows: readonly Row[], random: Random): Changed {
  const column = random.below(COLUMNS.length);
  return harmed(
    'a column less',
    rewritten(rows, (cells) => cells.toSpliced(column, 1)),
    isEssential(column) ? rows : [],
  );
}

function doubleColumn(rows: readonly Row[], random: Random): Changed {
  const column = random.below(COLUMNS.length);
  const isBroken = random.oneIn(2);
  const position = random.below(COLUMNS.length + 1);
  const place = (cells: readonly string[], at: number) => {
    const again = at > 0 && isBroken ? breakText(cells[column]!, random) : cells[column]!;
    return cells.toSpliced(position, 0, again);
  };
  return harmed('a column twice', rewritten(rows, place), isEssential(column) ? rows : []);
}

/** Cells of two columns change places, their headings stay. */
function shiftColumns(rows: readonly Row[], random: Random): Changed {
  const [first = 0, second = 1] = random.shuffle(COLUMNS.map((_, at) => at));
  const swap = (cells: readonly string[], at: number) =>
    at === 0 ? [...cells] : cells.with(first, cells[second]!).with(second, cells[first]!);
  return harmed('columns under wrong headings', rewritten(rows, swap), rows);
}

function renameHeading(rows: readonly Row[], random: Random): Changed {
  const column = random.below(COLUMNS.length);
  const name = random.oneOf([
    'Thickness (in)',
    'Thickness',
    'Hole',
    'Material',
    'Part number',
    'Qty',
    'x',
    '',
    '1',
    'Weight',
  ]);
  rows[0]!.cells[column] = name;
  return harmed(`a heading that says “${name}”`, rows, isEssential(column) ? rows : []);
}

function repeatRows(rows: readonly Row[], random: Random): Changed {
  const row = random.oneOf(rows.slice(1));
  const again = Array.from({ length: 1 + random.below(20) }, () => ({ cells: [...row.cells] }));
  return harmed('rows repeated', [...rows, ...again], []);
}

function dropRows(rows: readonly Row[], random: Random): Changed {
  return harmed(
    'rows left out',
    rows.filter((_, at) => at === 0 || !random.oneIn(4)),
    [],
  );
}

function addJunkRows(rows: readonly Row[], random: Random): Changed {
  const junk = () => ({ cells: Array.from({ length: random.below(12) }, () => random.oneOf(NASTY)) });
  const at = 1 + random.below(rows.length);
  return harmed('junk between rows', [...rows.slice(0, at), junk(), ...rows.slice(at)], []);
}

/** A stray cell pushes those of its row to the right. */
function shiftRow(rows: readonly Row[], random: Random): Changed {
  const row = random.oneOf(rows);
  row.cells.splice(random.below(COLUMNS.length), 0, random.oneOf(NASTY));
  return harmed('a row pushed right', rows, row === rows[0] ? rows : [row]);
}
