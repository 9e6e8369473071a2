import { html, type TemplateResult } from 'lit';
import type { ChangedCell, ChangedRow, ConcessionFate, QuantityChange } from '../../core/compare/comparison.ts';
import { describeStanding } from '../../core/concede/describe.ts';
import type { Compared, LoneRow } from '../../worker/compared.ts';
import type { OnRow } from '../report-parts.ts';
import { became, namePart, numberCell, rowNumbers, type Shown, verdictsCell } from './change-cells.ts';

/** A column of a table of changes; numbers stand to the right. */
export interface ChangeHeading {
  readonly text: string;
  readonly isNumber?: true;
}

/** One kind of change: what it is called and how its rows are shown. */
export interface ChangeKind {
  readonly id: string;
  readonly title: string;
  /** The title in short, behind a number. */
  readonly chip: string;
  /** What is counted: "row", "part". */
  readonly of: string;
  readonly note: string;
  readonly headings: readonly ChangeHeading[];
  readonly count: (shown: Compared) => number;
  /** Rows from one place to before another. */
  readonly rows: (shown: Compared, from: number, to: number, onRow: OnRow) => readonly TemplateResult[];
}

const ROW: ChangeHeading = { text: 'Row', isNumber: true };
const [PART, PANEL] = [{ text: 'Part number' }, { text: 'Panel' }];

/** All kinds of change, what is newly wrong first. */
export const CHANGE_KINDS: readonly ChangeKind[] = [
  kind(
    {
      ...{ id: 'wrong', chip: 'newly wrong', title: 'Newly wrong', of: 'row' },
      note: 'Rows whose verdict got worse, new rows that do not hold, and rows with one more check that does not hold.',
      headings: [ROW, PART, PANEL, { text: 'Verdict' }, { text: 'What is wrong now' }],
    },
    ({ newlyWrong }) => newlyWrong,
    (
      { before, after, verdictBefore, verdictAfter, why, cellsChanged },
      onRow,
    ) => html`<td class="number">${rowNumbers(before, after, onRow)}</td>
      <td>${namePart(after)}</td><td>${after.panel}</td>
      <td>${before ? verdictsCell(verdictBefore, verdictAfter) : html`<span class="soft">new row:</span> ${verdictsCell(verdictAfter, verdictAfter)}`}</td>
      <td>${why}${cellsChanged ? '' : html` <span class="soft">(no cell of this row changed)</span>`}</td>`,
  ),
  kind(
    {
      ...{ id: 'concessions', chip: 'concessions', title: 'Concessions of the earlier list', of: 'concession' },
      note: 'A concession is carried over where everything that it rests on is as it was.',
      headings: [ROW, PART, { text: 'Accepted' }, { text: 'Reason' }, { text: 'Signed' }, { text: 'Becomes' }],
    },
    ({ concessions }) => concessions,
    concessionRow,
  ),
  kind(
    {
      ...{ id: 'changed', chip: 'changed', title: 'Changed rows', of: 'row', note: '' },
      headings: [ROW, PART, PANEL, { text: 'Changed from and to' }, { text: 'Verdict' }],
    },
    ({ changed }) => changed,
    (row, onRow) => html`${changedCells(row, onRow)}<td>${verdictsCell(row.verdictBefore, row.verdictAfter)}</td>`,
  ),
  kind(
    { ...{ id: 'added', chip: 'added', title: 'Added rows', of: 'row', note: '' }, headings: loneHeadings('Row') },
    ({ added }) => added,
    (row, onRow) => loneRow(row, rowNumbers(null, row, onRow)),
  ),
  kind(
    {
      ...{ id: 'removed', chip: 'removed', title: 'Removed rows', of: 'row', note: '' },
      headings: loneHeadings('Row before'),
    },
    ({ removed }) => removed,
    (row) => loneRow(row, html`${row.row}`),
  ),
  kind(
    {
      ...{ id: 'moved', chip: 'moved', title: 'Rows moved to another panel', of: 'row', note: '' },
      headings: [ROW, PART, { text: 'Panel' }],
    },
    ({ moved }) => moved,
    ({ before, after }, onRow) => html`<td class="number">${rowNumbers(before, after, onRow)}</td>
      <td>${namePart(after)}</td><td>${became(before.panel, after.panel)}</td>`,
  ),
  kind(
    {
      ...{ id: 'sheets', chip: 'with another sheet', title: 'Another sheet from the panel', of: 'row' },
      note: 'Rows that name no sheet themselves, and whose panel has another one now.',
      headings: [ROW, PART, PANEL, { text: 'Sheet' }],
    },
    ({ sheets }) => sheets,
    (
      { before, after, sheetBefore, sheetAfter },
      onRow,
    ) => html`<td class="number">${rowNumbers(before, after, onRow)}</td>
      <td>${namePart(after)}</td><td>${after.panel}</td><td>${became(sheetBefore, sheetAfter)}</td>`,
  ),
  kind(
    {
      ...{
        id: 'verdicts',
        chip: 'with another verdict',
        title: 'Other verdicts, none of them worse',
        of: 'row',
        note: '',
      },
      headings: [ROW, PART, PANEL, { text: 'Verdict' }, { text: 'Decided before' }, { text: 'Decided now' }],
    },
    ({ verdicts }) => verdicts,
    (
      { before, after, verdictBefore, verdictAfter, whyBefore, whyAfter },
      onRow,
    ) => html`<td class="number">${rowNumbers(before, after, onRow)}</td>
      <td>${namePart(after)}</td><td>${after.panel}</td><td>${verdictsCell(verdictBefore, verdictAfter)}</td><td>${whyBefore}</td><td>${whyAfter}</td>`,
  ),
  kind(
    {
      ...{ id: 'quantities', chip: 'other quantities', title: 'Quantities by part', of: 'part' },
      note: 'Pieces in one product, over all rows that can be counted.',
      headings: [
        PART,
        { text: 'Before', isNumber: true },
        { text: 'Now', isNumber: true },
        { text: 'Difference', isNumber: true },
        { text: 'Not counted' },
      ],
    },
    ({ quantities }) => quantities,
    quantityRow,
  ),
  kind(
    {
      ...{
        id: 'rewritten',
        chip: 'only written differently',
        title: 'Written differently, meaning the same',
        of: 'row',
        note: '',
      },
      headings: [ROW, PART, PANEL, { text: 'Written before and now' }],
    },
    ({ rewritten }) => rewritten,
    changedCells,
  ),
];

