import { rememberText } from '../caching/remember.ts';
import type { RawFile, RawRow, RawTable } from '../model/raw.ts';
import { findRole } from './headings.ts';
import { isPanelTable } from './panel-table.ts';

/** Headings stand within this many rows of the top; 18 is the deepest seen on a real list. */
const ROWS_SEARCHED = 30;

/** Finds the role that a cell names when it is read as a heading. */
export type RoleFinder = (heading: string) => { readonly role: string; readonly sure: boolean } | null;

/** A row of headings and how well it reads as one. */
export interface Header {
  readonly row: RawRow;
  readonly score: number;
}

/**
 * The row of headings among the first rows of a table, or null. Each meaning counts once, so a title block of labels and
 * values ("Part No. | 4711 | Material | 5052") loses to the row that heads the columns below it; the first of equals wins,
 * because headings are often repeated further down.
 */
export function findHeader(table: RawTable, roleOf: RoleFinder = findRole): Header | null {
  const known = rememberText(roleOf);
  let best: Header | null = null;
  for (const row of table.rows.slice(0, ROWS_SEARCHED)) {
    const score = scoreHeadings(row.cells, known);
    if (score !== null && score > (best?.score ?? 0)) best = { row, score };
  }
  return best;
}

/** The sheet of a file that holds the list, with its headings; null when no sheet has any. `others` are further sheets that read like lists. */
export function findList(file: RawFile): { table: RawTable; header: Header; others: readonly RawTable[] } | null {
  const visible = file.tables.filter((table) => !table.hidden);
  const found = (visible.length > 0 ? visible : file.tables)
    .flatMap((table) => {
      const header = findHeader(table);
      return header ? [{ table, header, rank: rankSheet(table, header) }] : [];
    })
    .sort((a, b) => b.rank - a.rank);
  const [best, ...rest] = found;
  if (!best) return null;
  const others = rest.filter(({ header }) => header.score >= LIST_SCORE).map(({ table }) => table);
  return { table: best.table, header: best.header, others };
}

/** A second sheet with this score is worth a notice: part number and two more sure headings. */
const LIST_SCORE = 3;

/** Roles that name what a row is about; a row of headings has at least one of them. */
const NAMING: ReadonlySet<string> = new Set(['partNumber', 'description', 'thread', 'index']);

const UNSURE = 0.6;
/** A filled cell that names nothing: words may be a column of the sender's own, digits look like a value. */
const FOREIGN_WORD = 0.1;
const FOREIGN_VALUE = 0.5;

function scoreHeadings(cells: readonly string[], roleOf: RoleFinder): number | null {
  const weights = new Map<string, number>();
  let score = 0;
  for (const cell of cells.filter((text) => text.trim() !== '')) {
    const found = roleOf(cell);
    if (found) weights.set(found.role, Math.max(weights.get(found.role) ?? 0, found.sure ? 1 : UNSURE));
    else score -= /\d/.test(cell) ? FOREIGN_VALUE : FOREIGN_WORD;
  }
  const named = [...weights.keys()].some((role) => NAMING.has(role));
  const enough = weights.size >= 2 || weights.get('partNumber') === 1;
  if (!named || !enough) return null;
  return score + [...weights.values()].reduce((sum, weight) => sum + weight, 0);
}

/** Sheets that stand before the list and only talk about it. */
const ASIDE =
  /read ?me|disclaimer|summary|info|cover|title|legend|instruction|change ?log|history|revision|notes?$|deckblatt|hinweis/i;

function rankSheet(table: RawTable, { row, score }: Header): number {
  const below = table.rows.filter(({ number }) => number > row.number).length;
  const aside = ASIDE.test(table.name) || isPanelTable(table);
  return score + Math.log10(1 + below) - (below === 0 ? 3 : 0) - (aside ? 2 : 0);
}
