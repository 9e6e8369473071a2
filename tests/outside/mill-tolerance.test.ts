import { describe, expect, it } from 'vitest';
import { type OrderedSheet, thinnest } from '../../src/core/calc/thinnest.ts';
import { astmA480m } from '../../src/core/reference/thickness/astm-a480m.ts';
import { en10131Special } from '../../src/core/reference/thickness/en-10131-special.ts';
import { mmOf } from '../../src/core/units/length.ts';
import { agrees, readTable } from './read-table.ts';

type Width = 'narrow' | 'medium' | 'wide';

const steel: OrderedSheet = { mm: 1, family: 'carbon-steel', alloy: 'crs', hotRolled: false, writtenIn: 'mm' };
const galvanized: OrderedSheet = { ...steel, family: 'galvanized-steel', alloy: 'dx51d' };
const stainless: OrderedSheet = { ...steel, family: 'stainless-austenitic', alloy: '304' };
const aluminium: OrderedSheet = { ...steel, family: 'aluminium', alloy: '5052' };

/** What the mill may take off, in mm or inches. */
function minus(sheet: OrderedSheet, width: Width, unit: 'mm' | 'in' = 'mm'): number {
  const found = thinnest(sheet, { standard: unit === 'mm' ? 'en' : 'us', width });
  return (found?.minusMm ?? Number.NaN) / mmOf(1, unit);
}

/** Columns of the EN tables: the sheet that they speak of, and which width each column is. */
const enColumns: readonly {
  standard: string;
  table: string;
  sheet: OrderedSheet;
  columns: Partial<Record<Width, string>>;
}[] = [
  {
    standard: 'EN 10131:2006, yield below 260 MPa',
    table: 'en-10131',
    sheet: steel,
    columns: { narrow: 'w_to_1200', medium: 'w_to_1500', wide: 'w_over_1500' },
  },
  {
    standard: 'EN 10131:2006, yield 260 to 340 MPa',
    table: 'en-10131-yield-260-340',
    sheet: { ...steel, structural: true },
    columns: { narrow: 'w_to_1200', medium: 'w_to_1500', wide: 'w_over_1500' },
  },
  {
    standard: 'EN 10143:2006',
    table: 'en-10143',
    sheet: galvanized,
    columns: { narrow: 'w_to_1200', medium: 'w_to_1500', wide: 'w_over_1500' },
  },
  {
    standard: 'EN 10051, steels of EN 10111',
    table: 'en-10051',
    sheet: { ...steel, hotRolled: true },
    columns: { narrow: 'en10111_to_1200', medium: 'en10111_to_1500' },
  },
  {
    standard: 'EN 10051, category A',
    table: 'en-10051',
    sheet: { ...steel, hotRolled: true, structural: true },
    columns: { narrow: 'cat_a_to_1200', medium: 'cat_a_to_1500' },
  },
  {
    standard: 'EN 10259',
    table: 'en-10259',
    sheet: stainless,
    columns: { narrow: 'w_below_1000', medium: 'w_below_1300', wide: 'w_below_2100' },
  },
  {
    standard: 'EN 485-4:1994, group I',
    table: 'en-485-4',
    sheet: { ...aluminium, alloy: '3003' },
    columns: { narrow: 'i_to_1000', medium: 'i_to_1250', wide: 'i_to_1600' },
  },
  {
    standard: 'EN 485-4:1994, group II',
    table: 'en-485-4',
    sheet: aluminium,
    columns: { narrow: 'ii_to_1000', medium: 'ii_to_1250', wide: 'ii_to_1600' },
  },
];

describe.each(enColumns)('$standard', ({ table, sheet, columns }) => {
  const cells = readTable(table).flatMap((row) =>
    Object.entries(columns).map(([width, column]) => ({ row, width: width as Width, printed: row[column] ?? '' })),
  );

  it.each(cells.filter(({ printed }) => printed !== ''))('$row $width', ({ row, width, printed }) => {
    const low = Number(row.t_over_mm ?? row.t_from_mm);
    const high = Number(row.t_to_mm ?? row.t_below_mm);
    expect(agrees(printed, minus({ ...sheet, mm: (low + high) / 2 }, width))).toBe(true);
    // "over .. to" takes in the upper end, "from .. below" the lower one.
    expect(agrees(printed, minus({ ...sheet, mm: row.t_below_mm ? low : high }, width))).toBe(true);
  });
});

