import type { AuditedList } from '../model/audited.ts';
import { SAFETY_SHORT } from '../say/safety.ts';
import { listRows } from './name-rows.ts';
import type { LeftOut, Purchase, PurchaseLine } from './purchase.ts';
import { footOf, type Report, type ReportBlock } from './report.ts';

const ORDER_HEADINGS = [
  'Part number',
  'Kind',
  'Thread',
  'Rows',
  'Panels',
  'Per build',
  'For all builds',
  'Spares',
  'Need',
  'Stock',
  'To order',
  'MOQ',
  'Pack',
  'Packs',
  'Order',
  'Price each',
  'Currency',
  'Price',
  'Lead days',
  'Supplier',
  'Check before ordering',
];
/** In this order wide texts stand below wide texts of the order. */
const LEFT_OUT_HEADINGS = ['Part number', 'Verdict', 'Row', 'Panel', 'Reason', 'Per build', 'On file'];
const TOTAL_HEADINGS = ['Currency', 'Total'];

/** The purchase list as tables: the order, its totals by currency, and what is left out with the reason. */
export function purchaseReport(list: AuditedList, purchase: Purchase): Report {
  const { lines, totals, heldBack, uncounted } = purchase;
  const order: ReportBlock = {
    title: '',
    headings: ORDER_HEADINGS,
    rows: lines.map(orderRow),
    notes: orderNotes(purchase),
  };
  const sum: ReportBlock = {
    title: 'Totals, each currency by itself',
    headings: TOTAL_HEADINGS,
    rows: totals.map(({ currency, price }) => [currency, price]),
    notes: totalNotes(purchase),
  };
  return {
    blocks: [
      order,
      sum,
      ...leftOutBlock('Not ordered: these rows do not hold yet', heldBack),
      ...leftOutBlock('Not ordered: these rows hold and have no usable quantity', uncounted),
    ],
    foot: footOf(list, [SAFETY_SHORT]),
  };
}

function orderRow(line: PurchaseLine): ReportBlock['rows'][number] {
  return [
    line.partNumber,
    line.kind,
    line.thread,
    listRows(line.rows),
    line.panels.map(({ panel, pieces }) => `${panel || 'no panel'}: ${pieces}`).join(', '),
    line.perBuild,
    line.used,
    line.spares,
    line.need,
    line.stock,
    line.toOrder,
    line.moq,
    line.packSize,
    line.packs,
    line.order,
    line.unitPrice,
    line.currency,
    line.price,
    line.leadDays,
    line.supplier,
    line.flags.join(' '),
  ];
}

function orderNotes({ builds, sparesPercent, lines }: Purchase): readonly string[] {
  const isStockCounted = lines.some(({ stock }) => stock !== null && stock > 0);
  return [
    `Built ${builds} ${builds === 1 ? 'time' : 'times'}, ${sparesPercent} % spares.`,
    ...(isStockCounted
      ? ['Stock is what the catalogue states, and is taken off: leave it out of the catalogue where it is not yours.']
      : []),
    ...(lines.length === 0 ? ['No row holds and has a usable quantity: there is nothing to order.'] : []),
  ];
}

function totalNotes({ unpriced, lead }: Purchase): readonly string[] {
  const { longestDays, partNumbers, unknown } = lead;
  return [
    ...(unpriced.length > 0 ? [`In no total, as price or currency is not known: ${unpriced.join(', ')}.`] : []),
    ...(longestDays === null ? [] : [`Longest lead time ${longestDays} days: ${partNumbers.join(', ')}.`]),
    ...(unknown.length > 0 ? [`Lead time not known: ${unknown.join(', ')}.`] : []),
  ];
}

function leftOutBlock(title: string, parts: readonly LeftOut[]): readonly ReportBlock[] {
  if (parts.length === 0) return [];
  const rows = parts.flatMap(({ partNumber, onFile, rows: leftOut }) =>
    leftOut.map(({ row, panel, verdict, pieces, reason }) => [
      partNumber,
      verdict,
      row,
      panel,
      reason,
      pieces,
      onFile ? 'yes' : 'no',
    ]),
  );
  return [{ title, headings: LEFT_OUT_HEADINGS, rows, notes: [] }];
}
