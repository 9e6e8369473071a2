import { rememberSome } from '../../core/caching/remember.ts';
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
    hasConceded ? concededColumn(conceded) : null,
    textColumn('What decides it', 40, decider, describeDecision),
    textColumn('Sheet understood', 30, sheetOf, (line) => describeSheet(line, units)),
    lengthColumn('Sheet', units, sheetOf, ({ sheet }) => sheet?.thicknessMm),
    lengthColumn('Thinnest from the mill', units, sheetOf, ({ sheet }) => sheet?.thinnestMm),
    lengthColumn('Minimum sheet', units, requirement, ({ requires }) => requires?.sheetMinMm),
    textColumn(`Hole required (${units})`, 18, requirement, ({ requires }) => describeHole(requires, units)),
    lengthColumn('Edge required', units, requirement, ({ requires }) => requires?.edgeMm),
    textColumn('Hardness margin (HRB points)', 12, ({ findings }) => findings, describeMargin),
    textColumn(
      'Would hold instead',
      46,
      ({ remedies }) => remedies,
      (line) => describeRemedies(line, REMEDIES_SHOWN),
    ),
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
  return line ? outcomeCell(line.verdict) : noFastener(what);
}

const noFastener = rememberSome((what) => textCell(`${what}: not a fastener`, QUIET_BODY));

function concededColumn(conceded: ReadonlyMap<number, string>): OwnColumn {
  const of = ({ row, line }: ListRow) => line && textCell(conceded.get(row) ?? '', WRAPPED_TEXT);
  return { heading: CONCEDED, width: 30, wraps: true, of };
}

/** What the cells of a column are made from: rows that say the same share it. */
type SourceOf = (line: AuditedLine) => object | null;
const decider: SourceOf = ({ decidedBy }) => decidedBy;
const sheetOf: SourceOf = ({ sheet }) => sheet;
const requirement: SourceOf = ({ requires }) => requires;

function textColumn(
  heading: string,
  width: number,
  sourceOf: SourceOf,
  textOf: (line: AuditedLine) => string,
): OwnColumn {
  const wraps = width > WRAPS_FROM;
  const style = wraps ? WRAPPED_TEXT : TEXT;
  return { heading, width, wraps, of: madeOnce(sourceOf, (line) => textCell(textOf(line), style)) };
}

function lengthColumn(
  heading: string,
  units: LengthUnit,
  sourceOf: SourceOf,
  lengthOf: (line: AuditedLine) => number | null | undefined,
): OwnColumn {
  const style = withFormat(BODY, units === 'mm' ? '0.00' : '0.0000');
  const shown = (mm: number) => Number((units === 'mm' ? mm : mm / MM_PER_INCH).toFixed(units === 'mm' ? 3 : 4));
  const cellOf = (mm: number | null) => (mm === null ? null : numberCell(shown(mm), style));
  const of = madeOnce(sourceOf, (line) => cellOf(lengthOf(line) ?? null));
  return { heading: `${heading} (${units})`, width: 10, wraps: false, of };
}

/** The cell of a row, made once for all rows that share what it is made from; none where that is null. */
function madeOnce(sourceOf: SourceOf, make: (line: AuditedLine) => PlannedCell | null): OwnColumn['of'] {
  const known = new Map<object, PlannedCell | null>();
  return ({ line }) => {
    const source = line && sourceOf(line);
    if (!line || !source) return null;
    let cell = known.get(source);
    if (cell === undefined) {
      cell = make(line);
      known.set(source, cell);
    }
    return cell;
  };
}
