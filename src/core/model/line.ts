import type { DescribedFastener, WorkFacts } from './facts.ts';
import type { HoleReading } from './hole.ts';
import type { CellFlags, Role } from './list.ts';
import type { MaterialReading } from './sheet.ts';
import type { ThicknessReading, UnitFrom } from './thickness.ts';

/** How a cell that holds a plain distance (edge, spacing, bend) was understood. */
export interface DistanceReading {
  readonly text: string;
  readonly how: 'size' | 'blank' | 'unreadable' | 'ambiguous-unit' | 'impossible';
  readonly mm: number | null;
  readonly unitFrom: UnitFrom | null;
  /** What the other unit would give, where that is worth offering. */
  readonly otherMm: number | null;
}

/** How a quantity cell was understood. */
export interface QuantityReading {
  readonly text: string;
  readonly how: 'whole' | 'blank' | 'zero' | 'not-whole' | 'unreadable';
  readonly value: number | null;
}

/** What a row says, cell by cell, with every cell's text kept beside what was understood of it. */
export interface Line {
  /** 1-based row in the file. */
  readonly row: number;
  readonly cells: readonly string[];
  readonly flags: CellFlags;
  readonly partNumber: string;
  readonly description: string;
  readonly panel: string;
  readonly quantity: QuantityReading;
  readonly material: MaterialReading;
  readonly thickness: ThicknessReading;
  readonly hole: HoleReading;
  readonly edge: DistanceReading;
  /** Centre to centre of the nearest neighbour. */
  readonly spacing: DistanceReading;
  /** From the hole to a bend, as the list gives it. */
  readonly bend: DistanceReading;
  /** The fastener's own metal where the list has a column for it. */
  readonly fastenerMaterial: string;
  readonly finish: string;
  readonly thread: string;
  readonly length: string;
  readonly load: string;
  readonly note: string;
  /** What the words of the row say about work and service. */
  readonly facts: WorkFacts;
  /** What description, thread, length and finish cells say the fastener is. */
  readonly described: DescribedFastener;
  /** What the words of the row say it is when that is clearly no press-in fastener: "panel", "screw". */
  readonly seemsToBe: string | null;
}

/** Parts of a line that a rule may read; an edit re-judges only the rules that read what it touched. */
export type Field = Extract<
  Role,
  | 'partNumber'
  | 'description'
  | 'quantity'
  | 'panel'
  | 'material'
  | 'thickness'
  | 'hole'
  | 'edge'
  | 'spacing'
  | 'bend'
  | 'fastenerMaterial'
  | 'finish'
  | 'thread'
  | 'length'
  | 'load'
  | 'note'
>;
