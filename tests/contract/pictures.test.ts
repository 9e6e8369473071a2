import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { drawRow } from '../../src/core/picture/draw-row.ts';
import type { Point } from '../../src/core/picture/drawing.ts';
import { layOut } from '../../src/core/picture/paper/lay-out.ts';
import { boxOf, overlap, type Piece } from '../../src/core/picture/paper/pieces.ts';
import { escapeText, showSvg } from '../../src/core/picture/paper/show-svg.ts';
import { demoRows, placesOf, rowFor } from './picture-cases.ts';
import { rows } from './picture-rows.ts';

const DEMO = demoRows();
/** Of the narrowest panel, of one of three on a page, of the panel as it opens, and of the widest. */
const WIDTHS = [260, 304, 392, 560];
const FAULTY = [{ thickness: '0.8' }, { hole: '6.2' }, { edge: '6', bend: '5', spacing: '7' }, { thickness: '' }];

describe('every picture', () => {
  it('has finite places and says how the row came out, whatever is missing', () => {
    fc.assert(
      fc.property(rows, (row) => {
        for (const drawing of drawRow(row)) {
          expect(placesOf(drawing).every(Number.isFinite)).toBe(true);
          const names = drawing.shapes.map(({ name }) => name);
          expect(new Set(names).size).toBe(names.length);
          const { pieces, heightPx } = layOut(drawing, 392);
          expect(heightPx).toBeGreaterThan(0);
          expect(JSON.stringify(pieces)).not.toMatch(/NaN|Infinity|null/);
          if (drawing.kind !== 'hardness') expect(drawing.summary).toContain(WORDS[row.line.verdict]);
        }
      }),
      { numRuns: 300 },
    );
  });

  it('has every shape where its millimetres say, by one scale across and down', () => {
    let seen = 0;
    for (const row of [...DEMO, ...FAULTY.map((cells) => rowFor({ cells }))])
      for (const drawing of drawRow(row).filter(({ scale }) => scale === 'true')) {
        const { pieces, pxPerMm } = layOut(drawing, 392);
        const origin = pointsOf(pieces, drawing.shapes[0]!.name)[0]!;
        const first = drawing.shapes[0]!.points[0]!;
        const near = (px: number, wanted: number) => expect(Math.abs(px - wanted)).toBeLessThan(0.02);
        for (const { name, points, radiusMm = null } of drawing.shapes) {
          const places = pointsOf(pieces, name);
          const { x: leftPx, y: topPx } = origin;
          // A circle starts at its left end; the second pair is its radius, across and down.
          if (radiusMm !== null) near(places[1]!.x, radiusMm * pxPerMm);
          (radiusMm === null ? places : places.slice(0, 1)).forEach(({ x, y }, at) => {
            near(x - leftPx, (points[at]!.x - (radiusMm ?? 0) - first.x) * pxPerMm);
            near(y - topPx, (points[at]!.y - first.y) * pxPerMm);
            seen++;
          });
        }
      }
    expect(seen).toBeGreaterThan(5000);
  });

  it('covers no text with another, at any width, in mm and in inches', () => {
    const inches = demoRows({ ...DEFAULT_SHOP, units: 'in' });
    for (const row of [...DEMO, ...inches])
      for (const drawing of drawRow(row)) for (const width of WIDTHS) expect(covered(drawing, width)).toEqual([]);
  });

  it('covers no text with another for generated rows', () => {
    fc.assert(
      fc.property(rows, fc.constantFrom(...WIDTHS), (row, width) => {
        for (const drawing of drawRow(row)) expect(covered(drawing, width)).toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});

const WORDS = { holds: 'holds', marginal: 'marginal', fails: 'fails', unknown: 'unknown' };

/** Pairs of texts of which one covers the other, and texts that leave the paper. */
function covered(drawing: Parameters<typeof layOut>[0], width: number): readonly string[] {
  const { pieces, topPx, heightPx } = layOut(drawing, width);
  const texts = pieces.flatMap((piece) => (piece.kind === 'text' ? [{ ...piece, box: boxOf(piece, piece.at) }] : []));
  const outside = texts.filter(
    ({ box }) =>
      box.left < -0.1 || box.right > width + 0.1 || box.top < topPx - 0.1 || box.bottom > topPx + heightPx + 0.1,
  );
  const pairs = texts.flatMap((one, at) =>
    texts.slice(at + 1).flatMap((other) => (overlap(one.box, other.box) ? `${one.text} / ${other.text}` : [])),
  );
  return [...outside.map(({ text }) => `outside: ${text}`), ...pairs];
}

/** Corners of a path in px. */
function pointsOf(pieces: readonly Piece[], name: string): readonly Point[] {
  const piece = pieces.find((one) => one.name === name && one.kind === 'path');
  const numbers = (piece?.kind === 'path' ? piece.d : '').match(/-?[\d.]+/g)?.map(Number) ?? [];
  return Array.from({ length: numbers.length / 2 }, (_, at) => ({ x: numbers[2 * at]!, y: numbers[2 * at + 1]! }));
}

describe('a saved drawing', () => {
  const frame = { heading: 'Row 2, <b>&"\u0000', text: 'Fails.', demo: true };

  it('escapes text and carries the safety and demo words', () => {
    const text = showSvg(drawRow(rowFor({ cells: {} })), frame);
    expect(text).toContain('Row 2, &#60;b&#62;&#38;&#34;');
    expect(text).not.toContain('\u0000');
    expect(text).toContain('invented data, not for production');
    expect(text).toContain('does not approve joints');
    expect(showSvg([], { ...frame, demo: false })).not.toContain('invented');
  });

  it('holds every drawing of the row', () => {
    const drawings = drawRow(rowFor({ cells: {} }));
    expect(drawings.map(({ kind }) => kind)).toEqual(['section', 'hardness', 'plan']);
    const text = showSvg(drawings, frame);
    for (const { title } of drawings) expect(text).toContain(title);
  });

  it('stands alone: no styles, scripts or addresses from elsewhere, light whatever the screen', () => {
    const text = showSvg(drawRow(rowFor({ cells: { thickness: '0.8' } })), frame);
    expect(text).not.toMatch(/<style|<script|<image|href|class=|var\(|url\(|currentColor/);
    expect(text.match(/http/g)).toHaveLength(1);
    expect(text).toContain('fill="#ffffff"');
  });

  it('is named by title and words, and so is each drawing in it', () => {
    const drawings = drawRow(rowFor({ cells: { thickness: '0.8' } }));
    const text = showSvg(drawings, { ...frame, heading: 'Row 2', text: 'Fails.' });
    expect(text).toContain('<title>Row 2</title>\n<desc>Fails. Judged by the demo catalogue');
    for (const { kind, title, summary } of drawings) {
      expect(text).toContain(`role="img" aria-labelledby="${kind}-title ${kind}-words"`);
      expect(text).toContain(`<title id="${kind}-title">${title}</title>`);
      expect(text).toContain(`<desc id="${kind}-words">${escapeText(summary)}</desc>`);
    }
  });
});
