import type { CellBook } from '../write/cell-xml.ts';
import { safeSheetName } from '../write/safe-text.ts';
import type { SheetPlan } from '../write/sheet-plan.ts';
import { sheetXml } from '../write/sheet-xml.ts';
import { packXml } from '../write/write-book.ts';
import type { StoredPart } from '../write/zip-parts.ts';
import type { OpenBook } from './open-book.ts';
import type { NewSheet } from './patch-workbook.ts';

/** Writes our sheets as new parts, under names that are free; they have no notes. */
export async function placeSheets(
  book: OpenBook,
  plans: readonly SheetPlan[],
  cells: CellBook,
  onRow: () => void,
  changes: Map<string, StoredPart | null>,
): Promise<readonly NewSheet[]> {
  const sheets: NewSheet[] = [];
  for (const plan of plans) {
    const name = safeSheetName(plan.name, [...book.names, ...sheets.map((sheet) => sheet.name)]);
    const place = book.takePart();
    sheets.push({ name, ...place });
    changes.set(place.part, await packXml(place.part, inDialect(sheetXml(plan, cells, [], onRow), book)));
  }
  return sheets;
}

/** The first piece names the namespaces. */
function* inDialect(xml: Generator<string>, book: OpenBook): Generator<string> {
  const first = xml.next();
  if (!first.done) yield book.dialect(first.value);
  yield* xml;
}
