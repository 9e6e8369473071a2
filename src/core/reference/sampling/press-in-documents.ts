import type { Table } from '../../model/table.ts';

export interface PressInDocumentRow {
  readonly document: string;
  readonly subject: string;
  /** How much of it was seen. */
  readonly read: string;
}

/** Public documents about press-in fasteners. None that was read gives sheet, hole or edge by thread: those come from the catalogue. */
export const pressInDocuments: Table<PressInDocumentRow> = {
  id: 'press-in-documents',
  title: 'Public documents about press-in fasteners',
  sources: [
    {
      document: 'Indexes of government and aerospace standards',
      place: 'titles and scopes',
      mark: 'printed',
      note: 'No table of thread against sheet, hole or edge distance was found in any text read, so none is given.',
    },
  ],
  rows: [
    {
      document: 'DOD-N-70333',
      subject: 'metric clinch nuts, plain and self-locking, fixed and floating',
      read: 'title and scope read',
    },
    { document: 'MIL-S-63540/1', subject: 'self-clinching studs', read: 'listed title read' },
    {
      document: 'NASM63540',
      subject: 'self-clinching studs: retention by cold flow under the head',
      read: 'scope read',
    },
    {
      document: 'MIL-N-45938, NASM45938',
      subject: 'plain clinch nuts, with sheets for single types',
      read: 'number and subject read',
    },
  ],
};
