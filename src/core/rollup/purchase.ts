import type { PartIndex } from '../catalogue/find-part.ts';
import { partKey } from '../catalogue/part-key.ts';
import type { AuditedLine, AuditedList } from '../model/audited.ts';
import type { Fastener } from '../model/fastener.ts';
import type { Verdict } from '../model/outcome.ts';
import type { ShopSettings } from '../model/shop.ts';
import { panelKey } from '../rules/list/group.ts';
import { groupBy } from './group-by.ts';
import { type Order, orderOf, priceOf } from './order.ts';
import { piecesOf, whyNotCounted } from './pieces.ts';
import { showFlags } from './purchase-flags.ts';
import { type Lead, longestLead, type Total, totalsOf, unpricedOf } from './purchase-totals.ts';

/** One part to be ordered, over all panels. */
export interface PurchaseLine extends Order {
  readonly partNumber: string;
  readonly kind: string | null;
  readonly thread: string | null;
  readonly supplier: string | null;
  /** Rows of the list that it comes from. */
  readonly rows: readonly number[];
  /** Pieces in one product on each panel; '' is no panel named. */
  readonly panels: readonly { readonly panel: string; readonly pieces: number }[];
  /** Pieces in one product. */
  readonly perBuild: number;
  readonly unitPrice: number | null;
  readonly currency: string | null;
  /** Price of what is ordered; null without a price or its currency. */
  readonly price: number | null;
  readonly leadDays: number | null;
  readonly stocked: boolean | null;
  readonly supersededBy: string | null;
  /** What to look at before ordering, a sentence each. */
  readonly flags: readonly string[];
}

/** A row that is left out of the order, and why. */
export interface LeftOutRow {
  readonly row: number;
  readonly panel: string;
  readonly verdict: Verdict;
  /** Pieces in one product; null where the quantity cannot be used. */
  readonly pieces: number | null;
  readonly reason: string;
}

/** Rows of one part that are left out of the order. */
export interface LeftOut {
  readonly partNumber: string;
  readonly onFile: boolean;
  readonly rows: readonly LeftOutRow[];
}

/** What to order for the builds of a list. */
export interface Purchase {
  readonly builds: number;
  readonly sparesPercent: number;
  /** Rows that hold and can be counted, by part, in the order of the list. */
  readonly lines: readonly PurchaseLine[];
  /** By currency, in alphabetical order; currencies are never added together. */
  readonly totals: readonly Total[];
  /** Parts to order that are in no total, as their price or currency is not known. */
  readonly unpriced: readonly string[];
  readonly lead: Lead;
  /** Rows that do not hold: not in the order until they do. */
  readonly heldBack: readonly LeftOut[];
  /** Rows that hold and have no usable quantity. */
  readonly uncounted: readonly LeftOut[];
}

/** The purchase list of an audited list: what holds and can be counted is ordered, everything else is named with its reason. */
export function rollUpPurchase({ lines, shop }: AuditedList, parts: PartIndex): Purchase {
  const holds = (line: AuditedLine) => line.verdict === 'holds' && parts.find(line.line.partNumber) !== null;
  const held = lines.filter(holds);
  const ordered = byPart(held.filter((line) => piecesOf(line) !== null)).flatMap((rows) => {
    const part = parts.find(rows[0].line.partNumber);
    return part ? [toPurchaseLine(part, rows, shop, parts)] : [];
  });
  const uncounted = held.filter((line) => piecesOf(line) === null);
  return {
    builds: shop.buildQuantity,
    sparesPercent: shop.sparesPercent,
    lines: ordered,
    totals: totalsOf(ordered),
    unpriced: unpricedOf(ordered),
    lead: longestLead(ordered),
    heldBack: leaveOut(
      lines.filter((line) => !holds(line)),
      parts,
      ({ decidedBy }) => decidedBy?.brief ?? 'Not on file in these catalogues',
    ),
    uncounted: leaveOut(uncounted, parts, whyNotCounted),
  };
}

function toPurchaseLine(
  part: Fastener,
  lines: readonly [AuditedLine, ...AuditedLine[]],
  { buildQuantity, sparesPercent }: ShopSettings,
  parts: PartIndex,
): PurchaseLine {
  const perBuild = sumOf(lines);
  const order = orderOf(perBuild * buildQuantity, sparesPercent, part);
  const currency = part.currency?.trim().toUpperCase() || null;
  const supersededBy = part.supersededBy?.trim() || null;
  return {
    ...order,
    partNumber: part.partNumber,
    kind: part.kind,
    thread: part.thread,
    supplier: part.supplier,
    rows: lines.map(({ row }) => row),
    panels: panelsOf(lines),
    perBuild,
    unitPrice: part.unitPrice,
    currency,
    price: currency === null ? null : priceOf(order.order, part.unitPrice),
    leadDays: part.leadDays,
    stocked: part.stocked?.yes ?? null,
    supersededBy,
    flags: showFlags(part, supersededBy, parts),
  };
}

function panelsOf(lines: readonly AuditedLine[]): PurchaseLine['panels'] {
  return groupBy(lines, (line) => panelKey(line) ?? '').map((rows) => ({
    panel: rows[0].line.panel.trim(),
    pieces: sumOf(rows),
  }));
}

function leaveOut(
  lines: readonly AuditedLine[],
  parts: PartIndex,
  why: (line: AuditedLine) => string,
): readonly LeftOut[] {
  return byPart(lines).map((rows) => {
    const part = parts.find(rows[0].line.partNumber);
    return {
      partNumber: part?.partNumber ?? rows[0].line.partNumber.trim(),
      onFile: part !== null,
      rows: rows.map((line) => ({
        row: line.row,
        panel: line.line.panel.trim(),
        verdict: line.verdict,
        pieces: piecesOf(line),
        reason: why(line),
      })),
    };
  });
}

function byPart(lines: readonly AuditedLine[]): readonly (readonly [AuditedLine, ...AuditedLine[]])[] {
  return groupBy(lines, ({ line }) => partKey(line.partNumber));
}

function sumOf(lines: readonly AuditedLine[]): number {
  return lines.reduce((sum, line) => sum + (piecesOf(line) ?? 0), 0);
}
