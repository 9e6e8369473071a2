import { auditFile, createBasis } from '../../../src/core/audit.ts';
import { importCatalogue } from '../../../src/core/catalogue/import.ts';
import type { AuditedLine } from '../../../src/core/model/audited.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../../../src/core/model/shop.ts';
import { readFile } from '../../../src/io/read-file.ts';
import { type WrittenPart, writeCatalogue } from './generate-part.ts';
import { writeCsv } from './write-csv.ts';

const bytes = (text: string) => new TextEncoder().encode(text);

/** The product's judgement of every row of a list, by row in the file. */
export function auditCells(
  parts: readonly WrittenPart[],
  headings: readonly string[],
  rows: readonly (readonly string[])[],
  shop: Partial<ShopSettings> = {},
): ReadonlyMap<number, AuditedLine> {
  const catalogue = importCatalogue(readFile(bytes(writeCatalogue(parts)), 'catalogue.csv'));
  const list = readFile(bytes(writeCsv([headings, ...rows])), 'list.csv');
  const basis = createBasis([catalogue], { ...DEFAULT_SHOP, ...shop });
  const audited = auditFile(list, { ...basis, findRemedies: () => [] });
  return new Map(audited.lines.map((line) => [line.row, line]));
}
