import { type Column, columnLetter, type Role } from '../model/list.ts';
import type { Notice, RawRow, RawTable } from '../model/raw.ts';
import { showRows } from '../say/show-rows.ts';
import { findRole } from './headings.ts';

/** Says so when other sheets of the file read like lists too: only one is judged. */
export function noticeSheets(table: RawTable, others: readonly RawTable[]): readonly Notice[] {
  if (others.length === 0) return [];
  const names = others.map(({ name }) => `“${name}”`).join(', ');
  return [
    {
      text: `Sheet “${table.name}” was read; ${names} reads like a list too: choose the sheet if it is the one you meant.`,
      sheet: table.name,
    },
  ];
}

/** Says so when headings occur twice in a way that leaves rows or facts unread. */
export function noticeColumns(columns: readonly Column[], table: RawTable): readonly Notice[] {
  const at = { sheet: table.name };
  const materials = claims(columns, 'material');
  const notices: Notice[] = [];
  if (materials.length > 1 && !columns.some(({ role }) => role === 'material')) {
    notices.push({
      ...at,
      text: `Columns ${letters(materials)} are both headed as material: choose which one is the sheet's; until then no row has one.`,
    });
  }
  const parts = claims(columns, 'partNumber');
  const [first, second] = parts;
  if (
    first &&
    second &&
    claims(columns, 'quantity').length > 1 &&
    first.heading.toLowerCase() === second.heading.toLowerCase()
  ) {
    notices.push({
      ...at,
      text: `A second list stands beside the first from column ${columnLetter(second.index)} on and was not read: put its rows under the first, or in a sheet of their own.`,
    });
  }
  if (!columns.some(({ role }) => role === 'partNumber')) {
    notices.push({ ...at, text: 'No column of part numbers was found: choose the column that holds them.' });
  }
  return notices;
}

/** Says so when there is nothing under the headings, or when rows have more cells than headings. */
export function noticeRows(
  table: RawTable,
  header: RawRow,
  rows: readonly RawRow[],
  shifted: readonly RawRow[],
  width: number,
): readonly Notice[] {
  const at = { sheet: table.name };
  if (rows.length === 0)
    return [
      {
        ...at,
        row: header.number,
        text: `No rows stand under the headings in row ${header.number}: check that the list is complete.`,
      },
    ];
  return shifted.length === 0 ? [] : [{ ...at, ...noticeShifted(shifted, width) }];
}

/** One sentence for all rows whose cells a delimiter inside an unquoted cell has pushed to the right. */
function noticeShifted(shifted: readonly RawRow[], width: number): Notice {
  const [first, ...more] = shifted;
  const cure = 'put cells that contain the delimiter in quotes';
  if (first && more.length === 0) {
    return {
      row: first.number,
      text: `Row ${first.number} has ${lastFilled(first)} cells under ${width} headings, so its cells may have moved and it was not judged by them: ${cure}.`,
    };
  }
  const rows = showRows(shifted.map(({ number }) => number));
  return {
    text: `${rows} have more cells than the ${width} headings, so their cells may have moved and they were not judged by them: ${cure}.`,
  };
}

function claims(columns: readonly Column[], role: Role): readonly Column[] {
  return columns.filter(({ heading }) => findRole(heading)?.role === role);
}

function letters(columns: readonly Column[]): string {
  return columns.map(({ index }) => columnLetter(index)).join(' and ');
}

function lastFilled({ cells }: RawRow): number {
  return cells.findLastIndex((cell) => cell.trim() !== '') + 1;
}
