import type { Mark, Table } from '../../model/table.ts';

export interface HoleSpacingRow {
  readonly rule: string;
  readonly multiple: number;
  readonly of: 'thickness' | 'diameter';
  readonly measured: string;
  readonly document: string;
  readonly mark: Mark;
}

/** Distances of plain holes and rivets. No neutral table for press-in parts was found: those come from the catalogue. */
export const holeSpacingRules: Table<HoleSpacingRow> = {
  id: 'hole-spacing',
  title: 'Distances of holes and rivets',
  sources: [
    {
      document: 'Sheet-metal design guides, FAA AC 43.13-1B, NAVEDTRA 14018',
      place: 'see each row',
      mark: 'printed',
      note: 'The rivet rules are for rivets, not for press-in parts.',
    },
  ],
  rows: [
    {
      rule: 'slot or hole edge to sheet edge',
      multiple: 2,
      of: 'thickness',
      measured: 'edge to edge',
      document: 'Sheet-metal design guide',
      mark: 'printed',
    },
    {
      rule: 'round hole to round hole, least',
      multiple: 1.2,
      of: 'thickness',
      measured: 'edge to edge',
      document: 'Sheet-metal design guide',
      mark: 'printed',
    },
    {
      rule: 'round hole to round hole, usual',
      multiple: 2,
      of: 'thickness',
      measured: 'edge to edge',
      document: 'common practice, no source',
      mark: 'memory',
    },
    {
      rule: 'counterbore or countersink to edge',
      multiple: 4,
      of: 'thickness',
      measured: 'edge to edge',
      document: 'Producibility guideline',
      mark: 'printed',
    },
    {
      rule: 'counterbore or countersink to bend, plus the radius',
      multiple: 4,
      of: 'thickness',
      measured: 'edge to bend',
      document: 'Producibility guideline',
      mark: 'printed',
    },
    {
      rule: 'counterbore to counterbore',
      multiple: 8,
      of: 'thickness',
      measured: 'edge to edge',
      document: 'Producibility guideline',
      mark: 'printed',
    },
    {
      rule: 'rivet to sheet edge',
      multiple: 2,
      of: 'diameter',
      measured: 'centre to edge',
      document: 'FAA AC 43.13-1B, NAVEDTRA 14018',
      mark: 'printed',
    },
    {
      rule: 'rivet pitch, least',
      multiple: 3,
      of: 'diameter',
      measured: 'centre to centre',
      document: 'FAA AC 43.13-1B, NAVEDTRA 14018',
      mark: 'printed',
    },
    {
      rule: 'rivet pitch, usual, least',
      multiple: 4,
      of: 'diameter',
      measured: 'centre to centre',
      document: 'FAA AC 43.13-1B, NAVEDTRA 14018',
      mark: 'printed',
    },
    {
      rule: 'rivet pitch, usual, most',
      multiple: 8,
      of: 'diameter',
      measured: 'centre to centre',
      document: 'FAA AC 43.13-1B, NAVEDTRA 14018',
      mark: 'printed',
    },
  ],
};
