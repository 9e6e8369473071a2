import type { Finding } from './finding.ts';
import type { Line } from './line.ts';
import type { Column, OtherRow } from './list.ts';
import type { Verdict } from './outcome.ts';
import type { Notice, TextReading } from './raw.ts';
import type { SheetFamily } from './sheet.ts';
import type { ShopSettings } from './shop.ts';

/** A part that would hold in place of the listed one. */
export interface Remedy {
  readonly partNumber: string;
  /** What changes, in words: "other shank, minimum sheet 0.80". */
  readonly change: string;
  readonly stocked: boolean | null;
  /** Added price per piece where both catalogues state one in the same currency. */
  readonly priceDifference: number | null;
}

/** The fastener of a row in short. */
export interface FastenerSummary {
  readonly partNumber: string;
  readonly listedAs: string;
  readonly kind: string | null;
  readonly thread: string | null;
  readonly material: string | null;
  /** Names of what the user edited of it in the catalogue; left out where nothing was. */
  readonly edited?: string;
}

/** The sheet of a row in short; where several alloys are possible, what they share. */
export interface SheetSummary {
  readonly listedAs: string;
  readonly name: string;
  readonly alloy: string | null;
  readonly temper: string | null;
  readonly family: SheetFamily | null;
  readonly thicknessMm: number | null;
  readonly thinnestMm: number | null;
}

/** What the catalogue asks of the sheet and the hole. */
export interface Requirement {
  readonly sheetMinMm: number | null;
  readonly holeMm: number | null;
  readonly holePlusMm: number | null;
  readonly holeMinusMm: number | null;
  readonly edgeMm: number | null;
}

/** One judged row. */
export interface AuditedLine {
  readonly row: number;
  readonly line: Line;
  readonly verdict: Verdict;
  /** The finding that decides the verdict; null when every check holds. */
  readonly decidedBy: Finding | null;
  readonly findings: readonly Finding[];
  readonly fastener: FastenerSummary | null;
  readonly sheet: SheetSummary | null;
  readonly requires: Requirement | null;
  /** Quantity as listed. */
  readonly quantity: number | null;
  /** Pieces in the whole product, through every level above the row; null where a quantity on the way cannot be used. */
  readonly extendedQuantity: number | null;
  readonly remedies: readonly Remedy[];
}

export type Totals = Readonly<Record<Verdict, number>>;

/** A whole judged list. */
export interface AuditedList {
  readonly file: string;
  readonly sheet: string;
  readonly sheets: readonly string[];
  readonly headerRow: number;
  readonly columns: readonly Column[];
  readonly catalogues: readonly { readonly name: string; readonly demo: boolean }[];
  readonly shop: ShopSettings;
  readonly notices: readonly Notice[];
  readonly hiddenRows: number;
  /** How the file was decoded and cut; text files only. */
  readonly reading?: TextReading;
  readonly lines: readonly AuditedLine[];
  /** Rows that are no press-in fasteners. */
  readonly others: readonly OtherRow[];
  readonly totals: Totals;
}
