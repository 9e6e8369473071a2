/**
 * How far a value was confirmed: `printed` = a printed text of the document (or of a page that restates it) was read;
 * `memory` = known to the trade but no text was read; `derived` = calculated here, not a published limit.
 */
export type Mark = 'printed' | 'memory' | 'derived';

/** Where a table's values come from. */
export interface Source {
  /** Standard, handbook or law, with edition where known: "ASTM E140-12b". */
  readonly document: string;
  /** Table, clause or page inside it: "Table 2". */
  readonly place: string;
  readonly mark: Mark;
  /** What a careful reader should know: disagreements, gaps. */
  readonly note?: string;
}

/** One reference table: values with their origin. Rows may carry a `mark` of their own where it differs from the table's. */
export interface Table<Row> {
  /** Kebab-case, unique over all tables; findings cite it. */
  readonly id: string;
  readonly title: string;
  readonly sources: readonly [Source, ...Source[]];
  readonly rows: readonly Row[];
}

/** A fact of the trade with no document behind it. Findings cite it like a table. */
export interface Practice {
  readonly id: string;
  readonly title: string;
  /** Always says "common practice, no source". */
  readonly note: string;
}
