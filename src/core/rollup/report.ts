import type { AuditedList } from '../model/audited.ts';
import { DEMO_WORDS } from '../say/safety.ts';

/** One cell: numbers stay numbers, null is blank. */
export type ReportCell = string | number | null;

/** A table with what stands under it. */
export interface ReportBlock {
  /** Stands above the rows; '' where the headings say enough. */
  readonly title: string;
  readonly headings: readonly string[];
  readonly rows: readonly (readonly ReportCell[])[];
  /** Sentences under the table. */
  readonly notes: readonly string[];
}

/** What leaves the tool as a sheet, as CSV and on a terminal: the same tables everywhere. */
export interface Report {
  readonly blocks: readonly ReportBlock[];
  /** Words at the foot: safety, and whether invented data stand behind it. */
  readonly foot: readonly string[];
}

/** The words at the foot of a report, those about invented data first. */
export function footOf({ catalogues }: AuditedList, safety: readonly string[]): readonly string[] {
  return catalogues.some(({ demo }) => demo) ? [DEMO_WORDS, ...safety] : safety;
}
