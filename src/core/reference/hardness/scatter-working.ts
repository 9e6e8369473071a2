import type { Table } from '../../model/table.ts';
import type { HardnessScale } from '../../units/hardness.ts';

export interface ScatterWorkingRow {
  readonly scale: HardnessScale;
  /** Plus or minus, in Rockwell B points. */
  readonly hrbPoints: 2 | 3 | 4;
}

/** The scatter that the hardness check works with, by the scale in which a value was given. */
export const scatterWorking: Table<ScatterWorkingRow> = {
  id: 'hardness-scatter',
  title: 'Working scatter of a hardness by the scale it was given in',
  sources: [
    {
      document: 'Judgement from the known contributions (hardness-scatter-contributions)',
      place: 'Working figures',
      mark: 'derived',
      note: 'A judgement, not a standard.',
    },
  ],
  rows: [
    { scale: 'HRB', hrbPoints: 2 },
    { scale: 'HRC', hrbPoints: 3 },
    { scale: 'HV', hrbPoints: 3 },
    { scale: 'HRF', hrbPoints: 3 },
    { scale: 'HRE', hrbPoints: 3 },
    { scale: 'HR30T', hrbPoints: 3 },
    { scale: 'HB3000', hrbPoints: 4 },
    { scale: 'HB500', hrbPoints: 4 },
    { scale: 'MPa', hrbPoints: 4 },
  ],
};
