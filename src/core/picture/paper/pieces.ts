import type { Outcome } from '../../model/outcome.ts';
import type { Look, Point } from '../drawing.ts';
import { textWidth } from './text-width.ts';

/** Size of text, distance of its lines, and size of a verdict's shape, in px. */
export const TEXT_PX = 11;
export const LINE_PX = 14;
export const MARK_PX = 11;
const BESIDE_MARK_PX = 3;

/** What a text stands for: plain, background, asked for, or the outcome of a check. */
export type Tone = 'plain' | 'soft' | 'asked' | Outcome;

/** Something to paint, in px. */
export type Piece =
  | {
      readonly kind: 'path';
      readonly name: string;
      readonly look: Look | 'hatch';
      readonly d: string;
      readonly outcome?: Outcome;
    }
  | {
      readonly kind: 'text';
      readonly name: string;
      readonly text: string;
      /** Start of the base line. */
      readonly at: Point;
      readonly tone: Tone;
    }
  | { readonly kind: 'mark'; readonly name: string; readonly outcome: Outcome; readonly at: Point };

/** Something laid out, and how far up and down it reaches. */
export interface Reach {
  readonly pieces: readonly Piece[];
  readonly topPx: number;
  readonly bottomPx: number;
}

/** From mm to px. */
export type ToPx = (place: Point) => Point;

/** A rectangle on screen. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** A line of text, with a verdict's shape before it where it has one. */
export interface TextLine {
  readonly name: string;
  readonly text: string;
  readonly tone: Tone;
  readonly mark?: Outcome;
}

/** Width of a line with its mark. */
export function lineWidth({ text, mark }: Pick<TextLine, 'text' | 'mark'>): number {
  return textWidth(text, TEXT_PX) + (mark ? MARK_PX + BESIDE_MARK_PX : 0);
}

/** The box of a line whose left end and base line are given. */
export function boxOf(line: Pick<TextLine, 'text' | 'mark'>, { x, y }: Point): Box {
  return { left: x, top: y - TEXT_PX, right: x + lineWidth(line), bottom: y + LINE_PX - TEXT_PX };
}

/** Less than this is the rounding of numbers, not a place on paper. */
const NOTHING_PX = 0.001;

/** Do two boxes share any place? Boxes that touch do not. */
export function overlap(a: Box, b: Box): boolean {
  const isAcross = Math.min(a.right, b.right) - Math.max(a.left, b.left) > NOTHING_PX;
  return isAcross && Math.min(a.bottom, b.bottom) - Math.max(a.top, b.top) > NOTHING_PX;
}

/** A line of text as pieces, its left end and base line given. */
export function linePieces({ name, text, tone, mark }: TextLine, { x, y }: Point): readonly Piece[] {
  if (!mark) return [{ kind: 'text', name, text, at: { x, y }, tone }];
  const indent = MARK_PX + BESIDE_MARK_PX;
  return [
    { kind: 'mark', name: `${name}-mark`, outcome: mark, at: { x, y: y - MARK_PX + 2 } },
    { kind: 'text', name, text, at: { x: x + indent, y }, tone },
  ];
}

/** The tone of a text: its outcome, or that it is asked for. */
export function toneOf({ outcome, asked }: { readonly outcome?: Outcome; readonly asked?: boolean }): Tone {
  return outcome ?? (asked ? 'asked' : 'plain');
}

/** Path data through places. */
export function pathOf(points: readonly Point[], closed = false): string {
  return `${points.map(({ x, y }, at) => `${at === 0 ? 'M' : 'L'}${short(x)} ${short(y)}`).join('')}${closed ? 'Z' : ''}`;
}

/** Path data of a circle. */
export function circlePath({ x, y }: Point, radius: number): string {
  const r = short(radius);
  return `M${short(x - radius)} ${short(y)}a${r} ${r} 0 1 0 ${short(2 * radius)} 0a${r} ${r} 0 1 0 ${short(-2 * radius)} 0Z`;
}

/** Px to two decimals. */
export function short(px: number): number {
  return Math.round(px * 100) / 100;
}
