import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { AuditedLine } from '../../src/core/model/audited.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../../src/core/model/shop.ts';
import { GAUGE_NUMBERS } from './oracle/generate-cells.ts';
import { anyList } from './oracle/generate-list.ts';
import { anyPart, type WrittenPart } from './oracle/generate-part.ts';
import { INCH } from './oracle/lengths.ts';
import { METALS, VAGUE_WORDS } from './oracle/metals.ts';
import { auditCells } from './oracle/product.ts';

/** Rows of a list stand alone and the message names the one at fault, so shrinking whole lists would gain nothing. */
const RUNS = { seed: 20_250_115, numRuns: 12, endOnFailure: true };
const HEADINGS = ['Part number', 'Qty', 'Material', 'Thickness (mm)', 'Hole (mm)', 'Edge distance (mm)'];
const RANK = { fails: 0, unknown: 1, marginal: 2, holds: 3, note: 3 } as const;

const parts = (count: number) => fc.tuple(...Array.from({ length: count }, (_, number) => anyPart(number)));
const hundredths = (from: number, to: number) => fc.integer({ min: from, max: to }).map((n) => n / 100);

/** A row in plain numbers, in mm. */
interface Plain {
  readonly part: WrittenPart;
  readonly material: string;
  readonly thickness: number | string;
  readonly hole?: number | string;
  readonly edge?: number | string;
}

function cellsOf({ part, material, thickness, hole = '', edge = '' }: Plain): string[] {
  return [part.partNumber, '4', material, String(thickness), String(hole), String(edge)];
}

/** Rows of one list judged by the product, in order. */
function auditRows(catalogue: readonly WrittenPart[], rows: readonly Plain[], shop: Partial<ShopSettings> = {}) {
  const lines = auditCells(catalogue, HEADINGS, rows.map(cellsOf), shop);
  return rows.map((_, index) => lines.get(index + 2)!);
}

const outcomeOf = (line: AuditedLine, rule: string) => line.findings.find((finding) => finding.rule === rule)!.outcome;
const outcomesOf = ({ findings }: AuditedLine) => findings.map(({ rule, outcome }) => `${rule} ${outcome}`);
/** Without the check that only inch sizes call for: that a decimal is another metal's gauge. */
const sizedOutcomes = (line: AuditedLine) => outcomesOf(line).filter((text) => !text.startsWith('sheet/gauge-metal'));
const namesOf = (id: keyof typeof METALS): readonly string[] => [...METALS[id].names, ...METALS[id].assumed];
const ANY_NAME = (Object.keys(METALS) as (keyof typeof METALS)[]).map((id) => namesOf(id)[0]!);

/** A part for which everything is known, in a pair that practice allows. */
const soundPart: WrittenPart = {
  partNumber: 'QX-500',
  kind: 'clinch nut',
  material: 'stainless-400-hardened',
  classes: ['400'],
  stated: { scale: 'HRC', value: 38 },
  sheetLimitHrb: null,
  sheetMinMm: 1,
  sheetMaxMm: null,
  holeMm: 5.6,
  band: { plusMm: 0.08, minusMm: 0 },
  edgeMm: 6,
};

describe('sheet thickness', () => {
  it('a thicker sheet never makes it worse where the part has no maximum', () => {
    const rows = fc.array(fc.tuple(fc.nat(19), fc.constantFrom(...ANY_NAME), hundredths(30, 300), hundredths(0, 200)), {
      minLength: 60,
      maxLength: 60,
    });
    fc.assert(
      fc.property(parts(20), rows, (made, picks) => {
        const catalogue = made.map((part) => ({ ...part, sheetMaxMm: null }));
        const rowsWith = (extra: (more: number) => number) =>
          picks.map(([at, material, mm, more]) => ({
            part: catalogue[at]!,
            material,
            thickness: (mm + extra(more)).toFixed(2),
          }));
        const thin = auditRows(
          catalogue,
          rowsWith(() => 0),
        );
        const thick = auditRows(
          catalogue,
          rowsWith((more) => more),
        );
        for (const [index, line] of thin.entries()) {
          const [before, after] = [line, thick[index]!].map((one) => outcomeOf(one, 'clinch/sheet-thickness'));
          expect(RANK[after!], `${thick[index]!.line.cells}`).toBeGreaterThanOrEqual(RANK[before!]);
        }
      }),
      RUNS,
    );
  });
});

