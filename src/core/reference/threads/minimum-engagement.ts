import type { Table } from '../../model/table.ts';

export interface MinimumEngagementRow {
  readonly rule: string;
  readonly multiple: number;
  readonly of: 'diameter' | 'pitch';
}

/** Least engagement and projection of screws. */
export const minimumEngagement: Table<MinimumEngagementRow> = {
  id: 'thread-minimum-engagement',
  title: 'Least engagement and projection of screws',
  sources: [
    {
      document: 'MIL-R-19309D',
      place: '3.3.8.2',
      mark: 'printed',
      note: 'Read in one text. The last two or three threads of a tapped hole are not counted (NASA RP-1228).',
    },
  ],
  rows: [
    { rule: 'engagement in tapped parts other than nuts', multiple: 1, of: 'diameter' },
    { rule: 'projection beyond a nut', multiple: 1.5, of: 'pitch' },
  ],
};
