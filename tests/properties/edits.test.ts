import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { relateRows } from '../../src/core/intake/relate.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';
import { packRows, RowAssembly } from '../../src/worker/packed-rows.ts';
import type { CellEdit } from '../../src/worker/protocol.ts';
import { editCells, importCatalogues, openSession, type Session, withShop } from '../../src/worker/session.ts';
import { plain } from '../plain.ts';

const bytes = (text: string) => new TextEncoder().encode(text);
const CATALOGUE = importCatalogues([
  readFile(
    bytes(
      [
        'partNumber,kind,thread,material,sheetMinMm,holeMm,edgeMm',
        'OWN-1,clinch nut,M4,carbon-steel-hardened,1,5.6,9',
        'OWN-2,clinch nut,M3,carbon-steel-hardened,0.8,5.5,8',
        'OWN-3,clinch nut,8-32,carbon-steel-hardened,0.8,5.4,8',
      ].join('\n'),
    ),
    'own.csv',
  ),
]);

/** Lists whose rows hang together in all the ways there are: tree, panels that give sheets, titles, assembly columns, none. */
const LISTS: readonly (readonly string[])[] = [
  [
    'Part number,Description,Panel,Material,Thickness (mm),Hole (mm),Spacing (mm),Qty',
    'OWN-1,Clinch nut M4,A,DC01,1.5,5.6,20,2',
    'OWN-1,Clinch nut M4,A,DC01,1.5,5.6,,2',
    'OWN-2,Clinch nut M3,A,DC01,1.5,5.5,6,4',
    'OWN-3,Clinch nut,B,5052-H32,1.2,5.4,,1',
    'OWN-1,Nut M4,B,5052-H32,1.2,5.6,,1',
    'Total,,,,,,,10',
  ],
  [
    'Level,Part number,Description,Panel,Material,Thickness (mm),Hole (mm),Qty',
    '1,PNL-A,Panel,PNL-A,DC01,1.5,,2',
    '2,OWN-1,Clinch nut M4,PNL-A,,,5.6,2',
    '2,OWN-2,Clinch nut M3,PNL-A,,,5.5,4',
    '1,PNL-B,Panel,PNL-B,5052-H32,0.8,,1',
    '2,OWN-1,Clinch nut M4,PNL-B,,,5.6,3',
    '2,OWN-3,Clinch nut,PNL-B,,1.2,5.4,1',
  ],
  [
    'Part number,Description,Material,Thickness (mm),Qty Door,Qty Frame',
    'DOOR,Door assembly,,,,',
    'FRAME,Frame assembly,,,,',
    'OWN-1,Clinch nut M4,DC01,1.5,2,',
    'OWN-2,Clinch nut M3,DC01,1.5,1,3',
    '  OWN-1,Clinch nut M4,304,,,3',
  ],
];
const TEXTS = [
  '',
  'OWN-1',
  'OWN-2',
  '  OWN-3',
  'PNL-A',
  'A',
  'B',
  'DC01',
  '304',
  '1.5',
  '0.5',
  '5.6',
  '2',
  '1',
  'Panel',
  'Clinch nut M4',
  'Total',
  'DOOR',
];

const edits = fc.array(
  fc.array(
    fc.record({
      row: fc.integer({ min: 2, max: 7 }),
      column: fc.integer({ min: 0, max: 7 }),
      text: fc.constantFrom(...TEXTS),
    }),
    {
      minLength: 1,
      maxLength: 3,
    },
  ),
  { minLength: 1, maxLength: 6 },
);

const open = (lines: readonly string[]): Session =>
  openSession(readFile(bytes(lines.join('\n')), 'list.csv'), CATALOGUE, DEFAULT_SHOP, {}, () => {});
const editAll = (session: Session, all: readonly (readonly CellEdit[])[]) =>
  all.reduce((before, cells) => editCells(before, cells).session, session);

describe.each(LISTS.map((list) => [list[0] ?? '', list] as const))('edits of a list with %s', (_, lines) => {
  it('join its rows as if all were joined anew, and judge them as if all were judged anew', () => {
    fc.assert(
      fc.property(edits, (all) => {
        const session = editAll(open(lines), all);
        const { list } = session.judged;
        const anew = relateRows(list);
        expect(list.lines).toEqual(anew.lines);
        expect(list.relations.extended).toEqual(anew.relations.extended);
        expect(list.notices).toEqual(anew.notices);
        expect(plain(session.audited)).toEqual(plain(withShop(session, DEFAULT_SHOP, () => {}).audited));
      }),
      { numRuns: 60 },
    );
  });

  it('send just the rows that have become others', () => {
    fc.assert(
      fc.property(edits, fc.integer({ min: 2, max: 7 }), (all, row) => {
        const before = editAll(open(lines), all);
        const { session, rows } = editCells(before, [{ row, column: 1, text: 'OWN-2' }]);
        const shown = new Map(before.audited.lines.map((line) => [line.row, line]));
        for (const state of rows) {
          if ('line' in state) shown.set(state.line.row, state.line);
          else shown.delete(state.other.row);
        }
        expect(plain([...shown.values()].sort((a, b) => a.row - b.row))).toEqual(plain(session.audited.lines));
      }),
      { numRuns: 30 },
    );
  });
});

describe('rows cut into pieces', () => {
  it.each(LISTS)('come out as they went in', (...lines) => {
    const { audited } = open(lines);
    const assembly = new RowAssembly();
    for (const piece of packRows(audited.lines, audited.others)) assembly.add(structuredClone(piece));
    expect(assembly.lines).toEqual(plain(audited.lines));
    expect(assembly.others).toEqual(audited.others);
    for (const { decidedBy, findings } of assembly.lines)
      expect(decidedBy === null || findings.includes(decidedBy)).toBe(true);
  });
});
