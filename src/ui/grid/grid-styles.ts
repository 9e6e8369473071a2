import { css } from 'lit';

/** Styles of what we put into the grid: two-line headings, our columns set apart, verdicts, rows that are no fasteners. */
export const gridStyles = css`
  :host,
  .grid {
    display: block;
    height: 100%;
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

  .heading .meaning {
    align-self: end;
    width: 18px;
    height: 20px;
    margin: 0 -5px 2px 0;
    border-radius: 3px;
    color: var(--soft);
  }

  .heading .meaning:hover,
  .heading .meaning[aria-expanded='true'] {
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
    background: var(--ours);
  }

  .ag-row-selected .ag-cell.ours {
    background: transparent;
  }

  .ours.first {
    border-left: 2px solid var(--line);
  }

  .not-a-fastener {
    color: var(--soft);
    opacity: 0.72;
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
`;
