/** Rows of cells as other spreadsheets put them on the clipboard. */
export type Texts = readonly (readonly string[])[];

/**
 * Reads tab-separated text: a cell in quotes may hold tabs, line breaks and doubled quotes. A quote that does not enclose its whole
 * cell (an inch mark, a word in quotes) is text like any other. Line ends may be LF, CRLF or CR; the last one opens no further row.
 */
export function parseClipboard(text: string): Texts {
  const rows: string[][] = [[]];
  for (let at = 0; at <= text.length; ) {
    const [cell, length] = cellAt(text, at);
    rows.at(-1)?.push(cell);
    at += length;
    const lineEnd = lineEndAt(text, at);
    at += Math.max(lineEnd, 1);
    if (lineEnd > 0 && at >= text.length) break;
    if (lineEnd > 0) rows.push([]);
  }
  return rows;
}

/** Writes tab-separated text that is read back as it was, with quotes only where they are needed for that. */
export function writeClipboard(rows: Texts): string {
  const lines = rows.map((row) => row.map(writeCell).join('\t'));
  const endsEmpty = lines.at(-1) === '';
  return lines.join('\n') + (endsEmpty ? '\n' : '');
}

/** The cell that begins here, and how many characters it takes. */
function cellAt(text: string, start: number): readonly [cell: string, length: number] {
  return quotedAt(text, start) ?? plainAt(text, start);
}

function quotedAt(text: string, start: number): readonly [string, number] | null {
  if (text[start] !== '"') return null;
  let close = text.indexOf('"', start + 1);
  while (close >= 0 && text[close + 1] === '"') close = text.indexOf('"', close + 2);
  const isWhole = close >= 0 && (close + 1 === text.length || /[\t\r\n]/.test(text[close + 1] ?? ''));
  if (!isWhole) return null;
  return [text.slice(start + 1, close).replaceAll('""', '"'), close + 1 - start];
}

function plainAt(text: string, start: number): readonly [string, number] {
  const ends = /[\t\r\n]/g;
  ends.lastIndex = start;
  const end = ends.exec(text)?.index ?? text.length;
  return [text.slice(start, end), end - start];
}

function lineEndAt(text: string, at: number): number {
  if (text.startsWith('\r\n', at)) return 2;
  return text[at] === '\n' || text[at] === '\r' ? 1 : 0;
}

function writeCell(cell: string): string {
  return /[\t\r\n]|^"/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell;
}
