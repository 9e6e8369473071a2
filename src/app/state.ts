import type { AnswerPlan } from '../core/answers/plan-answers.ts';
import { exchangeRows, itemOfRow } from '../core/caching/in-order.ts';
import { describeConceded } from '../core/concede/describe.ts';
import type { AuditedLine, AuditedList, Totals } from '../core/model/audited.ts';
import type { ChangeRecord } from '../core/model/change-record.ts';
import type { Concession } from '../core/model/concession.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { OtherRow } from '../core/model/list.ts';
import type { Verdict } from '../core/model/outcome.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../core/model/shop.ts';
import type { PressOrder } from '../core/rollup/press-order.ts';
import type { HandedFile, Phase, Rollups, RowState } from '../worker/protocol.ts';
import type { ComparedState } from './compare-deeds.ts';
import { type History, NO_HISTORY } from './history.ts';
import type { ShelfEntry } from './shelf.ts';

/** `findings` is the page that is printed: no tab leads to it. */
export type View =
  | 'list'
  | 'purchasing'
  | 'press'
  | 'questions'
  | 'changes'
  | 'compare'
  | 'catalogue'
  | 'settings'
  | 'rules'
  | 'findings';

/** Long work under way, with what a progress bar shows. */
export interface Work {
  readonly what: string;
  readonly phase: Phase;
  readonly share: number;
  /** It can be given up: what was there before stays. */
  readonly canCancel: boolean;
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
  | {
      readonly kind: 'answers';
      readonly file: HandedFile;
      readonly plans: readonly AnswerPlan[];
      /** The file is also a list, and may have been meant as one. */
      readonly isList: boolean;
    }
  | { readonly kind: 'concede'; readonly row: number; readonly rule: string }
  | { readonly kind: 'help' };

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
  /** Names of the catalogues of the last visit, by which the next list will be judged; none once the user has changed them. */
  readonly recalled: readonly string[];
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
  /** What was changed before the list was opened, as its workbook says, oldest first. */
  readonly changesBefore: readonly ChangeRecord[];
  /** What was accepted as it is, as the steps have left it. */
  readonly concessions: readonly Concession[];
  /** The order in which the user presses, as the steps have left it. */
  readonly pressOrder: PressOrder;
  /** What the list came to when a view last asked, and which list that was; null before that. */
  readonly rollups: (Rollups & { readonly list: AuditedList }) | null;
  /** The comparison with an earlier list; null while none is chosen. */
  readonly compared: ComparedState | null;
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
  recalled: [],
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
  changesBefore: [],
  concessions: [],
  pressOrder: [],
  rollups: null,
  compared: null,
  leftOut: new Set(),
  userName: '',
  undoName: null,
  redoName: null,
};

/** Fasteners and other rows of a list woven together in file order. */
export function weaveRows({ lines, others }: Pick<AuditedList, 'lines' | 'others'>): readonly GridRow[] {
  const rows: GridRow[] = lines.map((line) => ({ row: line.row, cells: line.line.cells, line }));
  for (const other of others) rows.push({ row: other.row, cells: other.cells, other });
  return others.length > 0 ? rows.sort((a, b) => a.row - b.row) : rows;
}

/** The rows with what was accepted of them, where that has changed since `before`; every other row comes out as the same object. */
export function withConceded(
  rows: readonly GridRow[],
  concessions: readonly Concession[],
  before: readonly Concession[] = [],
): readonly GridRow[] {
  if (concessions === before) return rows;
  const concerned = new Set([...before, ...concessions].map(({ row }) => row));
  const found = [...concerned].flatMap((row) => itemOfRow(rows, row) ?? []);
  return exchangeRows(rows, new Map(concedeRows(found, concessions).map((row) => [row.row, row])));
}

function concedeRows(rows: readonly GridRow[], concessions: readonly Concession[]): readonly GridRow[] {
  if (concessions.length === 0 && rows.every(({ conceded }) => conceded === undefined)) return rows;
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
  const { list, concessions } = state;
  const lines = changed.flatMap((row) => ('line' in row ? row.line : []));
  const others = changed.flatMap((row) => ('other' in row ? row.other : []));
  const now = concedeRows(weaveRows({ lines, others }), concessions);
  return {
    rows: exchangeRows(state.rows, new Map(now.map((row) => [row.row, row]))),
    list: list && {
      ...list,
      lines: exchangeRows(
        list.lines,
        inPlace(now, ({ line }) => line),
      ),
      others: exchangeRows(
        list.others,
        inPlace(now, ({ other }) => other),
      ),
      totals,
    },
  };
}

/** What stands in each row now; null where it is something else. */
function inPlace<Item>(rows: readonly GridRow[], pick: (row: GridRow) => Item | undefined): Map<number, Item | null> {
  return new Map(rows.map((row) => [row.row, pick(row) ?? null]));
}
