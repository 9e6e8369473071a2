import { interpolate, type Point } from './interpolate.ts';

/** What one metal's tables make of a hardness. */
export interface Reading {
  readonly hrb: number;
  readonly below: boolean;
  readonly tables: readonly string[];
  readonly other?: { readonly hrb: number; readonly table: string } | null;
}

/** A curve to Rockwell B with the foot below which it only says "softer than". */
export interface Scale {
  readonly curve: readonly Point[];
  readonly foot: number;
  readonly table: string;
}

/** Reads a scale: the foot for everything softer, null for everything harder than the table. */
export function readScale({ curve, foot, table }: Scale, x: number): Reading | null {
  const lowest = Math.min(...curve.map(([value]) => value));
  if (x < lowest) return { hrb: foot, below: true, tables: [table] };
  const hrb = interpolate(curve, x);
  if (hrb === null) return null;
  return hrb < foot ? { hrb: foot, below: true, tables: [table] } : { hrb, below: false, tables: [table] };
}
