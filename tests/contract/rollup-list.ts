import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';

const PART_HEADINGS =
  'partNumber,kind,thread,material,hardnessMin,sheetMinMm,holeMm,holePlusMm,holeMinusMm,edgeMm,forceSteelKn,forceAluminiumKn,pushOutSteelN,pushOutAluminiumN,stocked,packSize,moq,unitPrice,currency,leadDays,supersededBy';
const ROW_HEADINGS = 'Part number,Panel,Material,Thickness (mm),Hole (mm),Qty';

/** What a part is apart from stock and price: hardened steel for sheet from 1 mm on, hole 5.6. */
export const NUT = 'clinch nut,M4,carbon-steel-hardened,HRC 32,1,5.6,0.08,0,9,12,7,500,300';

/** A list and catalogue of so many lines, read and judged. */
export function judged(rows: readonly string[], parts: readonly string[], shop: Partial<ShopSettings> = {}) {
  const catalogue = importCatalogue(readFile(bytes([PART_HEADINGS, ...parts]), 'parts.csv'));
  const basis = createBasis([catalogue], { ...DEFAULT_SHOP, ...shop });
  const list: AuditedList = auditFile(readFile(bytes([ROW_HEADINGS, ...rows]), 'list.csv'), basis);
  return { list, parts: basis.parts, catalogue };
}

function bytes(lines: readonly string[]): Uint8Array {
  return new TextEncoder().encode(`${lines.join('\n')}\n`);
}
