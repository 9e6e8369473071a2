import { pathToFileURL } from 'node:url';
import { isPrintedNumber, isWordColumn, readTable } from './read-table.ts';
import { type OutsideMark, type OutsideTable, outsideTables } from './sources.ts';

/** Values of one standard, by mark. */
export interface StandardCount {
  readonly standard: string;
  readonly printed: number;
  readonly memory: number;
  readonly derived: number;
  readonly total: number;
}

/** All outside values. */
export interface OutsideCount {
  /** By standard, most values first. */
  readonly rows: readonly StandardCount[];
  /** Published standards and laws that give at least one value that is not derived. */
  readonly standards: number;
  /** Of these, those that give at least one printed value. */
  readonly standardsPrinted: number;
  readonly printed: number;
  readonly memory: number;
  readonly derived: number;
  readonly total: number;
}

/** Counts the numbers of all tables; those that only name a row (gauge, thread, band) are left out. Throws where a value has no mark. */
export function countOutsideValues(): OutsideCount {
  const counts = new Map<string, Record<OutsideMark, number>>();
  for (const value of outsideTables.flatMap(valuesOf)) {
    const count = counts.get(value.standard) ?? { printed: 0, memory: 0, derived: 0 };
    count[value.mark] += 1;
    counts.set(value.standard, count);
  }
  const rows = [...counts]
    .map(([standard, count]) => ({ standard, ...count, total: count.printed + count.memory + count.derived }))
    .sort((a, b) => b.total - a.total || a.standard.localeCompare(b.standard));
  const published = rows.filter((row) => isPublished(row.standard) && row.printed + row.memory > 0);
  return {
    rows,
    standards: published.length,
    standardsPrinted: published.filter((row) => row.printed > 0).length,
    printed: sum(rows, 'printed'),
    memory: sum(rows, 'memory'),
    derived: sum(rows, 'derived'),
    total: sum(rows, 'total'),
  };
}

function valuesOf(table: OutsideTable): { standard: string; mark: OutsideMark }[] {
  return readTable(table.file.replace(/\.csv$/, '')).flatMap((row) =>
    Object.keys(row)
      .slice(table.keys)
      .filter((column) => !isWordColumn(column) && isPrintedNumber(row[column] ?? ''))
      .map((column) => ({ standard: row.standard || table.standard, mark: markOf(table, row, column) })),
  );
}

/** A `mark_<column>` cell goes before the row's `mark`, which goes before the table's. */
function markOf(table: OutsideTable, row: Readonly<Record<string, string>>, column: string): OutsideMark {
  const mark = row[`mark_${column}`] || row.mark || table.mark;
  if (mark === 'printed' || mark === 'memory' || mark === 'derived') return mark;
  throw new Error(`${table.file}: no mark for ${column}, but "${mark}"`);
}

/** False for handbook lists, data sheets, stock lists and common practice. */
function isPublished(standard: string): boolean {
  return /^(15 U\.S\.C\.|AMS|ANSI\/ASQ|ASME|ASTM|EN|FAA|FED-STD|GB\/T|ISO|JIS|MIL|NBS|QQ|SAE) ?-?\S/.test(standard);
}

function sum(rows: readonly StandardCount[], key: 'printed' | 'memory' | 'derived' | 'total'): number {
  return rows.reduce((total, row) => total + row[key], 0);
}

/** The count as a text table, as printed by `tsx tests/outside/count.ts`. */
export function showOutsideCount(count: OutsideCount): string {
  const all = { ...count, standard: 'all' };
  const lines = [...count.rows, all].map((row) => line(row.standard, row.printed, row.memory, row.derived, row.total));
  const standards = `${count.standards} published standards and laws, ${count.standardsPrinted} of them with printed values`;
  return [line('standard', 'printed', 'memory', 'derived', 'total'), ...lines, '', standards].join('\n');
}

function line(standard: string, ...cells: (string | number)[]): string {
  return standard.padEnd(50) + cells.map((cell) => String(cell).padStart(9)).join('');
}

const startedAs = process.argv[1];
if (startedAs && import.meta.url === pathToFileURL(startedAs).href) console.log(showOutsideCount(countOutsideValues()));
