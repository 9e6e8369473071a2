import { definedName, quoted } from '../write/book-xml.ts';
import { packPart, type StoredPart } from '../write/zip-parts.ts';
import type { OpenBook } from './open-book.ts';
import { type NewSheet, patchContentTypes, patchRelationships, patchWorkbookPart } from './patch-workbook.ts';

/** What became of the list's sheet, as far as the workbook must know. */
export interface ListChange {
  readonly hasEdits: boolean;
  readonly removesFormula: boolean;
  /** Print area to be set, as a defined name. */
  readonly kept: string | null;
}

/** The parts that name all others. The order of calculation is dropped when a formula is gone: spreadsheets work it out anew. */
export async function patchLinks(
  book: OpenBook,
  sheets: readonly NewSheet[],
  { hasEdits, removesFormula, kept }: ListChange,
  changes: Map<string, StoredPart | null>,
): Promise<void> {
  const chain = removesFormula ? book.calculationChain : undefined;
  const gone = chain === undefined ? [] : [chain];
  const titles = sheets.map(({ name }, index) =>
    definedName('Print_Titles', book.names.length + index, `${quoted(name)}!$1:$1`),
  );
  const names = kept === null ? titles : [kept, ...titles];
  const put = async (part: string, xml: string) => changes.set(part, await packPart(part, [xml]));
  await put(book.workbook, patchWorkbookPart(book.read(book.workbook), { sheets, names, calculates: hasEdits }));
  const dropped = gone.length === 0 ? [] : ['calcChain'];
  await put(book.links, patchRelationships(book.read(book.links), book.folder, sheets, dropped));
  await put(book.types, patchContentTypes(book.read(book.types), sheets, gone));
  for (const part of gone) changes.set(part, null);
}
