import type { AuditedLine } from '../model/audited.ts';
import type { Fastener } from '../model/fastener.ts';
import type { Finding } from '../model/finding.ts';
import type { Outcome } from '../model/outcome.ts';
import type { ShopSettings } from '../model/shop.ts';
import { showValue } from '../say/show-value.ts';

/** What the pictures of a row are made from: the judged row, its part on file, and the settings it was judged by. */
export interface PicturedRow {
  readonly line: AuditedLine;
  /** Null: no such part on file. */
  readonly part: Fastener | null;
  readonly shop: ShopSettings;
}

/** What one rule found, or undefined where it does not apply. */
export function findingOf({ line }: PicturedRow, rule: string): Finding | undefined {
  return line.findings.find((finding) => finding.rule === rule);
}

/** The outcome of a rule where it is worth a mark: what holds, or only informs, stays plain. */
export function markOf(row: PicturedRow, rule: string): { readonly outcome?: Outcome } {
  const outcome = findingOf(row, rule)?.outcome;
  return outcome === 'fails' || outcome === 'marginal' || outcome === 'unknown' ? { outcome } : {};
}

/** Units as they are spoken. */
export const UNIT_WORDS = { mm: 'millimetres', in: 'inches' } as const;

/** A length in the unit of the settings, without the unit: it stands in the title. */
export function showMm(mm: number, { shop }: Pick<PicturedRow, 'shop'>): string {
  return showValue('lengthMm', mm, shop.units);
}

/** How the row came out, in a sentence: "The row fails: Sheet 0.80, needs 1.00 mm." */
export function verdictSentence({ line: { verdict, decidedBy } }: PicturedRow): string {
  const says = { holds: 'holds', marginal: 'is marginal', fails: 'fails', unknown: 'is unknown' }[verdict];
  return decidedBy ? `The row ${says}: ${decidedBy.brief}.` : `The row ${says}.`;
}
