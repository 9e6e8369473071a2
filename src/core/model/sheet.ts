import type { Hardness } from '../units/hardness.ts';
import type { Mark } from './table.ts';

/** Metal family of a sheet. */
export type SheetFamily =
  | 'carbon-steel'
  | 'galvanized-steel'
  | 'galvannealed-steel'
  | 'stainless-austenitic'
  | 'stainless-ferritic'
  | 'stainless-martensitic'
  | 'aluminium'
  | 'copper'
  | 'brass'
  | 'bronze'
  | 'titanium';

/** One alloy in one temper or condition, with the hardness that the check compares. */
export interface AlloyEntry {
  /** Kebab-case, unique: "304", "5052-h32", "a109-no2". */
  readonly id: string;
  /** Alloy or grade without its condition, shared by all tempers: "304", "5052", "crs". */
  readonly alloy: string;
  /** How a person would name alloy and condition in one phrase: "304 annealed", "5052-H32", "cold-rolled DC01". */
  readonly name: string;
  /** Temper or condition as its standard writes it: "annealed", "H32", "skin-passed". */
  readonly temper: string;
  readonly family: SheetFamily;
  /** The document that defines grade and condition. */
  readonly standard: string;
  /** Typical hardness in the scale it was given in; scale "MPa" means tensile strength. Null: nobody publishes one. */
  readonly typical: Hardness | null;
  /** Highest hardness that the standard allows or that is published. Null: none (see `maxFrom`). */
  readonly max: Hardness | null;
  /** Where `max` comes from: a limit in the standard, the highest published value, derived from tensile strength, or judged. */
  readonly maxFrom: 'limit' | 'published' | 'strength' | 'judged' | 'none';
  /** True where the row's Rockwell B values were themselves derived from tensile strength: they scatter like strength. */
  readonly hrbFromStrength?: boolean;
  /** Lowest hardness where the standard gives one (hard tempers). */
  readonly min?: Hardness;
  /** Tensile strength in MPa. */
  readonly rmMinMpa?: number;
  readonly rmMaxMpa?: number;
  /** The condition in which sheet of this name is ordinarily sold. */
  readonly commercial: boolean;
  readonly mark: Mark;
  /** Documents behind the numbers, in words. */
  readonly source: string;
  readonly note?: string;
}

/** The row that a fact was taken from where the row itself is silent: its panel's, the title above it, a row of a panel table. */
export interface TakenFrom {
  /** 1-based row in the file. */
  readonly row: number;
  /** Sheet of the workbook, where it is not the list's own. */
  readonly sheet?: string;
  /** What stands there, as written. */
  readonly text: string;
}

/** Why a missing fact was not taken from the rows that could give it. */
export interface Disputed {
  /** `each-other`: those rows differ. `this-row`: the row itself says otherwise about the sheet. */
  readonly why: 'each-other' | 'this-row';
  readonly by: readonly TakenFrom[];
}

/** How a material cell was understood. */
export interface MaterialReading {
  /** As listed. */
  readonly text: string;
  /** Every alloy and temper that the words could mean, as entry ids. Empty: nothing was understood. */
  readonly candidates: readonly string[];
  /**
   * `named` = one alloy and temper was written; `condition-assumed` = the alloy alone, taken in the condition it is sold in;
   * `vague` = several; `not-a-material` = a colour, finish, plastic or the like; `unreadable`; `blank`.
   */
  readonly how: 'named' | 'condition-assumed' | 'vague' | 'not-a-material' | 'unreadable' | 'blank';
  /** The metal, where every candidate shares it: enough to read a gauge number. */
  readonly family: SheetFamily | null;
  /** The standard in which it was written where its hardness limit differs: "JIS: HRB 90". */
  readonly writtenLimit?: { readonly standard: string; readonly max: Hardness | null };
  /** Coating designation seen beside the alloy: "Z275", "G90", "ZF100". */
  readonly coating?: string;
  /** Finish words seen beside the alloy: "2B", "anodised". */
  readonly finish?: string;
  /** Thickness words seen in the same cell, as written: "16 ga", "1.5mm". */
  readonly thicknessText?: string;
  /** Things worth telling: a trap avoided, a spelling corrected, a soft clad skin. */
  readonly remarks: readonly string[];
  /** Set where the cell is blank and the metal is that of another row. */
  readonly takenFrom?: TakenFrom;
  readonly disputed?: Disputed;
}
