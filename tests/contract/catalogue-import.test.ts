import { describe, expect, it } from 'vitest';
import type { CatalogueField } from '../../src/core/catalogue/catalogue-fields.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import type { Fastener } from '../../src/core/model/fastener.ts';
import { type RawFile, Unreadable } from '../../src/core/model/raw.ts';

function fileOf(lines: readonly string[], file = 'supplier.csv'): RawFile {
  const rows = lines
    .map((line, index) => ({ number: index + 1, cells: line.split(';') }))
    .filter(({ cells }) => cells.some((cell) => cell !== ''));
  return { file, format: 'csv', tables: [{ name: '', rows }], notices: [] };
}

function only(lines: readonly string[], mapping?: Readonly<Record<number, CatalogueField>>): Fastener {
  const { fasteners } = importCatalogue(fileOf(lines), mapping ? { mapping } : {});
  expect(fasteners).toHaveLength(1);
  return fasteners[0] as Fastener;
}

const problemsOf = (lines: readonly string[]) => importCatalogue(fileOf(lines)).problems;

const OWN =
  'partNumber;kind;thread;lengthMm;material;hardnessMin;finish;sheetMinMm;sheetMaxMm;shankMm;flush;holeMm;holePlusMm;holeMinusMm;edgeMm;spacingMm;sheetHardnessMax;flangeMm;heightMm;forceSteelKn;forceAluminiumKn;pushOutSteelN;pushOutAluminiumN;torqueOutSteelNm;torqueOutAluminiumNm;stocked;packSize;moq;unitPrice;currency;leadDays;supersededBy;supplier;source;sourceDate;note';

describe('a catalogue under our own headings', () => {
  const fastener = only([
    OWN,
    'NUT-M4-10-CS;clinch nut;M4;;carbon-steel-hardened;HRC 30;zinc;1.0;3;0.97;no;5.6;0.08;0;7;9;HRB 80;7.6;2;12;8;900;600;2.5;1.5;yes;100;500;0.12;EUR;10;NUT-M4-12-CS;Alder Reach;sheet 4;2024-05-01;demo: not for production',
  ]);

  it('keeps every column', () =>
    expect(fastener).toEqual({
      partNumber: 'NUT-M4-10-CS',
      kind: 'clinch nut',
      thread: 'M4',
      lengthMm: null,
      material: { text: 'carbon-steel-hardened', candidates: fastener.material.candidates },
      hardnessMin: { scale: 'HRC', value: 30 },
      finish: 'zinc',
      sheetMinMm: 1,
      sheetMaxMm: 3,
      shankMm: 0.97,
      flush: false,
      holeMm: 5.6,
      holePlusMm: 0.08,
      holeMinusMm: 0,
      edgeMm: 7,
      spacingMm: 9,
      sheetHardnessMax: { scale: 'HRB', value: 80 },
      flangeMm: 7.6,
      heightMm: 2,
      forceSteelKn: 12,
      forceAluminiumKn: 8,
      pushOutSteelN: 900,
      pushOutAluminiumN: 600,
      torqueOutSteelNm: 2.5,
      torqueOutAluminiumNm: 1.5,
      stocked: { yes: true, quantity: null },
      packSize: 100,
      moq: 500,
      unitPrice: 0.12,
      currency: 'EUR',
      leadDays: 10,
      supersededBy: 'NUT-M4-12-CS',
      supplier: 'Alder Reach',
      source: 'sheet 4',
      sourceDate: '2024-05-01',
      note: 'demo: not for production',
      origin: { catalogue: 'supplier', row: 2 },
    }));

  it('knows the material', () => expect(fastener.material.candidates).not.toEqual([]));
  it('needs nothing but the part number', () => {
    const bare = only(['partNumber', 'A-1']);
    expect(bare).toMatchObject({
      partNumber: 'A-1',
      kind: null,
      holeMm: null,
      stocked: null,
      material: { candidates: [] },
    });
  });
});

