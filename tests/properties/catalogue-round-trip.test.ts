import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { editPart } from '../../src/core/catalogue/edit-part.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { withEdits } from '../../src/core/catalogue/with-edits.ts';
import type { Catalogue, Fastener } from '../../src/core/model/fastener.ts';
import type { PartCells } from '../../src/core/model/part-edit.ts';
import { readFile } from '../../src/io/read-file.ts';
import { writeCatalogueCsv } from '../../src/io/write/catalogue-csv.ts';

const read = (text: string): Catalogue => importCatalogue(readFile(new TextEncoder().encode(text), 'own.csv'));
const saying = ({ fasteners }: Catalogue) => fasteners.map(({ origin: _, ...part }) => part);

const size = fc.integer({ min: 1, max: 40_000 }).map((thousandths) => String(thousandths / 1000));
const text = fc.constantFrom(
  '',
  'zinc',
  '=1+1',
  "+SUM(A1); '-x",
  '-0.5',
  'a "quoted", text',
  'two\nlines; @x',
  'ß ü 压铆',
  '\t=tab',
  "'plain",
);
const oneOf = (...texts: readonly string[]) => fc.constantFrom('', ...texts);

/** Cells as a supplier or a user may write them. */
const cells: fc.Arbitrary<PartCells> = fc.record(
  {
    kind: oneOf('clinch nut', 'Stud, self clinching', 'blind standoff', 'pin'),
    thread: oneOf('M4', 'M8x1', '8-32 UNC', '#10-32', '1/4-20'),
    lengthMm: size,
    material: oneOf('carbon steel, hardened', 'stainless', '416 hardened', '7075', 'brass', 'unobtainium'),
    hardnessMin: oneOf(
      'HRC 38',
      'HRB 95.25',
      '310 MPa tensile',
      '45 ksi',
      '150 HB',
      '95 HB (500 kgf)',
      'HV 300',
      'HR30T 77',
    ),
    sheetHardnessMax: oneOf('HRB 80 max', 'HB 110', 'HV 150'),
    finish: text,
    sheetMinMm: fc.integer({ min: 20, max: 900 }).map((hundredths) => String(hundredths / 100)),
    shankMm: size,
    flush: oneOf('yes', 'no', 'x'),
    holeMm: oneOf('20.6', '25.35 +0.08/-0', '28.1 ±0.05'),
    holePlusMm: oneOf('0.08', '0.1'),
    edgeMm: size,
    forceSteelKn: oneOf('12', '9.5', '2500 lbf', '0.125'),
    pushOutSteelN: oneOf('900', '533.125', '120 lbf', '1,200'),
    torqueOutSteelNm: oneOf('2.5', '13 in-lb', '1.125'),
    stocked: oneOf('yes', 'no', '0', '3200', 'on request'),
    packSize: oneOf('100', '1,000'),
    unitPrice: oneOf('0.125', '€0.09', '$1.10'),
    currency: oneOf('EUR', 'USD'),
    leadDays: oneOf('10', '3-4 weeks', 'stock'),
    supplier: text,
    sourceDate: oneOf('2024-05-01', 'May 2024'),
    note: text,
  },
  { requiredKeys: [] },
);

const blank: Catalogue = read('partNumber,kind\nA-1,clinch nut\n');

describe('a catalogue', () => {
  it('that is saved and loaded again holds the same parts, whatever was typed into it', () => {
    fc.assert(
      fc.property(cells, fc.constantFrom('mm' as const, 'in' as const), (typed, units) => {
        const outcome = editPart(blank, blank.fasteners[0] as Fastener, typed, units);
        fc.pre('edits' in outcome);
        const edited = withEdits(blank, outcome.edits);
        expect(saying(read(writeCatalogueCsv(edited)))).toEqual(saying(edited));
        expect(edited.problems).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });

  it('is as the file has it where every edit is set back', () => {
    fc.assert(
      fc.property(cells, (typed) => {
        const outcome = editPart(blank, blank.fasteners[0] as Fastener, typed, 'mm');
        fc.pre('edits' in outcome && outcome.edits.length > 0);
        const edited = withEdits(blank, outcome.edits);
        const part = edited.fasteners[0] as Fastener;
        expect(editPart(edited, part, part.origin.edited ?? {}, 'mm')).toEqual({ edits: [] });
      }),
      { numRuns: 200 },
    );
  });
});
