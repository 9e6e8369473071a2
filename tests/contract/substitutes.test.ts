import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';

const demo = new URL('../../sample-data/demo-catalogue.csv', import.meta.url);
const catalogue = importCatalogue(readFile(readFileSync(demo), 'demo-catalogue.csv'));
const basis = createBasis([catalogue], DEFAULT_SHOP);
const HEADINGS = 'Part number,Description,Material,Thickness (mm),Hole (mm),Qty';

function audit(...rows: readonly string[]) {
  const text = `${HEADINGS}\n${rows.join('\n')}\n`;
  return auditFile(readFile(new TextEncoder().encode(text), 'list.csv'), basis).lines;
}

describe('parts that would hold instead', () => {
  it('are offered for a row that does not hold, the smallest change first', () => {
    const [row] = audit('NUT-M4-10-CS,Clinch nut M4 hardened steel,5052-H32,0.8,5.6,4');
    expect(row?.verdict).toBe('fails');
    expect(row?.remedies[0]).toMatchObject({
      partNumber: 'NUT-M4-08-CS',
      change: 'other shank, minimum sheet 0.80 mm',
    });
  });

  it('need not agree with a description that speaks of the listed part', () => {
    const [row] = audit('NUT-M4-10-S3,Clinch nut M4 300-series stainless,304,1.5,5.6,4');
    expect(row?.remedies.map(({ partNumber }) => partNumber)).toContain('NUT-M4-10-S4');
  });

  it('are none for a row that holds, and none for a part that is not on file', () => {
    const [holds, unlisted] = audit('NUT-M4-10-CS,,DC01,1.5,5.6,4', 'NUT-M4-10-ZZ,,DC01,1.5,5.6,4');
    expect(holds).toMatchObject({ verdict: 'holds', remedies: [] });
    expect(unlisted).toMatchObject({ verdict: 'unknown', remedies: [] });
  });

  it('each hold when they are put into the row', () => {
    const sheets = ['304,1.5', '5052-H32,0.8', 'DC01,0.8', '6061-T6,1.2', 'GALVANNEAL,1.0'];
    const parts = catalogue.fasteners.filter((_, index) => index % 7 === 0);
    const rows = parts.flatMap(({ partNumber, holeMm }) =>
      sheets.map((sheet) => `${partNumber},,${sheet},${holeMm ?? ''},4`),
    );
    const offered = audit(...rows).flatMap(({ line, remedies }) =>
      remedies.map(({ partNumber }) => [partNumber, '', ...line.cells.slice(2)].join(',')),
    );
    expect(offered.length).toBeGreaterThan(20);
    for (const row of audit(...offered)) expect(row.verdict, row.line.cells.join(',')).toBe('holds');
  });

  it('come unstocked after stocked', () => {
    const rows = catalogue.fasteners.map(({ partNumber, holeMm }) => `${partNumber},,304,0.8,${holeMm ?? ''},4`);
    for (const { remedies } of audit(...rows)) {
      const firstUnstocked = remedies.findIndex(({ stocked }) => stocked === false);
      if (firstUnstocked >= 0)
        expect(remedies.slice(firstUnstocked).every(({ stocked }) => stocked === false)).toBe(true);
    }
  });
});
