import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fastener } from '../../src/core/model/fastener.ts';
import { drawSection } from '../../src/core/picture/section/section.ts';
import { demoRows, extentOf, rowFor, shapesLike } from './picture-cases.ts';
import { rows } from './picture-rows.ts';

const DEMO = demoRows();

describe('a section', () => {
  it.each(DEMO.map((row) => [row.line.row, row] as const))('of demo row %i has the sizes of the row', (_, row) => {
    const drawing = drawSection(row);
    const { sheet, line } = row.line;
    const left = extentOf(drawing, 'sheet-left');
    const right = extentOf(drawing, 'sheet-right');
    expect(left.top).toBe(0);
    expect(left.bottom).toBeCloseTo(sheet?.thicknessMm ?? row.part?.sheetMinMm ?? Number.NaN, 9);
    expect(right.left - left.right).toBeCloseTo(line.hole.mm ?? row.part?.holeMm ?? Number.NaN, 9);
  });

  it('has sheet, hole and shank as long as their numbers, whatever the part', () => {
    fc.assert(
      fc.property(rows, (row) => {
        const drawing = drawSection(row);
        const { sheet, line } = row.line;
        const { shankMm = null, holeMm = null } = row.part ?? {};
        const metal = shapesLike(drawing, 'metal');
        expect(metal.length > 0).toBe((sheet?.thicknessMm ?? null) !== null);
        for (const { name } of metal) expect(extentOf(drawing, name).bottom).toBeCloseTo(sheet?.thicknessMm ?? 0, 9);
        const given = line.hole.how === 'size' ? line.hole.mm : null;
        if (metal.length === 2)
          expect(extentOf(drawing, 'sheet-right').left - extentOf(drawing, 'sheet-left').right).toBeCloseTo(
            given ?? holeMm ?? Number.NaN,
            9,
          );
        const shank = (drawing?.shapes ?? []).filter(({ name, look }) => /^shank/.test(name) && look === 'part');
        for (const { name } of shank) {
          const { top, bottom } = extentOf(drawing, name);
          expect(bottom - top).toBeCloseTo(shankMm ?? Number.NaN, 9);
        }
      }),
      { numRuns: 300 },
    );
  });

  it.each([
    ['shankMm', /^shank/, 'shank length'],
    ['flangeMm', /^body/, 'flange'],
    ['heightMm', /^body/, 'height'],
  ])('draws nothing solid without %s and names it', (field, shape, name) => {
    const drawing = drawSection(rowFor({ cells: {}, part: { [field]: null } }));
    const drawn = drawing?.shapes.filter((one) => shape.test(one.name)) ?? [];
    expect(drawn.map(({ look }) => look)).toEqual(['unknown']);
    expect(drawing?.notKnown).toContain(name);
    expect(drawing?.summary).toContain(name);
    const known = drawSection(rowFor({ cells: {} }));
    expect(known?.shapes.filter((one) => shape.test(one.name)).map(({ look }) => look)).toEqual(['part', 'part']);
    expect(known?.notKnown).toEqual([]);
  });

  it('never draws a solid sheet of unknown thickness, and shows what the part needs', () => {
    const drawing = drawSection(rowFor({ cells: { thickness: '' } }));
    expect(shapesLike(drawing, 'metal')).toEqual([]);
    expect(extentOf(drawing, 'sheet-left')).toMatchObject({ top: 0, bottom: 1 });
    expect(drawing?.notKnown).toContain('sheet thickness');
    expect(drawing?.dimensions.find(({ name }) => name === 'thickness')).toMatchObject({
      asked: true,
      lines: ['sheet not given', 'needs 1.00'],
    });
  });

  it('marks a sheet too thin by what is missing', () => {
    const row = rowFor({ cells: { thickness: '0.8' } });
    const drawing = drawSection(row);
    expect(extentOf(drawing, 'shortfall-left')).toMatchObject({ top: 0.8, bottom: 1 });
    const off = drawing?.dimensions.find(({ name }) => name === 'thickness-off');
    expect(off).toMatchObject({ fromMm: 0.8, toMm: 1, lines: ['0.20 too thin'], outcome: 'fails' });
    expect(drawing?.summary).toContain('The row fails');
    expect(shapesLike(drawSection(rowFor({ cells: { thickness: '1.5' } })), 'wrong')).toEqual([]);
  });

  it('marks a sheet that is too thick, and one that may lack some', () => {
    const thick = drawSection(rowFor({ cells: { thickness: '6' }, part: { sheetMaxMm: 4 } }));
    expect(extentOf(thick, 'excess-right')).toMatchObject({ top: 4, bottom: 6 });
    const row = rowFor({ cells: { thickness: '1' }, shop: { judgeThicknessAt: 'thinnest' } });
    const lacks = extentOf(drawSection(row), 'shortfall-right');
    expect(lacks.top).toBeCloseTo(row.line.sheet?.thinnestMm ?? Number.NaN, 9);
    expect(lacks.bottom).toBe(1);
    expect(drawSection(row)?.shapes.find(({ name }) => name === 'shortfall-right')?.outcome).toBe('marginal');
  });

  it('marks a shank where it stands proud', () => {
    const drawing = drawSection(rowFor({ cells: { thickness: '1.5' }, part: { shankMm: 1.7 } }));
    const proud = extentOf(drawing, 'proud');
    expect(proud.top).toBeCloseTo(1.5, 9);
    expect(proud.bottom).toBeCloseTo(1.7, 9);
    expect(proud.right - proud.left).toBeCloseTo(5.6, 9);
  });

  it.each([
    ['5.75', 'hole-over-right', 5.68 / 2, 5.75 / 2, 'fails'],
    ['5.5', 'hole-under-right', 5.5 / 2, 5.6 / 2, 'fails'],
    ['5.6 ±0.1', 'hole-over-right', 5.68 / 2, 5.7 / 2, 'marginal'],
    ['5.6 ±0.1', 'hole-under-left', -5.6 / 2, -5.5 / 2, 'marginal'],
  ])('marks what a hole %s has too much or too little: %s', (hole, name, from, to, outcome) => {
    const drawing = drawSection(rowFor({ cells: { hole } }));
    const wrong = extentOf(drawing, name);
    expect(wrong.left).toBeCloseTo(from, 9);
    expect(wrong.right).toBeCloseTo(to, 9);
    expect(drawing?.shapes.find((shape) => shape.name === name)?.outcome).toBe(outcome);
    expect(extentOf(drawing, 'band-high-right').right).toBeCloseTo(5.68 / 2, 9);
  });

  it('shows the coating on the wall by the hole that it leaves', () => {
    const finish = 'sheet: powder coat 80 um, press after coating';
    const drawing = drawSection(rowFor({ cells: { finish } }));
    const coating = extentOf(drawing, 'coating-right');
    expect(coating.left).toBeCloseTo((5.6 - 0.16) / 2, 9);
    expect(coating.right).toBeCloseTo(5.6 / 2, 9);
    expect(drawing?.shapes.find(({ name }) => name === 'coating-right')).toMatchObject({ outcome: 'fails' });
  });

  it('ends at an edge that is too close, and shows what is missing beyond it', () => {
    const drawing = drawSection(rowFor({ cells: { edge: '6' } }));
    expect(extentOf(drawing, 'sheet-right').right).toBe(6);
    expect(extentOf(drawing, 'edge-missing')).toMatchObject({ left: 6, right: 9 });
  });
});

