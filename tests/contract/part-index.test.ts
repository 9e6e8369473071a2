import { describe, expect, it } from 'vitest';
import { createPartIndex } from '../../src/core/catalogue/find-part.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import type { Catalogue } from '../../src/core/model/fastener.ts';

function catalogueOf(name: string, rows: readonly string[]): Catalogue {
  const cells = ['partNumber;holeMm;thread;unitPrice', ...rows].map((row, index) => ({
    number: index + 1,
    cells: row.split(';'),
  }));
  return importCatalogue({ file: `${name}.csv`, format: 'csv', tables: [{ name: '', rows: cells }], notices: [] });
}

const first = catalogueOf('first', [
  'NUT-M4-10-CS;5.6;M4;0.10',
  'NUT-M4-15-CS;5.6;M4;',
  'STUD-M4-10-CS;;M4;',
  'NUT-M5-10-CS;6.85;M5;',
  'PIN-3-10;;;',
]);
const second = catalogueOf('second', ['NUT-M4-10-CS;5.65;M4;0.20', 'NUT-M5-10-CS;6.85;;', 'NUT-M6-10-CS;8.1;M6;']);

describe('the index of parts', () => {
  const parts = createPartIndex([first, second]);

  it.each([
    'NUT-M4-10-CS',
    'nut-m4-10-cs',
    ' NUT-M4-10-CS\u00a0',
    'NUT – M4 – 10 – CS',
    'NUT\u2011M4\u201110\u2011CS',
    'ＮＵＴ－Ｍ４－１０－ＣＳ',
    'NUT−M4−10−CS',
    'NUT-M4-10\u200b-CS',
  ])('finds %j', (partNumber) => expect(parts.find(partNumber)?.holeMm).toBe(5.6));
  it.each(['', '-', 'NUT-M4-10', 'NUTM410CS', 'NUT-M4-10-CS2'])('does not take %j for a part', (partNumber) =>
    expect(parts.find(partNumber)).toBeNull(),
  );

  it('lists each part once, the first catalogue first', () => {
    expect(parts.all).toHaveLength(6);
    expect(createPartIndex([second, first]).find('NUT-M4-10-CS')?.holeMm).toBe(5.65);
  });

  it('reports parts that the catalogues describe differently, silence and price apart', () =>
    expect(parts.conflicts).toEqual([
      { partNumber: 'NUT-M4-10-CS', catalogues: ['first', 'second'], fields: ['holeMm'] },
    ]));

  it('offers near misses, the likeliest first', () => {
    const names = (partNumber: string, most = 3) => parts.near(partNumber, most).map((part) => part.partNumber);
    expect(names('NUT-M4-10-CX')[0]).toBe('NUT-M4-10-CS');
    expect(names('NUT-M4-99-CS').slice(0, 2).sort()).toEqual(['NUT-M4-10-CS', 'NUT-M4-15-CS']);
    expect(names('NUTM510CS')).toContain('NUT-M5-10-CS');
    expect(names('NUT-M4-10-CX', 1)).toHaveLength(1);
    expect(names('QQQ')).toEqual([]);
    expect(names('')).toEqual([]);
    expect(names('NUT-M4-10-CS', 0)).toEqual([]);
  });

  it('is quick on a large catalogue', () => {
    const rows = Array.from({ length: 20_000 }, (_, n) => `NUT-M${n % 24}-${n}-CS;5.6;M4;`);
    const large = createPartIndex([{ ...first, fasteners: catalogueOf('large', rows).fasteners }]);
    large.near('NUT-M4-5-CX', 3);
    const start = performance.now();
    for (let n = 0; n < 20; n++) large.near(`NUT-M4-${n}-XY`, 3);
    expect(performance.now() - start).toBeLessThan(2000);
  });
});
