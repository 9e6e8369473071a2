/** Numbers that look random and are the same each time for one seed. */
export interface Random {
  /** A whole number from 0 on, below the limit. */
  below(limit: number): number;
  /** True once in so many times. */
  oneIn(times: number): boolean;
  oneOf<T>(items: readonly T[]): T;
  shuffle<T>(items: readonly T[]): T[];
}

/** Mulberry32: small, and good enough to pick what to break. */
export function createRandom(seed: number): Random {
  let state = seed | 0;
  const next = () => {
    state = (state + 0x6d2b_79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
  const below = (limit: number) => Math.floor(next() * limit);
  return {
    below,
    oneIn: (times) => below(times) === 0,
    oneOf: (items) => items[below(items.length)]!,
    shuffle: (items) => {
      const left = [...items];
      return items.map(() => left.splice(below(left.length), 1)[0]!);
    },
  };
}
