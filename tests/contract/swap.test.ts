import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';
import type { CellEdit, SwapAnswer } from '../../src/worker/protocol.ts';
import { editCells, openSession, type Session } from '../../src/worker/session.ts';
import { findSwapsFor, tryCells } from '../../src/worker/trial.ts';

const demo = new URL('../../sample-data/demo-catalogue.csv', import.meta.url);
const CATALOGUE = importCatalogue(readFile(readFileSync(demo), 'demo-catalogue.csv'));
const HEADINGS = 'Part number,Panel,Material,Thickness (mm),Hole (mm),Spacing (mm),Qty';

/** One nut on 140 rows over nine panels, the panels cut from three sheets. */
const SHEETS = ['DC01,1.5', '5052-H32,0.8', '304,1.0'] as const;
const NINE_PANELS = Array.from({ length: 140 }, (_, index) => {
  const panel = index % 9;
  return `NUT-M4-10-S3,P${panel},${SHEETS[panel % 3]},,,4`;
});

function open(...rows: readonly string[]): Session {
  const text = `${HEADINGS}\n${rows.join('\n')}\n`;
  const file = readFile(new TextEncoder().encode(text), 'list.csv');
  return openSession(file, [CATALOGUE], DEFAULT_SHOP, {}, () => {});
}

function swapsFor(session: Session, partNumber: string): SwapAnswer {
  const swaps = findSwapsFor(session, { partNumber });
  if (!swaps) throw new Error(`${partNumber} is not on file`);
  return swaps;
}

const put = (partNumber: string, rows: readonly number[]): readonly CellEdit[] =>
  rows.map((row) => ({ row, column: 0, text: partNumber }));

describe('one part on 140 rows over nine panels in three sheets', () => {
  const session = open(...NINE_PANELS);
  const swaps = swapsFor(session, 'NUT-M4-10-S3');

  it('falls into three groups of equal sheet that hold every row once', () => {
    expect(swaps.groups.map(({ sheet }) => sheet.split(',')[0])).toEqual(
      expect.arrayContaining([expect.stringContaining('DC01'), '5052-H32', expect.stringContaining('304')]),
    );
    expect(swaps.groups).toHaveLength(3);
    expect(swaps.groups.flatMap(({ rows }) => rows).sort((a, b) => a - b)).toEqual(
      NINE_PANELS.map((_, index) => index + 2),
    );
  });

  it('is offered for all rows only what holds on all of them', () => {
    const everywhere = swaps.offers.filter((offer) => offer.everywhere);
    expect(everywhere.map(({ partNumber }) => partNumber)).toContain('NUT-M4-08-S4');
    for (const { partNumber, rows } of everywhere) {
      expect(rows).toHaveLength(140);
      const after = editCells(session, put(partNumber, rows)).session.audited;
      expect(after.totals, partNumber).toEqual({ holds: 140, marginal: 0, fails: 0, unknown: 0 });
    }
  });

  it('is offered the rest sheet by sheet, each row tried and holding', () => {
    const partly = swaps.offers.filter(({ everywhere }) => !everywhere);
    const offered = Object.fromEntries(partly.map((offer) => [offer.partNumber, offer]));
    // The hardened steel nut of the thinner shank holds in mild steel and in aluminium, not in stainless.
    expect(offered['NUT-M4-08-CS']?.sheets).toHaveLength(2);
    for (const { partNumber, rows, verdicts, sheets } of partly) {
      expect(rows.length).toBeLessThan(140);
      expect(verdicts).toHaveLength(140);
      const named = swaps.groups.filter(({ sheet }) => sheets.includes(sheet)).flatMap((group) => group.rows);
      expect(named.sort((a, b) => a - b)).toEqual(rows);
      const { lines } = editCells(session, put(partNumber, rows)).session.audited;
      for (const row of rows) expect(lines.find((line) => line.row === row)?.verdict, partNumber).toBe('holds');
    }
  });

  it('is offered nothing that does not hold anywhere, the least change first, unstocked last', () => {
    expect(swaps.offers.every(({ rows }) => rows.length > 0)).toBe(true);
    const stocked = swaps.offers.map((offer) => offer.stocked !== false);
    expect(stocked).toEqual([...stocked].sort((a, b) => Number(b) - Number(a)));
    expect(swaps.offers[0]?.change).toContain('other shank');
  });

  it('says the verdict that each row would really have', () => {
    for (const { partNumber, verdicts } of swaps.offers) {
      const all = verdicts.map(({ row }) => row);
      const { lines } = editCells(session, put(partNumber, all)).session.audited;
      const real = new Map(lines.map(({ row, verdict }) => [row, verdict]));
      for (const { row, verdict } of verdicts) expect(real.get(row), `${partNumber} in row ${row}`).toBe(verdict);
    }
  });
});

