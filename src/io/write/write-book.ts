import { bookXml, coreXml, LINKS_OF_PACKAGE, linksOfBook, linksXml, typesXml } from './book-xml.ts';
import { type CellBook, SharedTexts } from './cell-xml.ts';
import { noteBoxesXml, notesXml } from './notes-xml.ts';
import type { SheetPlan } from './sheet-plan.ts';
import { MAIN, type Note, sheetXml } from './sheet-xml.ts';
import { StyleBook } from './style.ts';
import { joinParts, packPart, type StoredPart } from './zip-parts.ts';

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
/** Sheets with more rows are packed for speed. */
const LONG = 5000;

/** The bytes of a workbook of sheets; each is packed while it is written, so that none is held whole. `onRow` hears of each row. */
export function writeBook(plans: readonly SheetPlan[], onRow: () => void = () => {}): Uint8Array {
  const styles = new StyleBook();
  const texts = new SharedTexts();
  const book: CellBook = { styleOf: (style) => styles.indexOf(style), textOf: texts.textOf };
  const sheets = plans.map((plan, index) => packSheet(plan, index + 1, book, onRow));
  const noted = sheets.flatMap((parts, index) => (parts.length > 1 ? [index + 1] : []));
  const packing = plans.some((plan) => packingOf(plan) === 'fast') ? 'fast' : 'tight';
  return joinParts([
    packXml('[Content_Types].xml', [typesXml(plans.length, noted)]),
    packXml('_rels/.rels', [linksXml(LINKS_OF_PACKAGE)]),
    packXml('docProps/core.xml', [coreXml()]),
    packXml('xl/workbook.xml', [bookXml(plans.map(({ name }) => name))]),
    packXml('xl/_rels/workbook.xml.rels', [linksXml(linksOfBook(plans.length))]),
    ...sheets.flat(),
    packXml('xl/styles.xml', [styles.xml()]),
    packXml('xl/sharedStrings.xml', texts.xml(MAIN), packing),
  ]);
}

/** A part of XML, with its declaration in front. */
export function packXml(name: string, xml: Iterable<string>, packing: 'tight' | 'fast' = 'tight'): StoredPart {
  return packPart(name, declared(xml), packing);
}

/** How tightly a sheet is packed. */
export function packingOf({ size }: SheetPlan): 'tight' | 'fast' {
  return size > LONG ? 'fast' : 'tight';
}

/** A sheet's part, and where it has notes the parts that hold those. */
function packSheet(plan: SheetPlan, number: number, book: CellBook, onRow: () => void): readonly StoredPart[] {
  const notes: Note[] = [];
  const sheet = packXml(`xl/worksheets/sheet${number}.xml`, sheetXml(plan, book, notes, onRow), packingOf(plan));
  if (notes.length === 0) return [sheet];
  const links = linksXml([
    ['vmlDrawing', `../drawings/vmlDrawing${number}.vml`],
    ['comments', `../comments${number}.xml`],
  ]);
  return [
    sheet,
    packXml(`xl/worksheets/_rels/sheet${number}.xml.rels`, [links]),
    packXml(`xl/comments${number}.xml`, notesXml(notes)),
    packPart(`xl/drawings/vmlDrawing${number}.vml`, noteBoxesXml(notes)),
  ];
}

function* declared(xml: Iterable<string>): Generator<string> {
  yield HEAD;
  yield* xml;
}
