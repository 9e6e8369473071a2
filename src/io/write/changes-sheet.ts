import type { AuditedList } from '../../core/model/audited.ts';
import type { ChangeDetail, ChangeRecord } from '../../core/model/change-record.ts';
import { CHANGE_HEADINGS } from '../../core/readback/read-changes.ts';
import { footerOf, headingRow, heightFor, numberCell, STRUCK, textCell, WRAPPED } from './look.ts';
import type { PlannedRow, SheetPlan } from './sheet-plan.ts';

const WIDTHS = [20, 20, 44, 8, 28, 30, 30, 9, 9];

/** Every step of the user's work, one cell or setting a line; what was taken back since is struck through, what an earlier workbook told is marked. */
export function planChangesSheet(name: string, list: AuditedList, changes: readonly ChangeRecord[]): SheetPlan {
  const size = changes.reduce((sum, { details }) => sum + details.length, 0);
  return {
    name,
    widths: WIDTHS,
    isFrozen: true,
    filter: { rows: size + 1, columns: WIDTHS.length },
    footer: footerOf(list),
    size,
    rows: () => planRows(changes),
  };
}

function* planRows(changes: readonly ChangeRecord[]): Generator<PlannedRow> {
  yield headingRow(CHANGE_HEADINGS, WIDTHS);
  for (const change of changes) for (const detail of change.details) yield planDetail(change, detail);
}

function planDetail({ when, by, what, undone, earlier }: ChangeRecord, detail: ChangeDetail): PlannedRow {
  const time = when.replace('T', ' ').replace(/(\.\d+)?Z$/, '');
  const { row, where, before, after } = detail;
  const style = undone ? STRUCK : WRAPPED;
  const texts = [where, before, after, undone ? 'undone' : '', earlier ? 'earlier' : ''];
  return {
    cells: [
      ...[time, by, what].map((text) => textCell(text, style)),
      numberCell(row, style),
      ...texts.map((text) => textCell(text, style)),
    ],
    height: heightFor([what, where, before, after].map((text, index) => [text, [44, 28, 30, 30][index] ?? 30])),
  };
}
