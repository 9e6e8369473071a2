import { inShort } from '../core/compare/compare-sentences.ts';
import type {
  ChangedRow,
  Comparison,
  ConcessionFate,
  FoundRows,
  NewlyWrong,
  QuantityChange,
  RowName,
  RowPair,
  SheetChange,
  VerdictChange,
} from '../core/compare/comparison.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { Verdict } from '../core/model/outcome.ts';

/** What was compared: a file, and how many rows of it say something. */
export interface ComparedList {
  readonly file: string;
  /** '' for a file of one table. */
  readonly sheet: string;
  readonly rows: number;
}

/** A row that is on one list alone; a verdict of null: no press-in fastener. */
export interface LoneRow extends RowName {
  readonly verdict: Verdict | null;
}

/** A changed row with its verdicts; null: no press-in fastener. */
export interface ChangedRowShown extends ChangedRow {
  readonly verdictBefore: Verdict | null;
  readonly verdictAfter: Verdict | null;
}

/** What the page shows of a comparison: plain data, without the rows that are the same. */
export interface Compared {
  readonly before: ComparedList;
  readonly after: ComparedList;
  readonly found: readonly FoundRows[];
  /** The comparison in sentences. */
  readonly inShort: readonly string[];
  readonly newlyWrong: readonly NewlyWrong[];
  readonly concessions: readonly ConcessionFate[];
  readonly changed: readonly ChangedRowShown[];
  readonly added: readonly LoneRow[];
  readonly removed: readonly LoneRow[];
  readonly moved: readonly RowPair[];
  /** Rows with another sheet from their panel. */
  readonly sheets: readonly SheetChange[];
  /** Other verdicts that are no worse. */
  readonly verdicts: readonly VerdictChange[];
  readonly quantities: readonly QuantityChange[];
  readonly rewritten: readonly ChangedRow[];
  /** What could not be read of the concessions of the earlier list, in sentences. */
  readonly notices: readonly string[];
}

/** The comparison without what nobody looks at. */
export function toCompared(
  comparison: Comparison,
  before: AuditedList,
  after: AuditedList,
  notices: readonly string[],
): Compared {
  const { pairs, added, removed, changed, newlyWrong, verdicts, rewritten } = comparison;
  const { found, concessions, moved, sheets, quantities } = comparison;
  const [was, is] = [verdictsOf(before), verdictsOf(after)];
  const wrong = new Set(newlyWrong.map(({ after: { row } }) => row));
  const writtenOnly = changed.flatMap((row) => keptCells(row, (cell) => cell.writtenOnly));
  return {
    before: { file: before.file, sheet: before.sheet, rows: pairs.length + removed.length },
    after: { file: after.file, sheet: after.sheet, rows: pairs.length + added.length },
    ...{ found, concessions, newlyWrong, moved, sheets, quantities, notices },
    inShort: inShort(comparison),
    changed: changed.flatMap((row) => {
      const verdictBefore = was.get(row.before.row) ?? null;
      const verdictAfter = is.get(row.after.row) ?? null;
      return keptCells(row, (cell) => !cell.writtenOnly).map((kept) => ({ ...kept, verdictBefore, verdictAfter }));
    }),
    added: added.map((row) => ({ ...row, verdict: is.get(row.row) ?? null })),
    removed: removed.map((row) => ({ ...row, verdict: was.get(row.row) ?? null })),
    verdicts: verdicts.filter(({ after: { row } }) => !wrong.has(row)),
    rewritten: [...rewritten, ...writtenOnly].sort((a, b) => a.after.row - b.after.row),
  };
}

function verdictsOf({ lines }: AuditedList): ReadonlyMap<number, Verdict> {
  return new Map(lines.map(({ row, verdict }) => [row, verdict]));
}

/** The row with some of its cells; none where it has none of them. */
function keptCells(row: ChangedRow, isKept: (cell: ChangedRow['cells'][number]) => boolean): readonly ChangedRow[] {
  const cells = row.cells.filter(isKept);
  return cells.length > 0 ? [{ ...row, cells }] : [];
}
