import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { buildList } from '../../src/core/intake/build-list.ts';
import type { Line } from '../../src/core/model/line.ts';
import type { RawFile } from '../../src/core/model/raw.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';
import { editCells, openSession, type Session } from '../../src/worker/session.ts';
import { plain } from '../plain.ts';
import { textFile, workbookFile } from './list-file.ts';

const demo = new URL('../../sample-data/demo-catalogue.csv', import.meta.url);
const CATALOGUE = importCatalogue(readFile(new Uint8Array(readFileSync(demo)), 'demo-catalogue.csv'));

const open = (file: RawFile): Session => openSession(file, [CATALOGUE], DEFAULT_SHOP, {}, () => undefined);

/** What a row takes: where its metal and its thickness come from, and what they are. */
function takes(file: RawFile, partNumber = 'NUT-M4-10-CS'): unknown {
  const line = buildList(file).lines.find((one) => one.partNumber === partNumber);
  return line && summary(line);
}

function summary({ material, thickness }: Line): unknown {
  return [
    material.takenFrom?.row ?? null,
    material.candidates.join(' '),
    thickness.takenFrom?.row ?? null,
    thickness.mm,
  ];
}

const NOTHING = [null, '', null, null];
const HEAD = 'P/N;Description;Qty;Panel;Matl;Thk (mm)';
const NUT = 'NUT-M4-10-CS;Clinch nut M4;4';

describe('a row without a sheet of its own takes that of', () => {
  it('the panel above it in the tree', () => {
    const head = 'Level;P/N;Description;Qty;Matl;Thk (mm)';
    const rows = ['1;CAB-1;Cabinet assembly;1;;', '2;PNL-1;Front panel;1;5052-H32;1.5', `3;${NUT};;`];
    expect(takes(textFile([head, ...rows]))).toEqual([3, '5052-h32', 3, 1.5]);
  });

  it('the panel above an assembly or a kit that says nothing', () => {
    const head = 'Level;P/N;Description;Qty;Matl;Thk (mm)';
    const rows = ['1;PNL-1;Front panel;1;5052-H32;1.5', '2;K-1;Kit;1;;', `3;${NUT};;`];
    expect(takes(textFile([head, ...rows]))).toEqual([2, '5052-h32', 2, 1.5]);
  });

  it('the panel row whose part number is the name of its panel', () =>
    expect(takes(textFile([HEAD, `${NUT};pnl-1;;`, 'PNL-1;Front panel;1;;5052-H32;1.5']))).toEqual([
      3,
      '5052-h32',
      3,
      1.5,
    ]));

  it('the panel row that is called by the name with a word before it', () =>
    expect(takes(textFile([HEAD, 'PANEL RC-03;Front;1;RC-03;DC01;1.5', `${NUT};RC-03;;`]))).toEqual([
      2,
      'dc01-lc',
      2,
      1.5,
    ]));

  it('the panel row with the same name in its panel column', () =>
    expect(takes(textFile([HEAD, '4711;Rear cover;1;REAR;DC01;1.5', `${NUT};REAR;;`]))).toEqual([
      2,
      'dc01-lc',
      2,
      1.5,
    ]));

  it('the title above it that names metal and thickness', () => {
    const rows = ['PANEL A - 5052-H32 .063', `${NUT};;;`, 'PANEL B', 'NUT-M5-15-CS;Clinch nut M5;2;;;'];
    expect(takes(textFile([HEAD, ...rows]))).toEqual([2, '5052-h32', 2, 1.6002]);
    expect(takes(textFile([HEAD, ...rows]), 'NUT-M5-15-CS')).toEqual(NOTHING);
  });

  it('a panel table beside the list', () => {
    const head = 'P/N;Description;Qty;Panel;;Panel;Material;Thickness (mm)';
    const rows = [`${NUT};P2;;P1;5052-H32;1.5`, 'NUT-M5-15-CS;Clinch nut M5;2;P1;;P2;DC01;2', ';;;;;P3;304;1'];
    expect(takes(textFile([head, ...rows]))).toEqual([3, 'dc01-lc', 3, 2]);
    expect(takes(textFile([head, ...rows]), 'NUT-M5-15-CS')).toEqual([2, '5052-h32', 2, 1.5]);
    expect(buildList(textFile([head, ...rows])).others).toMatchObject([{ row: 4, what: 'panel table' }]);
  });

  it('a panel table on another sheet', () => {
    const file = workbookFile({
      Hardware: [HEAD, `${NUT};P2;;`],
      Panels: ['Panel;Material;Thickness', 'P1;5052-H32;1.5 mm', 'P2;DC01;2 mm'],
    });
    expect(takes(file)).toEqual([3, 'dc01-lc', 3, 2]);
    expect(buildList(file).lines[0]?.thickness.takenFrom).toEqual({ row: 3, sheet: 'Panels', text: '2 mm' });
  });

  it('a panel table with more headings than the list, which stays the list', () => {
    const panels = ['Sheet metal schedule', '', 'Part No;Description;Material;Gauge', 'P-1;Panel;CRS;14 ga'];
    const list = ['Item;Part Number;Description;QTY', '1;P-1;Panel;2', `1.1;${NUT}`];
    const file = workbookFile({ Panels: panels, BOM: list });
    expect([buildList(file).sheet, buildList(file).notices]).toEqual(['BOM', []]);
    expect(buildList(file).lines[1]?.thickness).toMatchObject({ number: 14, takenFrom: { row: 4, sheet: 'Panels' } });
  });

  it('its panel only for what is missing', () => {
    const panel = 'PNL-1;Panel;1;;5052-H32;1.5';
    expect(takes(textFile([HEAD, panel, `${NUT};PNL-1;5052-H32;`]))).toEqual([null, '5052-h32', 2, 1.5]);
    expect(takes(textFile([HEAD, panel, `${NUT};PNL-1;;1.5`]))).toEqual([2, '5052-h32', null, 1.5]);
  });
});

