import { createNumbers, numberTuples } from '../caching/numbers.ts';
import type { Line } from '../model/line.ts';
import { ASPECTS, type Aspect } from './aspects.ts';

/** A number for each aspect of a row, in the order of `ASPECTS`: rows that are the same in an aspect have the same number there. */
export type AspectNumbers = readonly number[];

/** The place of each aspect among the numbers. */
export const PLACE_OF = Object.fromEntries(ASPECTS.map((aspect, place) => [aspect, place])) as Readonly<
  Record<Aspect, number>
>;

/**
 * Numbers the aspects of rows. Readings count as the same when they are the same object, as they are when intake reads equal cells of
 * a column; equal ones of different origin are only judged once more. `part` is what the row's part number leads to.
 */
export function createAspectNumbers(): (line: Line, part: object, pieces: number | null) => AspectNumbers {
  const parts = createNumbers<object>();
  const readings = createNumbers<object>();
  const facts = createFactsNumbers();
  const words = createWordNumbers();
  const counts = createNumbers<number | null>();
  const quantities = numberTuples(2);
  return (line, part, pieces) => [
    parts(part),
    readings(line.material),
    readings(line.thickness),
    readings(line.hole),
    readings(line.edge),
    readings(line.bend),
    readings(line.spacing),
    facts(line.facts),
    words(line),
    quantities([readings(line.quantity), counts(pieces)]),
  ];
}

/** By what they say: notes of different wording often say the same of the work, or nothing. */
function createFactsNumbers(): (facts: Line['facts']) => number {
  const known = new Map<Line['facts'], number>();
  const byContent = createNumbers<string>();
  return (facts) => {
    const before = known.get(facts);
    if (before !== undefined) return before;
    const number = byContent(JSON.stringify(facts));
    known.set(facts, number);
    return number;
  };
}

function createWordNumbers(): (line: Line) => number {
  const texts = createNumbers<string>();
  const described = createNumbers<Line['described']>();
  const together = numberTuples(6);
  return (line) =>
    together([
      texts(line.description),
      texts(line.fastenerMaterial),
      texts(line.finish),
      texts(line.thread),
      texts(line.length),
      described(line.described),
    ]);
}
