import type { PartIndex } from '../catalogue/find-part.ts';
import type { Remedy } from '../model/audited.ts';
import type { Catalogue } from '../model/fastener.ts';
import type { Finding } from '../model/finding.ts';
import type { ShopSettings } from '../model/shop.ts';
import type { Subject } from '../rules/rule.ts';
import type { PartTrial } from './part-trials.ts';

/** What an audit rests on. */
export interface Basis {
  readonly parts: PartIndex;
  readonly catalogues: readonly Catalogue[];
  readonly shop: ShopSettings;
  /** Finds parts that would hold instead, for rows that do not; `findings` are what is said of the row as it is. */
  readonly findRemedies?: (subject: Subject, findings: readonly Finding[], holds: PartTrial) => readonly Remedy[];
}
