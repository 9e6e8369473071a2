import type { CellBook } from '../write/cell-xml.ts';
import { safeSheetName } from '../write/safe-text.ts';
import type { SheetPlan } from '../write/sheet-plan.ts';
import { sheetXml } from '../write/sheet-xml.ts';
import { packingOf, packXml } from '../write/write-book.ts';
import type { StoredPart } from '../write/zip-parts.ts';
import type { OpenBook } from './open-book.ts';
import type { NewSheet } from './patch-workbook.ts';

/** Writes our sheets as new parts, under names that are free; they have no notes. */
export function placeSheets(
  book: OpenBook,
  plans: readonly SheetPlan[],
  cells: CellBook,
  onRow: () => void,
  changes: Map<string, StoredPart | null>,
): readonly NewSheet[] {
  const names = [...book.names];
  return plans.map((plan) => {
    const name = safeSheetName(plan.name, names);
    const place = book.takePart();
    names.push(name);
    const xml = inDialect(sheetXml(plan, cells, [], onRow), book);
    changes.set(place.part, packXml(place.part, xml, packingOf(plan)));
    return { name, ...place };
  });
}

/** The first piece names the namespaces. */
function* inDialect(xml: Generator<string>, book: OpenBook): Generator<string> {
  const first = xml.next();
  if (!first.done) yield book.dialect(first.value);
  yield* xml;
}
