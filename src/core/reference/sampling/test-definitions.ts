import type { Table } from '../../model/table.ts';

export interface TestDefinitionRow {
  readonly test: string;
  readonly definition: string;
}

/** What the tests of a press-in fastener mean. */
export const testDefinitions: Table<TestDefinitionRow> = {
  id: 'test-definitions',
  title: 'Tests of press-in fasteners',
  sources: [
    {
      document: 'common practice, no source',
      place: 'test methods of the trade',
      mark: 'memory',
      note: 'The scope texts of NASM63540 and DOD-N-70333 use the same terms.',
    },
  ],
  rows: [
    {
      test: 'push-out',
      definition:
        'axial force from the side away from the head, by a pin in the thread or shank, sheet on a ring clear of the part; force at first movement, or the largest',
    },
    {
      test: 'torque-out',
      definition: 'torque through the thread, by a hard clamped or bottomed screw, until the part turns in the sheet',
    },
    {
      test: 'pull-through',
      definition:
        'load on the thread in the direction of the joint until the part is drawn through the sheet; normally several times push-out',
    },
    {
      test: 'report',
      definition:
        'sheet alloy, temper, hardness and thickness, hole size, installation force and edge distance with every result',
    },
  ],
};
