import type { GridRow } from '../../app/state.ts';
import type { AuditedLine } from '../../core/model/audited.ts';
import type { LengthUnit } from '../../core/model/list.ts';
import { describeDecision, describeHole, describeMargin, describeSheet } from '../../core/say/describe.ts';
import { showValue } from '../../core/say/show-value.ts';

/** The columns that we add to the sender's. */
export type OwnColumn = 'sheet' | 'sheet-min' | 'hole-required' | 'margin' | 'verdict' | 'decision';

/** What a column shows for a row: the sender's text as it came, or ours. Nothing for a column that is not there. */
export function cellText(row: GridRow, id: string, units: LengthUnit): string {
  const sender = senderOf(id);
  if (sender !== null) return row.cells[sender] ?? '';
  if (id === 'row') return String(row.row);
  if (!row.line) return id === 'decision' ? `${row.other.what}: not a fastener` : '';
  if (id === 'decision') return [describeDecision(row.line), row.conceded].filter(Boolean).join(' · ');
  return isOwn(id) ? OWN[id](row.line, units) : '';
}

/** The sender's column behind a column of the grid, by its 0-based position in the file; null for one of ours. */
export function senderOf(id: string): number | null {
  const position = /^sender-(\d+)$/.exec(id)?.[1];
  return position === undefined ? null : Number(position);
}

const OWN: Readonly<Record<OwnColumn, (line: AuditedLine, units: LengthUnit) => string>> = {
  sheet: describeSheet,
  'sheet-min': ({ requires }, units) =>
    requires?.sheetMinMm === null || requires === null ? '' : showValue('lengthMm', requires.sheetMinMm, units),
  'hole-required': ({ requires }, units) => describeHole(requires, units),
  margin: describeMargin,
  verdict: ({ verdict }) => verdict,
  decision: describeDecision,
};

/** Whether a column of the grid is one of ours. */
export function isOwn(id: string): id is OwnColumn {
  return id in OWN;
}
