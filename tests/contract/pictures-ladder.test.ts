import { describe, expect, it } from 'vitest';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { drawHardness } from '../../src/core/picture/ladder/ladder.ts';
import { demoRows, extentOf, rowFor, shapesLike } from './picture-cases.ts';

const DEMO = demoRows();

describe('a hardness scale', () => {
  const hrb = (value: number) => ({ hardnessMin: { scale: 'HRB', value } as const });

  it('is a point to a millimetre: the gap is as long as the points that are needed', () => {
    for (const row of DEMO) {
      const drawing = drawHardness(row);
      const gap = extentOf(drawing, 'gap');
      if (gap.left < gap.right) expect(gap.right - gap.left).toBeCloseTo(DEFAULT_SHOP.hardnessMarginHrb, 9);
    }
    const drawing = drawHardness(
      rowFor({ cells: { material: '304' }, part: hrb(95), shop: { hardnessMarginHrb: 15 } }),
    );
    expect(extentOf(drawing, 'gap')).toMatchObject({ left: 80, right: 95 });
  });

  it('shows the numbers of the finding', () => {
    let seen = 0;
    for (const row of DEMO) {
      const { values = {} } = row.line.findings.find(({ rule }) => rule === 'clinch/hardness') ?? {};
      if (values.sheetHrbTypical === undefined || row.line.line.material.candidates.length > 1) continue;
      const drawing = drawHardness(row);
      expect(extentOf(drawing, 'band-0').right).toBe(values.sheetHrbMax ?? values.sheetHrbTypical);
      if (values.sheetHrbLimit === undefined) expect(extentOf(drawing, 'fastener').left).toBe(values.fastenerHrb);
      else expect(extentOf(drawing, 'limit').left).toBe(values.sheetHrbLimit);
      seen++;
    }
    expect(seen).toBeGreaterThan(40);
  });

  it('marks the part of a sheet beyond the limit', () => {
    const drawing = drawHardness(
      rowFor({
        cells: { material: '304' },
        part: { ...hrb(95), material: { text: '300', candidates: ['stainless-300'] } },
      }),
    );
    expect(extentOf(drawing, 'band-0')).toMatchObject({ left: 80, right: 92 });
    expect(extentOf(drawing, 'over-0')).toMatchObject({ left: 80, right: 92 });
    expect(drawing?.labels.find(({ name }) => name === 'band-0')).toMatchObject({
      text: '304 annealed 80 to 92',
      outcome: 'fails',
    });
    expect(drawing?.notes.join(' ')).toContain('HRB 95 by the catalogue');
    expect(drawing?.notes.join(' ')).toContain('HRB 80 typical, HRB 92 at most');
  });

  it('has a band for each metal that the words allow, each with its own outcome', () => {
    const drawing = drawHardness(
      rowFor({ cells: { material: 'ALUM' }, part: { hardnessMin: { scale: 'HRC', value: 26 } } }),
    );
    const bands = drawing?.labels.filter(({ name }) => name.startsWith('band-')) ?? [];
    expect(bands.length).toBeGreaterThan(5);
    expect(bands.find(({ text }) => text.includes('7075'))?.outcome).toBe('fails');
    expect(bands.find(({ text }) => text.includes('5052'))?.outcome).toBe('holds');
  });

  it('has a group for each fastener metal that the words allow', () => {
    const material = { text: 'stainless', candidates: ['stainless-300', 'stainless-400-hardened'] };
    const drawing = drawHardness(rowFor({ cells: { material: '304' }, part: { material, hardnessMin: null } }));
    expect(extentOf(drawing, 'fastener-0').left).toBe(95);
    expect(extentOf(drawing, 'fastener-1').left).toBeGreaterThan(100);
    const outcomes = drawing?.labels.filter(({ name }) => name.startsWith('band-')).map(({ outcome }) => outcome);
    expect(outcomes).toHaveLength(2);
    expect(new Set(outcomes).size).toBe(2);
  });

  it('leaves the scale open below its foot', () => {
    const drawing = drawHardness(rowFor({ cells: { material: '5052-H32' } }));
    expect(shapesLike(drawing, 'unknown').map(({ name }) => name)).toEqual(['foot-0']);
    expect(drawing?.labels.find(({ name }) => name === 'band-0')?.text).toMatch(/below \d+$/);
  });

  it("shows the catalogue's own limit where that decides", () => {
    const drawing = drawHardness(
      rowFor({ cells: { material: 'DC01' }, part: { sheetHardnessMax: { scale: 'HRB', value: 80 } } }),
    );
    expect(extentOf(drawing, 'limit').left).toBe(80);
    expect(drawing?.shapes.some(({ name }) => name.startsWith('gap'))).toBe(false);
    expect(drawing?.notes).toContain('The catalogue allows sheet up to HRB 80.');
  });

  it('shows the side that is known, and asks for the other', () => {
    const noSheet = drawHardness(rowFor({ cells: { material: 'see drawing' } }));
    expect(noSheet?.notKnown).toEqual(['hardness of the sheet']);
    expect(shapesLike(noSheet, 'band')).toEqual([]);
    const noFastener = drawHardness(
      rowFor({ cells: {}, part: { hardnessMin: null, material: { text: '', candidates: [] } } }),
    );
    expect(noFastener?.notKnown).toEqual(['hardness of the fastener']);
    expect(noFastener?.shapes.some(({ name }) => name.startsWith('fastener'))).toBe(false);
    expect(drawHardness(rowFor({ cells: {}, part: null }))).toBeNull();
  });

  it('draws the hardest metals of each group where there are too many, and counts the others', () => {
    const material = { text: 'stainless', candidates: ['stainless-300', 'stainless-400-hardened'] };
    const drawing = drawHardness(rowFor({ cells: { material: 'SS' }, part: { material, hardnessMin: null } }));
    for (const group of ['-0', '-1']) {
      const bands = drawing?.shapes.filter(({ name }) => /^band-/.test(name) && name.endsWith(group)) ?? [];
      expect(bands).toHaveLength(8);
      const ends = bands.map(({ name }) => extentOf(drawing, name).right);
      expect(ends).toEqual([...ends].sort((a, b) => a - b));
      expect(ends.at(-1)).toBe(96);
    }
    expect(drawing?.labels.map(({ text }) => text)).toContain('300-series stainless at least 95');
    expect(drawing?.notes.join(' ')).toMatch(/Not drawn beside 300-series stainless: 7 softer metals \(.*3 holds\)/);
  });

  it('gives the published values of those that do not hold first', () => {
    const drawing = drawHardness(rowFor({ cells: { material: 'ALUM' } }));
    const published = drawing?.notes.filter((note) => / typical, /.test(note)) ?? [];
    expect(published).toHaveLength(4);
    expect(published[0]).toMatch(/^7075-T6: HB 150/);
  });

  it('says so where practice goes before the numbers', () => {
    const refused = drawHardness(
      rowFor({ cells: { material: '304' }, part: { sheetHardnessMax: { scale: 'HRB', value: 88 } } }),
    );
    expect(refused?.notes.join(' ')).toContain('Practice says no, whatever the numbers');
    const helped = drawHardness(
      rowFor({
        cells: { material: '304' },
        part: {
          hardnessMin: { scale: 'HRC', value: 38 },
          material: { text: '400', candidates: ['stainless-400-hardened'] },
        },
      }),
    );
    expect(helped?.labels.find(({ name }) => name === 'band-0')?.outcome).toBe('holds');
    expect(extentOf(helped, 'band-0').right).toBeGreaterThan(extentOf(helped, 'limit').left);
    expect(helped?.notes.join(' ')).toContain('practice lends weight');
  });
});
