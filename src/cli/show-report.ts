import type { Report, ReportBlock, ReportCell } from '../core/rollup/report.ts';

/** A report for a terminal: its tables one below the other, sentences under each, the foot last. Nothing is cut. */
export function showReport({ blocks, foot }: Report): string {
  return [...blocks.flatMap(showBlock), ...foot, ''].join('\n');
}

function showBlock({ title, headings, rows, notes }: ReportBlock): readonly string[] {
  const table = rows.length > 0 ? layOut(headings, rows) : [];
  return [...(title ? [title] : []), ...table, ...notes, ''];
}

/** Columns that are blank throughout are left out; numbers stand to the right. */
function layOut(headings: readonly string[], rows: readonly (readonly ReportCell[])[]): readonly string[] {
  const columns = headings.flatMap((heading, index) => {
    const cells = rows.map((row) => row[index] ?? '');
    if (cells.every((cell) => cell === '')) return [];
    const width = cells.reduce<number>((widest, cell) => Math.max(widest, String(cell).length), heading.length);
    const isNumber = cells.every((cell) => typeof cell === 'number' || cell === '');
    const pad = (text: string) => (isNumber ? text.padStart(width) : text.padEnd(width));
    return [[pad(heading), ...cells.map((cell) => pad(String(cell)))]];
  });
  return [-1, ...rows.keys()].map((at) =>
    columns
      .map((column) => column[at + 1] ?? '')
      .join('  ')
      .trimEnd(),
  );
}
