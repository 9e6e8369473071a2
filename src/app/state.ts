import type { AuditedLine, AuditedList } from '../core/model/audited.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { OtherRow } from '../core/model/list.ts';
import type { Verdict } from '../core/model/outcome.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../core/model/shop.ts';
import type { Phase } from '../worker/protocol.ts';

export type View = 'list' | 'catalogue' | 'settings' | 'rules';

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

/** One row on screen in file order. */
export type GridRow = { readonly row: number; readonly cells: readonly string[] } & (
  | { readonly line: AuditedLine; readonly other?: undefined }
  | { readonly other: OtherRow; readonly line?: undefined }
);

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
  readonly work: Work | null;
  readonly message: Message | null;
  /** Verdicts shown; empty means all rows. */
  readonly filter: ReadonlySet<Verdict>;
  readonly search: string;
  readonly selectedRow: number | null;
  /** Rule or table whose page is asked for. */
  readonly openRule: string | null;
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
  work: null,
  message: null,
  filter: new Set(),
  search: '',
  selectedRow: null,
  openRule: null,
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
