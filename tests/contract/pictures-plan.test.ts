import { describe, expect, it } from 'vitest';
import { drawPlan } from '../../src/core/picture/plan/plan.ts';
import { extentOf, rowFor } from './picture-cases.ts';

describe('the hole from above', () => {
  it('has edge, bend and neighbour at their distances', () => {
    const drawing = drawPlan(rowFor({ cells: { edge: '8', bend: '10', spacing: '8.5' } }));
    expect(extentOf(drawing, 'edge').left).toBe(8);
    expect(extentOf(drawing, 'edge-needed').left).toBe(9);
    expect(extentOf(drawing, 'edge-missing')).toMatchObject({ left: 8, right: 9 });
    expect(extentOf(drawing, 'bend').top).toBe(10);
    expect(extentOf(drawing, 'neighbour').left).toBe(-8.5);
    expect(drawing?.shapes.find(({ name }) => name === 'hole')?.radiusMm).toBeCloseTo(2.8, 9);
  });

  it('is not drawn when the list gives none of them, and tells what is too far to draw', () => {
    expect(drawPlan(rowFor({ cells: { edge: '' } }))).toBeNull();
    const far = drawPlan(rowFor({ cells: { edge: '500', bend: '10' } }));
    expect(far?.shapes.some(({ name }) => name === 'edge')).toBe(false);
    expect(far?.notes).toContain('Sheet edge beyond the drawing: edge 500.00, needs 9.00.');
  });

  it('has its dimensions from the centre of the hole, where nothing covers them', () => {
    const drawing = drawPlan(rowFor({ cells: { edge: '8', bend: '10', spacing: '8.5' } }));
    const at = (name: string) => drawing?.dimensions.find((dimension) => dimension.name === name);
    expect(at('edge')).toMatchObject({ side: 'below', fromMm: 0, toMm: 8, startMm: 10, outcome: 'fails' });
    expect(at('edge-needed')).toMatchObject({ fromMm: 0, toMm: 9, asked: true });
    expect(at('bend')).toMatchObject({ side: 'right', fromMm: 0, toMm: 10, startMm: 8 });
    expect(at('neighbour')).toMatchObject({ side: 'below', fromMm: -8.5, toMm: 0 });
    expect(drawing?.notes).toContain('On which side of the hole each of them lies, the list does not say.');
  });

  it('marks what is missing to the bend and to the next hole', () => {
    const drawing = drawPlan(rowFor({ cells: { edge: '12', bend: '5', spacing: '7' } }));
    const needed = extentOf(drawing, 'bend-needed').top;
    expect(needed).toBeGreaterThan(5);
    expect(extentOf(drawing, 'bend-missing')).toMatchObject({ top: 5, bottom: needed });
    expect(extentOf(drawing, 'neighbour-missing')).toMatchObject({ left: -9, right: -7 });
    expect(drawing?.shapes.some(({ name }) => name === 'edge-missing')).toBe(false);
  });

  it('draws a hole that only the catalogue tells in blue, and one that nobody tells not at all', () => {
    const hole = (row: Parameters<typeof rowFor>[0]) => {
      const drawing = drawPlan(rowFor(row));
      return [drawing?.shapes.find(({ name }) => name === 'hole')?.look, drawing?.notKnown];
    };
    expect(hole({ cells: { hole: '' } })).toEqual(['asked', ['hole on the list']]);
    expect(hole({ cells: { hole: '' }, part: { holeMm: null } })).toEqual([undefined, ['hole']]);
    expect(hole({ cells: { hole: '5.6' }, part: { flangeMm: null } })).toEqual(['outline', ['flange']]);
  });
});