describe('nothing is taken', () => {
  it.each<[string, readonly string[]]>([
    ['from a panel that is only the row before', ['PNL-1;Front panel;1;;5052-H32;1.5', `${NUT};;;`]],
    ['from another panel', ['PNL-1;Front panel;1;;5052-H32;1.5', `${NUT};PNL-2;;`]],
    ['from a name that is only like it', ['PNL-1;Front panel;1;;5052-H32;1.5', `${NUT};PNL-11;;`]],
    ['from another fastener of the panel', ['NUT-M5-15-CS;Clinch nut M5;2;PNL-1;5052-H32;1.5', `${NUT};PNL-1;;`]],
    ['from a screw or label of the panel', ['L-1;Label;1;PNL-1;5052-H32;1.5', `${NUT};PNL-1;;`]],
    ['from a title of another panel', ['PANEL A - 5052-H32 .063', `${NUT};B;;`]],
    ['from a title that names no thickness', ['PANEL A - 5052-H32', `${NUT};;;`]],
    ['from a title of which the list has been summed up', ['PANEL A - 5052-H32 .063', 'Total;;8;;;', `${NUT};;;`]],
    ['from a panel of which the list says nothing', ['PNL-1;Front panel;1;;;', `${NUT};PNL-1;;`]],
    ['where the metal is said but not understood', ['PNL-1;Panel;1;;5052-H32;', `${NUT};PNL-1;see drawing;`]],
  ])('%s', (_, rows) => expect(takes(textFile([HEAD, ...rows]))).toEqual(NOTHING));

  it('from the panel of a bracket that has no thickness', () => {
    const head = 'Level;P/N;Description;Qty;Matl;Thk (mm)';
    const rows = ['1;PNL-1;Front panel;1;5052-H32;1.5', '2;BR-1;Bracket;1;DC01;', `3;${NUT};;`];
    expect(takes(textFile([head, ...rows]))).toEqual([3, 'dc01-lc', null, null]);
  });

  it('from a bracket that is fitted to the panel', () => {
    const head = 'P/N;Description;Qty;Used on;Matl;Thk (mm)';
    expect(takes(textFile([head, 'BR-1;Bracket;1;PNL-1;DC01;3', `${NUT};PNL-1;;`]))).toEqual(NOTHING);
  });

  it('from another list in the workbook, or from a hidden sheet', () => {
    const old = ['P/N;Panel;Material;Thk (mm);Hole (mm)', 'NUT-M4-10-CS;P2;DC01;2;5.6'];
    expect(takes(workbookFile({ Hardware: [HEAD, `${NUT};P2;;`], 'Rev A': old }))).toEqual(NOTHING);
    const file = workbookFile({
      Hardware: [HEAD, `${NUT};P2;;`],
      Panels: ['Panel;Material;Thickness', 'P2;DC01;2 mm'],
    });
    const tables = file.tables.map((table) => ({ ...table, hidden: table.name === 'Panels' }));
    expect(takes({ ...file, tables })).toEqual(NOTHING);
  });
});

