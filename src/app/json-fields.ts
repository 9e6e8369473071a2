import { shorten } from '../core/say/shorten.ts';

/** A JSON object of which nothing is known yet. */
export type Fields = Readonly<Record<string, unknown>>;

/** Reads one value found at `path`; throws `Misfit` where it is not what it has to be. */
export type Read<T> = (value: unknown, path: string) => T;

/** A value that is not what it has to be: where it stands, and what was wanted there. */
export class Misfit extends Error {
  override readonly name = 'Misfit';

  constructor(path: string, wanted: string, value: unknown) {
    super(value === undefined ? `${path} is missing` : `${path} has to be ${wanted}, not ${quote(value)}`);
  }
}

export const readFields: Read<Fields> = (value, path) => {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) throw new Misfit(path, 'an object', value);
  return value as Fields;
};

export const readText: Read<string> = (value, path) => {
  if (typeof value !== 'string') throw new Misfit(path, 'a text', value);
  return value;
};

/** A whole number, both ends included. */
export const readWhole =
  (least: number, most: number): Read<number> =>
  (value, path) => {
    if (!Number.isSafeInteger(value) || Number(value) < least || Number(value) > most) {
      throw new Misfit(path, `a whole number from ${least} to ${most}`, value);
    }
    return Number(value);
  };

export const readOneOf =
  <T extends string>(choices: readonly T[]): Read<T> =>
  (value, path) => {
    const found = choices.find((choice) => choice === value);
    if (found === undefined) throw new Misfit(path, `one of ${choices.join(', ')}`, value);
    return found;
  };

/** A list; one that is missing is empty. */
export const readListOf =
  <T>(read: Read<T>): Read<readonly T[]> =>
  (value, path) => {
    if (value === undefined) return [];
    if (!Array.isArray(value)) throw new Misfit(path, 'a list', value);
    return value.map((one, index) => read(one, `${path}[${index}]`));
  };

/** Values by 0-based column; a missing object has none. */
export const readByColumn =
  <T>(read: Read<T>): Read<Readonly<Record<number, T>>> =>
  (value, path) => {
    const entries = Object.entries(value === undefined ? {} : readFields(value, path));
    const pairs = entries.map(([column, one]) => {
      if (!/^\d{1,5}$/.test(column)) throw new Misfit(`${path}, its key`, 'the 0-based number of a column', column);
      return [column, read(one, `${path}.${column}`)] as const;
    });
    return Object.fromEntries(pairs);
  };

/** The object without some of its fields. */
export function without(fields: Fields, known: readonly string[]): Fields {
  return Object.fromEntries(Object.entries(fields).filter(([key]) => !known.includes(key)));
}

const LONGEST_QUOTE = 40;

/** Short enough for a sentence. */
function quote(value: unknown): string {
  return shorten(JSON.stringify(value) ?? String(value), LONGEST_QUOTE);
}
