/** How far apart two items of long groups may stand to be weighed against each other. */
const REACH = 25;
/** Groups up to so many pairs are weighed in full. */
const MOST_PAIRS = 2500;

interface Candidate {
  readonly at: number;
  readonly other: number;
  readonly worth: number;
}

/**
 * Pairs two groups one to one, the pair that is worth most first; among equals those that stand at the same place of their groups.
 * Pairs worth less than `least` are none. The result is the same whichever group comes first. Long groups are weighed near the
 * diagonal only, so that the time grows with their length and not with its square.
 */
export function bestPairs<T>(
  left: readonly T[],
  right: readonly T[],
  worthOf: (one: T, other: T) => number,
  least = Number.NEGATIVE_INFINITY,
): readonly (readonly [T, T])[] {
  const candidates: Candidate[] = [];
  const reach = left.length * right.length <= MOST_PAIRS ? MOST_PAIRS : REACH;
  left.forEach((one, at) => {
    for (let other = Math.max(0, at - reach); other < Math.min(right.length, at + reach + 1); other++) {
      const worth = worthOf(one, right[other] as T);
      if (worth >= least) candidates.push({ at, other, worth });
    }
  });
  candidates.sort(better);
  const [used, taken] = [new Set<number>(), new Set<number>()];
  const pairs: (readonly [T, T])[] = [];
  for (const { at, other } of candidates) {
    if (used.has(at) || taken.has(other)) continue;
    used.add(at);
    taken.add(other);
    pairs.push([left[at] as T, right[other] as T]);
  }
  return pairs;
}

function better(a: Candidate, b: Candidate): number {
  return b.worth - a.worth || Math.abs(a.at - a.other) - Math.abs(b.at - b.other) || a.at + a.other - (b.at + b.other);
}
