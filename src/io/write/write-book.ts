import { bookXml, coreXml, LINKS_OF_PACKAGE, linksOfBook, linksXml, typesXml } from './book-xml.ts';
import { type CellBook, SharedTexts } from './cell-xml.ts';
import { noteBoxesXml, notesXml } from './notes-xml.ts';
import type { SheetPlan } from './sheet-plan.ts';
import { MAIN, type Note, sheetXml } from './sheet-xml.ts';
import { StyleBook } from './style.ts';
import { joinParts, packPart, type StoredPart } from './zip-parts.ts';

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

/** The bytes of a workbook of sheets; each is packed while it is written, so that none is held whole. `onRow` hears of each row. */
export async function writeBook(plans: readonly SheetPlan[], onRow: () => void = () => {}): Promise<Uint8Array> {
  const styles = new StyleBook();
  const texts = new SharedTexts();
  const book: CellBook = { styleOf: (style) => styles.indexOf(style), textOf: texts.textOf };
  const sheets: (readonly StoredPart[])[] = [];
  for (const plan of plans) sheets.push(await packSheet(plan, sheets.length + 1, book, onRow));
  const noted = sheets.flatMap((parts, index) => (parts.length > 1 ? [index + 1] : []));
  return joinParts([
    await packXml('[Content_Types].xml', [typesXml(plans.length, noted)]),
    await packXml('_rels/.rels', [linksXml(LINKS_OF_PACKAGE)]),
    await packXml('docProps/core.xml', [coreXml()]),
    await packXml('xl/workbook.xml', [bookXml(plans.map(({ name }) => name))]),
    await packXml('xl/_rels/workbook.xml.rels', [linksXml(linksOfBook(plans.length))]),
    ...sheets.flat(),
    await packXml('xl/styles.xml', [styles.xml()]),
    await packXml('xl/sharedStrings.xml', texts.xml(MAIN)),
  ]);
}

/** A part of XML, with its declaration in front. */
export function packXml(name: string, xml: Iterable<string>): Promise<StoredPart> {
  return packPart(name, declared(xml));
}

/** A sheet's part, and where it has notes the parts that hold those. */
async function packSheet(
  plan: SheetPlan,
  number: number,
  book: CellBook,
  onRow: () => void,
): Promise<readonly StoredPart[]> {
  const notes: Note[] = [];
  const sheet = await packXml(`xl/worksheets/sheet${number}.xml`, sheetXml(plan, book, notes, onRow));
  if (notes.length === 0) return [sheet];
  const links = linksXml([
    ['vmlDrawing', `../drawings/vmlDrawing${number}.vml`],
    ['comments', `../comments${number}.xml`],
  ]);
  return [
    sheet,
    await packXml(`xl/worksheets/_rels/sheet${number}.xml.rels`, [links]),
    await packXml(`xl/comments${number}.xml`, notesXml(notes)),
    await packPart(`xl/drawings/vmlDrawing${number}.vml`, noteBoxesXml(notes)),
  ];
}

function* declared(xml: Iterable<string>): Generator<string> {
  yield HEAD;
  yield* xml;
}
