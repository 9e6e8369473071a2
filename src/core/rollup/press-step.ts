import type { AuditedLine } from '../model/audited.ts';
import type { Fastener } from '../model/fastener.ts';
import type { SheetFamily } from '../model/sheet.ts';
import type { ShopSettings } from '../model/shop.ts';
import { showCallOut } from '../rules/clinch/hole-band.ts';
import { holeBandOf } from '../rules/hole-band.ts';
import { describeSheet } from '../say/describe.ts';
import { piecesOf } from './pieces.ts';
import { FIXTURES, PRESS_SIDE, pushOutSample } from './press-practice.ts';

/** One part to be pressed into one panel. */
export interface PressStep {
  /** Place in the suggested order of the panel, from 1 on: largest force last. */
  readonly order: number;
  readonly rows: readonly number[];
  readonly partNumber: string;
  readonly kind: string | null;
  readonly thread: string | null;
  readonly sheet: string;
  /** Hole as it has to be under the press, after any coating: "5.60 +0.08/-0 mm"; null where the catalogue gives none. */
  readonly hole: string | null;
  readonly holeLowMm: number | null;
  readonly holeHighMm: number | null;
  readonly side: string;
  /** Force in this sheet; null where the catalogue gives none. */
  readonly forceKn: number | null;
  /** Which of the catalogue's values that is: "in steel". */
  readonly forceBasis: string;
  /** Punch and anvil for this kind; null where the kind is not known. */
  readonly fixture: string | null;
  /** Pieces as listed, per row's own level; null where that cannot be used. */
  readonly pieces: number | null;
  /** Pieces for all builds. */
  readonly lot: number | null;
  readonly ratedPushOutN: number | null;
  /** Pieces for the push-out test, none of which may fail. */
  readonly pushOutSample: number | null;
  readonly verdict: 'holds' | 'marginal';
  /** What a marginal row still needs; '' where it holds. */
  readonly settle: string;
}

/** Rows that are pressed alike become one step, not yet put in order. */
export function toStep(
  lines: readonly [AuditedLine, ...AuditedLine[]],
  part: Fastener,
  { buildQuantity, units }: ShopSettings,
): Omit<PressStep, 'order'> {
  const [first] = lines;
  const perBuild = sum(lines.map(piecesOf));
  const lot = perBuild === null ? null : perBuild * buildQuantity;
  const band = holeBandOf(part);
  return {
    rows: lines.map(({ row }) => row),
    partNumber: part.partNumber,
    kind: part.kind,
    thread: part.thread,
    sheet: describeSheet(first, units),
    hole: band && part.holeMm !== null ? showCallOut(part.holeMm, band, units) : null,
    holeLowMm: band?.holeLowMm ?? null,
    holeHighMm: band?.holeHighMm ?? null,
    side: PRESS_SIDE,
    ...forceOf(first),
    fixture: part.kind && FIXTURES[part.kind],
    pieces: sum(lines.map(({ line }) => (line.quantity.how === 'whole' ? line.quantity.value : null))),
    lot,
    ratedPushOutN: ratedPushOut(first, part),
    pushOutSample: pushOutSample(lot),
    verdict: first.verdict === 'holds' ? 'holds' : 'marginal',
    settle: first.verdict === 'holds' ? '' : (first.decidedBy?.brief ?? ''),
  };
}

/** The force that the check of the press found for this sheet. */
export function forceOf({ findings }: AuditedLine): Pick<PressStep, 'forceKn' | 'forceBasis'> {
  const finding = findings.find(({ rule }) => rule === 'press/force');
  return { forceKn: finding?.values.forceKn ?? null, forceBasis: finding?.words.basis?.trim() ?? '' };
}

const RATED_AS_STEEL: ReadonlySet<SheetFamily | null> = new Set([
  'carbon-steel',
  'galvanized-steel',
  'galvannealed-steel',
]);

/** Catalogues rate push-out in steel and in aluminium; in other metal, or where the metal is vague, there is no rating to test against. */
function ratedPushOut({ sheet }: AuditedLine, { pushOutAluminiumN, pushOutSteelN }: Fastener): number | null {
  if (sheet?.family === 'aluminium') return pushOutAluminiumN;
  return RATED_AS_STEEL.has(sheet?.family ?? null) ? pushOutSteelN : null;
}

function sum(counts: readonly (number | null)[]): number | null {
  return counts.reduce((total, count) => (total === null || count === null ? null : total + count), 0);
}
