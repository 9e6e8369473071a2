import { itemOfRow } from '../core/caching/in-order.ts';
import type { JudgedList } from '../core/engine/audit-list.ts';
import type { JudgedRow } from '../core/engine/judge-rows.ts';
import type { Fastener } from '../core/model/fastener.ts';
import type { Verdict } from '../core/model/outcome.ts';
import { sheetsThatHold } from '../core/remedies/sheet-change.ts';
import { type Swaps, seekSwaps } from '../core/remedies/swap.ts';
import type { CellEdit, RowState, SwapAnswer, SwapQuestion, Trial, TriedRow } from './protocol.ts';
import { editCells, type Session } from './session.ts';

/** What could be put in place of a part over all the rows that list it; null where it is not on file. Changes nothing. */
export function findSwapsFor(session: Session, question: SwapQuestion): SwapAnswer | null {
  const seeking = seekSwapsFor(session, question);
  for (;;) {
    const { done, value } = seeking.next();
    if (done) return value;
  }
}

/** The same, stopping now and then for other work to come in between. */
export function* seekSwapsFor(
  { judged, together }: Session,
  question: SwapQuestion,
): Generator<void, SwapAnswer | null> {
  const asked = 'row' in question ? (rowOf(judged, question.row)?.subject ?? null) : null;
  const part = 'row' in question ? asked?.fastener : judged.basis.parts.find(question.partNumber);
  if (!part) return null;
  const known = found.get(judged) ?? new Map<Fastener, Swaps>();
  const rows = judged.rows.flatMap(({ subject }) => (subject.fastener === part ? subject : []));
  const swaps = known.get(part) ?? (yield* seekSwaps(part, { rows, together }, judged.basis.parts));
  found.set(judged, known.set(part, swaps));
  return { ...swaps, sheets: asked ? sheetsThatHold(asked) : [] };
}

/** Found once for a part while the list stays as it is: the next row with that part is chosen soon. */
const found = new WeakMap<JudgedList, Map<Fastener, Swaps>>();

function rowOf({ rows }: JudgedList, row: number): JudgedRow | undefined {
  return rows.find(({ subject }) => subject.line.row === row);
}

/** What an edit would do to counts and rows. The session itself stays as it is. */
export function tryCells(session: Session, cells: readonly CellEdit[]): Trial {
  const { session: after, rows } = editCells(session, cells);
  const edited = new Set(cells.map(({ row }) => row));
  const tried = rows.map((state): TriedRow => {
    const { row, verdict, ...told } = tell(state);
    const former = itemOfRow(session.audited.lines, row)?.verdict ?? null;
    return { row, ...told, edited: edited.has(row), before: former, after: verdict };
  });
  return {
    before: session.audited.totals,
    after: after.audited.totals,
    rows: tried.filter((row) => row.edited || row.before !== row.after).sort((a, b) => a.row - b.row),
  };
}

function tell(
  state: RowState,
): Pick<TriedRow, 'row' | 'partNumber' | 'decision'> & { readonly verdict: Verdict | null } {
  if ('other' in state) {
    const { row, what } = state.other;
    return { row, verdict: null, partNumber: '', decision: `${what}: not a fastener` };
  }
  const { row, line, verdict, decidedBy } = state.line;
  return { row, verdict, partNumber: line.partNumber, decision: decidedBy?.brief ?? '' };
}
