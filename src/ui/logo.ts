import { html } from 'lit';

/** The product's own mark: a press-in fastener seated in a sheet that has flowed into its groove, in section. */
export const logo = html`<svg width="22" height="16" viewBox="0 0 22 16" aria-hidden="true"><path fill="var(--blue)" d="M0 8.8h6.2v1.6l1.3.6-1.3.6V14H0zM22 8.8h-6.2v1.6l-1.3.6 1.3.6V14H22z" /><path fill="var(--ink)" d="M4 2h14v6h-3v2l-1.5 1 1.5 1v2H7v-2l1.5-1L7 10v-2H4z" /></svg>`;
