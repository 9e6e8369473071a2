import { css } from 'lit';

/** The panel of one part: what it is, what can be done with it, and its facts line by line. */
export const partPanelStyles = css`
  h2 {
    overflow-wrap: anywhere;
  }
  p {
    margin-top: 6px;
    color: var(--soft);
  }
  .demo {
    color: var(--marginal);
  }
  .where {
    display: flex;
    gap: 8px;
    align-items: center;
    margin-top: 8px;
  }
  .where .field {
    min-width: 0;
    flex: 1;
  }
  .acts {
    display: flex;
    flex-wrap: wrap;
    gap: 8px;
    margin-top: 12px;
  }
  section {
    margin-top: 18px;
  }
  th {
    width: 156px;
    font-weight: 400;
  }
  td {
    overflow-wrap: anywhere;
  }
  .from {
    display: block;
    color: var(--soft);
  }
  .edited {
    color: var(--blue);
  }
`;
