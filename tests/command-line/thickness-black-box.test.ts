import { mkdtempSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { run } from '../../src/cli/run.ts';
import { agrees, readTable } from '../outside/read-table.ts';

// Gauges 7 to 30 in four metals, each as a list of one row through the command line. Nominal thickness: manufacturers' standard
// gauge, galvanized gauge, stainless stocked decimals (US Standard gauge, 15 U.S.C. 206, where none is stocked), Brown & Sharpe.
// Mill tolerance, narrow sheet: ASTM A568/A1008, A924/A653 (trade tables), ASTM A480 (memory), ASTM B209 (partly memory).
const MM_PER_INCH = 25.4;
const folder = mkdtempSync(join(tmpdir(), 'clinchsheet-gauge-'));

type Row = Readonly<Record<string, string>>;
const find = (table: string, column: string, value: string) =>
  readTable(table).find((row) => Number(row[column]) === Number(value));

function stainlessInch(gauge: string): string {
  return find('stainless-gauges', 'gauge', gauge)?.stock_in || (find('gauges-us-standard', 'gauge', gauge)?.in ?? '');
}

const METALS = [
  {
    material: 'CRS',
    inch: (gauge: string) => find('gauges-steel', 'gauge', gauge)?.in ?? '',
    tolerance: (gauge: string) => find('mill-us-steel', 'gauge', gauge)?.cr_tol_in,
  },
  {
    material: 'A653 CS G90',
    inch: (gauge: string) => find('gauges-galvanized', 'gauge', gauge)?.in ?? '',
    tolerance: (gauge: string) => find('mill-us-steel', 'gauge', gauge)?.galv_tol_in,
  },
  {
    material: '304',
    inch: stainlessInch,
    tolerance: (gauge: string) =>
      readTable('a480-inch').find((row) => bandOf(row, Number(stainlessInch(gauge))))?.tol_in,
  },
  {
    material: '5052-H32',
    inch: (gauge: string) => find('gauges-awg', 'gauge', gauge)?.in ?? '',
    tolerance: (_gauge: string, inch: string) => b209(Number(inch)),
  },
] as const;

/** "over .. to": the lower end is not in the band. The last band is printed without an end: it goes to 3/16 in. */
function bandOf({ t_over_in, t_to_in }: Row, inch: number): boolean {
  return inch > Number(t_over_in) + 1e-9 && inch <= Number(t_to_in || 0.1875) + 1e-9;
}

/** The bands are printed to three decimals with gaps between them: a size in a gap takes the next thicker band. */
function b209(inch: number): string | undefined {
  const rows = readTable('b209');
  if (inch < Number(rows[0]?.t_from_in)) return undefined;
  return rows.find(({ t_to_in }) => inch <= Number(t_to_in) + 1e-9)?.w_36;
}

async function auditOneRow(material: string, gauge: string) {
  const file = join(folder, `${material}-${gauge}.csv`);
  writeFileSync(file, `Part number,Material,Thickness,Qty\nNUT-M4-10-CS,${material},${gauge} ga,4\n`);
  let json = '';
  await run([file, '--format', 'json'], { out: (text) => (json += text), error: () => {} });
  return JSON.parse(json).lines[0].sheet;
}

const GAUGES = Array.from({ length: 24 }, (_, index) => String(index + 7));

describe.each(METALS)('$material', ({ material, inch, tolerance }) => {
  it.each(GAUGES)('%s ga', async (gauge) => {
    const printed = inch(gauge);
    const sheet = await auditOneRow(material, gauge);
    if (printed === '') {
      expect(sheet.thicknessMm).toBeNull();
      return;
    }
    expect(agrees(printed, sheet.thicknessMm / MM_PER_INCH), `${sheet.thicknessMm} mm for ${printed} in`).toBe(true);
    const minus = tolerance(gauge, printed);
    if (!minus) expect(sheet.thinnestMm).toBeNull();
    else expect(sheet.thinnestMm).toBeCloseTo((Number(printed) - Number(minus)) * MM_PER_INCH, 2);
  });
});
