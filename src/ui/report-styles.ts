import { css } from 'lit';

/** Shared by the views of what a list comes to: head, tables, and how they stand on paper. */
export const reportStyles = css`
  :host([view]) {
    display: block;
    height: 100%;
    overflow: auto;
  }
  .page {
    max-width: 1600px;
  }
  .top {
    display: flex;
    flex-wrap: wrap;
    gap: 10px 32px;
    justify-content: space-between;
    align-items: end;
  }
  .buttons {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    align-items: center;
  }
  .buttons > label {
    display: flex;
    gap: 8px;
    align-items: center;
  }
  .demo {
    display: inline-block;
    padding: 1px 8px;
    border: 1px solid var(--marginal);
    border-radius: 4px;
    color: var(--marginal);
    font-size: var(--small);
  }
  .top .demo {
    margin-top: 6px;
  }
  section {
    margin-top: 28px;
  }
  .wide {
    overflow-x: auto;
  }
  thead th {
    vertical-align: bottom;
  }
  th.number,
  td.number {
    text-align: right;
    white-space: nowrap;
  }
  td b {
    font-weight: 600;
  }
  .part {
    white-space: nowrap;
  }
  .verdict {
    display: inline-flex;
    gap: 6px;
    align-items: center;
    font-weight: 600;
    white-space: nowrap;
  }
  .words {
    margin-top: 28px;
    padding-top: 10px;
    border-top: 1px solid var(--line);
    color: var(--soft);
  }
  .empty {
    margin-top: 40px;
    color: var(--soft);
    font-size: var(--reading);
  }
  @media print {
    :host([view]) {
      height: auto;
      overflow: visible;
    }
    .page {
      max-width: none;
      padding: 0;
    }
    .screen {
      display: none !important;
    }
    .wide {
      overflow: visible;
    }
    table {
      font-size: 8pt;
    }
    td .small,
    .small {
      font-size: 7.5pt;
    }
    th,
    td {
      padding: 2.5px 7px 2.5px 0;
    }
    tr,
    li {
      break-inside: avoid;
    }
    thead {
      display: table-header-group;
    }
    h2,
    h3 {
      break-after: avoid;
    }
    .link {
      color: inherit;
      text-decoration: none;
    }
  }
`;
