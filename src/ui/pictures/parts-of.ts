import { createPartIndex, type PartIndex } from '../../core/catalogue/find-part.ts';
import type { Catalogue } from '../../core/model/fastener.ts';

const indexes = new WeakMap<readonly Catalogue[], PartIndex>();

/** The parts of the loaded catalogues; the index is made once for each set of them. */
export function partsOf(catalogues: readonly Catalogue[]): PartIndex {
  const index = indexes.get(catalogues) ?? createPartIndex(catalogues);
  indexes.set(catalogues, index);
  return index;
}
