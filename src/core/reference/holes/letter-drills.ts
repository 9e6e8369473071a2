import type { Table } from '../../model/table.ts';

export interface LetterDrillRow {
  readonly letter: string;
  readonly inch: number;
}

/** Letter drills A to Z. */
export const letterDrills: Table<LetterDrillRow> = {
  id: 'drills-letter',
  title: 'Letter drills',
  sources: [{ document: 'ASME B94.11M', place: 'letter sizes', mark: 'printed', note: 'Two texts agree.' }],
  rows: [
    { letter: 'A', inch: 0.234 },
    { letter: 'B', inch: 0.238 },
    { letter: 'C', inch: 0.242 },
    { letter: 'D', inch: 0.246 },
    { letter: 'E', inch: 0.25 },
    { letter: 'F', inch: 0.257 },
    { letter: 'G', inch: 0.261 },
    { letter: 'H', inch: 0.266 },
    { letter: 'I', inch: 0.272 },
    { letter: 'J', inch: 0.277 },
    { letter: 'K', inch: 0.281 },
    { letter: 'L', inch: 0.29 },
    { letter: 'M', inch: 0.295 },
    { letter: 'N', inch: 0.302 },
    { letter: 'O', inch: 0.316 },
    { letter: 'P', inch: 0.323 },
    { letter: 'Q', inch: 0.332 },
    { letter: 'R', inch: 0.339 },
    { letter: 'S', inch: 0.348 },
    { letter: 'T', inch: 0.358 },
    { letter: 'U', inch: 0.368 },
    { letter: 'V', inch: 0.377 },
    { letter: 'W', inch: 0.386 },
    { letter: 'X', inch: 0.397 },
    { letter: 'Y', inch: 0.404 },
    { letter: 'Z', inch: 0.413 },
  ],
};
