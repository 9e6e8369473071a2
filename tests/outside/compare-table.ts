import type { Mark, Table } from '../../src/core/model/table.ts';
import { agrees, readTable } from './read-table.ts';
import { outsideTables } from './sources.ts';

/** One line of an outside table: cells as printed, by column. */
export type Line = Readonly<Record<string, string>>;

/** Rows that stand on one side only, and why. */
export interface Alone<Row> {
  readonly of: (row: Row) => boolean;
  readonly reason: string;
}

type FieldOf<Row> = keyof Row & string;

/** How an outside table and a table of the product lie side by side. `Flat` is the product's row in the shape of the outside line. */
export interface Mapping<Row extends object, Flat extends object = Row> {
  /** Name under `tests/outside/tables`, without ending. */
  readonly csv: string;
  readonly table: Table<Row>;
  /** Outside column and the field that must equal it for line and row to belong together. */
  readonly key: Readonly<Record<string, FieldOf<Flat>>>;
  /** Outside column and the field, or fields, that hold its value. */
  readonly columns: Readonly<Record<string, FieldOf<Flat> | readonly FieldOf<Flat>[]>>;
  /** The outside lines that this table carries; all, unless written. */
  readonly of?: (line: Line) => boolean;
  /** Reshapes an outside line. */
  readonly lines?: (line: Line) => readonly Line[];
  /** Reshapes a row of the product. */
  readonly rows?: (row: Row) => readonly Flat[];
  /** Words of the outside table, and what the product writes for them: one thing, or several. */
  readonly words?: Readonly<Record<string, string | readonly string[]>>;
  /** Set where the outside table holds only some rows, and another mapping or `rowsWithoutCopy` the rest. */
  readonly part?: true;
  /** Outside lines that the product leaves out. */
  readonly missing?: readonly Alone<Line>[];
  /** Rows of the product that the outside table has not. */
  readonly surplus?: readonly Alone<Flat>[];
  /** Cells that differ on purpose: "<key cells> <column>" and the reason; the column `mark` stands for the mark. */
  readonly except?: Readonly<Record<string, string>>;
}

/** What came of one mapping. */
export interface Compared {
  readonly csv: string;
  readonly table: string;
  readonly problems: readonly string[];
  /** Pairs of cell and value that were compared. */
  readonly count: number;
  /** Places, in the file and in the table, of what was compared or excused. */
  readonly linesUsed: ReadonlySet<number>;
  readonly rowsUsed: ReadonlySet<number>;
  readonly columnsUsed: ReadonlySet<string>;
  /** Columns with cells that this mapping does not look at. */
  readonly columnsLeft: ReadonlySet<string>;
  readonly fieldsUsed: ReadonlySet<string>;
  /** Fields with numbers that this mapping does not look at. */
  readonly fieldsLeft: ReadonlySet<string>;
}

/** Lays an outside table beside a table of the product: one phrase for each disagreement, on either side. */
export function compareTable<Row extends object, Flat extends object = Row>(mapping: Mapping<Row, Flat>): Compared {
  const laid = lay(mapping);
  const faults = laid.pairs.flatMap((pair) => faultsOf(mapping, pair));
  const surplus = mapping.surplus ?? [];
  const found = new Set([...laid.pairs.map(({ row }) => row), ...laid.rows.filter(({ it }) => isAmong(surplus, it))]);
  const columnsUsed = new Set([...Object.keys(mapping.key), ...Object.keys(mapping.columns)]);
  const fieldsUsed = new Set<string>([
    ...Object.values(mapping.key),
    ...Object.values(mapping.columns).flatMap(fieldsOf),
  ]);
  return {
    csv: mapping.csv,
    table: mapping.table.id,
    problems: [...lineProblems(mapping, laid), ...rowProblems(mapping, laid), ...cellProblems(mapping, faults)],
    count: faults.length - laid.pairs.length,
    linesUsed: new Set(laid.lines.map(({ place }) => place)),
    rowsUsed: new Set([...found].map(({ place }) => place)),
    columnsUsed,
    columnsLeft: new Set(laid.lines.flatMap(({ it }) => filledColumns(it)).filter((name) => !columnsUsed.has(name))),
    fieldsUsed,
    fieldsLeft: new Set(laid.rows.flatMap(({ it }) => numberFields(it)).filter((name) => !fieldsUsed.has(name))),
  };
}

/** A line or row in the shape of the comparison, and the place of its original. */
interface Placed<It> {
  readonly it: It;
  readonly place: number;
}

interface PlacedRow<Flat> extends Placed<Flat> {
  readonly mark: Mark;
}

interface Pair<Flat> {
  readonly line: Placed<Line>;
  readonly row: PlacedRow<Flat>;
}

interface Laid<Flat> {
  readonly lines: readonly Placed<Line>[];
  readonly rows: readonly PlacedRow<Flat>[];
  readonly pairs: readonly Pair<Flat>[];
}

function lay<Row extends object, Flat extends object>(mapping: Mapping<Row, Flat>): Laid<Flat> {
  const { csv, table, of = () => true, lines: toLines = (line) => [line] } = mapping;
  const toRows = mapping.rows ?? ((row: Row) => [row as unknown as Flat]);
  const lines = readTable(csv).flatMap((line, place) =>
    of(line)
      ? toLines(line)
          .filter((it) => Object.keys(mapping.columns).some((column) => it[column] !== '') || isEmpty(mapping.columns))
          .map((it) => ({ it, place }))
      : [],
  );
  const rows = table.rows.flatMap((row, place) =>
    toRows(row).map((it) => ({ it, place, mark: markIn(it) ?? markIn(row) ?? table.sources[0].mark })),
  );
  const pairs = lines.flatMap((line) =>
    rows.filter((row) => belong(mapping, line.it, row.it)).map((row) => ({ line, row })),
  );
  return { lines, rows, pairs };
}

