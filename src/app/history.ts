import type { ColumnChoices } from '../core/intake/columns.ts';
import type { ChangeDetail } from '../core/model/change-record.ts';
import type { Concession } from '../core/model/concession.ts';
import type { PartEdit } from '../core/model/part-edit.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import type { PressOrder } from '../core/rollup/press-order.ts';
import type { CellEdit } from '../worker/protocol.ts';

/** What a step sets: the texts of cells, what the user chose for all columns, the shop's settings, every concession, the whole order of pressing, or the edits of a catalogue. */
export type Change =
  | { readonly cells: readonly CellEdit[] }
  | { readonly columns: ColumnChoices }
  | { readonly shop: ShopSettings }
  | { readonly concessions: readonly Concession[] }
  | { readonly pressOrder: PressOrder }
  | { readonly parts: PartsChange };

/** All edits of the parts of one catalogue, which goes by the name of its file. */
export interface PartsChange {
  readonly catalogue: string;
  readonly edits: readonly PartEdit[];
}

/** What a step does, before it is known when and by whom. */
export interface Deed {
  readonly name: string;
  readonly after: Change;
  readonly before: Change;
  /** It takes over what an earlier export has told already: told again only when it is taken back. */
  readonly isTakenOver?: boolean;
  /** What belongs to the step besides what it sets, as it is told afterwards. */
  readonly told?: readonly ChangeDetail[];
}

/** One undoable step: what it set, what was there before, what to call it, and who made it when. */
export interface Step extends Deed {
  /** ISO time in UTC; '' where it is not known. */
  readonly when: string;
  /** May be empty. */
  readonly by: string;
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

/** The concessions that the steps have led to: each such step holds them all. */
export function concessionsAfter({ done }: History): readonly Concession[] {
  const last = done.findLast(({ after }) => 'concessions' in after)?.after;
  return last && 'concessions' in last ? last.concessions : NO_CONCESSIONS;
}

/** The order of pressing that the steps have led to: each such step holds all of it. */
export function pressOrderAfter({ done }: History): PressOrder {
  const last = done.findLast(({ after }) => 'pressOrder' in after)?.after;
  return last && 'pressOrder' in last ? last.pressOrder : NO_ORDER;
}

/** The same objects each time, as a change of theirs is looked for. */
const NO_CONCESSIONS: readonly Concession[] = [];
const NO_ORDER: PressOrder = [];
