import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { VERDICTS } from '../../src/core/model/outcome.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { overviewOf } from '../../src/core/rollup/overview.ts';
import { readFile } from '../../src/io/read-file.ts';

const demo = (name: string) =>
  readFile(new Uint8Array(readFileSync(resolve(import.meta.dirname, '../../sample-data', name))), name);
const { lines, totals } = auditFile(
  demo('recorder-cabinet.xlsx'),
  createBasis([importCatalogue(demo('demo-catalogue.csv'))], DEFAULT_SHOP),
);
const overview = overviewOf(lines);

describe('how a list stands', () => {
  it('counts every row once by panel and once by metals', () => {
    for (const shares of [overview.panels, overview.pairs]) {
      expect(shares.flatMap(({ rows }) => rows).sort((a, b) => a - b)).toEqual(lines.map(({ row }) => row));
      for (const verdict of VERDICTS)
        expect(shares.reduce((sum, share) => sum + share.totals[verdict], 0)).toBe(totals[verdict]);
    }
  });

  it('names every check that does not hold somewhere, with exactly its rows', () => {
    const hardness = overview.checks.find(({ name }) => name === 'Hardness');
    const expected = lines.filter(({ findings }) =>
      findings.some(({ rule, outcome }) => rule === 'clinch/hardness' && outcome !== 'holds' && outcome !== 'note'),
    );
    expect(hardness?.rows).toEqual(expected.map(({ row }) => row));
    expect(expected.length).toBeGreaterThan(0);
    expect(overview.checks.every(({ totals: { holds } }) => holds === 0)).toBe(true);
  });

  it('puts what fails most often first and metals that are not known last', () => {
    const fails = overview.checks.map(({ totals: { fails } }) => fails);
    expect(fails).toEqual([...fails].sort((a, b) => b - a));
    expect(overview.fasteners).toContain('not known');
    expect(overview.fasteners.at(-1)).toBe('not known');
  });

  it('of no rows is empty', () => {
    expect(overviewOf([])).toEqual({ panels: [], checks: [], fasteners: [], sheets: [], pairs: [] });
  });
});
