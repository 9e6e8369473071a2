import type { Part } from './parts.ts';
import { diameterMm } from './threads.ts';

/** Invented dimensions in mm: they follow from the diameter and the shank code by the formulas below, not from any table. */
export function dimensionsOf(part: Part) {
  const d = diameterMm(part.size);
  const holeMm = isThin(part) ? roundTo(1.04 * d, 0.05) : roundTo(1.25 * d + 0.6, 0.05);
  const sheetMinMm = part.shank / 10;
  const edgeMm = roundUpTo(1.6 * holeMm, 0.5);
  return {
    sheetMinMm,
    sheetMaxMm: hasMaximum(part) ? roundTo(sheetMinMm + 2.2, 0.1) : null,
    shankMm: hasShank(part) ? roundTo(0.9 * sheetMinMm, 0.01) : null,
    flush: hasShank(part) || part.kind === 'clinch stud' ? 'yes' : 'no',
    holeMm,
    edgeMm,
    spacingMm: part.kind === 'clinch nut' ? edgeMm : null,
    flangeMm: part.kind === 'clinch pin' ? null : roundTo(1.9 * d, 0.01),
    heightMm: heightOf(part, d),
  };
}

/** Whose shank is the thread or the pin itself, so that the hole is about its diameter. */
function isThin({ kind }: Part): boolean {
  return kind === 'clinch stud' || kind === 'clinch pin';
}

/** Whose shank length is a dimension of its own and must not stand proud. */
function hasShank({ kind }: Part): boolean {
  return kind !== 'clinch stud' && kind !== 'captive screw';
}

function hasMaximum({ kind }: Part): boolean {
  return kind === 'captive screw' || kind === 'floating nut';
}

function heightOf({ kind, lengthMm }: Part, d: number): number | null {
  if (kind === 'clinch nut' || kind === 'floating nut') return roundTo(0.9 * d, 0.05);
  return kind === 'through standoff' || kind === 'blind standoff' ? lengthMm : null;
}

/** A hair against sums such as 3.7249999, which should round like 3.725. */
const HAIR = 1e-9;

export function roundTo(value: number, step: number): number {
  return clean(Math.round(value / step + HAIR) * step);
}

export function roundUpTo(value: number, step: number): number {
  return clean(Math.ceil(value / step - HAIR) * step);
}

function clean(value: number): number {
  return Number(value.toFixed(6));
}
