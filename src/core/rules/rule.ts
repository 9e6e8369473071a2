import type { Fastener } from '../model/fastener.ts';
import type { Judgement, Text } from '../model/finding.ts';
import type { Field, Line } from '../model/line.ts';
import type { Role } from '../model/list.ts';
import type { Outcome } from '../model/outcome.ts';
import type { AlloyEntry } from '../model/sheet.ts';
import type { ShopSettings } from '../model/shop.ts';
import type { FastenerMaterialEntry } from '../reference/fastener-materials.ts';
import type { Judgements } from './judgements.ts';

/** The sheet of a row, for one of the metals that its words could mean. */
export interface Sheet {
  /** Null: nobody knows the metal. */
  readonly entry: AlloyEntry | null;
  /** Nominal thickness; null where the cell does not give one, or a gauge number has no meaning for this metal. */
  readonly thicknessMm: number | null;
  /** Table that turned a gauge number into millimetres. */
  readonly thicknessTable: string | null;
  /** What another table in use would give for the same gauge number. */
  readonly otherThickness: { readonly mm: number; readonly name: string } | null;
  /** The thinnest that the mill may deliver; null where no table covers it. */
  readonly thinnestMm: number | null;
  readonly thinnestTable: string | null;
  /** What had to be taken for granted to find it, in a phrase. */
  readonly thinnestAssumed: string | null;
  /** The same by the other side's standard (ASTM for EN and the other way round). */
  readonly otherThinnest: { readonly mm: number; readonly table: string } | null;
}

/** One row with everything that belongs to it: what rules look at. */
export interface Subject {
  readonly line: Line;
  /** Pieces in the whole product, through every level of the list; null where a quantity on the way cannot be used. */
  readonly pieces: number | null;
  /** The catalogued part; null when the part number is not on file. */
  readonly fastener: Fastener | null;
  /** Part numbers on file that look like an unlisted one. */
  readonly near: readonly string[];
  /** Part numbers on file that the description of an unlisted one could mean. */
  readonly fitting: readonly string[];
  /** What the fastener may be made of, by the catalogue's words; never more than the words allow. */
  readonly metals: readonly FastenerMaterialEntry[];
  /** One per metal that the sheet could be; always at least one. */
  readonly sheets: readonly Sheet[];
  readonly shop: ShopSettings;
}

/** A row and what a rule must say of it: shown on the rule's page, and a test. */
export interface Example {
  /** Cells of the list by role. */
  readonly cells: Readonly<Partial<Record<Role, string>>>;
  /** Unit of bare lengths; mm unless said, `none` when nothing settles it. */
  readonly unit?: 'in' | 'none';
  /** What the catalogue says of the part, over a complete example part; null: the part is not on file. */
  readonly part?: Partial<Fastener> | null;
  readonly shop?: Partial<ShopSettings>;
  /** Pieces that columns of single assemblies give the row; else its own quantity counts. */
  readonly piecesByAssembly?: number;
  readonly outcome: Outcome;
  /** Key of the text that the rule must choose. */
  readonly says: string;
}

/** Several rows and what a rule over the whole list must say of each. */
export interface ListExample {
  readonly rows: readonly Readonly<Partial<Record<Role, string>>>[];
  /** What the catalogue says of parts other than the complete example part, over that part. */
  readonly parts?: Readonly<Record<string, Partial<Fastener>>>;
  /** Outcome and text key for each row; null where the rule says nothing of it. */
  readonly expect: readonly (readonly [Outcome, string] | null)[];
}

/** What every check says of itself. */
export interface RuleCard {
  /** `area/thing`, a name that outputs and settings refer to. */
  readonly id: string;
  /** Short name for lists of checks: "Hardness". */
  readonly title: string;
  /** What it asks, in one sentence. */
  readonly summary: string;
  /** Why it matters, in one or two sentences. */
  readonly reason: string;
  /** How it decides, as a formula or comparison in words and symbols; for checks that calculate. */
  readonly formula?: string;
  /** Parts of the line it looks at; an edit elsewhere leaves its finding alone. */
  readonly reads: readonly Field[];
  /** Columns among these of which it looks at nothing but what their words say of the work: another size there is all one to it. */
  readonly wordsOf?: readonly Field[];
  /** Tables and practices it may cite. */
  readonly needs: readonly string[];
  readonly texts: Readonly<Record<string, Text>>;
}

/** One check of a single row, as a plain object: what it reads, what it rests on, what it can say, and how it decides. */
export interface Rule extends RuleCard {
  readonly examples: readonly Example[];
  /** Null: the rule does not apply to this row (the part is not on file, or the list gives no such data). */
  check(subject: Subject): Judgement | null;
}

/** One check that needs the whole list: duplicates, conflicts, look-alikes. */
export interface ListRule extends RuleCard {
  readonly examples: readonly ListExample[];
  /**
   * Which rows are judged together: what is said of a row depends on the rows of its group alone. Null: nothing is said of it. An edit
   * has only the groups judged again that it touches.
   */
  groupOf(subject: Subject): string | null;
  /** Judgements by row; of the other rows there is nothing to say. */
  checkList(subjects: readonly Subject[]): Judgements;
}
