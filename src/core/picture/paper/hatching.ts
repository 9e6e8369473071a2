import type { Point } from '../drawing.ts';
import { pathOf } from './pieces.ts';

const APART_PX = 7;

/** Path data of slanted lines across the rectangle that some corners span, in px. They start at fixed places, so two halves match. */
export function hatching(corners: readonly Point[]): string {
  const xs = corners.map(({ x }) => x);
  const ys = corners.map(({ y }) => y);
  const [left, right] = [Math.min(...xs), Math.max(...xs)];
  const [top, bottom] = [Math.min(...ys), Math.max(...ys)];
  const lines: string[] = [];
  const first = Math.ceil((left + top) / APART_PX) * APART_PX;
  for (let sum = first; sum < right + bottom; sum += APART_PX) {
    // On one line x + y stays the same: from the lower or left face up to the upper or right one.
    const from = { x: Math.max(left, sum - bottom), y: Math.min(bottom, sum - left) };
    const to = { x: Math.min(right, sum - top), y: Math.max(top, sum - right) };
    if (to.x - from.x > 0.5) lines.push(pathOf([from, to]));
  }
  return lines.join('');
}
