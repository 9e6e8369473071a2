import type { Table } from '../../model/table.ts';

export interface GalvanicRuleRow {
  readonly rule: string;
  readonly document: string;
  readonly place: string;
}

/** What government standards ask of dissimilar metals, in our words. */
export const galvanicRules: Table<GalvanicRuleRow> = {
  id: 'galvanic-rules',
  title: 'Rules for dissimilar metals',
  sources: [
    { document: 'MIL-DTL-14072F', place: '3.13 and 3.13.1', mark: 'printed', note: 'Read in one text.' },
    { document: 'MIL-STD-1250A', place: '5.6 and 5.7', mark: 'printed', note: 'Read in one text.' },
  ],
  rows: [
    {
      rule: 'metals within 0.05 V (saturated calomel, sea water) count as one group',
      document: 'MIL-DTL-14072F',
      place: '3.13',
    },
    {
      rule: 'chromate and phosphate films do not count; zinc, cadmium or the base metal is compared',
      document: 'MIL-DTL-14072F',
      place: '3.13.1a',
    },
    { rule: 'hard anodic films do not conduct and may touch any metal', document: 'MIL-DTL-14072F', place: '3.13.1a' },
    {
      rule: 'the member with the higher index is the anode; the smaller part is kept cathodic',
      document: 'MIL-DTL-14072F',
      place: '3.13.1b',
    },
    {
      rule: 'platings are compared with platings, not the metals under them',
      document: 'MIL-DTL-14072F',
      place: '3.13.1c',
    },
    {
      rule: 'stainless screws may fasten aluminium sheet, aluminium screws not stainless sheet',
      document: 'MIL-STD-1250A',
      place: '5.7a',
    },
    { rule: 'small fasteners are of the same metal or a nobler one', document: 'MIL-STD-1250A', place: '5.6f' },
  ],
};
