import type { Role } from '../model/list.ts';

/** Kinds of column that hold lengths. */
export type SizeRole = 'thickness' | 'hole' | 'edge' | 'length' | 'spacing' | 'bend';

/** Whether a column of this kind holds lengths. */
export function isSizeRole(role: Role): role is SizeRole {
  return role in WRITTEN_SPANS;
}

/** Lowest and highest number, both included. */
export type Span = readonly [low: number, high: number];

/** Sheet that press-in fasteners can go into, in mm: a thickness outside it is not believed. Common practice, no source. */
export const POSSIBLE_SHEET_MM: Span = [0.2, 12.7];

/**
 * What people write in such a column, as bare numbers in each unit; a number that fits one span alone tells the unit. Inch
 * thicknesses reach up to 1 although no such sheet is pressed into: `0.8` and `1` stay a question. Common practice, no source.
 */
export const WRITTEN_SPANS: Readonly<Record<SizeRole, { readonly mm: Span; readonly in: Span }>> = {
  thickness: { mm: [0.2, 12.7], in: [0.0078, 1] },
  hole: { mm: [0.8, 60], in: [0.03, 1.5] },
  edge: { mm: [1, 3000], in: [0.04, 3] },
  bend: { mm: [1, 3000], in: [0.04, 3] },
  spacing: { mm: [2, 3000], in: [0.08, 6] },
  length: { mm: [1, 500], in: [0.04, 5] },
};

/** Is a number inside a span? Never for what is no number. */
export function isInSpan(value: number, [low, high]: Span): boolean {
  return value >= low && value <= high;
}
