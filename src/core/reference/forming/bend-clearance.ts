import type { Mark, Table } from '../../model/table.ts';

export interface BendClearanceRow {
  readonly rule: string;
  /** Multiple of the sheet thickness between hole edge and datum. */
  readonly timesThickness: number;
  /** Bend radii added to it. From the inside face, plus one radius is the same as from the tangent. */
  readonly plusRadii: 0 | 1;
  readonly datum: 'tangent' | 'inside face' | 'unclear';
  readonly mark: Mark;
}

/** How far a hole edge stays clear of a bend: rules that disagree. Read as bands, measured from the tangent. */
export const bendClearanceRules: Table<BendClearanceRow> = {
  id: 'bend-clearance',
  title: 'Hole edge to bend',
  sources: [
    {
      document: 'Sheet-metal design guides',
      place: 'hole to bend',
      mark: 'printed',
      note: 'The multiple runs from 1.5 to 3 and the datum differs. Used as bands: inside the tangent it distorts, below 2 it is doubtful, from 3 it is clear.',
    },
    {
      document: 'common practice, no source',
      place: 'press-tool rules',
      mark: 'memory',
      note: 'A press-in fastener needs half its head or tool more.',
    },
  ],
  rows: [
    { rule: 'older press-tool rule', timesThickness: 1.5, plusRadii: 0, datum: 'unclear', mark: 'memory' },
    {
      rule: 'older press-tool rule, with radius',
      timesThickness: 1.5,
      plusRadii: 1,
      datum: 'inside face',
      mark: 'memory',
    },
    { rule: 'sheet-metal design guides', timesThickness: 2, plusRadii: 0, datum: 'tangent', mark: 'printed' },
    { rule: 'rule of thumb', timesThickness: 2.5, plusRadii: 1, datum: 'inside face', mark: 'printed' },
    { rule: 'design guides, also cut-outs', timesThickness: 3, plusRadii: 1, datum: 'inside face', mark: 'printed' },
  ],
};
