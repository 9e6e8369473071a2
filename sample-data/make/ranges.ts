import type { FastenerKind } from '../../src/core/model/fastener.ts';
import type { Size } from './threads.ts';

/** Material at the end of a demo part number: carbon steel, 300-series, 400-series, aluminium, precipitation-hardened. */
export type MaterialCode = 'CS' | 'S3' | 'S4' | 'AL' | 'PH';

/** Parts that exist in every combination of the lists; shank codes are the minimum sheet in tenths of a millimetre. */
export interface Range {
  readonly kind: FastenerKind;
  readonly sizes: readonly Size[];
  readonly shanks: readonly number[];
  /** Millimetres; absent for nuts, which have none. */
  readonly lengths?: readonly number[];
  readonly materials: readonly MaterialCode[];
}

/** What the made-up supplier makes. */
export const ranges: readonly Range[] = [
  { kind: 'clinch nut', sizes: ['M2.5'], shanks: [6, 8, 10], materials: ['CS', 'S3', 'S4'] },
  { kind: 'clinch nut', sizes: ['M3'], shanks: [6, 8, 10, 15], materials: ['CS', 'S3', 'S4', 'AL'] },
  { kind: 'clinch nut', sizes: ['M4'], shanks: [8, 10, 15], materials: ['CS', 'S3', 'S4', 'AL'] },
  { kind: 'clinch nut', sizes: ['M5'], shanks: [10, 15, 20], materials: ['CS', 'S3', 'S4'] },
  { kind: 'clinch nut', sizes: ['M6', 'M8'], shanks: [15, 20], materials: ['CS', 'S3', 'S4'] },
  { kind: 'clinch nut', sizes: ['4-40', '6-32'], shanks: [8, 10], materials: ['CS', 'S3'] },
  { kind: 'clinch nut', sizes: ['8-32', '10-32'], shanks: [10, 15], materials: ['CS', 'S3', 'S4'] },
  { kind: 'clinch nut', sizes: ['10-24'], shanks: [10, 15], materials: ['CS'] },
  { kind: 'clinch nut', sizes: ['1/4-20'], shanks: [15, 20], materials: ['CS'] },
  { kind: 'clinch stud', sizes: ['M2.5'], shanks: [8], lengths: [6, 10], materials: ['CS', 'S3'] },
  { kind: 'clinch stud', sizes: ['M3'], shanks: [8, 10], lengths: [8, 12, 16], materials: ['CS', 'S3', 'AL'] },
  { kind: 'clinch stud', sizes: ['M4'], shanks: [10], lengths: [12, 16, 20], materials: ['CS', 'S3', 'S4', 'AL'] },
  { kind: 'clinch stud', sizes: ['M5'], shanks: [10, 15], lengths: [12, 16, 20], materials: ['CS', 'S3', 'S4'] },
  { kind: 'clinch stud', sizes: ['M6'], shanks: [15], lengths: [16, 20, 25], materials: ['CS', 'S3'] },
  { kind: 'clinch stud', sizes: ['M8'], shanks: [20], lengths: [20, 25], materials: ['CS'] },
  { kind: 'clinch stud', sizes: ['8-32', '10-32'], shanks: [10], lengths: [12, 16], materials: ['CS', 'S3'] },
  { kind: 'clinch stud', sizes: ['1/4-20'], shanks: [15], lengths: [16, 25], materials: ['CS'] },
  { kind: 'through standoff', sizes: ['M3'], shanks: [8], lengths: [6, 10], materials: ['AL'] },
  {
    kind: 'through standoff',
    sizes: ['M3', 'M4'],
    shanks: [10],
    lengths: [6, 10, 12, 16],
    materials: ['CS', 'S3', 'AL'],
  },
  { kind: 'through standoff', sizes: ['M5'], shanks: [10], lengths: [12, 16], materials: ['CS', 'S3'] },
  { kind: 'through standoff', sizes: ['6-32', '8-32'], shanks: [10], lengths: [10, 16], materials: ['CS'] },
  { kind: 'blind standoff', sizes: ['M3'], shanks: [10], lengths: [10, 12, 16], materials: ['CS', 'S3'] },
  { kind: 'blind standoff', sizes: ['M4'], shanks: [10], lengths: [12, 16, 20], materials: ['CS', 'S3', 'S4'] },
  { kind: 'blind standoff', sizes: ['6-32'], shanks: [10], lengths: [12, 16], materials: ['CS'] },
  { kind: 'clinch pin', sizes: ['3', '4', '5'], shanks: [10], lengths: [8, 12], materials: ['CS', 'S4'] },
  { kind: 'captive screw', sizes: ['M3', 'M4', 'M5'], shanks: [10], lengths: [16, 20], materials: ['S3'] },
  { kind: 'captive screw', sizes: ['M4'], shanks: [10], lengths: [16], materials: ['PH'] },
  { kind: 'captive screw', sizes: ['6-32', '8-32'], shanks: [10], lengths: [16], materials: ['CS'] },
  { kind: 'floating nut', sizes: ['M4', 'M5', '8-32', '10-32'], shanks: [10], materials: ['CS'] },
  { kind: 'floating nut', sizes: ['M4'], shanks: [15], materials: ['PH'] },
];

/** Part numbers of a first design that is no longer made: the same part with `-A` behind it. */
export const superseded: readonly string[] = [
  'NUT-M4-10-CS',
  'NUT-8-32-10-CS',
  'STUD-M4-10-12-S3',
  'SPACER-M4-10-12-CS',
  'BLINDSPACER-M3-10-12-S3',
];
