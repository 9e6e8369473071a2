/** Rows as CSV text; every cell that needs it is quoted. */
export function writeCsv(rows: readonly (readonly string[])[]): string {
  const quote = (text: string) => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);
  return rows.map((cells) => cells.map(quote).join(',')).join('\n');
}
