import { safeText } from './safe-text.ts';

/** Text as it stands in XML, between tags or in an attribute. */
export function escapeXml(text: string): string {
  if (!/[&<>"]/.test(text)) return text;
  return text.replaceAll('&', '&amp;').replaceAll('<', '&lt;').replaceAll('>', '&gt;').replaceAll('"', '&quot;');
}

/** The `t` element of a cell's text: blanks at its ends, in a row and line breaks are kept. */
export function textXml(text: string): string {
  const safe = escapeXml(safeText(text));
  return /^\s|\s$|\s\s|[\n\t]/.test(safe) ? `<t xml:space="preserve">${safe}</t>` : `<t>${safe}</t>`;
}