describe('US steel tables by gauge (ASTM A568 and ASTM A924)', () => {
  const rows = readTable('mill-us-steel');

  it.each(rows.filter((row) => row.cr_tol_in))('$gauge gauge cold rolled', (row) => {
    const sheet: OrderedSheet = { ...steel, mm: mmOf(Number(row.cr_nom_in), 'in'), writtenIn: 'gauge' };
    expect(agrees(row.cr_tol_in ?? '', minus(sheet, 'narrow', 'in'))).toBe(true);
  });

  const hotRolled = rows.filter((row) => row.hr_tol_in);
  const nominal = (gauge = '') => readTable('gauges-steel').find((row) => row.gauge === gauge)?.in;

  it.each(hotRolled)('$gauge gauge hot rolled', (row) => {
    const sheet: OrderedSheet = {
      ...steel,
      hotRolled: true,
      mm: mmOf(Number(nominal(row.gauge)), 'in'),
      writtenIn: 'gauge',
    };
    expect(agrees(row.hr_tol_in ?? '', minus(sheet, 'narrow', 'in'))).toBe(true);
  });

  it.each(rows.filter((row) => row.galv_tol_in))('$gauge gauge galvanized', (row) => {
    const sheet: OrderedSheet = { ...galvanized, mm: mmOf(Number(row.galv_nom_in), 'in'), writtenIn: 'gauge' };
    expect(agrees(row.galv_tol_in ?? '', minus(sheet, 'narrow', 'in'))).toBe(true);
  });
});

describe('inch tables of stainless and aluminium', () => {
  it.each(readTable('a480-inch'))('ASTM A480 (from memory): $t_over_in to $t_to_in in', (row) => {
    // The last band ends below 3/16 in.
    const inches = (Number(row.t_over_in) + Number(row.t_to_in || 3 / 16)) / 2;
    expect(
      agrees(row.tol_in ?? '', minus({ ...stainless, mm: mmOf(inches, 'in'), writtenIn: 'in' }, 'narrow', 'in')),
    ).toBe(true);
  });

  it.each(readTable('b209'))('ASTM B209 ($mark): $t_from_in to $t_to_in in', (row) => {
    for (const inches of [row.t_from_in, row.t_to_in]) {
      const sheet: OrderedSheet = { ...aluminium, mm: mmOf(Number(inches), 'in'), writtenIn: 'in' };
      expect(agrees(row.w_36 ?? '', minus(sheet, 'narrow', 'in'))).toBe(true);
      expect(agrees(row.w_48 ?? '', minus(sheet, 'medium', 'in'))).toBe(true);
    }
  });
});

describe('tables kept for comparison', () => {
  it.each(readTable('en-10131'))('EN 10131:2006 special tolerances up to $t_to_mm mm', (row) => {
    const ours = en10131Special.rows.find(({ highMm }) => highMm === Number(row.t_to_mm));
    expect(agrees(row.special_to_1200 ?? '', ours?.narrowMm ?? Number.NaN)).toBe(true);
    expect(agrees(row.special_to_1500 ?? '', ours?.mediumMm ?? Number.NaN)).toBe(true);
    expect(agrees(row.special_over_1500 ?? '', ours?.wideMm ?? Number.NaN)).toBe(true);
  });

  it.each(readTable('a480m'))('ASTM A480M at $t_mm mm', (row) => {
    const ours = astmA480m.rows.find(({ thicknessMm }) => thicknessMm === Number(row.t_mm));
    expect(agrees(row.w_to_1000 ?? '', ours?.narrowMm ?? Number.NaN)).toBe(true);
    if (row.w_to_1300) expect(agrees(row.w_to_1300, ours?.mediumMm ?? Number.NaN)).toBe(true);
    if (row.w_to_2100) expect(agrees(row.w_to_2100, ours?.wideMm ?? Number.NaN)).toBe(true);
  });
});