function belong<Row extends object, Flat extends object>(mapping: Mapping<Row, Flat>, line: Line, row: Flat): boolean {
  return Object.entries(mapping.key).every(([column, field]) => {
    const value = row[field];
    return readings(mapping, line, column).some((cell) =>
      typeof value === 'number' ? cell !== '' && Number(cell) === value : cell === wordOf(value),
    );
  });
}

/** What the product may write for a cell. */
function readings(mapping: Pick<Mapping<object>, 'words'>, line: Line, column: string): readonly string[] {
  const cell = line[column] ?? '';
  return [mapping.words?.[cell] ?? cell].flat();
}

/** One comparison; `fault` is null where cell and value agree. */
interface Checked {
  readonly name: string;
  readonly fault: string | null;
}

function faultsOf<Row extends object, Flat extends object>(mapping: Mapping<Row, Flat>, pair: Pair<Flat>): Checked[] {
  const line = pair.line.it;
  const label = labelOf(line, Object.keys(mapping.key));
  const cells = Object.entries(mapping.columns).flatMap(([column, fields]) =>
    fieldsOf(fields).map((field) => ({
      name: `${label} ${column}`,
      fault: agree(readings(mapping, line, column), pair.row.it[field])
        ? null
        : `printed ${line[column] || 'blank'}, ${field} of ${mapping.table.id} is ${String(pair.row.it[field])}`,
    })),
  );
  const upgraded = pair.row.mark === 'printed' && Object.keys(mapping.columns).some(isUnprinted);
  return [...cells, { name: `${label} mark`, fault: upgraded ? `${mapping.table.id} says printed` : null }];

  function isUnprinted(column: string): boolean {
    const whole = outsideTables.find(({ file }) => file === `${mapping.csv}.csv`)?.mark;
    return line[column] !== '' && (line[`mark_${column}`] || line.mark || whole) !== 'printed';
  }
}

function fieldsOf<Field extends string>(fields: Field | readonly Field[]): readonly Field[] {
  return typeof fields === 'string' ? [fields] : fields;
}

function agree(cells: readonly string[], value: unknown): boolean {
  if (typeof value !== 'number') return cells.includes(wordOf(value));
  return cells.some((cell) => agrees(cell, value));
}

function lineProblems<Row extends object, Flat extends object>(mapping: Mapping<Row, Flat>, laid: Laid<Flat>) {
  const { csv, key, missing = [] } = mapping;
  const met = new Set(laid.pairs.map(({ line }) => line));
  const unmet = laid.lines.filter((line) => met.has(line) === isAmong(missing, line.it));
  const idle = missing.filter(({ of }) => !laid.lines.some(({ it }) => of(it)));
  return [
    ...unmet.map(({ it }) => `${csv} ${labelOf(it, Object.keys(key))}: missing in the product, or excused in vain`),
    ...idle.map(({ reason }) => `${csv}: nothing to excuse by "${reason}"`),
  ];
}

function rowProblems<Row extends object, Flat extends object>(mapping: Mapping<Row, Flat>, laid: Laid<Flat>) {
  const { table, key, surplus = [], part = false } = mapping;
  const met = new Set(laid.pairs.map(({ row }) => row));
  const unmet = laid.rows.filter((row) => met.has(row) === isAmong(surplus, row.it) && !(part && !met.has(row)));
  const idle = surplus.filter(({ of }) => !laid.rows.some(({ it }) => of(it)));
  return [
    ...unmet.map(({ it }) => `${table.id} ${labelOf(it, Object.values(key))}: surplus, or excused in vain`),
    ...idle.map(({ reason }) => `${table.id}: nothing to excuse by "${reason}"`),
  ];
}

function cellProblems<Row extends object, Flat extends object>(
  { csv, except = {} }: Mapping<Row, Flat>,
  faults: readonly Checked[],
): string[] {
  const wrong = faults.flatMap(({ name, fault }) => (fault === null ? [] : [{ name, fault }]));
  const idle = Object.keys(except).filter((excused) => !wrong.some(({ name }) => name === excused));
  return [
    ...wrong.filter(({ name }) => except[name] === undefined).map(({ name, fault }) => `${csv} ${name}: ${fault}`),
    ...idle.map((name) => `${csv} ${name}: excused, but nothing differs`),
  ];
}

function isAmong<It>(alone: readonly Alone<It>[], it: It): boolean {
  return alone.some(({ of }) => of(it));
}

function isEmpty(columns: object): boolean {
  return Object.keys(columns).length === 0;
}

/** A blank stands for null, for a field left out and for "no". */
function wordOf(value: unknown): string {
  return value === null || value === undefined || value === false ? '' : String(value);
}

function labelOf(it: object, names: readonly string[]): string {
  return names.map((name) => wordOf((it as Readonly<Record<string, unknown>>)[name])).join(' ');
}

function markIn(it: object): Mark | undefined {
  return 'mark' in it ? (it.mark as Mark | undefined) : undefined;
}

/** Columns with a cell, without those that say where a line comes from. */
function filledColumns(line: Line): string[] {
  return Object.keys(line).filter((column) => line[column] !== '' && !/^(mark.*|standard|note)$/.test(column));
}

/** Fields that hold a number, or a number somewhere inside. */
export function numberFields(row: object): string[] {
  return Object.entries(row).flatMap(([field, value]) => (hasNumber(value) ? [field] : []));
}

function hasNumber(value: unknown): boolean {
  if (typeof value === 'object' && value !== null) return Object.values(value).some(hasNumber);
  return typeof value === 'number';
}
