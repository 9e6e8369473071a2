import type { Outcome } from './outcome.ts';

/** Numbers of a finding; the unit stands in the key: `thicknessMm`, `marginWorst` (Rockwell B points). */
export type Values = Readonly<Record<string, number>>;
/** Words of a finding: names and texts that its sentence quotes. */
export type Words = Readonly<Record<string, string>>;

/** A sentence in two lengths. Slots in braces are filled from values and words: `{thicknessMm}`, `{thicknessMm:unit}`. */
export interface Text {
  /** Fits one grid cell: "Sheet 0.80, needs 1.00 mm". */
  readonly brief: string;
  /** Says what is wrong, by how much, and what settles or cures it. */
  readonly full: string;
}

/** A correction that is certain to make the rule hold: put `to` into the field. */
export interface Fix {
  readonly field: string;
  readonly to: string;
}

/** What a rule says of one row: a text key and what fills it, no sentence yet. */
export interface Judgement {
  readonly outcome: Outcome;
  /** Key into the rule's `texts`. */
  readonly says: string;
  readonly values?: Values;
  readonly words?: Words;
  /** Ids of the tables and practices it rests on. */
  readonly cites?: readonly string[];
  readonly fix?: Fix;
}

/** A judgement with its sentence. */
export interface Finding {
  /** Rule id, `area/thing`. */
  readonly rule: string;
  readonly outcome: Outcome;
  readonly says: string;
  readonly brief: string;
  readonly text: string;
  readonly values: Values;
  readonly words: Words;
  readonly cites: readonly string[];
  readonly fix?: Fix;
}
