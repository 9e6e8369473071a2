import type { Mark, Table } from '../../model/table.ts';

export interface PunchingRow {
  readonly what: string;
  /** Multiple of the sheet thickness. */
  readonly timesThickness: number;
  /** Added to it. */
  readonly plusMm: number;
  /** Never less than this. */
  readonly leastMm: number;
  readonly mark: Mark;
}

/** What punching can and cannot do to a hole. */
export const punchingLimits: Table<PunchingRow> = {
  id: 'punching-limits',
  title: 'Limits of punching',
  sources: [
    {
      document: 'A contract manufacturer’s design guide',
      place: 'smallest punched hole',
      mark: 'printed',
      note: 'Read in one text.',
    },
    {
      document: 'common practice, no source',
      place: 'turret punching and die clearance',
      mark: 'memory',
      note: 'The punch side equals the punch; the die side is larger by the clearance.',
    },
  ],
  rows: [
    { what: 'smallest punched hole, mild steel', timesThickness: 1, plusMm: 0, leastMm: 0, mark: 'printed' },
    {
      what: 'smallest punched hole, careful rule',
      timesThickness: 1.2,
      plusMm: 0.203,
      leastMm: 1.219,
      mark: 'printed',
    },
    {
      what: 'diameter held by a well-kept turret punch, plus or minus',
      timesThickness: 0,
      plusMm: 0.05,
      leastMm: 0.05,
      mark: 'memory',
    },
    { what: 'die clearance per side, least', timesThickness: 0.05, plusMm: 0, leastMm: 0, mark: 'memory' },
    { what: 'die clearance per side, most', timesThickness: 0.1, plusMm: 0, leastMm: 0, mark: 'memory' },
  ],
};
