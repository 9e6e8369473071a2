import { decodeXmlBytes } from '../xlsx/decode-xml.ts';
import { readRelationships } from '../xlsx/parts.ts';
import { XmlScanner } from '../xlsx/scan.ts';
import type { Zip } from '../xlsx/zip.ts';
import { type Block, LAST_COLUMN, parseBlocks } from './ranges.ts';

/** What lies on a sheet besides its cells: where its tables and pivot tables are, and which cells its drawings cover. */
export function findBeside(
  zip: Zip,
  sheet: string,
): { readonly tables: readonly Block[]; readonly drawings: readonly Block[] } {
  const tables: Block[] = [];
  const drawings: Block[] = [];
  for (const { type, part } of readRelationships(zip, sheet).values()) {
    if (part === undefined) continue;
    if (type === 'table') tables.push(...referencesIn(zip, part, 'table'));
    if (type === 'pivotTable') tables.push(...referencesIn(zip, part, 'location'));
    if (type === 'drawing') drawings.push(...coveredBy(zip, part));
  }
  return { tables, drawings };
}

function referencesIn(zip: Zip, part: string, element: string): readonly Block[] {
  const scanner = new XmlScanner(decodeXmlBytes(zip.read(part)));
  const blocks: Block[] = [];
  while (scanner.next()) {
    if (scanner.name === element && !scanner.isClose) blocks.push(...parseBlocks(scanner.attribute('ref')));
  }
  return blocks;
}

/** Cells between the corners of each drawing; one that names a single corner counts as that cell. */
function coveredBy(zip: Zip, part: string): readonly Block[] {
  const scanner = new XmlScanner(decodeXmlBytes(zip.read(part)));
  const blocks: Block[] = [];
  let corner: { column: number; row: number } = { column: 0, row: 1 };
  let from = corner;
  while (scanner.next()) {
    const { name, isClose } = scanner;
    if (!isClose) continue;
    if (name === 'col') corner = { ...corner, column: Math.min(Number(scanner.text()), LAST_COLUMN) };
    else if (name === 'row') corner = { ...corner, row: Number(scanner.text()) + 1 };
    else if (name === 'from') from = corner;
    if (name === 'from' || name === 'to') {
      blocks.push({ left: from.column, right: corner.column, top: from.row, bottom: corner.row });
    }
  }
  return blocks;
}
