import type { Table } from '../../model/table.ts';

export interface NutProofIsoRow {
  readonly thread: string;
  readonly class5N: number;
  readonly class6N: number;
  readonly class8N: number;
  readonly class10N: number;
  readonly class12Style1N: number;
  readonly class12Style2N: number;
}

/** Proof loads of ordinary nuts, coarse thread: a ceiling for the thread, not the pull-through of a pressed-in nut. */
export const nutProofIso: Table<NutProofIsoRow> = {
  id: 'nut-proof-iso-898-2',
  title: 'Proof loads of steel nuts by property class',
  sources: [
    {
      document: 'ISO 898-2:1992 (EN 20898-2)',
      place: 'proof load values, coarse thread',
      mark: 'printed',
      note: 'Read in one text; its column headings are reconstructed from memory. A ceiling only: it does not describe how a pressed-in nut pulls through.',
    },
  ],
  rows: [
    {
      thread: 'M3',
      class5N: 2600,
      class6N: 3000,
      class8N: 4000,
      class10N: 5200,
      class12Style1N: 5700,
      class12Style2N: 5800,
    },
    {
      thread: 'M3.5',
      class5N: 3550,
      class6N: 4050,
      class8N: 5400,
      class10N: 7050,
      class12Style1N: 7700,
      class12Style2N: 7800,
    },
    {
      thread: 'M4',
      class5N: 4550,
      class6N: 5250,
      class8N: 7000,
      class10N: 9150,
      class12Style1N: 10000,
      class12Style2N: 10100,
    },
    {
      thread: 'M5',
      class5N: 8250,
      class6N: 9500,
      class8N: 12140,
      class10N: 14800,
      class12Style1N: 16200,
      class12Style2N: 16300,
    },
    {
      thread: 'M6',
      class5N: 11700,
      class6N: 13500,
      class8N: 17200,
      class10N: 20900,
      class12Style1N: 22900,
      class12Style2N: 23100,
    },
    {
      thread: 'M8',
      class5N: 21600,
      class6N: 24900,
      class8N: 31800,
      class10N: 38100,
      class12Style1N: 41700,
      class12Style2N: 42500,
    },
    {
      thread: 'M10',
      class5N: 34200,
      class6N: 39400,
      class8N: 50500,
      class10N: 60300,
      class12Style1N: 66100,
      class12Style2N: 67300,
    },
  ],
};
