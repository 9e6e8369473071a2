import type { ColumnChoices } from '../core/intake/columns.ts';
import type { CellEdit } from '../worker/protocol.ts';

/** What a step sets: the texts of cells, or what the user chose for all columns. */
export type Change = { readonly cells: readonly CellEdit[] } | { readonly columns: ColumnChoices };

/** One undoable step: what it set, what was there before, and what to call it. */
export interface Step {
  readonly name: string;
  readonly after: Change;
  readonly before: Change;
}

/** Steps that can be taken back and steps that can be taken again. A new step forgets the latter. */
export interface History {
  readonly done: readonly Step[];
  readonly undone: readonly Step[];
}

export const NO_HISTORY: History = { done: [], undone: [] };

export function addStep({ done }: History, step: Step): History {
  return { done: [...done, step], undone: [] };
}

/** The step to take back and the history after it; null when there is none. */
export function stepBack({ done, undone }: History): { readonly step: Step; readonly history: History } | null {
  const step = done.at(-1);
  return step ? { step, history: { done: done.slice(0, -1), undone: [...undone, step] } } : null;
}

/** The step to take again and the history after it; null when there is none. */
export function stepForward({ done, undone }: History): { readonly step: Step; readonly history: History } | null {
  const step = undone.at(-1);
  return step ? { step, history: { done: [...done, step], undone: undone.slice(0, -1) } } : null;
}
