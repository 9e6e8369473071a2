import { rememberSome } from '../caching/remember.ts';
import type { QuantityReading } from '../model/line.ts';

/** What the tree needs to know of a row. */
export interface TreeRow {
  /** 1-based row in the file. */
  readonly row: number;
  readonly cells: readonly string[];
  readonly partNumber: string;
  readonly description: string;
  /** Per parent. Null for a title: it stands for what is under it, once. */
  readonly quantity: QuantityReading | null;
  /** As of a line: what it is when that is clearly no press-in fastener. */
  readonly seemsToBe: string | null;
}

/** Rows put under their parents in one way. Rows that are not in `parents` stand at the top. */
export interface Placing {
  readonly parents: ReadonlyMap<number, readonly number[]>;
  /** Rows whose place cannot be found: they count as top level. */
  readonly lost: readonly number[];
  /** Why they are lost, for a notice that begins with the rows. */
  readonly because: string;
  /** How much the way explains and how much it leaves unexplained, to compare it with others. */
  readonly explained: number;
  readonly broken: number;
  /** Quantity columns of single assemblies, where the list counts that way. */
  readonly perAssembly?: readonly AssemblyColumn[];
}

/** A column that counts pieces in one assembly. */
export interface AssemblyColumn {
  readonly index: number;
  /** Row of that assembly on the list; null where it has none and counts once. */
  readonly row: number | null;
}

/** A part number, name or number for comparing: case and spaces make no difference. '' for a sign of absence. */
export const nameKey: (text: string) => string = rememberSome(readNameKey);

function readNameKey(text: string): string {
  const key = text.normalize('NFKC').replace(/\s+/g, '').toUpperCase();
  return /^(?:[-‐-―−.]*|N\/?A|NONE)$/.test(key) ? '' : key;
}

/** Puts a value with others of its key. */
export function addTo<Key, Value>(groups: Map<Key, Value[]>, key: Key, value: Value): void {
  const group = groups.get(key);
  if (group) group.push(value);
  else groups.set(key, [value]);
}
