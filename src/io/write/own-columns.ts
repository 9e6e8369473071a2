import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { Concession } from '../../core/model/concession.ts';
import type { LengthUnit } from '../../core/model/list.ts';
import {
  describeDecision,
  describeHole,
  describeMargin,
  describeRemedies,
  describeSheet,
} from '../../core/say/describe.ts';
import { concededByRow } from './conceded.ts';
import { BODY, numberCell, outcomeCell, QUIET_BODY, textCell, withFormat } from './look.ts';
import type { PlannedCell } from './sheet-plan.ts';
import type { Style } from './style.ts';

const MM_PER_INCH = 25.4;
/** Our text columns wider than this wrap. */
const WRAPS_FROM = 24;
const REMEDIES_SHOWN = 2;
const TEXT: Style = { top: true, left: true, indent: 1 };
const WRAPPED_TEXT: Style = { ...TEXT, wraps: true };
export const CONCEDED = 'Conceded';

/** A row of the list as written: judged, or in a word what else it is. */
export interface ListRow {
  readonly row: number;
  readonly cells: readonly string[];
  readonly line: AuditedLine | null;
  readonly what: string;
}

/** One of our columns beside a list. */
export interface OwnColumn {
  readonly heading: string;
  readonly width: number;
  readonly wraps: boolean;
  readonly of: (row: ListRow) => PlannedCell | null;
}

/** Our columns in order; lengths in the units given. What was conceded has a column where `hasConceded`. */
export function ownColumns(
  units: LengthUnit,
  conceded: ReadonlyMap<number, string> = new Map(),
  hasConceded: boolean = conceded.size > 0,
): readonly OwnColumn[] {
  const columns = [
    { heading: 'Row in file', width: 7, wraps: false, of: ({ row, line }: ListRow) => numberCell(row, bodyOf(line)) },
    { heading: 'Verdict', width: 20, wraps: false, of: verdictCell },
    hasConceded ? textColumn(CONCEDED, 30, ({ row }) => conceded.get(row) ?? '') : null,
    textColumn('What decides it', 40, describeDecision),
    textColumn('Sheet understood', 30, (line) => describeSheet(line, units)),
    lengthColumn('Sheet', units, (line) => line.sheet?.thicknessMm),
    lengthColumn('Thinnest from the mill', units, (line) => line.sheet?.thinnestMm),
    lengthColumn('Minimum sheet', units, (line) => line.requires?.sheetMinMm),
    textColumn(`Hole required (${units})`, 18, (line) => describeHole(line.requires, units)),
    lengthColumn('Edge required', units, (line) => line.requires?.edgeMm),
    textColumn('Hardness margin (HRB points)', 12, describeMargin),
    textColumn('Would hold instead', 46, (line) => describeRemedies(line, REMEDIES_SHOWN)),
  ];
  return columns.filter((column) => column !== null);
}

/** Our columns of a list. What was conceded has one where a concession stands. */
export function ownColumnsOf(list: AuditedList, concessions: readonly Concession[], hasConceded = false) {
  const conceded = concededByRow(list, concessions);
  return ownColumns(list.shop.units, conceded, hasConceded || conceded.size > 0);
}

/** Fasteners and other rows of a list woven together in file order. */
export function listRows(list: AuditedList): readonly ListRow[] {
  const rows: ListRow[] = [
    ...list.lines.map((line) => ({ row: line.row, cells: line.line.cells, line, what: '' })),
    ...list.others.map((other) => ({ row: other.row, cells: other.cells, line: null, what: other.what })),
  ];
  return rows.sort((a, b) => a.row - b.row);
}

/** How cells of a row look: those of a row that is no fastener stand back. */
export function bodyOf(line: AuditedLine | null): Style {
  return line ? BODY : QUIET_BODY;
}

function verdictCell({ line, what }: ListRow): PlannedCell | null {
  return line ? outcomeCell(line.verdict) : textCell(`${what}: not a fastener`, QUIET_BODY);
}

function textColumn(heading: string, width: number, of: (line: AuditedLine) => string): OwnColumn {
  const wraps = width > WRAPS_FROM;
  const style = wraps ? WRAPPED_TEXT : TEXT;
  return { heading, width, wraps, of: ({ line }) => line && textCell(of(line), style) };
}

function lengthColumn(
  heading: string,
  units: LengthUnit,
  of: (line: AuditedLine) => number | null | undefined,
): OwnColumn {
  const style = withFormat(BODY, units === 'mm' ? '0.00' : '0.0000');
  const shown = (mm: number) => Number((units === 'mm' ? mm : mm / MM_PER_INCH).toFixed(units === 'mm' ? 3 : 4));
  const cellOf = (mm: number | null) => (mm === null ? null : numberCell(shown(mm), style));
  return {
    heading: `${heading} (${units})`,
    width: 10,
    wraps: false,
    of: ({ line }) => line && cellOf(of(line) ?? null),
  };
}
