import { defineConfig } from 'vitest/config';
import { SlowestFirst } from './tests/slowest-first.ts';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 20_000,
    // A busy machine answers later, never otherwise.
    expect: { poll: { timeout: 5_000 } },
    // Half of the time goes into waiting for a browser, so both of two cores are kept busy.
    maxWorkers: 2,
    // The code holds nothing that one file of tests could leave to the next; loading it anew for each took longer than most of them.
    isolate: false,
    sequence: { sequencer: SlowestFirst },
  },
});
