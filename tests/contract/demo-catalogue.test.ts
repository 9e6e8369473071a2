import { readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { FASTENER_KINDS } from '../../src/core/model/fastener.ts';

type Row = Readonly<Record<string, string>>;

const HEADINGS =
  'partNumber, kind, thread, lengthMm, material, hardnessMin, finish, sheetMinMm, sheetMaxMm, shankMm, flush, holeMm, holePlusMm, holeMinusMm, edgeMm, spacingMm, sheetHardnessMax, flangeMm, heightMm, forceSteelKn, forceAluminiumKn, pushOutSteelN, pushOutAluminiumN, torqueOutSteelNm, torqueOutAluminiumNm, stocked, packSize, moq, unitPrice, currency, leadDays, supersededBy, supplier, source, sourceDate, note';

/** Major diameters in mm: ISO 261 coarse, ASME B1.1 times 25.4. */
const DIAMETERS: Readonly<Record<string, number>> = {
  'M2.5': 2.5,
  M3: 3,
  M4: 4,
  M5: 5,
  M6: 6,
  M8: 8,
  '4-40': 0.112 * 25.4,
  '6-32': 0.138 * 25.4,
  '8-32': 0.164 * 25.4,
  '10-24': 0.19 * 25.4,
  '10-32': 0.19 * 25.4,
  '1/4-20': 0.25 * 25.4,
};

const catalogue = parseTable('../../sample-data/demo-catalogue.csv');
const rows = catalogue.rows;
const threaded = rows.filter(({ thread }) => thread !== '');

describe('the demo catalogue as a table', () => {
  it('has the headings of the catalogue table in their order', () => {
    expect(catalogue.headings.join(', ')).toBe(HEADINGS);
  });

  it('has at least 120 parts, each number once', () => {
    expect(rows.length).toBeGreaterThanOrEqual(120);
    expect(new Set(rows.map(({ partNumber }) => partNumber)).size).toBe(rows.length);
  });

  it('says on every row that it is invented', () => {
    const silent = rows.filter(
      ({ note, source, supplier }) =>
        !/demo: not for production/.test(`${note}`) ||
        !/invented/i.test(`${source}`) ||
        !/invented/i.test(`${supplier}`),
    );
    expect(silent).toEqual([]);
  });

  it('has every kind, thread and material', () => {
    expect(distinct('kind')).toEqual([...FASTENER_KINDS].sort());
    expect(distinct('thread').filter((thread) => thread !== '')).toEqual(Object.keys(DIAMETERS).sort());
    expect(distinct('material')).toEqual([
      '2024-T4',
      'carbon-steel-hardened',
      'stainless-300',
      'stainless-400-hardened',
      'stainless-ph',
    ]);
  });

  it('names a part on file, and not itself, where a part is superseded', () => {
    const superseded = rows.filter(({ supersededBy }) => supersededBy !== '');
    const current = new Set(rows.filter(({ supersededBy }) => supersededBy === '').map(({ partNumber }) => partNumber));
    expect(superseded.length).toBeGreaterThan(0);
    expect(superseded.filter(({ supersededBy }) => !current.has(supersededBy))).toEqual([]);
  });

  it('has parts in stock, parts out of stock, and parts that say no more than yes', () => {
    const stock = distinct('stocked');
    expect(stock).toContain('yes');
    expect(stock).toContain('no');
    expect(stock.some((text) => Number(text) > 0)).toBe(true);
  });

  it('has parts with a hardness, with a sheet limit instead, and with neither', () => {
    const said = rows.map(({ hardnessMin, sheetHardnessMax }) => [hardnessMin !== '', sheetHardnessMax !== ''].join());
    expect([...new Set(said)].sort()).toEqual(['false,false', 'false,true', 'true,false']);
  });
});

describe('the invented sizes', () => {
  it('put every hole over its thread and the flange over the hole', () => {
    expect(threaded.filter((row) => !(number(row, 'holeMm') > diameter(row)))).toEqual([]);
    expect(threaded.filter((row) => !(number(row, 'flangeMm') > number(row, 'holeMm')))).toEqual([]);
  });

  it('follow the hole and edge formulas', () => {
    for (const row of threaded) {
      const d = diameter(row);
      const exact = row.kind === 'clinch stud' ? 1.04 * d : 1.25 * d + 0.6;
      expect(Math.abs(number(row, 'holeMm') - exact), row.partNumber).toBeLessThanOrEqual(0.025 + 1e-9);
      expect(isMultipleOf(number(row, 'holeMm'), 0.05), row.partNumber).toBe(true);
      expect(Math.abs(number(row, 'flangeMm') - 1.9 * d), row.partNumber).toBeLessThanOrEqual(0.005 + 1e-9);
    }
    for (const row of rows) {
      const spare = number(row, 'edgeMm') - 1.6 * number(row, 'holeMm');
      expect(spare > -1e-9 && spare < 0.5 && isMultipleOf(number(row, 'edgeMm'), 0.5), row.partNumber).toBe(true);
    }
  });

  it('keep the minimum sheet that the part number says, below the maximum and above the shank', () => {
    for (const row of rows) {
      const sheetMin = number(row, 'sheetMinMm');
      expect(row.partNumber).toContain(`-${String(Math.round(sheetMin * 10)).padStart(2, '0')}-`);
      if (row.sheetMaxMm !== '') expect(number(row, 'sheetMaxMm'), row.partNumber).toBeGreaterThan(sheetMin);
      if (row.shankMm !== '') expect(number(row, 'shankMm'), row.partNumber).toBeLessThan(sheetMin);
    }
  });

  it('ask more of steel sheet than of aluminium', () => {
    const pairs = [
      ['forceSteelKn', 'forceAluminiumKn'],
      ['pushOutSteelN', 'pushOutAluminiumN'],
      ['torqueOutSteelNm', 'torqueOutAluminiumNm'],
    ] as const;
    for (const [steel, aluminium] of pairs) {
      const both = rows.filter((row) => row[steel] !== '' && row[aluminium] !== '');
      expect(both.length).toBeGreaterThan(0);
      expect(both.filter((row) => !(number(row, steel) > number(row, aluminium)))).toEqual([]);
    }
  });
});

describe('the same parts typed in inches and in millimetres', () => {
  const metric = parseTable('../sheets/metric-twin.csv').rows;
  const inch = parseTable('../sheets/inch-twin.csv').rows;
  const sizes = [
    ['sheetMinMm', 'Min Matl Thk (in)'],
    ['holeMm', 'Hole Dia (in)'],
    ['edgeMm', 'C/L to Edge (in)'],
  ] as const;

  it('say of each part what the demo catalogue says', () => {
    for (const row of metric) {
      const listed = rows.find(({ partNumber }) => partNumber === row.partNumber);
      expect(listed).toMatchObject(row);
    }
  });

  it('agree to the last written digit', () => {
    expect(inch.map((row) => row['Part No.'])).toEqual(metric.map(({ partNumber }) => partNumber));
    metric.forEach((row, index) => {
      for (const [mm, inches] of sizes) {
        const off = Math.abs(number(row, mm) - number(inch[index]!, inches) * 25.4);
        expect(off, `${row.partNumber} ${mm}`).toBeLessThanOrEqual(0.00005 * 25.4 + 1e-9);
      }
    });
  });
});

function parseTable(path: string): { headings: readonly string[]; rows: readonly Row[] } {
  const text = readFileSync(new URL(path, import.meta.url), 'utf8');
  const { data, errors } = Papa.parse<string[]>(text, { delimiter: ',', skipEmptyLines: true });
  expect(errors).toEqual([]);
  const [headings = [], ...cells] = data;
  expect(cells.every((row) => row.length === headings.length)).toBe(true);
  return {
    headings,
    rows: cells.map((row) => Object.fromEntries(headings.map((heading, at) => [heading, row[at] ?? '']))),
  };
}

function distinct(heading: string): string[] {
  return [...new Set(rows.map((row) => row[heading] ?? ''))].sort();
}

function number(row: Row, heading: string): number {
  const text = row[heading] ?? '';
  return text === '' ? Number.NaN : Number(text);
}

function diameter({ thread = '' }: Row): number {
  return DIAMETERS[thread] ?? Number.NaN;
}

function isMultipleOf(value: number, step: number): boolean {
  return Math.abs(value / step - Math.round(value / step)) < 1e-6;
}
