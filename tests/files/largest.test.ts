import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const SCRIPT = join(import.meta.dirname, 'largest.ts');
const TIMEOUT_MS = 30_000;

/** What must come of each of the largest files, in a process of its own that has 600 MB. */
const OUTCOMES: readonly (readonly [string, RegExp])[] = [
  ['a million styled but empty rows', /^2 rows$/],
  ['strays in the last row and column', /^3 rows$/],
  ['a stray at the far right of every row', /spreads over millions of cells/],
  ['a hundred thousand rows', /^100002 rows$/],
  ['a part that unpacks a thousandfold', /over 200 times its packed size/],
  ['a text of half a million rows', /^500001 rows$/],
  ['a million rows of commas', /^2 rows$/],
  ['quotes that never close in every row', /^300001 rows$/],
  ['one quote that never closes, before a long text', /^500002 rows$/],
];

describe('the largest odd files', () => {
  it.each(OUTCOMES)('%s', { timeout: TIMEOUT_MS + 5000 }, (name, wanted) => {
    const argv = ['--max-old-space-size=600', '--import', 'tsx', SCRIPT, name];
    const { outcome, peakMb } = JSON.parse(
      execFileSync(process.execPath, argv, { timeout: TIMEOUT_MS, encoding: 'utf8' }),
    );
    expect(outcome).toMatch(wanted);
    expect(peakMb).toBeLessThan(600);
  });
});