describe('a swap', () => {
  it('is not offered where the rules over the whole list are against it', () => {
    const alone = open('NUT-M4-10-S3,P1,304,1.5,,9,4');
    expect(swapsFor(alone, 'NUT-M4-10-S3').offers).not.toEqual([]);
    const tooClose = open('NUT-M4-10-S3,P1,304,1.5,,5,4');
    expect(swapsFor(tooClose, 'NUT-M4-10-S3').offers).toEqual([]);
    const disputed = open('NUT-M4-10-S3,P1,304,1.5,,,4', 'NUT-M3-08-S4,P1,304,2,,,4');
    expect(swapsFor(disputed, 'NUT-M4-10-S3').offers).toEqual([]);
  });

  it('is sought for the part of a row, with stock and price beside it', () => {
    const session = open('NUT-M4-10-S3,P1,304,1.5,,,4', 'NUT-M4-10-S3,P2,DC01,1.5,,,4');
    const swaps = findSwapsFor(session, { row: 2 });
    const offer = swaps?.offers.find(({ partNumber }) => partNumber === 'NUT-M4-10-S4');
    expect(offer).toMatchObject({ everywhere: true, rows: [2, 3], stock: expect.anything() });
    expect(offer?.priceDifference).toBeGreaterThan(0);
  });

  it('is none for a part that is not on file', () => {
    const session = open('NUT-M4-10-ZZ,P1,304,1.5,,,4');
    expect(findSwapsFor(session, { row: 2 })).toBeNull();
    expect(findSwapsFor(session, { row: 99 })).toBeNull();
    expect(findSwapsFor(session, { partNumber: 'NUT-M4-10-ZZ' })).toBeNull();
  });
});

describe('a sheet that would hold the listed part', () => {
  const sheetsFor = (row: string) => findSwapsFor(open(row), { row: 2 })?.sheets.map(({ words }) => words);

  it('is the next thickness in stock where the sheet is too thin', () => {
    expect(sheetsFor('NUT-M4-10-CS,P1,DC01,0.8,,,4')).toEqual(['sheet 1.00 mm']);
    expect(sheetsFor('NUT-M4-10-CS,P1,CRS,22 ga,,,4')?.[0]).toMatch(/^sheet 19 ga/);
  });

  it('is of softer metals where the sheet is too hard', () => {
    const [first, ...others] = sheetsFor('NUT-M4-10-S3,P1,304,1.5,,,4') ?? [];
    expect(first).toMatch(/^same nut in 5052-H32 or cold-rolled CS/);
    expect(others).toEqual([]);
  });

  it('changes both only where neither does alone', () => {
    expect(sheetsFor('NUT-M4-10-S3,P1,304,0.8,,,4')).toEqual(['same nut in 5052-H32, 1.00 mm']);
  });

  it('is none while the sheet is not known, nor where no sheet would help', () => {
    expect(sheetsFor('NUT-M4-10-S3,P1,,1.5,,,4')).toEqual([]);
    expect(sheetsFor('NUT-M4-10-CS,P1,DC01,,,,4')).toEqual([]);
    expect(sheetsFor('NUT-M4-10-CS,P1,DC01,0.8,9.5,,4')).toEqual([]);
  });
});

describe('a trial', () => {
  it('tells counts and rows before and after, and leaves the list as it is', () => {
    const session = open('NUT-M4-10-S3,P1,304,1.5,,,4', 'NUT-M4-10-S3,P2,DC01,1.5,,,4');
    const before = JSON.stringify(session.audited);
    const trial = tryCells(session, put('NUT-M4-10-S4', [2, 3]));
    expect(trial.before).toMatchObject({ holds: 1, fails: 1 });
    expect(trial.after).toMatchObject({ holds: 2, fails: 0 });
    expect(trial.rows).toEqual([
      { row: 2, partNumber: 'NUT-M4-10-S4', decision: '', edited: true, before: 'fails', after: 'holds' },
      { row: 3, partNumber: 'NUT-M4-10-S4', decision: '', edited: true, before: 'holds', after: 'holds' },
    ]);
    expect(JSON.stringify(session.audited)).toBe(before);
  });

  it('tells of rows that change because of another', () => {
    const session = open('NUT-M4-10-S4,P1,304,1.5,,,4', 'NUT-M3-08-S4,P1,304,1.5,,,4');
    const trial = tryCells(session, [{ row: 2, column: 3, text: '2' }]);
    expect(trial.rows.map(({ row, edited, after }) => [row, edited, after])).toEqual([
      [2, true, 'unknown'],
      [3, false, 'unknown'],
    ]);
  });

  it('comes out as the edit itself does', () => {
    const session = open(...NINE_PANELS);
    const cells = put('NUT-M4-08-CS', [2, 3, 4, 90]);
    expect(tryCells(session, cells).after).toEqual(editCells(session, cells).session.audited.totals);
  });
});
