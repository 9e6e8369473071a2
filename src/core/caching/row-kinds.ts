import { createNumbers, numberTuples } from './numbers.ts';

/**
 * Tells rows apart by their texts in some places: rows that are the same in all of these get the same number, 0, 1, 2 in the order of
 * first sight.
 */
export function createRowKinds(places: readonly number[]): (texts: readonly string[]) => number {
  const numbersOf = places.map(() => createNumbers<string>());
  const kindOf = numberTuples(places.length);
  const tuple = new Int32Array(places.length);
  return (texts) => {
    for (let at = 0; at < tuple.length; at++) tuple[at] = numbersOf[at]!(texts[places[at]!] ?? '');
    return kindOf(tuple);
  };
}