/** Parts of every kind, with their sizes in mm. */
const KINDS: Readonly<Record<string, Partial<Fastener>>> = {
  stud: { kind: 'clinch stud', thread: 'M4', lengthMm: 12, shankMm: null, holeMm: 4.15, flangeMm: 7.6, heightMm: 0.9 },
  pin: { kind: 'clinch pin', thread: null, lengthMm: 8, shankMm: 0.9, holeMm: 3.1, flangeMm: null, heightMm: null },
  through: { kind: 'through standoff', thread: 'M3', lengthMm: 6, shankMm: 0.72, holeMm: 4.35, flangeMm: 5.7 },
  blind: { kind: 'blind standoff', thread: 'M3', lengthMm: 10, shankMm: 0.9, holeMm: 4.35, flangeMm: 5.7 },
  captive: { kind: 'captive screw', thread: 'M3', lengthMm: 16, shankMm: 0.9, flush: false, flangeMm: 6, heightMm: 4 },
  floating: { kind: 'floating nut', thread: 'M4', shankMm: 0.9, holeMm: 7, flangeMm: 11, heightMm: 5 },
};
const drawKind = (kind: string, part: Partial<Fastener> = {}, thickness = '1.5') =>
  drawSection(rowFor({ cells: { thickness, hole: '' }, part: { ...KINDS[kind], ...part } }));
/** Left, right, upper and lower end of a shape. */
const boxOf = (drawing: ReturnType<typeof drawSection>, name: string) => {
  const { left, right, top, bottom } = extentOf(drawing, name);
  return [left, right, top, bottom].map((mm) => Number(mm.toFixed(6)));
};
const lookOf = (drawing: ReturnType<typeof drawSection>, name: string) =>
  drawing?.shapes.find((shape) => shape.name === name)?.look;

