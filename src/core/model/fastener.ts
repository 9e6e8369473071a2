import type { Hardness } from '../units/hardness.ts';
import type { PartCells, PartEdit } from './part-edit.ts';

export const FASTENER_KINDS = [
  'clinch nut',
  'clinch stud',
  'through standoff',
  'blind standoff',
  'clinch pin',
  'captive screw',
  'floating nut',
] as const;
export type FastenerKind = (typeof FASTENER_KINDS)[number];

/** Material class of a fastener: the rows of the trade's table of families, and what lies outside it. */
export type FastenerClass =
  | 'carbon-steel-hardened'
  | 'stainless-300'
  | 'stainless-400-hardened'
  | 'stainless-ph'
  | 'aluminium'
  | 'brass'
  | 'bronze';

/** How a fastener's material was understood; several candidates when the words are vague ("stainless"). */
export interface FastenerMaterial {
  readonly text: string;
  /** Ids in the table of fastener materials; empty when nothing was understood. */
  readonly candidates: readonly string[];
}

/** One catalogued fastener. Null means that the catalogue is silent: a check that needs it then says `unknown`. */
export interface Fastener {
  readonly partNumber: string;
  readonly kind: FastenerKind | null;
  /** In the usual short form: "M4", "8-32". */
  readonly thread: string | null;
  readonly lengthMm: number | null;
  readonly material: FastenerMaterial;
  readonly hardnessMin: Hardness | null;
  readonly finish: string | null;
  readonly sheetMinMm: number | null;
  readonly sheetMaxMm: number | null;
  readonly shankMm: number | null;
  readonly flush: boolean | null;
  readonly holeMm: number | null;
  readonly holePlusMm: number | null;
  readonly holeMinusMm: number | null;
  readonly edgeMm: number | null;
  readonly spacingMm: number | null;
  /** Hardest sheet that the catalogue allows. */
  readonly sheetHardnessMax: Hardness | null;
  readonly flangeMm: number | null;
  readonly heightMm: number | null;
  readonly forceSteelKn: number | null;
  readonly forceAluminiumKn: number | null;
  readonly pushOutSteelN: number | null;
  readonly pushOutAluminiumN: number | null;
  readonly torqueOutSteelNm: number | null;
  readonly torqueOutAluminiumNm: number | null;
  /** Null: not said. `quantity` only where the catalogue gives a number. */
  readonly stocked: { readonly yes: boolean; readonly quantity: number | null } | null;
  readonly packSize: number | null;
  readonly moq: number | null;
  readonly unitPrice: number | null;
  readonly currency: string | null;
  readonly leadDays: number | null;
  readonly supersededBy: string | null;
  readonly supplier: string | null;
  readonly source: string | null;
  readonly sourceDate: string | null;
  readonly note: string | null;
  /**
   * Which catalogue and which row of its file this came from; row 0: added in the app. `edited`, of a part that was edited in the
   * app: what the file says in the cells that were set.
   */
  readonly origin: { readonly catalogue: string; readonly row: number; readonly edited?: PartCells };
}

/** A loaded catalogue. */
export interface Catalogue {
  readonly name: string;
  /** True for invented demonstration data: every output made with it says so. */
  readonly demo: boolean;
  readonly fasteners: readonly Fastener[];
  /** What could not be used, each with row and column, in one sentence. */
  readonly problems: readonly { readonly row: number; readonly column: string; readonly text: string }[];
  /** What was changed in the app since the file was loaded; the parts are as these leave them. */
  readonly edits?: readonly PartEdit[];
}
