import { readFileSync } from 'node:fs';
import { expect, it } from 'vitest';
import { countOutsideValues, showOutsideCount } from './count.ts';

it('the README shows the present count of outside values: paste the output of `npm run --silent outside` when it does not', () => {
  const readme = readFileSync(new URL('../../README.md', import.meta.url), 'utf8');
  expect(readme).toContain(showOutsideCount(countOutsideValues()).trimEnd());
});
