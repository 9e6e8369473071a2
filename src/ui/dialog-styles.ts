import { css } from 'lit';

/** A dialog: heading, what it is about in a part that scrolls, buttons at the foot. */
export const dialogStyles = css`
  dialog {
    width: min(780px, calc(100vw - 48px));
    max-height: calc(100vh - 64px);
    padding: 0;
    border: 1px solid var(--line);
    border-radius: 6px;
    background: var(--sheet);
    color: var(--ink);
    box-shadow: 0 8px 32px rgb(0 0 0 / 22%);
  }
  dialog[open] {
    display: flex;
    flex-direction: column;
  }
  dialog::backdrop {
    background: rgb(0 0 0 / 28%);
  }
  .head {
    padding: 16px 20px 12px;
  }
  header p {
    margin-top: 4px;
    color: var(--soft);
  }
  .body {
    flex: 1;
    min-height: 0;
    /* Room for the ring of a field that has the focus. */
    padding: 4px 20px 0;
    overflow: auto;
  }
  footer {
    display: flex;
    gap: 8px;
    justify-content: flex-end;
    padding: 12px 20px;
    border-top: 1px solid var(--line);
  }
  .fields {
    display: grid;
    grid-template-columns: auto 1fr;
    gap: 10px 16px;
    align-items: center;
    padding-bottom: 14px;
  }
  .button[disabled] {
    opacity: 0.5;
    cursor: default;
  }
`;