describe('the thinnest sheet', () => {
  const asWritten = { standard: 'as-written', width: 'narrow' } as const;

  it.each<[string, OrderedSheet, Width, string, string]>([
    [
      '16 gauge cold rolled, ASTM A568',
      { ...steel, mm: mmOf(0.0598, 'in'), writtenIn: 'gauge' },
      'narrow',
      '1.392',
      'us-cold-rolled-tolerance',
    ],
    [
      '20 gauge galvanized, ASTM A924',
      { ...galvanized, mm: mmOf(0.0396, 'in'), writtenIn: 'gauge' },
      'narrow',
      '0.904',
      'us-galvanized-tolerance',
    ],
    ['1.0 mm DC01, EN 10131', steel, 'narrow', '0.95', 'en-10131'],
    ['1.0 mm DX51D, EN 10143', galvanized, 'narrow', '0.94', 'en-10143'],
    ['1.50 mm 304, EN 10259 below 1000 wide', { ...stainless, mm: 1.5 }, 'narrow', '1.42', 'en-10259'],
    ['1.50 mm 304, EN 10259 below 1300 wide', { ...stainless, mm: 1.5 }, 'medium', '1.41', 'en-10259'],
    ['1.5 mm 5754, EN 485-4', { ...aluminium, alloy: 'EN AW-5754', mm: 1.5 }, 'narrow', '1.43', 'en-485-4-group-2'],
    ['1.5 mm 1050A, EN 485-4', { ...aluminium, alloy: '1050A', mm: 1.5 }, 'narrow', '1.45', 'en-485-4-group-1'],
  ])('of %s', (_, sheet, width, printed, table) => {
    const found = thinnest(sheet, { standard: 'as-written', width });
    expect(agrees(printed, found?.mm ?? Number.NaN)).toBe(true);
    expect(found).toMatchObject({ table, assumed: null });
  });

  it('goes by the way the thickness was written unless the shop says otherwise', () => {
    const sheet: OrderedSheet = { ...steel, mm: 1.5 };
    expect(thinnest(sheet, asWritten)?.table).toBe('en-10131');
    expect(thinnest({ ...sheet, writtenIn: 'in' }, asWritten)?.table).toBe('us-cold-rolled-tolerance');
    expect(thinnest(sheet, { standard: 'us', width: 'narrow' })?.table).toBe('us-cold-rolled-tolerance');
    expect(thinnest({ ...sheet, writtenIn: 'gauge' }, { standard: 'en', width: 'narrow' })?.table).toBe('en-10131');
  });

  it('takes a decimal between two gauges by the thicker one and says so', () => {
    const found = thinnest({ ...steel, mm: mmOf(0.0555, 'in'), writtenIn: 'in' }, asWritten);
    expect(found?.minusMm).toBeCloseTo(mmOf(0.005, 'in'), 9);
    expect(found?.assumed).toContain('16 gauge');
  });

  it('counts the ends of a band as the table does', () => {
    expect(minus({ ...steel, mm: 0.8 }, 'narrow')).toBe(0.04); // EN 10131: over .. to
    expect(minus({ ...steel, mm: 0.35 }, 'narrow')).toBe(0.03); // EN 10131: the first row takes in its lower end
    expect(minus({ ...steel, mm: 0.34 }, 'narrow')).toBeNaN();
    expect(minus({ ...stainless, mm: 2 }, 'narrow')).toBe(0.09); // EN 10259: from .. below
    expect(minus({ ...stainless, mm: 1.99 }, 'narrow')).toBe(0.08);
    expect(minus({ ...stainless, mm: 6.5 }, 'narrow')).toBeNaN();
  });

  it('says what it had to take for granted', () => {
    const wide = { standard: 'as-written', width: 'wide' } as const;
    expect(thinnest({ ...aluminium, alloy: '8079' }, asWritten)?.assumed).toContain('group II');
    expect(thinnest({ ...aluminium, alloy: '8079', mm: 4 }, asWritten)?.assumed).toBeNull();
    expect(thinnest({ ...steel, structural: true, mm: 1.5 }, asWritten)?.assumed).toContain('softer grades');
    expect(thinnest({ ...steel, hotRolled: true, mm: 3 }, wide)?.assumed).toContain('widest column');
    expect(thinnest({ ...aluminium, mm: mmOf(0.05, 'in'), writtenIn: 'in' }, wide)?.assumed).toContain('widest column');
  });

  it('fills the gaps between the thousandths of ASTM B209 with the thicker band', () => {
    expect(minus({ ...aluminium, mm: mmOf(0.0453, 'in'), writtenIn: 'gauge' }, 'narrow', 'in')).toBeCloseTo(0.003, 9);
    expect(minus({ ...aluminium, mm: mmOf(0.0179, 'in'), writtenIn: 'gauge' }, 'narrow', 'in')).toBeNaN();
  });

  it.each<[string, OrderedSheet]>([
    ['copper', { ...steel, family: 'copper', alloy: 'c110' }],
    ['brass', { ...steel, family: 'brass', alloy: 'c260' }],
    ['titanium', { ...steel, family: 'titanium', alloy: 'grade 2' }],
    ['hot-rolled stainless', { ...stainless, hotRolled: true }],
    ['a size above the table', { ...steel, mm: 5 }],
    ['no number', { ...steel, mm: Number.NaN }],
    ['nothing', { ...steel, mm: 0 }],
  ])('is not known for %s', (_, sheet) => {
    for (const standard of ['en', 'us'] as const) {
      if (sheet.mm === 5 && standard === 'us') continue;
      expect(thinnest(sheet, { standard, width: 'narrow' })).toBeNull();
    }
  });
});
