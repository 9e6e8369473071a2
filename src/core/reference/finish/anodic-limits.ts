import type { Table } from '../../model/table.ts';

export interface AnodicLimitRow {
  readonly environment: 'harsh' | 'normal' | 'controlled';
  readonly what: string;
  /** Largest difference of anodic index. */
  readonly limitV: number;
}

/** How far apart two metals may be, by environment. */
export const anodicLimits: Table<AnodicLimitRow> = {
  id: 'anodic-limits',
  title: 'Largest anodic difference by environment',
  sources: [
    {
      document: 'MIL-F-14072, as restated by handbooks',
      place: 'limits by environment',
      mark: 'printed',
      note: 'Three texts agree, probably copies of one; 0.25 V is ascribed to MIL-F-14072.',
    },
  ],
  rows: [
    { environment: 'harsh', what: 'outdoor, salt, high humidity', limitV: 0.15 },
    { environment: 'normal', what: 'indoor, uncontrolled', limitV: 0.25 },
    { environment: 'controlled', what: 'temperature and humidity controlled', limitV: 0.5 },
  ],
};
