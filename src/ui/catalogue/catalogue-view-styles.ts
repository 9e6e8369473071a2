import { css } from 'lit';

/** The catalogues, the search, the table of parts, and beside them one part in full. */
export const catalogueViewStyles = css`
  :host {
    position: relative;
    display: grid;
    grid-template: minmax(0, 1fr) / minmax(0, 1fr) auto;
    height: 100%;
  }
  .scroll {
    overflow: auto;
  }
  .head,
  .filters {
    display: flex;
    flex-wrap: wrap;
    gap: 8px 16px;
    align-items: end;
    justify-content: space-between;
  }
  .head > div:first-child {
    flex: 1 1 380px;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
  }
  catalogue-ranks {
    margin-top: 12px;
  }
  .filters {
    justify-content: flex-start;
    margin: 20px 0 8px;
  }
  .filters label {
    display: grid;
    gap: 2px;
    color: var(--soft);
    font-size: var(--small);
  }
  .filters .field {
    color: var(--ink);
    font-size: var(--base);
  }
  .filters .check {
    display: flex;
    gap: 6px;
    align-items: center;
    min-height: 32px;
  }
  input[type='search'] {
    width: 320px;
  }
  .number {
    padding-right: 20px;
    text-align: right;
  }
  tbody tr:hover {
    background: var(--sheet);
  }
  tr.open {
    background: var(--blue-ground);
  }
  td .link {
    text-align: left;
    overflow-wrap: anywhere;
  }
  .edited {
    color: var(--blue);
  }
  .shadowed td {
    color: var(--soft);
  }
  .more {
    display: flex;
    gap: 12px;
    align-items: center;
    margin-top: 12px;
  }
  .none {
    margin-top: 32px;
    font-size: var(--reading);
  }
  .panel {
    width: 432px;
    min-height: 0;
    border-left: 1px solid var(--line);
  }
  @media (max-width: 1099px) {
    .panel {
      position: absolute;
      z-index: 3;
      inset: 0 0 0 auto;
      box-shadow: -4px 0 16px rgb(0 0 0 / 12%);
    }
  }
`;
