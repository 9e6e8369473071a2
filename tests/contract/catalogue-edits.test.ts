import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { addPart, type EditOutcome, editPart, removePart, revertPart } from '../../src/core/catalogue/edit-part.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { FIELDS, showPart } from '../../src/core/catalogue/show-part.ts';
import { withEdits } from '../../src/core/catalogue/with-edits.ts';
import type { Catalogue, Fastener } from '../../src/core/model/fastener.ts';
import type { PartEdit } from '../../src/core/model/part-edit.ts';
import { readFile } from '../../src/io/read-file.ts';
import { writeCatalogueCsv } from '../../src/io/write/catalogue-csv.ts';

const read = (text: string | Uint8Array, name: string) =>
  importCatalogue(readFile(typeof text === 'string' ? new TextEncoder().encode(text) : text, name));
const demo = read(
  readFileSync(resolve(import.meta.dirname, '../../sample-data/demo-catalogue.csv')),
  'demo-catalogue.csv',
);
const own = read(
  'partNumber,kind,thread,material,sheetMinMm,holeMm,holePlusMm,edgeMm,pushOutSteelN,stocked,note\n' +
    'OWN-1,clinch nut,M4,carbon-steel-hardened,1,5.6,0.08,9,600,yes,\nOWN-2,clinch stud,M5,brass,1.2,5,,8,,no,"=1+1; a note"\n',
  'own.csv',
);

/** What a part says, without the row that it came from. */
const saying = ({ fasteners }: Pick<Catalogue, 'fasteners'>) => fasteners.map(({ origin: _, ...part }) => part);
const again = (catalogue: Catalogue, name = 'saved.csv') => read(writeCatalogueCsv(catalogue), name);
const partOf = ({ fasteners }: Catalogue, partNumber: string) =>
  fasteners.find((part) => part.partNumber === partNumber) as Fastener;

function editsOf(outcome: EditOutcome): readonly PartEdit[] {
  if ('faults' in outcome) throw new Error(outcome.faults.map(({ text }) => text).join(' '));
  return outcome.edits;
}
const faultsOf = (outcome: EditOutcome) => ('faults' in outcome ? outcome.faults.map(({ text }) => text) : []);

describe('a catalogue as CSV', () => {
  it('reads back as the same parts', () => {
    expect(saying(again(demo))).toEqual(saying(demo));
    expect(saying(again(own))).toEqual(saying(own));
    expect(again(demo).problems).toEqual([]);
  });

  it('keeps odd values: inches, forces in pounds, tensile strength, formulas as text', () => {
    const odd = read(
      'Part No,Type,Thread,Length (in),Material,Hardness,Min sheet (in),Hole (in),Push-out (lbf),Torque-out (in-lb),Price,Note\n' +
        '@A-1,clinch nut,8-32,.312,brass,310 MPa tensile,.030,.213 +.003/-.001,120,13.5,$0.125,"x; =cmd"\n' +
        'A-2,clinch stud,1/4-20,.5,7075 aluminum,150 HB,.040,1/4,75.333,9,€1,-\n',
      'odd.csv',
    );
    expect(odd.problems).toEqual([]);
    expect(odd.fasteners[0]).toMatchObject({
      partNumber: '@A-1',
      hardnessMin: { scale: 'MPa', value: 310 },
      note: 'x; =cmd',
    });
    expect(saying(again(odd))).toEqual(saying(odd));
  });

  it('does not take newtons with three decimals for thousands', () => {
    const part = { ...partOf(own, 'OWN-1'), pushOutSteelN: 533.125 };
    expect(again({ ...own, fasteners: [part] }).fasteners[0]?.pushOutSteelN).toBe(533.125);
  });

  it('gives every field a cell', () => {
    const full = demo.fasteners.flatMap((part) => Object.keys(showPart(part)));
    const silent = FIELDS.filter((field) => !full.includes(field));
    expect(silent.filter((field) => demo.fasteners.some((part) => part[field] !== null))).toEqual([]);
  });
});

