import type { JudgedList } from '../core/engine/audit-list.ts';
import type { AuditedList } from '../core/model/audited.ts';
import type { Fastener } from '../core/model/fastener.ts';
import type { Verdict } from '../core/model/outcome.ts';
import { sheetsThatHold } from '../core/remedies/sheet-change.ts';
import { findSwaps, type Swaps } from '../core/remedies/swap.ts';
import type { Subject } from '../core/rules/rule.ts';
import type { CellEdit, SwapAnswer, SwapQuestion, Trial, TriedRow } from './protocol.ts';
import { editCells, type Session } from './session.ts';

/** What could be put in place of a part over all the rows that list it; null where it is not on file. Changes nothing. */
export function findSwapsFor({ judged }: Session, question: SwapQuestion): SwapAnswer | null {
  const subjects = judged.rows.map(({ subject }) => subject);
  const asked = 'row' in question ? (subjects.find(({ line }) => line.row === question.row) ?? null) : null;
  const part = 'row' in question ? asked?.fastener : judged.basis.parts.find(question.partNumber);
  if (!part) return null;
  return { ...swapsOf(judged, part, subjects), sheets: asked ? sheetsThatHold(asked) : [] };
}

/** Found once for a part while the list stays as it is: the next row with that part is chosen soon. */
const found = new WeakMap<JudgedList, Map<Fastener, Swaps>>();

function swapsOf(judged: JudgedList, part: Fastener, subjects: readonly Subject[]): Swaps {
  const known = found.get(judged) ?? new Map<Fastener, Swaps>();
  const swaps = known.get(part) ?? findSwaps(part, subjects, judged.basis.parts);
  found.set(judged, known.set(part, swaps));
  return swaps;
}

/** What an edit would do to counts and rows. The session itself stays as it is. */
export function tryCells(session: Session, cells: readonly CellEdit[]): Trial {
  const { audited } = editCells(session, cells).session;
  const edited = new Set(cells.map(({ row }) => row));
  const [before, after] = [statesOf(session.audited), statesOf(audited)];
  const rows = [...after].flatMap(([row, { verdict, ...told }]): TriedRow | [] => {
    const former = before.get(row)?.verdict ?? null;
    const isEdited = edited.has(row);
    return isEdited || former !== verdict ? { row, ...told, edited: isEdited, before: former, after: verdict } : [];
  });
  return { before: session.audited.totals, after: audited.totals, rows: rows.sort((a, b) => a.row - b.row) };
}

interface RowState {
  readonly verdict: Verdict | null;
  readonly partNumber: string;
  readonly decision: string;
}

function statesOf({ lines, others }: AuditedList): ReadonlyMap<number, RowState> {
  return new Map<number, RowState>([
    ...lines.map(({ row, line, verdict, decidedBy }): [number, RowState] => [
      row,
      { verdict, partNumber: line.partNumber, decision: decidedBy?.brief ?? '' },
    ]),
    ...others.map(({ row, what }): [number, RowState] => [
      row,
      { verdict: null, partNumber: '', decision: `${what}: not a fastener` },
    ]),
  ]);
}