describe('a catalogue under the headings of a supplier', () => {
  const INCH = 'Part No.;Type;Thd;Min Matl Thk (in);Hole Dia (in);C/L to Edge (in);Fastener Matl;Hardness';

  it('reads inches', () => {
    const { fasteners, problems } = importCatalogue(
      fileOf([
        INCH,
        'NUT-832-040;self-clinching nut;8-32;.040;.213;.27;Hardened steel;HRC 28-36',
        'STD-632-040;Stud;6-32;0.040";.138;.22;300 series stainless;HRB 95 min',
      ]),
    );
    expect(problems).toEqual([]);
    expect(fasteners[0]).toMatchObject({
      kind: 'clinch nut',
      thread: '8-32',
      hardnessMin: { scale: 'HRC', value: 28 },
    });
    expect(fasteners[0]?.sheetMinMm).toBeCloseTo(0.04 * 25.4, 9);
    expect(fasteners[0]?.holeMm).toBeCloseTo(0.213 * 25.4, 9);
    expect(fasteners[0]?.edgeMm).toBeCloseTo(0.27 * 25.4, 9);
    expect(fasteners[1]).toMatchObject({ kind: 'clinch stud', hardnessMin: { scale: 'HRB', value: 95 } });
    expect(fasteners.every(({ material }) => material.candidates.length > 0)).toBe(true);
  });

  it('gives the same as its metric twin', () => {
    const inch = only(['P/N;Min sheet (in);Hole (in);Edge (in)', 'A-1;0.0393700787;0.220472441;0.275590551']);
    const metric = only(['Part #;Min sheet (mm);Hole (mm);Edge (mm)', 'A-1;1.0;5.6;7']);
    for (const field of ['sheetMinMm', 'holeMm', 'edgeMm'] as const)
      expect(inch[field]).toBeCloseTo(metric[field] as number, 6);
  });

  it.each([
    ['Sheet thk min (mm)', 'sheetMinMm'],
    ['Minimum Sheet Thickness', 'sheetMinMm'],
    ['Max sheet thk (mm)', 'sheetMaxMm'],
    ['Shank length (mm)', 'shankMm'],
    ['Mounting hole Ø (mm)', 'holeMm'],
    ['Hole +', 'holePlusMm'],
    ['Hole tol (-) (mm)', 'holeMinusMm'],
    ['Edge dist. (mm)', 'edgeMm'],
    ['Hole spacing (mm)', 'spacingMm'],
    ['Flange dia (mm)', 'flangeMm'],
    ['Height (mm)', 'heightMm'],
    ['Length (mm)', 'lengthMm'],
    ['Randabstand (mm)', 'edgeMm'],
  ] as const)('%s is %s', (heading, field) =>
    expect(
      only(
        [`P/N;Thread;Hole dia (mm);${heading}`, 'A-1;M4;5.6;2.0'].map((line) =>
          field === 'holeMm' ? line.replace(';Hole dia (mm)', '').replace(';5.6', '') : line,
        ),
      )[field],
    ).toBe(2),
  );

  it.each([
    ['Max sheet hardness', 'HRB 70-80', 'sheetHardnessMax', { scale: 'HRB', value: 80 }],
    ['Hardness (HRC)', '38', 'hardnessMin', { scale: 'HRC', value: 38 }],
    ['Hardness (HRC)', '38-45', 'hardnessMin', { scale: 'HRC', value: 38 }],
    ['Force (lbf)', '2,000', 'forceSteelKn', 8.89644323],
    ['Installation force (kN)', '12,5', 'forceSteelKn', 12.5],
    ['Force, aluminum (kN)', '8', 'forceAluminiumKn', 8],
    ['Press force in steel (N)', '12000', 'forceSteelKn', 12],
    ['Push-out (lbf)', '100', 'pushOutSteelN', 444.822162],
    ['Push-out aluminium (N)', '600', 'pushOutAluminiumN', 600],
    ['Torque-out (Nm)', '2,5', 'torqueOutSteelNm', 2.5],
    ['Torque-out (in-lb)', '10', 'torqueOutSteelNm', 1.12984829],
    ['Torque-out steel', '1 ft-lb', 'torqueOutSteelNm', 1.35581795],
    ['Stock', '1,500', 'stocked', { yes: true, quantity: 1500 }],
    ['Stocked', 'no', 'stocked', { yes: false, quantity: null }],
    ['In stock', '0', 'stocked', { yes: false, quantity: 0 }],
    ['Pack qty', '1000', 'packSize', 1000],
    ['Min order qty', '5,000', 'moq', 5000],
    ['Unit price', '$0.08', 'unitPrice', 0.08],
    ['Price', '€0,12', 'currency', 'EUR'],
    ['Lead time (weeks)', '3', 'leadDays', 21],
    ['Lead time', '2-3 weeks', 'leadDays', 21],
    ['Replaced by', 'B-2', 'supersededBy', 'B-2'],
    ['Flush', 'Yes', 'flush', true],
    ['Plating', 'zinc', 'finish', 'zinc'],
    ['Vendor', 'Alder Reach', 'supplier', 'Alder Reach'],
  ] as const)('%s: %s', (heading, cell, field, value) =>
    expect(only([`P/N;${heading}`, `A-1;${cell}`])[field]).toEqual(value),
  );

  it.each([
    ['self-clinching nut', 'clinch nut'],
    ['Nut, clinch', 'clinch nut'],
    ['Nut', 'clinch nut'],
    ['stud', 'clinch stud'],
    ['Press-in stud', 'clinch stud'],
    ['standoff thru', 'through standoff'],
    ['Through-hole standoff', 'through standoff'],
    ['blind standoff', 'blind standoff'],
    ['Standoff, closed end', 'blind standoff'],
    ['captive panel screw', 'captive screw'],
    ['Panel screw', 'captive screw'],
    ['pin', 'clinch pin'],
    ['floating nut', 'floating nut'],
    ['Nut, floating', 'floating nut'],
    ['Einpressmutter', 'clinch nut'],
    ['clinch pin', 'clinch pin'],
    ['weld nut', null],
    ['hex nut', null],
    ['standoff', null],
    ['gasket', null],
  ] as const)('kind %s is %s', (text, kind) => expect(only(['P/N;Kind', `A-1;${text}`]).kind).toBe(kind));

  it('reads a decimal comma, a tolerance in the hole cell and units in the cell', () => {
    const fastener = only(['P/N;Hole dia (mm);Min sheet;Edge (in)', 'A-1;5,6 +0,08/-0;1,0 mm;7 mm']);
    expect(fastener).toMatchObject({ holeMm: 5.6, holePlusMm: 0.08, holeMinusMm: 0, sheetMinMm: 1, edgeMm: 7 });
  });

  it('takes the unit from the numbers where the heading gives none', () => {
    const fastener = only(['P/N;Thd;Min sheet;Hole', 'A-1;8-32;.040;.213']);
    expect(fastener.sheetMinMm).toBeCloseTo(1.016, 9);
    expect(fastener.holeMm).toBeCloseTo(5.4102, 9);
  });

  it('finds headings below a title and the units below the headings', () => {
    const fastener = only(['Price list spring;;', ';;', 'Part No.;Hole;Min sheet', ';mm;mm', 'A-1;5.6;1']);
    expect(fastener).toMatchObject({ holeMm: 5.6, sheetMinMm: 1, origin: { row: 5 } });
  });

  it('takes the kind from a description where there is no better column', () => {
    expect(only(['P/N;Description', 'A-1;Clinch nut M4 steel']).kind).toBe('clinch nut');
    expect(problemsOf(['P/N;Description', 'A-1;Best seller'])).toEqual([]);
  });

  it('obeys a mapping by hand', () => {
    const fastener = only(['Alpha;Beta;Gamma', 'A-1;5.6;1.0'], { 0: 'partNumber', 1: 'holeMm', 2: 'sheetMinMm' });
    expect(fastener.partNumber).toBe('A-1');
    expect(fastener.holeMm).toBe(5.6);
  });

  it('skips titles of groups and repeated headings', () => {
    const { fasteners, problems } = importCatalogue(fileOf(['P/N;Thread', 'Nuts;', 'A-1;M4', 'P/N;Thread', 'A-2;M5']));
    expect(fasteners.map(({ partNumber }) => partNumber)).toEqual(['A-1', 'A-2']);
    expect(problems).toEqual([]);
  });
});

