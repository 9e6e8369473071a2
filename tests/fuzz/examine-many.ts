import { examine } from './examine.ts';

/** Examines one input after the other and tells the parent before and after each. */
const [seed = 1, from = 0, end = 0, until = 0] = process.argv.slice(2).map(Number);
for (let at = from; at < end && Date.now() < until; at++) {
  process.send?.({ at });
  const start = performance.now();
  const { code, faults } = await examine(seed, at);
  process.send?.({ at, code, faults, ms: performance.now() - start });
}
process.disconnect?.();
