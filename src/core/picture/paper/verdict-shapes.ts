import type { Outcome } from '../../model/outcome.ts';

/** One stroke or area of a verdict's shape, in a box of 16 by 16. */
export interface VerdictStroke {
  readonly d: string;
  /** `cut` is drawn in the colour of the ground on top of an area. */
  readonly paint: 'area' | 'line' | 'cut';
  readonly width?: number;
  readonly dashes?: string;
}

/** The four shapes wherever they are drawn: disc with tick, half-filled disc, diamond with cross, dashed square with question mark. */
export const VERDICT_SHAPES: Readonly<Record<Outcome, readonly VerdictStroke[]>> = {
  holds: [
    { d: 'M8 1a7 7 0 1 1 0 14a7 7 0 1 1 0-14z', paint: 'area' },
    { d: 'm4.6 8.2 2.3 2.3 4.5-4.8', paint: 'cut', width: 1.8 },
  ],
  marginal: [
    { d: 'M8 1.8a6.2 6.2 0 1 1 0 12.4a6.2 6.2 0 1 1 0-12.4z', paint: 'line', width: 1.6 },
    { d: 'M8 1.8a6.2 6.2 0 0 1 0 12.4z', paint: 'area' },
  ],
  fails: [
    { d: 'M8 .6 15.4 8 8 15.4.6 8z', paint: 'area' },
    { d: 'm5.9 5.9 4.2 4.2m0-4.2-4.2 4.2', paint: 'cut', width: 1.6 },
  ],
  unknown: [
    {
      d: 'M3.1 1.6h9.8a1.5 1.5 0 0 1 1.5 1.5v9.8a1.5 1.5 0 0 1-1.5 1.5h-9.8a1.5 1.5 0 0 1-1.5-1.5v-9.8a1.5 1.5 0 0 1 1.5-1.5z',
      paint: 'line',
      width: 1.4,
      dashes: '2.4 1.7',
    },
    { d: 'M6 6.2a2 2 0 1 1 2.7 1.9c-.5.2-.7.6-.7 1.2M8 11.2v.9', paint: 'line', width: 1.4 },
  ],
  note: [{ d: 'M8 5.8a2.2 2.2 0 1 1 0 4.4a2.2 2.2 0 1 1 0-4.4z', paint: 'area' }],
};