function kind<T>(
  words: Omit<ChangeKind, 'count' | 'rows'>,
  rowsOf: (shown: Compared) => readonly T[],
  show: Shown<T>,
): ChangeKind {
  return {
    ...words,
    count: (shown) => rowsOf(shown).length,
    rows: (shown, from, to, onRow) =>
      rowsOf(shown)
        .slice(from, to)
        .map((row) => html`<tr>${show(row, onRow)}</tr>`),
  };
}

function concessionRow({ state, given, before, after, changed }: ConcessionFate, onRow: OnRow): TemplateResult {
  const named = after ?? before;
  const becomes = {
    carried: 'carried over',
    gone: 'gone with its row',
    lapsed: describeStanding({ kind: 'lapsed', changed }),
  };
  return html`<td class="number">${after ? rowNumbers({ row: given.row }, after, onRow) : html`<span class="soft small">was ${given.row}</span>`}</td>
    <td>${named ? namePart(named) : ''}</td><td>${given.says}</td><td>${given.reason}</td>
    <td>${given.by || 'nobody'}${given.date ? html`, <span class="date">${given.date}</span>` : ''}</td>
    <td class=${state === 'carried' ? '' : 'lapsed'}>${becomes[state]}</td>`;
}

function changedCells({ before, after, cells }: ChangedRow, onRow: OnRow): TemplateResult {
  return html`<td class="number">${rowNumbers(before, after, onRow)}</td><td>${namePart(after)}</td><td>${after.panel}</td>
    <td>${cells.map(changedCell)}</td>`;
}

function changedCell({ heading, before, after }: ChangedCell): TemplateResult {
  return html`<div><span class="soft">${heading || 'Column without a heading'}:</span> ${became(before, after)}</div>`;
}

function loneHeadings(row: string): readonly ChangeHeading[] {
  return [{ text: row, isNumber: true }, PART, PANEL, { text: 'Verdict' }, { text: 'Row says' }];
}

function loneRow({ verdict, what, text, panel, ...row }: LoneRow, numbers: TemplateResult): TemplateResult {
  return html`<td class="number">${numbers}</td><td>${row.partNumber || '–'}</td><td>${panel}</td>
    <td>${verdict ? verdictsCell(verdict, verdict) : (what ?? '')}</td><td>${text}</td>`;
}

function quantityRow({ partNumber, before, after, difference, ...rows }: QuantityChange): TemplateResult {
  const uncounted = [
    ...(rows.uncountedBefore > 0 ? [`${rows.uncountedBefore} before`] : []),
    ...(rows.uncountedAfter > 0 ? [`${rows.uncountedAfter} now`] : []),
  ];
  return html`<td>${partNumber || 'no part number'}</td>${numberCell(before)}${numberCell(after)}${numberCell(difference, true)}
    <td>${uncounted.length > 0 ? `rows: ${uncounted.join(', ')}` : ''}</td>`;
}
