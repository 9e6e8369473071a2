import { createNumbers, numberTuples, type TupleNumbers } from '../caching/numbers.ts';
import type { Fastener } from '../model/fastener.ts';
import type { RuleCard } from '../rules/rule.ts';
import { aspectsOf } from './aspects.ts';
import { type AspectNumbers, PLACE_OF } from './row-aspects.ts';

/**
 * Whether a check of another part in a row holds; asked once for rows that are the same in all else that the check says it reads. Panels
 * are no aspect: a check over the whole list is tried on the row alone.
 */
export type PartTrial = (check: RuleCard, part: Fastener, holds: () => boolean) => boolean;

/** What one check came to, by part and row. */
interface Tried {
  /** Places of the aspects other than the part. */
  readonly places: readonly number[];
  readonly tuple: Int32Array;
  readonly numberOf: TupleNumbers;
  readonly held: boolean[];
}

/** A check tried that often is forgotten: rows of a list of which no two are alike share nothing. */
const MOST = 100_000;

/** Trials for the rows that one judge numbers; a row is given by its numbers. */
export function createPartTrials(): (row: AspectNumbers) => PartTrial {
  const partNumber = createNumbers<Fastener>();
  const known = new Map<RuleCard, Tried>();
  const triedOf = (check: RuleCard): Tried => {
    const before = known.get(check);
    if (before && before.held.length < MOST) return before;
    const tried = createTried(check);
    known.set(check, tried);
    return tried;
  };
  return (row) => (check, part, holds) => {
    const { places, tuple, numberOf, held } = triedOf(check);
    tuple[0] = partNumber(part);
    for (let at = 0; at < places.length; at++) tuple[at + 1] = row[places[at]!]!;
    const number = numberOf(tuple);
    if (number === held.length) held.push(holds());
    return held[number]!;
  };
}

function createTried(check: RuleCard): Tried {
  const places = aspectsOf(check).flatMap((aspect) => (aspect === 'part' ? [] : [PLACE_OF[aspect]]));
  const width = places.length + 1;
  return { places, tuple: new Int32Array(width), numberOf: numberTuples(width), held: [] };
}