describe('a section of each kind, in mm from seat and axis', () => {
  it('shows a stud as one body: rod up from the outer face, head in the sheet', () => {
    const drawing = drawKind('stud');
    expect(boxOf(drawing, 'rod')).toEqual([-2, 2, 1.5 - 12, 0.6]);
    expect(boxOf(drawing, 'head')).toEqual([-3.8, 3.8, 0.6, 1.5]);
    expect(boxOf(drawing, 'rim')).toEqual([-3.8, 3.8, -10.5, 1.5]);
    expect(drawing?.notKnown).toEqual(['hole on the list']);
    expect(drawing?.dimensions.find(({ name }) => name === 'length')).toMatchObject({ fromMm: -10.5, toMm: 1.5 });
  });

  it('shows a head that is not flush under the sheet, and one of which nobody says so dashed', () => {
    expect(boxOf(drawKind('stud', { flush: false }), 'head')).toEqual([-3.8, 3.8, 1.5, 2.4]);
    const unsaid = drawKind('stud', { flush: null });
    expect(lookOf(unsaid, 'head')).toBe('unknown');
    expect(unsaid?.notKnown).toContain('whether the head is flush');
  });

  it('shows the shank of a pin from the outer face, and its rod dashed: no catalogue gives the diameter', () => {
    const drawing = drawKind('pin');
    expect(boxOf(drawing, 'shank')).toEqual([-1.55, 1.55, 0.6, 1.5]);
    expect(lookOf(drawing, 'shank')).toBe('part');
    expect(boxOf(drawing, 'rod')).toEqual([-1.55, 1.55, -6.5, 1.5]);
    expect(lookOf(drawing, 'rod')).toBe('unknown');
    expect(drawing?.notKnown).toContain('diameter of the pin');
  });

  it('shows a through standoff open from end to end, a blind one closed, its depth dashed', () => {
    const through = drawKind('through');
    const bore = 3 / 2 - (1.082532 * 0.5) / 2;
    expect(boxOf(through, 'body-right')).toEqual([Number(bore.toFixed(6)), 2.85, -6, 0]);
    expect(boxOf(through, 'shank-right')).toEqual([Number(bore.toFixed(6)), 2.175, 0, 0.72]);
    const blind = drawKind('blind');
    expect(boxOf(blind, 'body')).toEqual([-2.85, 2.85, -10, 0]);
    expect(lookOf(blind, 'bore')).toBe('unknown');
    expect(blind?.notKnown).toContain('depth of the thread');
  });

  it('shows the holder of a captive screw and the screw dashed, as long as it is', () => {
    const drawing = drawKind('captive');
    expect(boxOf(drawing, 'body-right')).toEqual([1.5, 3, -4, 0]);
    expect(boxOf(drawing, 'screw')).toEqual([-1.5, 1.5, -4, 12]);
    expect(lookOf(drawing, 'screw')).toBe('unknown');
    expect(drawing?.dimensions.find(({ name }) => name === 'length')).toMatchObject({ fromMm: -4, toMm: 12 });
  });

  it('shows a floating nut inside its holder', () => {
    const drawing = drawKind('floating');
    expect(boxOf(drawing, 'body')).toEqual([-5.5, 5.5, -5, 0]);
    expect(lookOf(drawing, 'nut-inside')).toBe('unknown');
    expect(drawing?.notKnown).toContain('float of the nut');
  });

  it.each(Object.keys(KINDS))('marks too thin a sheet, whatever the part: %s', (kind) => {
    const drawing = drawKind(kind, { sheetMinMm: 1.2 }, '1');
    expect(boxOf(drawing, 'shortfall-left').slice(2)).toEqual([1, 1.2]);
    expect(boxOf(drawing, 'needed-left').slice(2)).toEqual([1.2, 1.2]);
  });

  it.each(['pin', 'through', 'blind', 'floating'])('marks a shank that stands proud, whatever the part: %s', (kind) => {
    const proud = boxOf(drawKind(kind, { shankMm: 1.3 }, '1'), 'proud').slice(2);
    expect(proud).toEqual(kind === 'pin' ? [-0.3, 0] : [1, 1.3]);
  });
});

describe('a section in words', () => {
  it('says in the unit of the settings what it draws in mm', () => {
    const cells = { thickness: '0.8', hole: '6.2', edge: '6' };
    const [metric, inch] = (['mm', 'in'] as const).map((units) => drawSection(rowFor({ cells, shop: { units } })));
    expect(inch?.shapes).toEqual(metric?.shapes);
    expect(metric?.title).toBe('Section, true scale (mm)');
    expect(inch?.title).toBe('Section, true scale (in)');
    const texts = inch?.dimensions.flatMap(({ lines }) => lines) ?? [];
    for (const text of ['sheet 0.0315', 'needs 0.0394', '0.0079 too thin', 'hole 0.2441, needs 0.2205 to 0.2236'])
      expect(texts).toContain(text);
    expect(inch?.summary).toContain('in inches: sheet 0.0315');
  });

  it('tells that groove and knurl are left out, and how wide the shank is drawn', () => {
    const notes = drawSection(rowFor({ cells: {} }))?.notes;
    expect(notes).toContain(
      'Groove and knurl are left out; the shank is drawn as wide as the hole that the part asks for.',
    );
    expect(drawSection(rowFor({ cells: {}, part: null }))?.notes).toEqual([]);
  });
});