/** Full text of a finding on a row. */
function said({ audited }: Session, row: number, rule: string): string | undefined {
  return audited.lines.find((line) => line.row === row)?.findings.find((finding) => finding.rule === rule)?.text;
}

describe('a finding', () => {
  it('says what was taken, and from where', () => {
    const session = open(textFile([HEAD, 'PNL-1;Panel;1;;5052-H32;1.5', `${NUT};PNL-1;;`]));
    expect(said(session, 3, 'sheet/material')).toContain('5052-H32, taken from row 2.');
    expect(said(session, 3, 'sheet/thickness-read')).toContain('1.50 mm, the unit in the heading, taken from row 2.');
    expect(session.audited.lines[0]?.verdict).toBe('holds');
  });

  it('names the sheet where it is another', () => {
    const panels = ['Panel;Material;Thickness', 'P2;CRS;16 ga'];
    const session = open(workbookFile({ Hardware: [HEAD, `${NUT};P2;;`], Panels: panels }));
    expect(said(session, 2, 'sheet/thickness-read')).toContain('taken from row 2 of sheet “Panels”');
  });

  it.each<[string, readonly string[]]>([
    ['two panel rows of one name', ['PNL-1;Panel;1;;5052-H32;1.5', 'PNL-1;Panel;1;;5052-H32;2', `${NUT};PNL-1;;`]],
    ['two panels of one name', ['41;Panel;1;P1;5052-H32;1.5', '42;Plate;1;P1;304;1.5', `${NUT};P1;;`]],
  ])('names the rows that disagree: %s', (_, rows) => {
    const session = open(textFile([HEAD, ...rows]));
    expect(takes(textFile([HEAD, ...rows]))).toEqual(NOTHING);
    for (const rule of ['sheet/material', 'sheet/thickness-read'])
      expect(said(session, 4, rule)).toMatch(/is missing, and row 2 .* and row 3 .* do not agree about the panel/);
  });

  it('says so where the row itself speaks of another sheet than its panel', () => {
    const session = open(textFile([HEAD, 'PNL-1;Panel;1;;5052-H32;1.5', `${NUT};PNL-1;304;`]));
    expect(said(session, 3, 'sheet/thickness-read')).toMatch(
      /is missing, and row 2 .* does not agree with what this row says/,
    );
    expect(session.audited.lines[0]?.sheet?.thicknessMm).toBeNull();
  });

  it('says so where a row stands under one panel and names another that differs', () => {
    const head = 'Level;P/N;Description;Qty;Panel;Matl;Thk (mm)';
    const rows = ['1;PNL-1;Panel;1;;5052-H32;1.5', `2;${NUT};PNL-2;;`, '1;PNL-2;Panel;1;;5052-H32;2'];
    const session = open(textFile([head, ...rows]));
    expect(said(session, 3, 'sheet/thickness-read')).toMatch(/row 2 .* and row 4 .* do not agree/);
  });
});