describe('hardness', () => {
  /** Each from soft to hard, in one family, one scale and one standing in practice. */
  const FROM_SOFT_TO_HARD = [
    ['A109 No.5', 'A109 No.4', 'A109 No.3', 'A109 No.2'],
    ['DC01 C290', 'DC01 C340', 'DC01 C390', 'DC01 C440', 'DC01 C490', 'DC01 C590'],
    ['DC04', 'DC01'],
    ['A1008 CS', 'SPCC'],
    ['S355MC', 'S420MC', 'S500MC'],
    ['304L', '304', '316', '301 annealed'],
    ['3003-H14', '5052-H32', '6082-T6', '2024-T3', '7075-T6'],
  ];

  it('a harder sheet never makes it better', () => {
    let differing = 0;
    fc.assert(
      fc.property(parts(20), (catalogue) => {
        for (const metals of FROM_SOFT_TO_HARD) {
          const rows = catalogue.flatMap((part) => metals.map((material) => ({ part, material, thickness: 2 })));
          const ranks = auditRows(catalogue, rows).map((line) => RANK[outcomeOf(line, 'clinch/hardness')]);
          for (const [index, rank] of ranks.entries()) {
            if (index % metals.length === 0) continue;
            const softer = ranks[index - 1]!;
            expect(rank, `${cellsOf(rows[index]!)}`).toBeLessThanOrEqual(softer);
            if (rank < softer) differing += 1;
          }
        }
      }),
      RUNS,
    );
    expect(differing).toBeGreaterThan(100);
  });
});

describe('hole', () => {
  it('inside the band always holds, with a tolerance that stays inside or with none', () => {
    const place = fc.tuple(fc.nat(19), fc.integer({ min: 0, max: 100 }), fc.integer({ min: 0, max: 100 }));
    fc.assert(
      fc.property(parts(20), fc.array(place, { minLength: 60, maxLength: 60 }), (made, places) => {
        const catalogue = made.map((part) => ({ ...part, holeMm: part.holeMm ?? 5 }));
        const rows = places.map(([at, low, high], index) => {
          const part = catalogue[at]!;
          const band = part.band ?? { plusMm: 0.08, minusMm: 0 };
          const inside = (percent: number) =>
            part.holeMm - band.minusMm + ((band.plusMm + band.minusMm) * percent) / 100;
          const [from, to] = [inside(Math.min(low, high)), inside(Math.max(low, high))];
          const written = index % 2 === 0 ? from.toFixed(3) : `${from.toFixed(3)} +${(to - from).toFixed(3)}/-0`;
          return { part, material: 'DC01', thickness: 2, hole: written };
        });
        for (const line of auditRows(catalogue, rows))
          expect(outcomeOf(line, 'clinch/hole'), `${line.line.cells}`).toBe('holds');
      }),
      RUNS,
    );
  });
});

describe('a missing fact', () => {
  const row: Plain = { part: soundPart, material: '304', thickness: 1.5, hole: 5.62, edge: 7 };
  const without = (change: Partial<WrittenPart>, at: number): WrittenPart => ({
    ...soundPart,
    ...change,
    partNumber: `QX-51${at}`,
  });
  const silentParts = [
    without({ sheetMinMm: null }, 1),
    without({ holeMm: null, band: null }, 2),
    without({ edgeMm: null }, 3),
    without({ material: '', classes: [], stated: null }, 4),
    without({ material: '', classes: [] }, 5),
    without({ material: 'brass', classes: ['brass'], stated: null }, 6),
  ];
  const unlisted = { ...soundPart, partNumber: 'ZZ-7' };
  const unread = fc.constantFrom('', '-', '??', 'see drawing', 'abc', 'TBC');

  it('never leaves a row that holds, whether list or catalogue is silent', () => {
    const thickness = hundredths(100, 300);
    const material = fc.constantFrom('304', '304L', 'DC01', 'CRS', '5052-H32', '6061-T6', 'GALVANNEAL');
    fc.assert(
      fc.property(fc.array(fc.tuple(thickness, material, unread), { minLength: 20, maxLength: 20 }), (picks) => {
        const whole = picks.map(([mm, metal]) => ({ ...row, thickness: mm, material: metal }));
        const gaps = whole.flatMap((one, index) => [
          { ...one, material: picks[index]![2] },
          { ...one, thickness: picks[index]![2] },
          { ...one, part: unlisted },
          ...silentParts.map((part) => ({ ...one, part })),
        ]);
        const catalogue = [soundPart, ...silentParts];
        expect(new Set(auditRows(catalogue, whole).map(({ verdict }) => verdict))).toEqual(new Set(['holds']));
        for (const line of auditRows(catalogue, gaps)) expect(line.verdict, `${line.line.cells}`).toBe('unknown');
      }),
      RUNS,
    );
  });

  it('is unknown for hole and edge once the shop wants it so', () => {
    const rows = [row, { ...row, hole: '' }, { ...row, edge: '' }, { ...row, hole: '', edge: '' }];
    const outcomes = (shop: Partial<ShopSettings>) =>
      auditRows([soundPart], rows, shop).map((line) =>
        ['clinch/hole', 'clinch/edge'].map((rule) => outcomeOf(line, rule)),
      );
    const inAllCases = (silent: string) => [
      ['holds', 'holds'],
      [silent, 'holds'],
      ['holds', silent],
      [silent, silent],
    ];
    expect(outcomes({ silence: 'note' })).toEqual(inAllCases('note'));
    expect(outcomes({ silence: 'unknown' })).toEqual(inAllCases('unknown'));
  });
});

