import type { Fastener } from './fastener.ts';

/** Texts of a part by field, each in the unit that the field's own heading names. A field that is left out is blank. */
export type PartCells = Readonly<Partial<Record<Exclude<keyof Fastener, 'origin'>, string>>>;

/** What was changed of one part since its catalogue was loaded. One entry a part. */
export interface PartEdit {
  readonly partNumber: string;
  /** Of a part on file the cells that were set ('' makes one blank), of an added part all of them; null: the part was taken out. */
  readonly cells: PartCells | null;
  /** What the file says in the cells that were set; null: the part is not in the file. */
  readonly was: PartCells | null;
}
