import { referenceTables } from '../core/reference/index.ts';
import { practices } from '../core/reference/practices.ts';

/** Every reference table and practice with its documents and how far each was confirmed. */
export function showSources(): string {
  const lines = referenceTables.flatMap(({ subject, tables }) => [
    '',
    subject,
    ...tables.flatMap(({ id, title, rows, sources }) => [
      `  ${title} [${id}], ${rows.length} rows`,
      ...sources.map(
        ({ document, place, mark, note }) => `    ${mark}: ${document}, ${place}${note ? ` (${note})` : ''}`,
      ),
    ]),
  ]);
  const spoken = practices.map(({ id, title, note }) => `  ${title} [${id}]: ${note}`);
  const legend =
    'printed = a printed text was read; memory = known to the trade, no text read; derived = calculated here.';
  return [legend, ...lines, '', 'Practices of the trade', ...spoken, ''].join('\n');
}
