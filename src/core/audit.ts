import { createPartIndex } from './catalogue/find-part.ts';
import { auditList, type Watch } from './engine/audit-list.ts';
import type { Basis } from './engine/basis.ts';
import { buildList, type ListOptions } from './intake/build-list.ts';
import type { AuditedList } from './model/audited.ts';
import type { Catalogue } from './model/fastener.ts';
import type { RawFile } from './model/raw.ts';
import type { ShopSettings } from './model/shop.ts';
import { createSubstituteFinder } from './remedies/substitutes.ts';

/** What a judgement rests on: catalogues in the user's order of rank, and the shop's settings. */
export function createBasis(catalogues: readonly Catalogue[], shop: ShopSettings): Basis {
  const parts = createPartIndex(catalogues);
  return { parts, catalogues, shop, findRemedies: createSubstituteFinder(parts) };
}

/** The whole job on one file. Throws `Unreadable` when no list is found in it. */
export function auditFile(file: RawFile, basis: Basis, options: ListOptions = {}, watch: Watch = {}): AuditedList {
  return auditList(buildList(file, options), basis, watch);
}
