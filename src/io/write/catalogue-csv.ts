import { FIELDS, showPart } from '../../core/catalogue/show-part.ts';
import type { Catalogue } from '../../core/model/fastener.ts';
import { writeCsvRows } from './csv-rows.ts';

/**
 * A catalogue as CSV under our own headings. Imported again it holds the same parts with the same values; a text that a spreadsheet
 * would calculate gets an apostrophe, which the import takes off.
 */
export function writeCatalogueCsv({ fasteners }: Pick<Catalogue, 'fasteners'>): string {
  const rows = fasteners.map((part) => {
    const cells = showPart(part);
    return FIELDS.map((field) => cells[field] ?? '');
  });
  return writeCsvRows([FIELDS, ...rows]);
}
