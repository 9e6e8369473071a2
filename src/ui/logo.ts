import { html } from 'lit';

/** The product's own mark: a press-in fastener seated in a sheet, in section. */
export const logo = html`<svg width="22" height="16" viewBox="0 0 22 16" aria-hidden="true"><path fill="var(--blue)" d="M0 8h5v6H0zM17 8h5v6h-5z" /><path fill="var(--ink)" d="M7 1h8v9h2v3h-3v2H8v-2H5v-3h2z" /></svg>`;
