import { css } from 'lit';

/** A panel beside a table that tells of one thing: it scrolls by itself, its head has a button that closes it. */
export const sidePanelStyles = css`
  :host {
    display: block;
    height: 100%;
    overflow: auto;
    padding: 18px 20px 24px;
    background: var(--sheet);
  }
  .head {
    display: flex;
    gap: 8px;
    justify-content: space-between;
  }
  .close {
    width: 28px;
    height: 28px;
    border: 0;
    background: none;
    color: var(--soft);
    font-size: 18px;
  }
`;
