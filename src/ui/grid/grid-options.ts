import type { GridOptions } from 'ag-grid-community';
import type { GridRow } from '../../app/state.ts';
import { STYLE_NONCE } from '../../offline/style-nonce.ts';
import { gridTheme } from './grid-theme.ts';

/** Options that are the same for every list: rows by their number in the file, keys as in a spreadsheet, edits only asked for. */
export const STEADY_OPTIONS: GridOptions<GridRow> = {
  theme: gridTheme,
  styleNonce: STYLE_NONCE,
  getRowId: ({ data }) => String(data.row),
  rowSelection: { mode: 'singleRow', checkboxes: false, enableClickSelection: true },
  stopEditingWhenCellsLoseFocus: true,
  suppressStartEditOnTab: true,
  enterNavigatesVertically: true,
  enterNavigatesVerticallyAfterEdit: true,
  animateRows: false,
  tooltipShowDelay: 600,
  localeText: {
    loadingOoo: 'Loading…',
    noRowsToShow: 'The list has no rows.',
    noMatchingRows: 'No row fits. Change the search, or take off a filter.',
  },
  suppressDragLeaveHidesColumns: true,
  rowClassRules: { 'not-a-fastener': ({ data }) => data?.other !== undefined },
};
