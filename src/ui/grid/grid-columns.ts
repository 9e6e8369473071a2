import type { ColDef, ICellRendererParams } from 'ag-grid-community';
import { render } from 'lit';
import { roleName } from '../../app/role-names.ts';
import type { GridRow } from '../../app/state.ts';
import type { AuditedLine } from '../../core/model/audited.ts';
import type { Column, LengthUnit, Role } from '../../core/model/list.ts';
import { describeDecision, describeHole, describeMargin, describeSheet } from '../../core/say/describe.ts';
import { showValue } from '../../core/say/show-value.ts';
import { verdictShape } from '../verdict-mark.ts';
import { HeadingCell, type HeadingParams, pressHeading } from './heading-cell.ts';

type Def = ColDef<GridRow>;

const NUMBER_ROLES: ReadonlySet<Role> = new Set(['quantity', 'thickness', 'hole', 'edge', 'spacing', 'bend', 'price']);
const ORDER: Readonly<Record<string, number>> = { fails: 0, unknown: 1, marginal: 2, holds: 3 };

/** Opens the menu of meanings of one of the sender's columns. */
export type OpenMenu = (column: Column, button: HTMLElement) => void;

/** The sender's columns in the sender's order, then ours; verdict and reason stay in sight at the right edge. */
export function gridColumns(
  columns: readonly Column[],
  rows: readonly GridRow[],
  units: LengthUnit,
  openMenu: OpenMenu,
): Def[] {
  return [rowNumber(), ...columns.map((column) => sendersColumn(column, rows, openMenu)), ...ownColumns(units)];
}

function rowNumber(): Def {
  return {
    colId: 'row',
    headerName: 'Row',
    valueGetter: ({ data }) => data?.row,
    width: 56,
    pinned: 'left',
    cellClass: 'number quiet',
    ...heading('in file'),
  };
}

function sendersColumn(column: Column, rows: readonly GridRow[], openMenu: OpenMenu): Def {
  const isNumber = NUMBER_ROLES.has(column.role);
  const below = [roleName(column.role), column.unit].filter(Boolean).join(', ');
  return {
    colId: `sender-${column.index}`,
    headerName: column.heading || '(no heading)',
    valueGetter: ({ data }) => data?.cells[column.index] ?? '',
    tooltipValueGetter: ({ data }) => data?.cells[column.index] ?? '',
    editable: true,
    width: widthFor(column, below, rows),
    cellClass: isNumber ? 'number' : '',
    headerClass: isNumber ? 'number' : '',
    ...heading(below, (button) => openMenu(column, button)),
  };
}

function ownColumns(units: LengthUnit): Def[] {
  const own = (colId: string, headerName: string, below: string, more: Def): Def => ({
    colId,
    headerName,
    headerClass: `ours ${String(more.cellClass ?? '')}`,
    ...heading(below),
    ...more,
    cellClass: `ours ${String(more.cellClass ?? '')}`,
  });
  const text = (of: (line: AuditedLine) => string): Def => ({
    valueGetter: ({ data }) => (data?.line ? of(data.line) : ''),
    tooltipValueGetter: ({ data }) => (data?.line ? of(data.line) : ''),
  });
  return [
    own('sheet', 'Sheet understood', units, {
      ...text((line) => describeSheet(line, units)),
      width: 200,
      cellClass: 'first',
    }),
    own('sheet-min', 'Minimum sheet', units, {
      ...text((line) => showLength(line.requires?.sheetMinMm, units)),
      width: 96,
      cellClass: 'number',
    }),
    own('hole-required', 'Hole required', units, {
      ...text((line) => describeHole(line.requires, units)),
      width: 126,
      cellClass: 'number',
    }),
    own('margin', 'Margin', 'HRB points', { ...text(describeMargin), width: 84, cellClass: 'number' }),
    own('verdict', 'Verdict', '', {
      valueGetter: ({ data }) => data?.line?.verdict ?? '',
      cellRenderer: verdictCell,
      comparator: (a: string, b: string) => (ORDER[a] ?? 9) - (ORDER[b] ?? 9),
      width: 108,
      pinned: 'right',
      cellClass: 'first',
    }),
    own('decision', 'What decides it', '', {
      valueGetter: ({ data }) =>
        data?.line ? describeDecision(data.line) : data?.other ? `${data.other.what}: not a fastener` : '',
      tooltipValueGetter: ({ data }) => data?.line?.decidedBy?.text ?? '',
      width: 264,
      pinned: 'right',
    }),
  ];
}

function heading(below: string, openMenu?: (button: HTMLElement) => void): Def {
  const headerComponentParams: HeadingParams = { below, ...(openMenu && { openMenu }) };
  return { headerComponent: HeadingCell, headerComponentParams, suppressHeaderKeyboardEvent: pressHeading };
}

function showLength(mm: number | null | undefined, units: LengthUnit): string {
  return mm === null || mm === undefined ? '' : showValue('lengthMm', mm, units);
}

/** A node, never a string: text from a file must not be read as markup. */
function verdictCell({ data }: ICellRendererParams<GridRow>): HTMLElement {
  const cell = document.createElement('span');
  const verdict = data?.line?.verdict;
  if (!verdict) return cell;
  cell.className = `verdict ${verdict}`;
  render([verdictShape(verdict, 15), verdict], cell);
  return cell;
}

const ROWS_MEASURED = 200;
const CHARACTER_PX = 7.3;

/** Wide enough for heading and contents, within reason: a long description is cut and shown in full on hovering. */
function widthFor({ index, heading }: Column, below: string, rows: readonly GridRow[]): number {
  const contents = rows.slice(0, ROWS_MEASURED).map(({ cells }) => cells[index]?.length ?? 0);
  const characters = Math.max(heading.length, below.length * 0.85, ...contents);
  return Math.min(Math.max(characters * CHARACTER_PX + 38, 68), 250);
}
