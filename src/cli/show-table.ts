import type { AuditedList } from '../core/model/audited.ts';
import { describeDecision, describeRemedies, describeSheet } from '../core/say/describe.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../core/say/safety.ts';
import { shorten } from '../core/say/shorten.ts';

const WIDEST = 60;

/** The audit as a table for a terminal: a line a row, then counts and the safety words. */
export function showTable(list: AuditedList): string {
  const rows = list.lines.map((line) => [
    String(line.row),
    line.verdict,
    line.line.partNumber || '(no part number)',
    describeSheet(line, list.shop.units),
    describeDecision(line),
    describeRemedies(line).split('; ')[0] ?? '',
  ]);
  const table = layOut([['Row', 'Verdict', 'Part', 'Sheet', 'What decides it', 'Would hold instead'], ...rows]);
  return [...table, '', ...summary(list), ''].join('\n');
}

function summary(list: AuditedList): readonly string[] {
  const { holds, marginal, fails, unknown } = list.totals;
  const place = list.sheet ? `${list.file}, sheet “${list.sheet}”` : list.file;
  return [
    `${list.lines.length} fastener rows of ${place}, headings in row ${list.headerRow}; ${list.others.length} rows are no press-in fasteners.`,
    `${holds} hold, ${marginal} marginal, ${fails} fail, ${unknown} unknown.`,
    ...list.notices.map(({ text }) => text),
    ...(list.catalogues.some(({ demo }) => demo) ? [DEMO_WORDS] : []),
    SAFETY_SHORT,
  ];
}

function layOut(rows: readonly (readonly string[])[]): readonly string[] {
  const widths = (rows[0] ?? []).map((_, column) =>
    rows.reduce((widest, row) => Math.min(WIDEST, Math.max(widest, row[column]?.length ?? 0)), 0),
  );
  return rows.map((row) =>
    row
      .map((cell, column) => inWidth(cell, widths[column] ?? 0))
      .join('  ')
      .trimEnd(),
  );
}

function inWidth(text: string, width: number): string {
  return shorten(text, width).padEnd(width);
}
