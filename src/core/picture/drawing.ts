import type { Outcome } from '../model/outcome.ts';

/** A place in a drawing, in mm of the real thing; x to the right, y downwards. */
export interface Point {
  readonly x: number;
  readonly y: number;
}

/** What a line or area stands for; how it is drawn follows from it. */
export type Look =
  /** Cut sheet metal, hatched. */
  | 'metal'
  /** The sheet seen from above. */
  | 'face'
  /** Cut metal of the fastener, without its outline. */
  | 'part'
  /** Coating on the wall of the hole. */
  | 'coating'
  /** Hardness of a sheet from typical to maximum. */
  | 'band'
  /** Scatter around a limit. */
  | 'scatter'
  /** What is wrong, in the colour of its outcome. */
  | 'wrong'
  | 'outline'
  | 'thread'
  | 'axis'
  /** Where the sheet goes on beyond the drawing. */
  | 'break'
  /** The thinnest sheet that the mill may deliver. */
  | 'thinnest'
  /** What the part asks for. */
  | 'asked'
  /** What nobody has said: never a solid line. */
  | 'unknown'
  | 'fastener'
  | 'tick'
  | 'dimension'
  | 'asked-dimension';

/** A polygon, an open line, or a circle. */
export interface Shape {
  /** Unique within its drawing: "sheet-left", "shank". */
  readonly name: string;
  readonly look: Look;
  /** Corners; of a circle its centre alone. */
  readonly points: readonly Point[];
  /** Closed to an area. */
  readonly closed: boolean;
  /** Set for a circle. */
  readonly radiusMm?: number;
  /** Set where the shape marks what a check found. */
  readonly outcome?: Outcome;
}

/** A distance between two places with its text; the text stands beside the drawing, so its place is a matter of the screen. */
export interface Dimension {
  readonly name: string;
  /** On which side of the drawing it stands; left and right measure heights, the others widths. */
  readonly side: 'left' | 'right' | 'above' | 'below';
  readonly fromMm: number;
  readonly toMm: number;
  /** Where its thin lines start: the other coordinate at both ends. */
  readonly startMm: number;
  readonly lines: readonly string[];
  /** Blueprint blue: asked for, not given. */
  readonly asked?: boolean;
  readonly outcome?: Outcome;
}

/** A text at a place of the drawing. */
export interface Label {
  readonly name: string;
  readonly text: string;
  readonly at: Point;
  /** Which part of the text stands at the place, the wish first; others are taken where it would cover another text. */
  readonly anchor: 'start' | 'middle' | 'end';
  /** The text keeps left of this place where there is room: it would cover a line there. */
  readonly leftOfMm?: number;
  readonly asked?: boolean;
  readonly outcome?: Outcome;
}

/**
 * A picture made of numbers. Every place is in mm of the real thing at true scale; stroke widths and sizes of text are matters of the
 * screen. Where `scale` is `points`, one mm across is one Rockwell B point, and y counts rows of text.
 */
export interface Drawing {
  readonly kind: 'section' | 'hardness' | 'plan';
  readonly scale: 'true' | 'points';
  readonly title: string;
  /** What one sees, in words. */
  readonly summary: string;
  /** Left upper corner. */
  readonly corner: Point;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly shapes: readonly Shape[];
  readonly dimensions: readonly Dimension[];
  readonly labels: readonly Label[];
  /** Facts that would be needed to draw the rest: "shank length". */
  readonly notKnown: readonly string[];
  /** What was taken for granted, and what the picture leaves out, in sentences. */
  readonly notes: readonly string[];
}

/** A rectangle between two corners, in any order. */
export function rectangle(name: string, look: Look, a: Point, b: Point, outcome?: Outcome): Shape {
  const points = [a, { x: b.x, y: a.y }, b, { x: a.x, y: b.y }];
  return { name, look, points, closed: true, ...(outcome ? { outcome } : {}) };
}

/** An open line through places. */
export function polyline(name: string, look: Look, points: readonly Point[], outcome?: Outcome): Shape {
  return { name, look, points, closed: false, ...(outcome ? { outcome } : {}) };
}

/** A circle around a place. */
export function circle(name: string, look: Look, centre: Point, radiusMm: number, outcome?: Outcome): Shape {
  return { name, look, points: [centre], closed: true, radiusMm, ...(outcome ? { outcome } : {}) };
}

/** A length that can be drawn: positive and finite, else null. */
export function drawable(mm: number | null | undefined): number | null {
  return mm !== null && mm !== undefined && Number.isFinite(mm) && mm > 0 ? mm : null;
}

/** Least and most of the places of shapes along both axes; of no shapes a single point. */
export function boundsOf(shapes: readonly Shape[]): { readonly least: Point; readonly most: Point } {
  const all = shapes.flatMap(({ points, radiusMm = 0 }) =>
    points.flatMap(({ x, y }) => [
      { x: x - radiusMm, y: y - radiusMm },
      { x: x + radiusMm, y: y + radiusMm },
    ]),
  );
  if (all.length === 0) return { least: { x: 0, y: 0 }, most: { x: 0, y: 0 } };
  const xs = all.map(({ x }) => x);
  const ys = all.map(({ y }) => y);
  return { least: { x: Math.min(...xs), y: Math.min(...ys) }, most: { x: Math.max(...xs), y: Math.max(...ys) } };
}
