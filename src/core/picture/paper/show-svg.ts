import type { Outcome } from '../../model/outcome.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../../say/safety.ts';
import type { Drawing, Look } from '../drawing.ts';
import { type LaidOut, layOut } from './lay-out.ts';
import { MARK_PX, type Piece, TEXT_PX, type Tone } from './pieces.ts';
import { wrapText } from './text-width.ts';
import { VERDICT_SHAPES } from './verdict-shapes.ts';

/** What stands around the drawings of a saved file. */
export interface SvgFrame {
  /** "Row 17, NUT-M4-10-S3: fails". */
  readonly heading: string;
  /** Sentences under the heading: the decision. */
  readonly text: string;
  /** True: invented catalogue data stand behind it, and the file says so. */
  readonly demo: boolean;
}

const WIDTH_PX = 480;
const MARGIN_PX = 20;
const INNER_PX = WIDTH_PX - 2 * MARGIN_PX;
const HEADING_PX = 15;
const BOLD_WIDER = 1.06;
const INK = '#1d2327';
const SOFT = '#5c666d';
const BLUE = '#1f4e79';
const GROUND = '#ffffff';
const RULE = '#d9d6cd';

const OUTCOME_COLOURS: Readonly<Record<Outcome, string>> = {
  holds: '#1a7a58',
  marginal: '#8f5907',
  fails: '#b8322a',
  unknown: '#56606b',
  note: SOFT,
};

/**
 * The drawings of one row, one under the other, as an SVG file that stands alone: light colours of its own whatever the screen shows,
 * text escaped, and the safety words, as it leaves the tool.
 */
export function showSvg(drawings: readonly Drawing[], frame: SvgFrame): string {
  const { elements, heightPx } = sheetOf(drawings, frame);
  const height = Math.ceil(heightPx + MARGIN_PX);
  const words = [frame.text, ...(frame.demo ? [DEMO_WORDS] : []), SAFETY_SHORT].join(' ');
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<svg xmlns="http://www.w3.org/2000/svg" width="${WIDTH_PX}" height="${height}" viewBox="0 0 ${WIDTH_PX} ${height}" font-family="'IBM Plex Sans', 'Liberation Sans', Arial, sans-serif">`,
    `<title>${escapeText(frame.heading)}</title>`,
    `<desc>${escapeText(words)}</desc>`,
    `<rect width="${WIDTH_PX}" height="${height}" fill="${GROUND}"/>`,
    `<g transform="translate(${MARGIN_PX} 0)">`,
    ...elements,
    '</g>',
    '</svg>',
    '',
  ].join('\n');
}

/** Heading, drawings and words from the top down. */
function sheetOf(drawings: readonly Drawing[], { heading, text, demo }: SvgFrame) {
  const elements: string[] = [];
  let y = MARGIN_PX;
  const write = (words: string, sizePx: number, colour: string, bold = false) => {
    for (const line of wrapText(words, sizePx * (bold ? BOLD_WIDER : 1), INNER_PX)) {
      y += sizePx + 3;
      elements.push(textElement(line, 0, y, sizePx, colour, bold));
    }
  };
  write(heading, HEADING_PX, INK, true);
  write(text, TEXT_PX, INK);
  for (const drawing of drawings) {
    y += 18;
    write(drawing.title, TEXT_PX, SOFT, true);
    elements.push(`<path d="M0 ${y + 5}h${INNER_PX}" stroke="${RULE}" fill="none"/>`);
    const laid = layOut(drawing, INNER_PX);
    elements.push(...drawingElements(drawing, laid, y + 12));
    y += 12 + laid.heightPx;
  }
  y += 14;
  if (demo) write(DEMO_WORDS, TEXT_PX, INK, true);
  write(SAFETY_SHORT, TEXT_PX, SOFT);
  return { elements, heightPx: y };
}

/** A drawing as one picture for screen readers, its upper end at that height. */
function drawingElements({ kind, title, summary }: Drawing, { pieces, topPx }: LaidOut, y: number): readonly string[] {
  return [
    `<g transform="translate(0 ${px(y - topPx)})" role="img" aria-labelledby="${kind}-title ${kind}-words">`,
    `<title id="${kind}-title">${escapeText(title)}</title>`,
    `<desc id="${kind}-words">${escapeText(summary)}</desc>`,
    ...pieces.map(pieceElement),
    '</g>',
  ];
}

/** Text that XML can carry: signs of markup written as entities, characters that XML forbids taken out. */
export function escapeText(text: string): string {
  return text
    .replace(/[\x00-\x08\x0b\x0c\x0e-\x1f\ufffe\uffff]/g, '')
    .replace(/[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g, '\ufffd')
    .replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`);
}

