/** One line of the table. */
export interface Measured {
  readonly what: string;
  readonly medianMs: number;
  /** What `medianMs` is in where it is no time. */
  readonly unit?: 'MB' | 'kB';
  /** Over its yardstick, both from the same run on this machine; null where the time itself is what counts. */
  readonly ratio: number | null;
  /** What the ratio is taken over: "Papa.parse of the same text"; '' where there is none. */
  readonly yardstick: string;
  /** At most so much: of the ratio, or of the milliseconds where there is none; null: told, not judged. */
  readonly target: number | null;
}

/** One part of the bench: a file beside this one. */
export interface Part {
  /** Rows of the table, as soon as each is there. */
  readonly measure: () => Promise<readonly Measured[]>;
}

const TIMES = 5;

/** Something to be timed; what it returns is kept until the clock has stopped, so that nothing is optimised away. */
export type Job = () => unknown;

/**
 * Median wall time of each job in milliseconds. The jobs take turns, so that a busy moment of the machine hits all of them; one
 * round before the first that counts warms them up.
 */
export async function timeInTurns<Name extends string>(
  jobs: Readonly<Record<Name, Job>>,
  times = TIMES,
): Promise<Readonly<Record<Name, number>>> {
  const names = Object.keys(jobs) as Name[];
  const taken = new Map<Name, number[]>(names.map((name) => [name, []]));
  for (let round = 0; round <= times; round++) {
    for (const name of names) {
      const ms = await time(jobs[name]);
      if (round > 0) taken.get(name)?.push(ms);
    }
  }
  return Object.fromEntries(names.map((name) => [name, medianOf(taken.get(name) ?? [])])) as Record<Name, number>;
}

/** The middle value; of an even number of values the mean of the middle two. NaN of none. */
export function medianOf(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const middle = sorted.length >> 1;
  const [low, high] = [sorted[middle - 1] ?? Number.NaN, sorted[middle] ?? Number.NaN];
  return sorted.length % 2 === 1 ? high : (low + high) / 2;
}

/** Starts from a clean heap where the collector can be called, so that one job does not pay for another's rubbish. */
async function time(job: Job): Promise<number> {
  globalThis.gc?.();
  const start = performance.now();
  await job();
  return performance.now() - start;
}
