/** What a row says beyond its panel's material and thickness. */
export interface Cells {
  readonly part: string;
  readonly qty: number;
  /** A number in mm, or the text of the cell; absent where the list is silent. */
  readonly hole?: number | string;
  readonly edge?: number;
  /** For a part that the catalogue does not have. */
  readonly description?: string;
  readonly remark?: string;
}

/** One fastener row of revision B; `before` is what differed in revision A, null where A did not have the row. */
export interface FastenerRow extends Cells {
  readonly panel: string;
  readonly before?: Partial<Cells> | null;
}

/** One row that is no press-in fastener. */
export interface OtherRow {
  readonly part: string;
  readonly qty: number;
  readonly panel: string;
  readonly description: string;
}

/** The fasteners of revision B, panel by panel. A comment says why a row is meant not to hold. */
export const fastenerRows: readonly FastenerRow[] = [
  { panel: 'RC-01', part: 'NUT-M4-10-CS', qty: 12, hole: 5.6, edge: 12, before: { qty: 10 } },
  { panel: 'RC-01', part: 'STUD-M4-10-12-CS', qty: 6, hole: 4.15, edge: 10 },
  { panel: 'RC-01', part: 'NUT-M5-15-CS', qty: 4, hole: 6.85, edge: 14 },
  // fails: aluminium fastener in steel
  { panel: 'RC-01', part: 'NUT-M3-08-AL', qty: 4, hole: 4.35, edge: 9, before: { part: 'NUT-M3-08-CS' } },
  { panel: 'RC-01', part: 'NUT-M6-15-CS', qty: 4, hole: 8.1, edge: 15 },
  { panel: 'RC-01', part: 'STUD-M5-10-16-CS', qty: 8, hole: 5.2, edge: 12 },
  // marginal: the tolerance leaves the band
  { panel: 'RC-01', part: 'NUT-M3-10-CS', qty: 6, hole: '4.35 ±0.1', edge: 9, before: { hole: 4.35 } },
  { panel: 'RC-01', part: 'BLINDSPACER-M4-10-12-CS', qty: 4, hole: 5.6, edge: 12 },
  { panel: 'RC-01', part: 'PIN-4-10-12-CS', qty: 2, hole: 4.15, edge: 8, remark: 'hinge side' },
  // fails: sheet too thin
  { panel: 'RC-01', part: 'NUT-M8-20-CS', qty: 2, hole: 10.6, edge: 20, before: { part: 'NUT-M8-15-CS' } },

  // fails: sheet too thin
  { panel: 'RC-02', part: 'NUT-M4-10-CS', qty: 8, hole: 5.6, edge: 10 },
  { panel: 'RC-02', part: 'SPACER-M3-08-10-AL', qty: 8, hole: 4.35, edge: 8 },
  { panel: 'RC-02', part: 'NUT-M3-06-CS', qty: 8, hole: 4.35, edge: 8 },
  { panel: 'RC-02', part: 'NUT-M2.5-06-S3', qty: 6, hole: 3.75, edge: 7, remark: 'circuit board' },
  { panel: 'RC-02', part: 'STUD-M3-08-8-AL', qty: 4, hole: 3.1, edge: 6 },
  { panel: 'RC-02', part: 'NUT-M4-08-CS', qty: 4, hole: 5.6, edge: 10 },
  // fails: too near the edge
  { panel: 'RC-02', part: 'NUT-M3-08-S3', qty: 4, hole: 4.35, edge: 4.5, before: { edge: 8 } },
  // unknown: no such part, one letter from a listed one
  {
    panel: 'RC-02',
    part: 'NUT-M4-10-CX',
    qty: 2,
    hole: 5.6,
    edge: 10,
    description: 'Clinch nut M4, hardened steel',
    before: { part: 'NUT-M4-10-S3' },
  },

  { panel: 'RC-03', part: 'NUT-M4-10-S4', qty: 8, hole: 5.6, edge: 12 },
  { panel: 'RC-03', part: 'STUD-M4-10-12-S4', qty: 4, hole: 4.15, edge: 10 },
  { panel: 'RC-03', part: 'NUT-M5-10-S4', qty: 6, hole: 6.85, edge: 14, before: { part: 'NUT-M5-10-S3' } },
  { panel: 'RC-03', part: 'BLINDSPACER-M4-10-16-S4', qty: 4, edge: 12, remark: 'hole per drawing' },
  { panel: 'RC-03', part: 'CAPTIVE-M4-10-16-PH', qty: 4, hole: 5.6, edge: 12, before: null },
  // fails: 300-series in stainless sheet
  { panel: 'RC-03', part: 'NUT-M4-10-S3', qty: 8, hole: 5.6, edge: 12, remark: 'display window' },
  // fails: 300-series in stainless sheet
  { panel: 'RC-03', part: 'SPACER-M4-10-12-S3', qty: 4, hole: 5.6, edge: 12 },
  // marginal: the catalogue's limit lies between typical and hardest 304
  { panel: 'RC-03', part: 'NUT-M3-10-S4', qty: 6, hole: 4.35, edge: 9 },
  // marginal: the same
  { panel: 'RC-03', part: 'PIN-4-10-12-S4', qty: 2, hole: 4.15, edge: 8, before: null },
  { panel: 'RC-03', part: 'NUT-8-32-10-S4', qty: 4, hole: 5.8, edge: 12, remark: 'instrument by others' },
  // unknown: no thickness, and no row of the bracket that could give it
  { panel: 'RC-03B', part: 'NUT-M6-15-S4', qty: 2, hole: 8.1, edge: 16 },

  { panel: 'RC-04', part: 'NUT-M4-10-CS', qty: 16, hole: 5.6, edge: 12, before: { qty: 12 } },
  // fails: hole 0.07 too large
  { panel: 'RC-04', part: 'NUT-M4-10-S3', qty: 4, hole: 5.75, edge: 12, before: { hole: 5.6 } },
  { panel: 'RC-04', part: 'STUD-M5-10-16-CS', qty: 4, hole: 5.2, edge: 12 },
  { panel: 'RC-04', part: 'SPACER-M4-10-12-CS-A', qty: 8, hole: 5.6, edge: 12 },
  { panel: 'RC-04', part: 'NUT-10-32-10-CS', qty: 6, hole: 6.65, edge: 13, remark: 'instrument by others' },
  { panel: 'RC-04', part: 'NUT-M3-10-S3', qty: 10, hole: 4.35, edge: 9, before: { qty: 8 } },
  { panel: 'RC-04', part: 'STUD-M4-10-16-S3', qty: 6, hole: 4.15, edge: 10, remark: 'earth and bonding by others' },
  { panel: 'RC-04', part: 'BLINDSPACER-6-32-10-12-CS', qty: 4, hole: 5, remark: 'edge per drawing' },

  { panel: 'RC-05', part: 'NUT-M5-15-CS', qty: 6, hole: 6.85, edge: 14 },
  { panel: 'RC-05', part: 'NUT-M6-15-S3', qty: 4, hole: 8.1, edge: 16 },
  { panel: 'RC-05', part: 'STUD-M6-15-20-CS', qty: 4, hole: 6.25, edge: 14 },
  // fails: 2024-T4 is hardly harder than 6061-T6
  { panel: 'RC-05', part: 'NUT-M4-10-AL', qty: 8, hole: 5.6, edge: 12 },
  { panel: 'RC-05', part: 'FLOATNUT-M4-10-CS', qty: 4, hole: 5.6, edge: 12, before: null },
  { panel: 'RC-05', part: 'CAPTIVE-M5-10-20-S3', qty: 4, hole: 6.85, edge: 14 },
  { panel: 'RC-05', part: 'NUT-1/4-20-15-CS', qty: 2, hole: 8.55, edge: 18, remark: 'tripod' },
  { panel: 'RC-05', part: 'NUT-M8-20-CS', qty: 4, hole: 10.6, edge: 20 },
  // marginal: the tolerance leaves the band
  { panel: 'RC-05', part: 'SPACER-M5-10-16-S3', qty: 4, hole: '6.85 +0.1/-0', edge: 14, before: null },
  // unknown: the material cell names no metal
  { panel: 'RC-05B', part: 'STUD-M6-15-16-CS', qty: 2, hole: 6.25, edge: 12 },

  // marginal: 300-series in a steel whose strength ranges wide
  { panel: 'RC-06', part: 'NUT-M4-10-S3', qty: 12, hole: 5.6, edge: 12 },
  // marginal: the same
  { panel: 'RC-06', part: 'STUD-M4-10-12-S3', qty: 8, hole: 4.15, edge: 10 },
  { panel: 'RC-06', part: 'NUT-M3-10-CS', qty: 8, hole: 4.35, edge: 9 },
  { panel: 'RC-06', part: 'SPACER-M3-10-12-CS', qty: 6, edge: 9, remark: 'hole per drawing' },
  // fails: hole 0.10 too small
  { panel: 'RC-06', part: 'NUT-M4-10-CS', qty: 6, hole: 5.5, edge: 12, before: { hole: 5.6 } },
  // unknown: within the catalogue's limit in most aluminium, not in 7075-T6
  { panel: 'RC-06B', part: 'NUT-M5-15-CS', qty: 2, hole: 6.85, edge: 14 },
];

/** Rows that only revision A had. */
export const droppedRows: readonly FastenerRow[] = [
  { panel: 'RC-02', part: 'STUD-M3-08-12-AL', qty: 2, hole: 3.1, edge: 6 },
  { panel: 'RC-04', part: 'NUT-10-24-10-CS', qty: 4, hole: 6.65, edge: 13 },
  { panel: 'RC-05', part: 'STUD-M8-20-20-CS', qty: 2, hole: 8.3, edge: 16 },
];

export const otherRows: readonly OtherRow[] = [
  { panel: 'RC-01', part: 'SCREW-M4x10', qty: 16, description: 'Pan head machine screw M4 x 10, A2' },
  { panel: 'RC-02', part: 'LABEL-04', qty: 1, description: 'Label, terminal plan, self-adhesive' },
  { panel: 'RC-03', part: 'WASHER-M4', qty: 8, description: 'Flat washer M4, A2' },
  { panel: 'RC-04', part: 'CABLE-2M', qty: 1, description: 'Cable, sensor, 2 m, shielded' },
];
