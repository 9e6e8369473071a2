import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { auditList } from '../../src/core/engine/audit-list.ts';
import { buildList } from '../../src/core/intake/build-list.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';

// The trade's table of fastener metals and sheet metals: common practice, no source.
const SHEETS = [
  ['cold-rolled steel', 'A1008 CS'],
  ['galvannealed steel', 'GALVANNEAL'],
  ['aluminium', '5052-H32'],
  ['stainless, annealed', '304'],
] as const;
const TABLE = [
  ['hardened 400-series stainless', 'NUT-M4-10-S4', 'yes', 'yes', 'yes', 'yes'],
  ['300-series stainless', 'NUT-M4-10-S3', 'yes', 'yes', 'yes', 'no'],
  ['heat-treated carbon steel', 'NUT-M4-10-CS', 'yes', 'yes', 'yes', 'no'],
  ['aluminium', 'NUT-M4-10-AL', 'no', 'no', 'yes', 'no'],
] as const;

const demo = new URL('../../sample-data/demo-catalogue.csv', import.meta.url);
const basis = createBasis([importCatalogue(readFile(readFileSync(demo), 'demo-catalogue.csv'))], DEFAULT_SHOP);

function judge(partNumber: string, material: string) {
  const text = `Part number,Material,Thickness (mm),Qty\n${partNumber},${material},1.5,4\n`;
  const list = buildList(readFile(new TextEncoder().encode(text), 'pair.csv'));
  return auditList(list, basis).lines[0]!;
}

const CELLS = TABLE.flatMap(([fastener, partNumber, ...answers]) =>
  SHEETS.map(([sheet, material], column) => [fastener, sheet, answers[column], partNumber, material] as const),
);

describe.each(CELLS)('%s in %s: %s', (_fastener, _sheet, answer, partNumber, material) => {
  const row = judge(partNumber, material);
  const outcomeOf = (rule: string) => row.findings.find((finding) => finding.rule === rule)?.outcome;

  it('comes out of the family check', () => {
    expect(outcomeOf('part/listed')).toBe('holds');
    expect(outcomeOf('clinch/family')).toBe(answer === 'yes' ? 'holds' : 'fails');
  });

  it('is not contradicted by the computed hardness', () => {
    const hardness = outcomeOf('clinch/hardness');
    if (answer === 'no') expect(['fails', 'marginal']).toContain(hardness);
    else expect(['holds', 'marginal']).toContain(hardness);
  });

  it(answer === 'yes' ? 'gives a row that does not fail' : 'gives a row that fails', () => {
    if (answer === 'no') expect(row.verdict).toBe('fails');
    else expect(['holds', 'marginal']).toContain(row.verdict);
  });
});
