import type { CellFlag, Notice, RawRow } from '../../core/model/raw.ts';
import { showColumn } from './address.ts';
import type { SheetRows } from './read-sheet.ts';

const MOST_NAMED = 5;

/** What the user should know about a sheet as a whole: what is hidden, what was never calculated, what is in error. */
export function noticeSheet(sheet: string, content: SheetRows): Notice[] {
  const { rows, hiddenColumns } = content;
  const hiddenRows = rows.filter((row) => row.hidden).map((row) => String(row.number));
  return [
    ...say(
      sheet,
      hiddenRows,
      (count, names) => `hides ${plural(count, 'filled row')} (${names}), read like the others`,
    ),
    ...say(
      sheet,
      hiddenColumns.map(showColumn),
      (count, names) => `hides ${plural(count, 'column')} (${names}), read like the others`,
    ),
    ...say(
      sheet,
      findFlagged(rows, 'not-calculated'),
      (count, names) =>
        `has ${plural(count, 'formula')} without a result (${names}): open the workbook in a spreadsheet program, let it calculate and save it`,
    ),
    ...say(
      sheet,
      findFlagged(rows, 'error'),
      (count, names) => `has ${plural(count, 'cell')} in error (${names}): correct them in the workbook or here`,
    ),
  ];
}

function say(sheet: string, names: readonly string[], sentence: (count: number, names: string) => string): Notice[] {
  if (names.length === 0) return [];
  const named = names.slice(0, MOST_NAMED).join(', ') + (names.length > MOST_NAMED ? ', …' : '');
  return [{ text: `Sheet ‘${sheet}’ ${sentence(names.length, named)}.`, sheet }];
}

function findFlagged(rows: readonly RawRow[], flag: CellFlag): string[] {
  return rows.flatMap((row) =>
    Object.entries(row.flags ?? {})
      .filter(([, found]) => found === flag)
      .map(([column]) => `${showColumn(Number(column))}${row.number}`),
  );
}

function plural(count: number, word: string): string {
  return count === 1 ? `1 ${word}` : `${count} ${word}s`;
}
