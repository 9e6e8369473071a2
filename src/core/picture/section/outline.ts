import { polyline, type Shape } from '../drawing.ts';

/** One step of a turned part: how far it reaches from the axis, between two heights. */
export interface Step {
  readonly halfMm: number;
  readonly fromMm: number;
  readonly toMm: number;
}

/**
 * The outline of steps that lie on top of each other, from the top: one line around both halves where there is a bore, and the edges of
 * the bore behind the cut; else one around the whole.
 */
export function outlineOf(steps: readonly Step[], boreMm: number | null): readonly Shape[] {
  const [first] = steps;
  const last = steps.at(-1);
  if (!first || !last) return [];
  const side = (sign: number) =>
    steps.flatMap(({ halfMm, fromMm, toMm }) => [
      { x: sign * halfMm, y: fromMm },
      { x: sign * halfMm, y: toMm },
    ]);
  if (boreMm === null || steps.some(({ halfMm }) => halfMm <= boreMm)) {
    const points = [...side(1), ...side(-1).reverse()];
    return [{ name: 'rim', look: 'outline', points, closed: true }];
  }
  const half = (name: string, sign: number): Shape => ({
    name,
    look: 'outline',
    points: [{ x: sign * boreMm, y: first.fromMm }, ...side(sign), { x: sign * boreMm, y: last.toMm }],
    closed: true,
  });
  const across = (name: string, y: number) =>
    polyline(name, 'outline', [
      { x: -boreMm, y },
      { x: boreMm, y },
    ]);
  return [half('rim-left', -1), half('rim-right', 1), across('rim-top', first.fromMm), across('rim-end', last.toMm)];
}

/** The outline of one area by itself. */
export function rimOf(shape: Shape): Shape {
  return { ...shape, name: `${shape.name}-rim`, look: 'outline' };
}