describe('what is wrong with a catalogue', () => {
  it.each([
    ['Hole (mm)', '-5.6', 'negative'],
    ['Min sheet (mm)', '-1', 'negative'],
    ['Edge (mm)', '−7', 'negative'],
    ['Force (kN)', '-3', 'negative'],
    ['Pack size', '-100', 'negative'],
    ['Unit price', '-0.10', 'negative'],
    ['Lead days', '-3', 'negative'],
    ['Min sheet (mm)', 'ask', 'cannot be read'],
    ['Min sheet (in)', '1.5', 'not possible'],
    ['Hole (mm)', 'see drawing', 'cannot be read'],
    ['Thread', 'coarse', 'no thread'],
    ['Kind', 'widget', 'no kind'],
    ['Kind', 'standoff', 'through or blind'],
    ['Hardness', '38', 'scale'],
    ['Max sheet hardness', 'HRB 80 min', 'upper limit'],
    ['Stocked', 'perhaps', 'neither yes'],
    ['Pack size', 'about 100', 'whole number'],
    ['Installation force', '12', 'no unit'],
    ['Torque-out', '12', 'no unit'],
    ['Unit price', 'on request', 'price'],
    ['Lead time', 'soon', 'days'],
  ])('%s “%s” is reported as %s, and the row loads', (heading, cell, words) => {
    const { fasteners, problems } = importCatalogue(fileOf([`P/N;${heading};Note`, `A-1;${cell};x`, 'A-2;;x']));
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ row: 2, column: heading });
    expect(problems[0]?.text).toContain(words);
    expect(problems[0]?.text).toContain(cell);
    expect(fasteners.map(({ partNumber }) => partNumber)).toEqual(['A-1', 'A-2']);
  });

  it('asks for the unit of a length that could be either', () => {
    const [problem] = problemsOf(['P/N;Min sheet', 'A-1;0.8']);
    expect(problem?.text).toContain('millimetres or inches');
  });

  it('a hole no larger than the thread of a nut', () => {
    const { fasteners, problems } = importCatalogue(
      fileOf(['P/N;Kind;Thread;Hole (mm)', 'A-1;clinch nut;M5;4.1', 'A-2;clinch stud;M5;5.0']),
    );
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ row: 2, column: 'Hole (mm)' });
    expect(problems[0]?.text).toContain('M5');
    expect(fasteners.map(({ holeMm }) => holeMm)).toEqual([null, 5]);
  });

  it('a minimum above its maximum', () => {
    const { fasteners, problems } = importCatalogue(fileOf(['P/N;sheetMinMm;sheetMaxMm', 'A-1;2;1.5']));
    expect(problems[0]).toMatchObject({ row: 2, column: 'sheetMinMm' });
    expect(fasteners[0]).toMatchObject({ sheetMinMm: null, sheetMaxMm: null });
  });

  it('a part number twice: the first counts, both rows are named', () => {
    const { fasteners, problems } = importCatalogue(fileOf(['P/N;Thread', 'A-1;M4', 'B-1;M4', 'a–1;M5']));
    expect(fasteners.map(({ thread }) => thread)).toEqual(['M4', 'M4']);
    expect(problems).toHaveLength(1);
    expect(problems[0]).toMatchObject({ row: 4, column: 'P/N' });
    expect(problems[0]?.text).toMatch(/rows 2 and 4/);
  });

  it('a missing part number', () => {
    const { fasteners, problems } = importCatalogue(fileOf(['P/N;Thread;Note', ';M4;x', 'A-2;M5;x']));
    expect(fasteners).toHaveLength(1);
    expect(problems[0]).toMatchObject({ row: 2, column: 'P/N' });
  });

  it('no column of part numbers', () => {
    expect(() => importCatalogue(fileOf(['Colour;Weight', 'red;3']))).toThrow(Unreadable);
    expect(() => importCatalogue({ file: 'x.xlsx', format: 'xlsx', tables: [], notices: [] })).toThrow(/x\.xlsx/);
  });
});

describe('invented data', () => {
  const rows = ['P/N;Note', 'A-1;demo: not for production', 'A-2;Demo'];

  it('says so in every note', () => expect(importCatalogue(fileOf(rows)).demo).toBe(true));
  it('or in its name', () => {
    expect(importCatalogue(fileOf(['P/N', 'A-1'], 'demo_catalogue.csv')).demo).toBe(true);
    expect(importCatalogue(fileOf(['P/N', 'A-1']), { name: 'Demo catalogue' }).demo).toBe(true);
  });
  it('is not suspected elsewhere', () => {
    expect(importCatalogue(fileOf([...rows, 'A-3;'])).demo).toBe(false);
    expect(importCatalogue(fileOf(['P/N', 'A-1'], 'democracy.csv')).demo).toBe(false);
  });
});