describe('an edit of a part', () => {
  it('sets what was typed, and says what the file has', () => {
    const edits = editsOf(editPart(own, partOf(own, 'OWN-1'), { sheetMinMm: '0.8', stocked: 'no' }, 'mm'));
    const edited = withEdits(own, edits);
    expect(partOf(edited, 'OWN-1')).toMatchObject({
      sheetMinMm: 0.8,
      stocked: { yes: false, quantity: null },
      holeMm: 5.6,
      origin: { catalogue: 'own (edited)', row: 2, edited: { sheetMinMm: '1', stocked: 'yes' } },
    });
    expect(partOf(edited, 'OWN-2')).toEqual(partOf(own, 'OWN-2'));
    expect(edited.name).toBe('own (1 part edited)');
  });

  it('takes bare lengths in the unit of the screen, and units as they are written', () => {
    const inInches = withEdits(own, editsOf(editPart(own, partOf(own, 'OWN-1'), { sheetMinMm: '.040' }, 'in')));
    expect(partOf(inInches, 'OWN-1')).toMatchObject({ sheetMinMm: 1.016, holeMm: 5.6, edgeMm: 9 });
    const written = withEdits(own, editsOf(editPart(own, partOf(own, 'OWN-1'), { edgeMm: '0.35 in' }, 'mm')));
    expect(partOf(written, 'OWN-1').edgeMm).toBe(8.89);
  });

  it('takes the tolerance that is typed with a hole', () => {
    const edited = withEdits(own, editsOf(editPart(own, partOf(own, 'OWN-1'), { holeMm: '5.5 +0.1/-0.02' }, 'mm')));
    expect(partOf(edited, 'OWN-1')).toMatchObject({ holeMm: 5.5, holePlusMm: 0.1, holeMinusMm: 0.02 });
  });

  it.each([
    [{ holeMm: '3' }, /not larger than the M4 thread/],
    [{ sheetMinMm: '2', sheetMaxMm: '1' }, /above the maximum/],
    [{ sheetMinMm: '60' }, /not possible/],
    [{ edgeMm: '-4' }, /negative/],
    [{ edgeMm: 'far' }, /cannot be read/],
    [{ thread: 'M99' }, /no thread/],
    [{ stocked: 'maybe' }, /neither yes, no/],
    [{ hardnessMin: '38' }, /no least hardness/],
  ])('is refused with a sentence: %o', (typed, why) => {
    const faults = faultsOf(editPart(own, partOf(own, 'OWN-1'), typed, 'mm'));
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(why);
    expect(faults[0]).not.toMatch(/left out/);
  });

  it('is none where it says what the file says, also after another edit', () => {
    expect(editsOf(editPart(own, partOf(own, 'OWN-1'), { sheetMinMm: '1.00' }, 'mm'))).toEqual([]);
    const edited = withEdits(
      own,
      editsOf(editPart(own, partOf(own, 'OWN-1'), { sheetMinMm: '0.8', edgeMm: '7' }, 'mm')),
    );
    const half = withEdits(own, editsOf(editPart(edited, partOf(edited, 'OWN-1'), { sheetMinMm: '1' }, 'mm')));
    expect(partOf(half, 'OWN-1').origin.edited).toEqual({ edgeMm: '9' });
    expect(
      editsOf(editPart({ ...own, edits: half.edits ?? [] }, partOf(half, 'OWN-1'), { edgeMm: '9' }, 'mm')),
    ).toEqual([]);
  });

  it('makes a cell blank', () => {
    const edited = withEdits(own, editsOf(editPart(own, partOf(own, 'OWN-1'), { edgeMm: '' }, 'mm')));
    expect(partOf(edited, 'OWN-1').edgeMm).toBeNull();
    expect(saying(again(edited))).toEqual(saying(edited));
  });
});

describe('adding and taking out', () => {
  const added = withEdits(
    own,
    editsOf(addPart(own, { partNumber: 'NEW-1', kind: 'clinch pin', holeMm: '.125' }, 'in')),
  );

  it('adds a part behind the others', () => {
    expect(added.fasteners.at(-1)).toMatchObject({ partNumber: 'NEW-1', holeMm: 3.175, origin: { row: 0 } });
    expect(saying(again(added))).toEqual(saying(added));
  });

  it('edits and takes out an added part as if it had been added so', () => {
    const edits = editsOf(editPart(added, partOf(added, 'NEW-1'), { edgeMm: '5' }, 'mm'));
    expect(partOf(withEdits(own, edits), 'NEW-1')).toMatchObject({ edgeMm: 5, holeMm: 3.175, origin: { row: 0 } });
    expect(removePart(added, partOf(added, 'NEW-1'))).toEqual([]);
  });

  it('refuses a part without a number, one that is there, and a number alone', () => {
    expect(faultsOf(addPart(own, { kind: 'clinch nut' }, 'mm'))).toEqual(['A part needs a part number.']);
    expect(faultsOf(addPart(own, { partNumber: 'own-1', kind: 'clinch nut' }, 'mm'))[0]).toMatch(
      /in this catalogue already/,
    );
    expect(faultsOf(addPart(own, { partNumber: 'NEW' }, 'mm'))[0]).toMatch(/more than its number/);
  });

  it('takes a part out and puts it back', () => {
    const without = withEdits(own, removePart(own, partOf(own, 'OWN-1')));
    expect(without.fasteners.map(({ partNumber }) => partNumber)).toEqual(['OWN-2']);
    expect(faultsOf(addPart(without, { partNumber: 'OWN-1', kind: 'clinch nut' }, 'mm'))[0]).toMatch(/put it back/);
    expect(withEdits(own, revertPart(without, 'OWN-1'))).toEqual(own);
  });
});

describe('the demo catalogue, edited', () => {
  it('stays invented, in the app and as a file under any name', () => {
    const [first] = demo.fasteners as readonly [Fastener];
    const changed = withEdits(demo, editsOf(editPart(demo, first, { note: 'mine', sheetMinMm: '0.7' }, 'mm')));
    const edited = withEdits(demo, editsOf(addPart(changed, { partNumber: 'MINE-1', kind: 'clinch nut' }, 'mm')));
    expect(edited.demo).toBe(true);
    expect(edited.fasteners[0]?.note).toBe('demo: not for production; mine');
    expect(edited.fasteners.at(-1)?.note).toBe('demo: not for production');
    expect(again(edited, 'ours.csv').demo).toBe(true);
    expect(saying(again(edited, 'ours.csv'))).toEqual(saying(edited));
  });
});
