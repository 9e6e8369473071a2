import type { ColDef, ICellRendererParams } from 'ag-grid-community';
import { html, render } from 'lit';
import { roleName } from '../../app/role-names.ts';
import type { GridRow } from '../../app/state.ts';
import type { Column, LengthUnit, Role } from '../../core/model/list.ts';
import type { Verdict } from '../../core/model/outcome.ts';
import { describeDecision } from '../../core/say/describe.ts';
import { verdictShape } from '../verdict-mark.ts';
import { cellText, type OwnColumn } from './cell-text.ts';
import { compareTexts } from './compare-texts.ts';
import { HeadingCell, type HeadingParams, pressHeading } from './heading-cell.ts';

type Def = ColDef<GridRow>;

const NUMBER_ROLES: ReadonlySet<Role> = new Set(['quantity', 'thickness', 'hole', 'edge', 'spacing', 'bend', 'price']);
const ORDER: Readonly<Record<string, number>> = { fails: 0, unknown: 1, marginal: 2, holds: 3 };

/** What the buttons of a heading open, hung on the button. */
export interface HeadingMenus {
  /** The menu of meanings of one of the sender's columns. */
  readonly openMeanings: (column: Column, button: HTMLElement) => void;
  /** The box that filters, hides and freezes a column. */
  readonly openTools: (id: string, button: HTMLElement) => void;
  readonly isFiltered: (id: string) => boolean;
}

/** The sender's columns in the sender's order, then ours; verdict and reason stay in sight at the right edge. */
export function gridColumns(
  columns: readonly Column[],
  rows: readonly GridRow[],
  units: LengthUnit,
  menus: HeadingMenus,
): Def[] {
  return [rowNumber(), ...columns.map((column) => sendersColumn(column, rows, menus)), ...ownColumns(units, menus)];
}

function rowNumber(): Def {
  return {
    colId: 'row',
    headerName: 'Row',
    valueGetter: ({ data }) => data?.row,
    width: 56,
    pinned: 'left',
    suppressNavigable: true,
    suppressMovable: true,
    cellClass: 'number quiet',
    ...heading({ below: 'in file' }),
  };
}

function sendersColumn(column: Column, rows: readonly GridRow[], menus: HeadingMenus): Def {
  const isNumber = NUMBER_ROLES.has(column.role);
  const below = [roleName(column.role), column.unit].filter(Boolean).join(', ');
  const colId = `sender-${column.index}`;
  return {
    colId,
    headerName: column.heading || '(no heading)',
    valueGetter: ({ data }) => data?.cells[column.index] ?? '',
    tooltipValueGetter: ({ data }) => data?.cells[column.index] ?? '',
    comparator: compareTexts,
    editable: true,
    width: widthFor(column, below, rows),
    cellClass: isNumber ? 'sender number' : 'sender',
    headerClass: isNumber ? 'number' : '',
    ...heading({ below, ...toolsOf(colId, menus), openMeanings: (button) => menus.openMeanings(column, button) }),
  };
}

function ownColumns(units: LengthUnit, menus: HeadingMenus): Def[] {
  const own = (colId: OwnColumn, headerName: string, below: string, more: Def): Def => ({
    colId,
    headerName,
    valueGetter: ({ data }) => (data ? cellText(data, colId, units) : ''),
    comparator: compareTexts,
    headerClass: `ours ${String(more.cellClass ?? '')}`,
    ...heading({ below, ...toolsOf(colId, menus) }),
    ...more,
    cellClass: `ours ${String(more.cellClass ?? '')}`,
  });
  return [
    own('sheet', 'Sheet understood', units, {
      tooltipValueGetter: ({ data }) => (data ? cellText(data, 'sheet', units) : ''),
      width: 200,
      cellClass: 'first',
    }),
    own('sheet-min', 'Minimum sheet', units, { width: 96, cellClass: 'number' }),
    own('hole-required', 'Hole required', units, { width: 126, cellClass: 'number' }),
    own('margin', 'Margin', 'HRB points', { width: 84, cellClass: 'number' }),
    own('verdict', 'Verdict', '', {
      cellRenderer: verdictCell,
      comparator: (a: string, b: string) => (ORDER[a] ?? 9) - (ORDER[b] ?? 9),
      width: 108,
      pinned: 'right',
      cellClass: 'first',
    }),
    own('decision', 'What decides it', '', {
      tooltipValueGetter: ({ data }) => [data?.line?.decidedBy?.text, data?.conceded].filter(Boolean).join(' – '),
      cellRenderer: decisionCell,
      width: 264,
      pinned: 'right',
    }),
  ];
}

function toolsOf(id: string, { openTools, isFiltered }: HeadingMenus): Omit<HeadingParams, 'below'> {
  return { openTools: (button) => openTools(id, button), isFiltered: () => isFiltered(id) };
}

function heading(headerComponentParams: HeadingParams): Def {
  return { headerComponent: HeadingCell, headerComponentParams, suppressHeaderKeyboardEvent: pressHeading };
}

/** A node, never a string: text from a file must not be read as markup. Each verdict is drawn once and copied: many pass while scrolling. */
function verdictCell({ data }: ICellRendererParams<GridRow>): HTMLElement {
  const verdict = data?.line?.verdict;
  if (!verdict) return document.createElement('span');
  const cell = drawn.get(verdict) ?? drawVerdict(verdict);
  drawn.set(verdict, cell);
  return cell.cloneNode(true) as HTMLElement;
}

const drawn = new Map<Verdict, HTMLElement>();

function drawVerdict(verdict: Verdict): HTMLElement {
  const cell = document.createElement('span');
  cell.className = `verdict ${verdict}`;
  render([verdictShape(verdict, 15), verdict], cell);
  return cell;
}

/** What decides a row, and behind it, softly, what was accepted of it. */
function decisionCell({ data, value }: ICellRendererParams<GridRow, string>): HTMLElement {
  const cell = document.createElement('span');
  const [line, conceded] = [data?.line, data?.conceded];
  if (line && conceded) render([describeDecision(line), html` <span class="conceded">${conceded}</span>`], cell);
  else cell.textContent = value ?? '';
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
