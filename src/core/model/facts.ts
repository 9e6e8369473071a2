import type { FastenerKind } from './fastener.ts';

/** How a hole is made, where the row says so. */
export type HoleProcess = 'punched' | 'drilled' | 'laser' | 'waterjet';

/** A finish as the checks tell them apart. */
export type FinishKind =
  | 'zinc-electroplate'
  | 'cadmium-electroplate'
  | 'zinc-flake'
  | 'hot-dip-zinc'
  | 'nickel-plate'
  | 'tin-plate'
  | 'chromium-plate'
  /** A plating that is called by no metal: "plate after assembly". */
  | 'plating'
  | 'passivated'
  | 'anodised'
  | 'hard-anodised'
  | 'chem-film'
  | 'powder-coat'
  | 'paint'
  | 'phosphate'
  | 'black-oxide'
  | 'plain';

/** Whether the fastener is pressed before or after the sheet gets its finish. */
export type PressedWhen = 'before-finish' | 'after-finish';

/** Where the assembly lives. */
export type Environment = 'controlled' | 'indoor' | 'outdoor';

/**
 * What the words of a row (finish, note, description, hole and load cells) say beyond its columns. Null: the row does not say.
 * Only what is written counts; nothing is inferred from silence.
 */
export interface WorkFacts {
  /** Words that spoil the rim of the hole: "deburr", "csk", "chamfer", as written; null when none, also when forbidden ("do not deburr"). */
  readonly rimWork: string | null;
  readonly holeProcess: HoleProcess | null;
  /** Finish of the sheet or panel. A finish cell of a fastener row is the fastener's own unless it says sheet or panel. */
  readonly sheetFinish: FinishKind | null;
  /** Build of that finish per side in micrometres, where written: "powder coat 80 um". */
  readonly sheetFinishUm: number | null;
  readonly fastenerFinish: FinishKind | null;
  readonly pressedWhen: PressedWhen | null;
  /** True: a finish is said to follow pressing, and nothing says which. */
  readonly finishUnnamed: boolean;
  /** True: the hole (and seat) are said to be masked. */
  readonly holeMasked: boolean;
  /** True: the fastener is to be pressed from the painted or coated face, or from the burr side. */
  readonly wrongSide: string | null;
  readonly requiredPushOutN: number | null;
  readonly requiredTorqueOutNm: number | null;
  /** Screw that goes into the fastener: "M4x12-8.8". */
  readonly screw: {
    readonly thread: string;
    readonly lengthMm: number | null;
    readonly propertyClass: string | null;
  } | null;
  /** Thickness of what the screw clamps. */
  readonly matingMm: number | null;
  /** Tightening torque asked for. */
  readonly tighteningNm: number | null;
  readonly environment: Environment | null;
  /** Words about welding near the fastener, as written. */
  readonly welding: string | null;
}

/** A row that says nothing of the kind. */
export const NO_FACTS: WorkFacts = {
  rimWork: null,
  holeProcess: null,
  sheetFinish: null,
  sheetFinishUm: null,
  fastenerFinish: null,
  pressedWhen: null,
  finishUnnamed: false,
  holeMasked: false,
  wrongSide: null,
  requiredPushOutN: null,
  requiredTorqueOutNm: null,
  screw: null,
  matingMm: null,
  tighteningNm: null,
  environment: null,
  welding: null,
};

/** What the free text of a row says the fastener is: for cross-checking a catalogued part, never in place of one. */
export interface DescribedFastener {
  readonly kind: FastenerKind | null;
  /** Canonical thread name: "M4", "8-32". */
  readonly thread: string | null;
  readonly lengthMm: number | null;
  /** Ids in the table of fastener materials that the words could mean; empty: the text does not say. */
  readonly materials: readonly string[];
  readonly finish: FinishKind | null;
  readonly sheetMinMm: number | null;
}

/** Text that describes no fastener. */
export const NOT_DESCRIBED: DescribedFastener = {
  kind: null,
  thread: null,
  lengthMm: null,
  materials: [],
  finish: null,
  sheetMinMm: null,
};