function pieceElement(piece: Piece): string {
  if (piece.kind === 'text')
    return textElement(piece.text, piece.at.x, piece.at.y, TEXT_PX, TONE_COLOURS[piece.tone], false);
  if (piece.kind === 'mark') return markElement(piece.outcome, piece.at.x, piece.at.y);
  const colour = piece.outcome ? OUTCOME_COLOURS[piece.outcome] : undefined;
  return `<path d="${piece.d}" ${PAINTS[piece.look](colour)}/>`;
}

function textElement(text: string, x: number, y: number, sizePx: number, colour: string, bold: boolean): string {
  const weight = bold ? ' font-weight="600"' : '';
  return `<text x="${px(x)}" y="${px(y)}" font-size="${sizePx}" fill="${colour}" stroke="${GROUND}" stroke-width="3" stroke-linejoin="round" paint-order="stroke"${weight}>${escapeText(text)}</text>`;
}

function markElement(outcome: Outcome, x: number, y: number): string {
  const colour = OUTCOME_COLOURS[outcome];
  const strokes = VERDICT_SHAPES[outcome].map(({ d, paint, width, dashes }) => {
    if (paint === 'area') return `<path d="${d}" fill="${colour}"/>`;
    const dash = dashes ? ` stroke-dasharray="${dashes}"` : '';
    return `<path d="${d}" fill="none" stroke="${paint === 'cut' ? GROUND : colour}" stroke-width="${width}"${dash}/>`;
  });
  return `<g transform="translate(${px(x)} ${px(y)}) scale(${MARK_PX / 16})">${strokes.join('')}</g>`;
}

const TONE_COLOURS: Readonly<Record<Tone, string>> = { ...OUTCOME_COLOURS, plain: INK, soft: SOFT, asked: BLUE };

const area = (fill: string, stroke: string) => `fill="${fill}" stroke="${stroke}" stroke-width="1"`;
const line = (stroke: string, width: number, dashes?: string) =>
  `fill="none" stroke="${stroke}" stroke-width="${width}"${dashes ? ` stroke-dasharray="${dashes}"` : ''}`;

const PAINTS: Readonly<Record<Look | 'hatch', (colour?: string) => string>> = {
  metal: () => 'fill="#e6eef5" stroke="none"',
  face: () => 'fill="#e6eef5" stroke="none"',
  part: () => 'fill="#f0ede4" stroke="none"',
  coating: () => area('#d9d6cd', SOFT),
  band: () => area('#e6eef5', INK),
  scatter: () => 'fill="#1f4e79" fill-opacity="0.12" stroke="none"',
  wrong: (colour = INK) =>
    `fill="${colour}" fill-opacity="0.18" stroke="${colour}" stroke-width="1" stroke-dasharray="3 2"`,
  hatch: (colour = '#8fa3b5') => line(colour, 0.7),
  outline: () => line(INK, 1.2),
  thread: () => line(INK, 0.6),
  axis: () => line(SOFT, 0.7, '9 3 2 3'),
  break: () => line(SOFT, 0.7),
  thinnest: () => line(INK, 0.6),
  asked: () => line(BLUE, 1),
  'asked-dimension': (colour = BLUE) => line(colour, 0.7),
  unknown: () => line('#56606b', 1, '4 3'),
  fastener: () => line(INK, 2),
  tick: () => line(SOFT, 0.8),
  dimension: (colour = SOFT) => line(colour, 0.7),
};

function px(value: number): string {
  return String(Math.round(value * 100) / 100);
}
