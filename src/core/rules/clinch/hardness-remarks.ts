import type { SheetHardness } from '../../calc/sheet-hardness.ts';
import type { Judgement } from '../../model/finding.ts';
import type { MaterialReading } from '../../model/sheet.ts';
import { findCited } from '../../reference/index.ts';
import { showHardness } from '../../units/hardness.ts';

/** A judgement with more to say in its remark. */
export function addRemark(judgement: Judgement, remark: string): Judgement {
  if (remark === '') return judgement;
  return { ...judgement, words: { ...judgement.words, remark: `${judgement.words?.remark ?? ''}${remark}` } };
}

/** Where two respected tables differ so much that the outcome would: what the other one gives. Nothing where it would not. */
export function secondTableRemark(judgement: Judgement, other: Judgement, second: SheetHardness): string {
  if (other.outcome === judgement.outcome) return '';
  const title = findCited(second.table)?.title ?? second.table;
  const hrb = Number((second.max ?? second.typical).on.hrb.toFixed(1));
  return `By another table in use (${title}) the sheet is ${hrb} and the outcome would be “${other.outcome}”. `;
}

/** The list names a standard whose limit differs from the one that is compared. */
export function writtenLimitRemark({ writtenLimit }: MaterialReading): string {
  if (!writtenLimit) return '';
  const { standard, max } = writtenLimit;
  return max
    ? `${standard} as written allows ${showHardness(max)}. `
    : `${standard} as written states no maximum hardness. `;
}
