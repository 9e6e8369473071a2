import type { ListOptions } from '../core/intake/build-list.ts';
import type { ColumnChoices } from '../core/intake/columns.ts';
import type { TextReading } from '../core/model/raw.ts';
import type { HandedFile } from '../worker/protocol.ts';
import { type KeptFields, NOTHING_KEPT } from './project.ts';

/** The file of the open list, and what the user chose on how to read it. */
export interface OpenedFile {
  /** The object itself stands for the document: each opening has one of its own. */
  readonly list: HandedFile;
  /** Where the list is in the file. */
  readonly table: Pick<ListOptions, 'sheet' | 'headerRow'>;
  /** How to decode and cut it. */
  readonly reading: TextReading;
  /** For the columns, now or for an earlier list with these headings. */
  readonly columns: ColumnChoices;
  readonly kept: KeptFields;
}

/** A file as it was opened, without what nobody chose. */
export function openedFile(
  list: HandedFile,
  { sheet, headerRow }: ListOptions,
  { encoding, delimiter }: TextReading,
  columns: ColumnChoices,
  kept: KeptFields = NOTHING_KEPT,
): OpenedFile {
  const table = { ...(sheet !== undefined && { sheet }), ...(headerRow !== undefined && { headerRow }) };
  const reading = { ...(encoding !== undefined && { encoding }), ...(delimiter !== undefined && { delimiter }) };
  return { list, table, reading, columns, kept };
}
