import { css } from 'lit';

/** Styles of what we put into the grid: two-line headings, our columns set apart, verdicts, rows that are no fasteners. */
export const gridStyles = css`
  :host {
    display: flex;
    flex-direction: column;
    height: 100%;
    min-height: 0;
  }

  .grid {
    flex: 1;
    min-height: 0;
  }

  .notes {
    display: flex;
    flex-wrap: wrap;
    gap: 4px 16px;
    margin: 0;
    padding: 6px 12px;
    border-bottom: 1px solid var(--line);
    color: var(--soft);
  }

  .link {
    padding: 0;
    border: 0;
    background: none;
    color: var(--blue);
    font: inherit;
    text-decoration: underline;
    text-underline-offset: 2px;
    cursor: pointer;
  }

  .heading {
    display: flex;
    align-items: stretch;
    width: 100%;
    height: 100%;
  }

  .heading button {
    padding: 0;
    border: 0;
    background: none;
    color: var(--ink);
    font: inherit;
    cursor: pointer;
  }

  .heading .sort {
    display: flex;
    flex: 1;
    flex-direction: column;
    justify-content: center;
    min-width: 0;
    overflow: hidden;
    text-align: left;
    white-space: nowrap;
  }

  .heading .buttons {
    display: flex;
    flex-direction: column;
    justify-content: flex-end;
    margin: 2px -5px 2px 0;
  }

  .heading .buttons button {
    display: grid;
    place-content: center;
    width: 18px;
    height: 20px;
    border-radius: 3px;
    color: var(--soft);
  }

  .heading .tools:not(.filtered, [aria-expanded='true'], :focus) {
    visibility: hidden;
  }

  .ag-header-cell:is(:hover, :focus-within) .heading .tools {
    visibility: visible;
  }

  .heading .tools path {
    fill: none;
    stroke: currentColor;
    stroke-linejoin: round;
  }

  .heading .tools.filtered {
    color: var(--blue);
  }

  .heading .tools.filtered path {
    fill: currentColor;
  }

  .heading .buttons button:hover,
  .heading .buttons button[aria-expanded='true'] {
    background: var(--blue-ground);
    color: var(--blue);
  }

  .heading span {
    overflow: hidden;
    text-overflow: ellipsis;
  }

  .heading small {
    color: var(--soft);
    font-size: 11px;
    font-weight: 400;
    min-height: 15px;
  }

  .number {
    text-align: right;
  }

  .number .heading .sort {
    text-align: right;
  }

  .ag-cell.number {
    justify-content: flex-end;
  }

  .quiet {
    color: var(--soft);
  }

  .ag-cell.ours {
    background-color: var(--ours);
  }

  .ag-row-selected .ag-cell.ours {
    background-color: transparent;
  }

  /* A block: tinted, framed by its edges, with a handle to fill at its last cell. The frame is painted below the cells' clear borders. */
  .ag-cell:is(.block-top, .block-bottom, .block-left, .block-right) {
    background-image: linear-gradient(var(--top, transparent) 0 0), linear-gradient(var(--bottom, transparent) 0 0),
      linear-gradient(var(--left, transparent) 0 0), linear-gradient(var(--right, transparent) 0 0);
    background-origin: border-box;
    background-position: top, bottom, left, right;
    background-repeat: no-repeat;
    background-size: 100% 2px, 100% 2px, 2px 100%, 2px 100%;
  }

  .ag-row .ag-cell.in-block {
    background-color: color-mix(in srgb, var(--blue) 16%, var(--sheet));
  }

  .ag-cell.block-top {
    --top: var(--blue);
  }

  .ag-cell.block-bottom {
    --bottom: var(--blue);
  }

  .ag-cell.block-left {
    --left: var(--blue);
  }

  .ag-cell.block-right {
    --right: var(--blue);
  }

  .ag-cell.ag-cell-focus.block-top:not(.ag-cell-inline-editing) {
    border-color: transparent;
  }

  .ag-row .ag-cell.fill-target {
    background-color: color-mix(in srgb, var(--blue) 8%, var(--sheet));
    outline: 1px dashed var(--blue);
    outline-offset: -1px;
  }

  .ag-cell.block-handle.sender:not(.ag-cell-inline-editing)::after {
    content: '';
    position: absolute;
    right: 0;
    bottom: 0;
    width: 7px;
    height: 7px;
    border: solid var(--sheet);
    border-width: 1px 0 0 1px;
    background: var(--blue);
    cursor: crosshair;
  }

  .ours.first {
    border-left: 2px solid var(--line);
  }

  .not-a-fastener {
    color: var(--soft);
  }

  .verdict {
    display: inline-flex;
    align-items: center;
    gap: 7px;
    font-weight: 600;
  }

  .verdict.holds {
    color: var(--holds);
  }

  .verdict.marginal {
    color: var(--marginal);
  }

  .verdict.fails {
    color: var(--fails);
  }

  .verdict.unknown {
    color: var(--unknown);
  }

  .conceded {
    color: var(--soft);
  }
`;
