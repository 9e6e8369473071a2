import type { Totals } from '../model/audited.ts';
import type { ChangedFact, Concession } from '../model/concession.ts';
import type { Role } from '../model/list.ts';
import type { Verdict } from '../model/outcome.ts';

/** How a row can be found again, the surest way first; `place`: between the same neighbours, and much alike. */
export const WAYS = [
  'the same throughout',
  'part, panel and reference',
  'part and panel',
  'panel and reference',
  'part and reference',
  'part',
  'panel and description',
  'place',
] as const;
export type Way = (typeof WAYS)[number];

/** How many rows were found again in one way. */
export interface FoundRows {
  readonly way: Way;
  readonly rows: number;
}

/** What differs between two revisions of a list. Plain data: rows are named by their number in their own file. */
export interface Comparison {
  readonly columns: readonly ColumnChange[];
  /** Columns stand in another order; said once, as it changes nothing. */
  readonly columnsMoved: boolean;
  /** Rows stand in another order; said once, as it changes nothing. */
  readonly orderChanged: boolean;
  /** The item numbers were given anew throughout; said once, and not for each row. */
  readonly renumbered: boolean;
  /** Panels whose rows all stand under another name. */
  readonly panelsRenamed: readonly PanelRename[];
  /** Rows with at least one cell that says something else. */
  readonly changed: readonly ChangedRow[];
  /** Rows of which cells only read differently: `0.060"` against `.060`, case, spaces. No change of fact. */
  readonly rewritten: readonly ChangedRow[];
  readonly moved: readonly RowPair[];
  readonly added: readonly RowName[];
  readonly removed: readonly RowName[];
  /** Rows whose sheet is that of their panel, and is another now. */
  readonly sheets: readonly SheetChange[];
  /** Rows of the list after with something that was not wrong before. */
  readonly newlyWrong: readonly NewlyWrong[];
  /** Rows whose verdict is another, whether a cell of them changed or not. */
  readonly verdicts: readonly VerdictChange[];
  /** Parts of which more or fewer pieces are needed in one product. */
  readonly quantities: readonly QuantityChange[];
  readonly totals: { readonly before: Totals; readonly after: Totals };
  readonly concessions: readonly ConcessionFate[];
  /** How the rows that are on both lists were found again. */
  readonly found: readonly FoundRows[];
  /** Every row that is on both lists, in the order of the list after. */
  readonly pairs: readonly RowNumbers[];
}

/** A row for a reader. */
export interface RowName {
  /** 1-based row in its own file. */
  readonly row: number;
  readonly partNumber: string;
  /** Panel that the row names or stands under; '' for none. */
  readonly panel: string;
  /** What a row is that is no press-in fastener; null for a fastener. */
  readonly what: string | null;
  /** What stands in the row, for rows without a part number. */
  readonly text: string;
}

export interface RowPair {
  readonly before: RowName;
  readonly after: RowName;
}

export interface RowNumbers {
  readonly before: number;
  readonly after: number;
}

export interface ColumnName {
  readonly heading: string;
  readonly role: Role;
}

/** `reread`: the same heading is taken for something else. */
export interface ColumnChange {
  readonly change: 'added' | 'removed' | 'renamed' | 'reread';
  readonly before: ColumnName | null;
  readonly after: ColumnName | null;
}

export interface PanelRename {
  readonly before: string;
  readonly after: string;
  /** How many rows are on both. */
  readonly rows: number;
}

export interface ChangedCell {
  /** Heading in the list after. */
  readonly heading: string;
  readonly role: Role;
  readonly before: string;
  readonly after: string;
  /** True: the cell reads differently and means the same. */
  readonly writtenOnly: boolean;
}

export interface ChangedRow extends RowPair {
  readonly cells: readonly ChangedCell[];
}

export interface SheetChange extends RowPair {
  readonly sheetBefore: string;
  readonly sheetAfter: string;
}

export interface VerdictChange extends RowPair {
  /** Null: not judged, as the row is no press-in fastener. */
  readonly verdictBefore: Verdict | null;
  readonly verdictAfter: Verdict | null;
  /** The finding that decided, in one cell's length; '' for a row that holds. */
  readonly whyBefore: string;
  readonly whyAfter: string;
  /** Whether a cell of the row itself changed. */
  readonly cellsChanged: boolean;
}

/**
 * A row that is worse than it was: its verdict is worse, it was not judged or not there before and does not hold, or its verdict is the
 * same and a check does not hold that did.
 */
export interface NewlyWrong {
  /** Null: the row was added. */
  readonly before: RowName | null;
  readonly after: RowName;
  /** Null: not judged before, or not there. */
  readonly verdictBefore: Verdict | null;
  readonly verdictAfter: Verdict;
  /** What is wrong now, in one cell's length. */
  readonly why: string;
  /** Whether a cell of the row itself changed, or the row is new. */
  readonly cellsChanged: boolean;
}

export interface QuantityChange {
  readonly partNumber: string;
  /** Pieces in one product, over all rows that can be counted. */
  readonly before: number;
  readonly after: number;
  readonly difference: number;
  /** Rows without a usable quantity, which are not in these sums. */
  readonly uncountedBefore: number;
  readonly uncountedAfter: number;
}

/** What becomes of a concession given on the list before. */
export interface ConcessionFate {
  /** `carried`: its row rests on the same facts. `lapsed`: it does not, see `changed`. `gone`: the row is no longer there. */
  readonly state: 'carried' | 'lapsed' | 'gone';
  readonly given: Concession;
  readonly before: RowName | null;
  readonly after: RowName | null;
  /** The same concession for its row in the list after; null when that is gone. */
  readonly rekeyed: Concession | null;
  readonly changed: readonly ChangedFact[];
}
