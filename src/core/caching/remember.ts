import { createNumbers, numberTuples, type TupleNumbers } from './numbers.ts';

/** Texts that are kept by a reader that lives as long as the program; enough for the different words of one long list. */
const MOST = 10_000;

/** A value that is made when it is first asked for. */
export function once<T extends object>(make: () => T): () => T {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
}

/** A pure function of a text, worked out once for each text while it lives: for the cells of one list. With `most` texts kept it starts anew. */
export function rememberText<T, Key extends string = string>(
  read: (text: Key) => T,
  most = Number.POSITIVE_INFINITY,
): (text: Key) => T {
  const known = new Map<Key, T>();
  return (text) => {
    let reading = known.get(text);
    if (reading === undefined) {
      reading = read(text);
      if (known.size >= most) known.clear();
      known.set(text, reading);
    }
    return reading;
  };
}

/** The same for texts that come again and again in any list: it may live as long as the program. */
export function rememberSome<T>(read: (text: string) => T): (text: string) => T {
  return rememberText(read, MOST);
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

/** A pure function of two objects that never change, worked out once for each two while they live. */
export function rememberForTwo<A extends object, B extends object, T>(read: (a: A, b: B) => T): (a: A, b: B) => T {
  const readWith = rememberFor((a: A) => rememberFor((b: B) => read(a, b)));
  return (a, b) => readWith(a)(b);
}

/** A pure function of an object that never changes, worked out once for each while it lives. */
export function rememberFor<Key extends object, T>(read: (key: Key) => T): (key: Key) => T {
  const known = new WeakMap<Key, T>();
  return (key) => {
    let reading = known.get(key);
    if (reading === undefined) {
      reading = read(key);
      known.set(key, reading);
    }
    return reading;
  };
}
