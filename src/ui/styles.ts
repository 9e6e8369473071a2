import { css } from 'lit';

/** Shared by every element: buttons, links, fields and focus, in the page's tokens. */
export const shared = css`
  * {
    box-sizing: border-box;
  }
  button,
  input,
  select {
    font: inherit;
    color: inherit;
  }
  button {
    cursor: pointer;
  }
  .button {
    min-height: 32px;
    padding: 4px 14px;
    border: 1px solid var(--line);
    border-radius: 4px;
    background: var(--sheet);
  }
  .button:hover {
    border-color: var(--blue);
  }
  .button.main {
    border-color: var(--blue);
    background: var(--blue);
    color: var(--on-blue);
    font-weight: 600;
  }
  button:disabled {
    opacity: 0.45;
    cursor: default;
  }
  .link {
    padding: 0;
    border: 0;
    background: none;
    color: var(--blue);
    text-decoration: underline;
    text-underline-offset: 2px;
  }
  .field {
    min-height: 32px;
    padding: 4px 10px;
    border: 1px solid var(--line);
    border-radius: 4px;
    background: var(--sheet);
  }
  :focus-visible {
    outline: 2px solid var(--blue);
    outline-offset: 1px;
  }
  h1,
  h2,
  h3,
  p {
    margin: 0;
  }
  h2 {
    font-size: var(--title);
    font-weight: 600;
  }
  h3 {
    padding-bottom: 4px;
    border-bottom: 1px solid var(--line);
    color: var(--soft);
    font-size: var(--small);
    font-weight: 600;
  }
  table {
    border-collapse: collapse;
    width: 100%;
  }
  th {
    color: var(--soft);
    font-weight: 600;
    text-align: left;
  }
  th,
  td {
    padding: 5px 12px 5px 0;
    border-bottom: 1px solid var(--line);
    vertical-align: top;
  }
  .soft {
    color: var(--soft);
  }
  .small {
    font-size: var(--small);
  }
  .page {
    max-width: 1120px;
    margin: 0 auto;
    padding: 24px;
  }
  .holds {
    color: var(--holds);
  }
  .marginal {
    color: var(--marginal);
  }
  .fails {
    color: var(--fails);
  }
  .unknown {
    color: var(--unknown);
  }
  .note {
    color: var(--soft);
  }
`;
