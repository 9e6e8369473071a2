import type { AuditedLine, AuditedList } from '../core/model/audited.ts';
import type { OtherRow } from '../core/model/list.ts';
import { type PackedRows, packRows } from './packed-rows.ts';
import type { RowState } from './protocol.ts';

type Rows = Pick<AuditedList, 'lines' | 'others'>;

/** An answer without the rows that it holds, and these in pieces: those of a whole list, or of an edit. */
export function takeRowsOut(answer: object): { readonly rest: object; readonly rows: Iterable<PackedRows> } {
  const list = listIn(answer);
  if (list)
    return { rest: { ...answer, list: { ...list, lines: [], others: [] } }, rows: packRows(list.lines, list.others) };
  const states = statesIn(answer);
  if (!states) return { rest: answer, rows: [] };
  const lines = states.flatMap((state) => ('line' in state ? state.line : []));
  const others = states.flatMap((state) => ('other' in state ? state.other : []));
  return { rest: { ...answer, rows: [] }, rows: packRows(lines, others) };
}

/** The answer with its rows in it again. */
export function putRowsIn(answer: unknown, { lines, others }: Rows): unknown {
  if (typeof answer !== 'object' || answer === null) return answer;
  const list = listIn(answer);
  return list ? { ...answer, list: { ...list, lines, others } } : { ...answer, rows: toStates(lines, others) };
}

function toStates(lines: readonly AuditedLine[], others: readonly OtherRow[]): readonly RowState[] {
  return [...lines.map((line) => ({ line })), ...others.map((other) => ({ other }))];
}

function listIn(answer: object): AuditedList | null {
  return 'list' in answer ? (answer.list as AuditedList | null) : null;
}

function statesIn(answer: object): readonly RowState[] | null {
  return 'totals' in answer && 'rows' in answer ? (answer.rows as readonly RowState[]) : null;
}
