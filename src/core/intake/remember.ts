import { createNumbers, numberTuples, type TupleNumbers } from '../model/numbers.ts';

/** The same pure function of a text, worked out once for each text while it lives: for the cells of one list. */
export function rememberText<T>(read: (text: string) => T): (text: string) => T {
  const known = new Map<string, T>();
  return (text) => {
    let reading = known.get(text);
    if (reading === undefined) {
      reading = read(text);
      known.set(text, reading);
    }
    return reading;
  };
}

/** The same of several texts: rows of one part repeat panel after panel. */
export function rememberTexts<Texts extends readonly string[], T>(
  read: (...texts: Texts) => T,
): (...texts: Texts) => T {
  const numberOf = createNumbers<string>();
  const known: T[] = [];
  let together: TupleNumbers | undefined;
  return (...texts) => {
    together ??= numberTuples(texts.length);
    const at = together(texts.map(numberOf));
    if (at === known.length) known.push(read(...texts));
    return known[at] as T;
  };
}