describe('an edit', () => {
  const edit = (session: Session, row: number, column: number, text: string) =>
    editCells(session, [{ row, column, text }]);
  const thicknessOf = ({ audited }: Session, row: number) =>
    audited.lines.find((line) => line.row === row)?.sheet?.thicknessMm;
  const rows = ['PNL-1;Panel;1;;5052-H32;1.5', `${NUT};PNL-1;;`, 'NUT-M5-15-CS;Clinch nut M5;2;PNL-2;DC01;1.5'];

  it('of a panel is followed by the rows that took from it, and by no other', () => {
    const after = edit(open(textFile([HEAD, ...rows])), 2, 5, '2');
    expect(thicknessOf(after.session, 3)).toBe(2);
    expect(after.rows.map((row) => ('line' in row ? row.line.row : row.other.row)).sort()).toEqual([2, 3]);
  });

  it('of a row lets go of what it took, and takes it again', () => {
    const own = edit(open(textFile([HEAD, ...rows])), 3, 5, '1.2').session;
    expect([thicknessOf(own, 3), said(own, 3, 'sheet/thickness-read')]).toEqual([
      1.2,
      expect.not.stringContaining('taken'),
    ]);
    expect(thicknessOf(edit(own, 3, 5, '').session, 3)).toBe(1.5);
    expect(thicknessOf(edit(own, 3, 3, 'PNL-9').session, 3)).toBe(1.2);
  });

  it('of a panel table beside the list, or of a title, is followed', () => {
    const beside = [
      'P/N;Description;Qty;Panel;;Panel;Material;Thickness (mm)',
      `${NUT};P2;;P1;5052-H32;1.5`,
      ';;;;;P2;DC01;2',
    ];
    expect(thicknessOf(edit(open(textFile(beside)), 3, 7, '1').session, 2)).toBe(1);
    const title = open(textFile([HEAD, 'PANEL A - 5052-H32 .063', `${NUT};;;`]));
    expect(thicknessOf(edit(title, 2, 0, 'PANEL A - 5052-H32 2 mm').session, 3)).toBe(2);
  });

  it('of a quantity or a level is followed by the pieces below it', () => {
    const lines = ['Level;P/N;Description;Qty', '1;PNL-1;Panel;2', `2;${NUT}`, '2;NUT-M5-15-CS;Clinch nut M5;3'];
    const pieces = ({ audited }: Session) => audited.lines.map(({ extendedQuantity }) => extendedQuantity);
    const before = open(textFile(lines));
    const more = edit(before, 2, 3, '5');
    expect([pieces(before), pieces(more.session)]).toEqual([
      [8, 6],
      [20, 15],
    ]);
    expect(more.rows).toHaveLength(3);
    expect(pieces(edit(before, 4, 0, '1').session)).toEqual([8, 3]);
  });

  it('gives what opening the edited list would give', () => {
    const edited = edit(edit(open(textFile([HEAD, ...rows])), 2, 4, '304').session, 4, 4, '').session;
    const [panel, nut] = ['PNL-1;Panel;1;;304;1.5', 'NUT-M5-15-CS;Clinch nut M5;2;PNL-2;;1.5'];
    const opened = open(textFile([HEAD, panel, rows[1] as string, nut]));
    expect(plain(edited.audited.lines)).toEqual(plain(opened.audited.lines));
  });

  it('keeps the rows that it does not touch as they are', () => {
    const before = open(textFile([HEAD, ...rows]));
    const after = edit(before, 4, 2, '9').session;
    expect(after.audited.lines[0]).toBe(before.audited.lines[0]);
  });
});
