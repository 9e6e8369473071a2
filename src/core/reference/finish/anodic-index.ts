import type { Mark, Table } from '../../model/table.ts';

export interface AnodicIndexRow {
  readonly id: string;
  readonly material: string;
  /** Volts from gold; higher is the anode. */
  readonly indexV: number;
  /** Where texts disagree. */
  readonly note?: string;
  readonly mark: Mark;
}

/** Anodic index of metals and platings. A screen for risk, not a rate of corrosion. */
export const anodicIndex: Table<AnodicIndexRow> = {
  id: 'anodic-index',
  title: 'Anodic index',
  sources: [
    {
      document: 'MIL-F-14072, as restated by handbooks',
      place: 'anodic index',
      mark: 'printed',
      note: 'Most restatements copy one ancestor table: agreement proves the copying, not the physics. From 0.85 on only a summary list was read in print.',
    },
  ],
  rows: [
    { id: 'gold', material: 'gold', indexV: 0, mark: 'printed' },
    { id: 'silver', material: 'silver, high nickel-copper alloys', indexV: 0.15, mark: 'printed' },
    { id: 'nickel', material: 'nickel plate, titanium, nickel-copper alloy', indexV: 0.3, mark: 'printed' },
    { id: 'copper', material: 'copper, low brass and bronze, nickel-chromium alloys', indexV: 0.35, mark: 'printed' },
    { id: 'brass', material: 'brass and bronze', indexV: 0.4, mark: 'printed' },
    { id: 'high-brass', material: 'high brass and bronze', indexV: 0.45, mark: 'printed' },
    {
      id: 'stainless-300',
      material: '18 % chromium stainless, passive (300 series)',
      indexV: 0.5,
      note: 'One text gives 0.30 for passive stainless; active stainless is given as 0.50 to 0.85.',
      mark: 'printed',
    },
    { id: 'stainless-400', material: '12 % chromium stainless (400 series)', indexV: 0.6, mark: 'printed' },
    { id: 'chromium', material: 'chromium plate', indexV: 0.6, mark: 'printed' },
    {
      id: 'tin',
      material: 'tin plate, tin-lead solder',
      indexV: 0.65,
      note: 'The same table lists tin a second time together with chromium at 0.60; the tin row is used.',
      mark: 'printed',
    },
    { id: 'lead', material: 'lead', indexV: 0.7, note: 'One text groups it with tin at 0.65.', mark: 'printed' },
    { id: 'aluminium-2000', material: 'aluminium, 2000 series', indexV: 0.75, mark: 'printed' },
    { id: 'steel', material: 'plain carbon and low-alloy steel, cast iron', indexV: 0.85, mark: 'printed' },
    {
      id: 'aluminium',
      material: 'other wrought aluminium (1xxx, 3xxx, 5xxx, 6xxx, 7xxx), cast aluminium-silicon',
      indexV: 0.9,
      note: 'One matrix gives 0.75 for aluminium.',
      mark: 'printed',
    },
    { id: 'cast-aluminium', material: 'cast aluminium, not silicon', indexV: 0.95, mark: 'memory' },
    { id: 'cadmium', material: 'cadmium plate', indexV: 0.95, note: 'One text gives 0.80.', mark: 'memory' },
    { id: 'hot-dip-zinc', material: 'hot-dip zinc, galvanized steel', indexV: 1.2, mark: 'memory' },
    { id: 'zinc', material: 'zinc, wrought, die-cast or electroplated', indexV: 1.25, mark: 'printed' },
    { id: 'magnesium', material: 'magnesium', indexV: 1.75, mark: 'printed' },
    { id: 'beryllium', material: 'beryllium', indexV: 1.85, mark: 'memory' },
  ],
};
