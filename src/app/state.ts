import { describeConceded } from '../core/concede/describe.ts';
import type { AuditedLine, AuditedList, Totals } from '../core/model/audited.ts';
import type { Concession } from '../core/model/concession.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { OtherRow } from '../core/model/list.ts';
import type { Verdict } from '../core/model/outcome.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../core/model/shop.ts';
import type { PressOrder } from '../core/rollup/press-order.ts';
import type { Phase, Rollups, RowState } from '../worker/protocol.ts';
import { type History, NO_HISTORY } from './history.ts';
import type { ShelfEntry } from './shelf.ts';

/** `findings` is the page that is printed: no tab leads to it. */
export type View =
  | 'list'
  | 'purchasing'
  | 'press'
  | 'questions'
  | 'changes'
  | 'catalogue'
  | 'settings'
  | 'rules'
  | 'findings';

/** Long work under way, with what a progress bar shows. */
export interface Work {
  readonly what: string;
  readonly phase: Phase;
  readonly share: number;
}

/** A sentence for the user; `error` stays until dismissed. */
export interface Message {
  readonly kind: 'error' | 'done';
  readonly text: string;
}

/** A dialog that is open, and what it is about. */
export type Dialog =
  | { readonly kind: 'swap'; readonly partNumber: string; readonly rows: readonly number[] }
  | { readonly kind: 'bulk'; readonly rows: readonly number[] }
  | { readonly kind: 'concede'; readonly row: number; readonly rule: string };

/** One row on screen in file order. */
export type GridRow = {
  readonly row: number;
  readonly cells: readonly string[];
  /** What of it was accepted as it is, in words. */
  readonly conceded?: string;
} & (
  | { readonly line: AuditedLine; readonly other?: undefined }
  | { readonly other: OtherRow; readonly line?: undefined }
);

/** Rows of a list that have something in common: a panel, a check, a pair of metals. */
export interface RowFocus {
  readonly name: string;
  readonly rows: ReadonlySet<number>;
}

/** Everything that the page shows. Replaced as a whole at each change, never edited. */
export interface AppState {
  readonly view: View;
  /** Null before the first list is open. */
  readonly list: AuditedList | null;
  /** All rows of the list, fasteners and others, in file order. */
  readonly rows: readonly GridRow[];
  /** Whose choices the columns are read by: those of the user now, those for an earlier list, or nobody's. */
  readonly columnsBy: 'user' | 'memory' | null;
  readonly catalogues: readonly Catalogue[];
  readonly shop: ShopSettings;
  /** Lists kept from earlier, the latest first. */
  readonly shelf: readonly ShelfEntry[];
  readonly work: Work | null;
  readonly message: Message | null;
  /** Verdicts shown; empty means all rows. */
  readonly filter: ReadonlySet<Verdict>;
  readonly search: string;
  /** Rows shown alone, and what they have in common; null: all rows. */
  readonly focus: RowFocus | null;
  readonly selectedRow: number | null;
  /** Rule or table whose page is asked for. */
  readonly openRule: string | null;
  /** Puts a newer version of the app in use; null while there is none. */
  readonly update: (() => void) | null;
  readonly dialog: Dialog | null;
  /** The steps that were made and taken back. */
  readonly history: History;
  /** What was accepted as it is, as the steps have left it. */
  readonly concessions: readonly Concession[];
  /** The order in which the user presses, as the steps have left it. */
  readonly pressOrder: PressOrder;
  /** What the list came to when a view last asked, and which list that was; null before that. */
  readonly rollups: (Rollups & { readonly list: AuditedList }) | null;
  /** Questions that are not asked, by their keys. */
  readonly leftOut: ReadonlySet<string>;
  /** The name that steps and concessions are signed with; may be empty. */
  readonly userName: string;
  readonly undoName: string | null;
  readonly redoName: string | null;
}

export const EMPTY_STATE: AppState = {
  view: 'list',
  list: null,
  rows: [],
  columnsBy: null,
  catalogues: [],
  shop: DEFAULT_SHOP,
  shelf: [],
  work: null,
  message: null,
  filter: new Set(),
  search: '',
  focus: null,
  selectedRow: null,
  openRule: null,
  update: null,
  dialog: null,
  history: NO_HISTORY,
  concessions: [],
  pressOrder: [],
  rollups: null,
  leftOut: new Set(),
  userName: '',
  undoName: null,
  redoName: null,
};

/** Fasteners and other rows of a list woven together in file order. */
export function weaveRows({ lines, others }: Pick<AuditedList, 'lines' | 'others'>): readonly GridRow[] {
  const rows: GridRow[] = [
    ...lines.map((line) => ({ row: line.row, cells: line.line.cells, line })),
    ...others.map((other) => ({ row: other.row, cells: other.cells, other })),
  ];
  return rows.sort((a, b) => a.row - b.row);
}

/** The rows with what was accepted of them; a row for which nothing has changed comes out as the same object. */
export function withConceded(rows: readonly GridRow[], concessions: readonly Concession[]): readonly GridRow[] {
  const byRow = new Map<number, Concession[]>();
  for (const concession of concessions) byRow.set(concession.row, [...(byRow.get(concession.row) ?? []), concession]);
  return rows.map((row) => {
    const conceded = row.line ? describeConceded(row.line, byRow.get(row.row) ?? []) : '';
    if (conceded === (row.conceded ?? '')) return row;
    const { conceded: _, ...plain } = row;
    return conceded ? { ...row, conceded } : plain;
  });
}

/** The state with some rows judged anew. */
export function withRows(state: AppState, changed: readonly RowState[], totals: Totals): Partial<AppState> {
  const states = new Map<number, GridRow>(
    changed.map((row) =>
      'line' in row
        ? [row.line.row, { row: row.line.row, cells: row.line.line.cells, line: row.line }]
        : [row.other.row, { row: row.other.row, cells: row.other.cells, other: row.other }],
    ),
  );
  const rows = state.rows.map((row) => states.get(row.row) ?? row);
  const lines = rows.flatMap(({ line }) => line ?? []);
  const others = rows.flatMap(({ other }) => other ?? []);
  return { rows, list: state.list && { ...state.list, lines, others, totals } };
}
