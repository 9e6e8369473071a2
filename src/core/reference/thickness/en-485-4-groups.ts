import type { Table } from '../../model/table.ts';
import type { AlloyGroupRow } from './row-types.ts';

/** Which alloys belong to which group of EN 485-4; `2xxx` stands for every alloy of the series. */
export const en485Groups: Table<AlloyGroupRow> = {
  id: 'en-485-4-groups',
  title: 'EN 485-4 alloy groups',
  sources: [
    {
      document: 'EN 485-4:1994',
      place: 'lists of alloys, groups I and II',
      mark: 'printed',
    },
  ],
  rows: [
    { alloy: '1xxx', group: 1 },
    { alloy: '3003', group: 1 },
    { alloy: '3103', group: 1 },
    { alloy: '3005', group: 1 },
    { alloy: '3105', group: 1 },
    { alloy: '4006', group: 1 },
    { alloy: '4007', group: 1 },
    { alloy: '5005', group: 1 },
    { alloy: '5050', group: 1 },
    { alloy: '8011A', group: 1 },
    { alloy: '2xxx', group: 2 },
    { alloy: '3004', group: 2 },
    { alloy: '5040', group: 2 },
    { alloy: '5049', group: 2 },
    { alloy: '5052', group: 2 },
    { alloy: '5083', group: 2 },
    { alloy: '5086', group: 2 },
    { alloy: '5154A', group: 2 },
    { alloy: '5182', group: 2 },
    { alloy: '5251', group: 2 },
    { alloy: '5454', group: 2 },
    { alloy: '5754', group: 2 },
    { alloy: '6061', group: 2 },
    { alloy: '6082', group: 2 },
    { alloy: '7xxx', group: 2 },
  ],
};
