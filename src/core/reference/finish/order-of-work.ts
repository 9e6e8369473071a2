import type { Mark, Table } from '../../model/table.ts';

export interface OrderOfWorkRow {
  readonly rule: string;
  readonly document: string;
  readonly mark: Mark;
}

/** In which order sheet, fastener and finish come together, in our words. */
export const orderOfWork: Table<OrderOfWorkRow> = {
  id: 'order-of-work',
  title: 'Order of finishing and pressing',
  sources: [
    { document: 'MIL-A-8625F, MIL-DTL-5541F, TM 55-1500-345-23, trade press', place: 'see each row', mark: 'printed' },
    { document: 'common practice, no source', place: 'see each row', mark: 'memory' },
  ],
  rows: [
    {
      rule: 'self-clinching parts go in after the sheet is painted, plated or anodised',
      document: 'Trade press on self-clinching nuts',
      mark: 'printed',
    },
    {
      rule: 'anodic films are brittle and may crack where a part is forced in',
      document: 'MIL-A-8625F, 6.10.5',
      mark: 'printed',
    },
    {
      rule: 'an assembly with steel or other metals in it is not anodised: the bath attacks them',
      document: 'common practice, no source',
      mark: 'memory',
    },
    {
      rule: 'unpainted chemical film loses protection from 60 °C; a powder oven is hotter, so the film serves only under the paint',
      document: 'MIL-DTL-5541F, 6.14',
      mark: 'printed',
    },
    {
      rule: 'powder first: mask hole and seat; press first: mask the threads',
      document: 'common practice, no source',
      mark: 'memory',
    },
    {
      rule: 'plating after pressing traps acid in the joint and can embrittle hardened parts',
      document: 'common practice, no source',
      mark: 'memory',
    },
    {
      rule: 'parts of a dissimilar metal are set in primer, wet or dry',
      document: 'TM 55-1500-345-23',
      mark: 'printed',
    },
  ],
};
