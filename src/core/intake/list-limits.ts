import { type RawFile, type RawRow, type RawTable, Unreadable } from '../model/raw.ts';

/** Filled rows of a table that is judged or read as a catalogue: the longest real lists have a tenth of them. */
const MOST_ROWS = 250_000;
/** Columns with a heading; the widest real lists have a tenth of them. */
const MOST_HEADINGS = 1000;
/** Cells of the columns that both headings and rows reach to, blank ones included. */
const MOST_CELLS = 40_000_000;

/** @throws Unreadable with one sentence when a table is larger than any list or catalogue. */
export function refuseHuge(file: RawFile, table: RawTable, header: RawRow): void {
  const { rows } = table;
  if (rows.length > MOST_ROWS) {
    const cure = 'delete the rows that are not to be judged, or divide it into several files';
    refuse(file, table, `more than ${show(MOST_ROWS)} filled rows`, cure);
  }
  const headings = header.cells.reduce((count, cell) => (cell.trim() === '' ? count : count + 1), 0);
  if (headings > MOST_HEADINGS) {
    const what = `more than ${show(MOST_HEADINGS)} column headings in row ${header.number}`;
    refuse(file, table, what, 'delete the columns that do not belong to the list');
  }
  const below = rows.reduce(
    (widest, { number, cells }) => (number > header.number ? Math.max(widest, cells.length) : widest),
    0,
  );
  const reach = Math.min(below, header.cells.findLastIndex((cell) => cell.trim() !== '') + 1);
  if (reach * rows.length > MOST_CELLS) {
    const cure = 'clear what stands far to the right of the list';
    refuse(file, table, `${show(rows.length)} rows that reach over ${show(reach)} columns`, cure);
  }
}

function refuse(file: RawFile, { name }: RawTable, what: string, cure: string): never {
  const place = name === '' ? file.file : `${file.file}, sheet “${name}”,`;
  throw new Unreadable(`${place} has ${what}, which no list needs: ${cure}.`);
}

function show(count: number): string {
  return count.toLocaleString('en-US');
}
