import type { Worksheet } from 'exceljs';
import type { AuditedList } from '../../core/model/audited.ts';
import type { ChangeDetail, ChangeRecord } from '../../core/model/change-record.ts';
import { fitHeight, font, paintHeading, QUIET, setUpPrint } from './look.ts';
import { safeText } from './safe-text.ts';

const COLUMNS = [
  ['When (UTC)', 20],
  ['By', 20],
  ['What', 44],
  ['Row in file', 8],
  ['Column or setting', 28],
  ['Before', 30],
  ['After', 30],
  ['Undone', 9],
] as const;

/** Every step of the user's work, one cell or setting a line; what was taken back since is struck through. */
export function writeChangesSheet(sheet: Worksheet, list: AuditedList, changes: readonly ChangeRecord[]): void {
  for (const [index, [, width]] of COLUMNS.entries()) sheet.getColumn(index + 1).width = width;
  sheet.addRow(COLUMNS.map(([heading]) => heading));
  for (const change of changes) {
    for (const detail of change.details) writeDetail(sheet, change, detail);
  }
  paintHeading(sheet, COLUMNS.length);
  setUpPrint(sheet, list);
}

function writeDetail(sheet: Worksheet, { when, by, what, undone }: ChangeRecord, detail: ChangeDetail): void {
  const time = when.replace('T', ' ').replace(/(\.\d+)?Z$/, '');
  const { row, where, before, after } = detail;
  const texts = [where, before, after].map(safeText);
  const target = sheet.addRow([time, safeText(by), safeText(what), row ?? '', ...texts, undone ? 'undone' : '']);
  target.font = font(undone ? { strike: true, colour: QUIET } : {});
  target.alignment = { vertical: 'top', wrapText: true };
  fitHeight(
    target,
    [what, ...texts].map((text, index) => ({ text, width: [44, 28, 30, 30][index] ?? 30 })),
  );
}