describe('a list', () => {
  it('is judged the same in any order of rows', () => {
    const shuffled = anyList(120).chain((list) =>
      fc
        .shuffledSubarray([...list.rows.keys()], { minLength: list.rows.length })
        .map((order) => ({ list, order: [...order] })),
    );
    fc.assert(
      fc.property(shuffled, ({ list: { parts: catalogue, rows, headings, shop }, order }) => {
        const cells = rows.map((row) => row.cells);
        const before = auditCells(catalogue, headings, cells, shop);
        const after = auditCells(
          catalogue,
          headings,
          order.map((at) => cells[at]!),
          shop,
        );
        for (const [place, at] of order.entries())
          expect(outcomesOf(after.get(place + 2)!), `${cells[at]}`).toEqual(outcomesOf(before.get(at + 2)!));
      }),
      RUNS,
    );
  });

  it('is judged the same in inches of four places as in mm', () => {
    const sizes = fc.tuple(
      fc.nat(19),
      fc.constantFrom(...ANY_NAME),
      hundredths(50, 300),
      fc.integer({ min: -15, max: 15 }).map((n) => n / 100),
      fc.integer({ min: -100, max: 300 }).map((n) => n / 100),
    );
    const shops: readonly Partial<ShopSettings>[] = [
      DEFAULT_SHOP,
      { judgeThicknessAt: 'thinnest', thicknessStandard: 'en' },
    ];
    fc.assert(
      fc.property(
        parts(20),
        fc.array(sizes, { minLength: 80, maxLength: 80 }),
        fc.constantFrom(...shops),
        (catalogue, picks, shop) => {
          const mm = picks.map(([at, material, thickness, hole, edge]) => {
            const part = catalogue[at]!;
            const sized = [thickness, (part.holeMm ?? 5) + hole, (part.edgeMm ?? 6) + edge];
            return { head: [part.partNumber, '4', material], sized };
          });
          const inHeadings = HEADINGS.map((heading) => heading.replace('(mm)', '(in)'));
          const write = (by: (size: number) => string) => mm.map(({ head, sized }) => [...head, ...sized.map(by)]);
          const inMm = auditCells(
            catalogue,
            HEADINGS,
            write((size) => size.toFixed(2)),
            shop,
          );
          const inInches = auditCells(
            catalogue,
            inHeadings,
            write((size) => (size / INCH).toFixed(4)),
            shop,
          );
          for (const [row, line] of inMm)
            expect(sizedOutcomes(inInches.get(row)!), `${line.line.cells}`).toEqual(sizedOutcomes(line));
        },
      ),
      RUNS,
    );
  });
});

describe('a vague word', () => {
  it('never holds where one of its metals does not', () => {
    let holding = 0;
    const thickness = fc.oneof(
      hundredths(50, 300).map(String),
      fc.constantFrom(...GAUGE_NUMBERS).map((number) => `${number} ga`),
    );
    fc.assert(
      fc.property(parts(20), fc.array(thickness, { minLength: 20, maxLength: 20 }), (catalogue, thicknesses) => {
        const rowsOf = (material: string) =>
          catalogue.map((part, index) => ({ part, material, thickness: thicknesses[index]! }));
        const words = VAGUE_WORDS.map(({ text, couldBe }) => [text, ...couldBe.map((id) => namesOf(id)[0]!)]);
        const lines = auditRows(catalogue, words.flat().flatMap(rowsOf));
        for (const names of words) {
          const [vague, ...each] = names.map(() => lines.splice(0, catalogue.length));
          for (const [index, line] of vague!.entries()) {
            if (line.verdict !== 'holds') continue;
            holding += 1;
            const verdicts = new Set(each.map((judged) => judged[index]!.verdict));
            expect(verdicts, `${line.line.cells}`).toEqual(new Set(['holds']));
          }
        }
      }),
      RUNS,
    );
    expect(holding).toBeGreaterThan(50);
  });
});
