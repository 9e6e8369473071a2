import { readdirSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';

const folder = new URL('./tables/', import.meta.url);
const plainNumber = /^[+-]?(\d+(\.\d+)?|\.\d+)$/;

/** A table under `tests/outside/tables` by its name without ending, one record a row; every cell is the printed string. Throws where the CSV is malformed. */
export function readTable(name: string): readonly Record<string, string>[] {
  const text = readFileSync(new URL(`${name}.csv`, folder), 'utf8');
  const parsed = Papa.parse<Record<string, string>>(text, { header: true, skipEmptyLines: true });
  const problem = parsed.errors[0];
  if (problem) throw new Error(`${name}.csv, row ${problem.row ?? '?'}: ${problem.message}`);
  return parsed.data;
}

/** Names of all tables, without ending, in order. */
export function tableNames(): readonly string[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.csv'))
    .map((file) => file.slice(0, -'.csv'.length))
    .sort();
}

/** True where the cell is a plain decimal number such as "82", "0.0598", ".539" or "-0.8". */
export function isPrintedNumber(cell: string): boolean {
  return plainNumber.test(cell);
}

/**
 * True where the value lies within half a unit of the last printed digit (plus 1e-9 for binary rounding).
 * False for a value that is not finite and for a cell that is no plain number, so that a blank cell never agrees.
 */
export function agrees(printed: string, value: number): boolean {
  if (!isPrintedNumber(printed) || !Number.isFinite(value)) return false;
  const decimals = printed.split('.')[1]?.length ?? 0;
  return Math.abs(value - Number(printed)) <= 0.5 * 10 ** -decimals + 1e-9;
}

/** True where a column holds words; every other column holds numbers only. */
export function isWordColumn(column: string): boolean {
  return column.startsWith('mark') || wordColumns.has(column);
}

const wordColumns = new Set([
  'action',
  'alloy',
  'also_unit',
  'anode',
  'at_0.15',
  'at_0.25',
  'at_0.50',
  'bracketed',
  'case',
  'close_drill',
  'column',
  'comment',
  'condition',
  'contribution',
  'could_be',
  'datum',
  'defects',
  'edition',
  'environment',
  'family',
  'fastener',
  'finish',
  'id',
  'kind',
  'letter',
  'list',
  'loose_drill',
  'material',
  'meant',
  'name',
  'normal_drill',
  'note',
  'of',
  'plus_radius',
  'rule',
  'scale',
  'seen',
  'series',
  'sheet',
  'sign',
  'size',
  'standard',
  'system',
  'temper',
  'thread',
  'unit',
  'variant',
  'what',
  'word',
]);
