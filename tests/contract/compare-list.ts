import { readFileSync } from 'node:fs';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import type { Comparison } from '../../src/core/compare/comparison.ts';
import type { AuditedList } from '../../src/core/model/audited.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';

const demo = new URL('../../sample-data/demo-catalogue.csv', import.meta.url);
const CATALOGUE = importCatalogue(readFile(readFileSync(demo), 'demo-catalogue.csv'));

/** A row with a name of its own, by which tests find it again wherever it stands. */
export interface ListedRow {
  readonly id: string;
  /** By heading. */
  readonly cells: Readonly<Record<string, string>>;
}

export interface Listed {
  readonly headings: readonly string[];
  readonly rows: readonly ListedRow[];
  /** Lines above the headings. */
  readonly titles: readonly string[];
}

export const HEADINGS = [
  'Item',
  'Part number',
  'Description',
  'Panel',
  'Material',
  'Thickness (mm)',
  'Hole (mm)',
  'Edge (mm)',
  'Qty',
  'Position',
  'Remark',
] as const;

const PARTS: readonly (readonly [part: string, description: string, hole: string])[] = [
  ['NUT-M4-10-CS', 'Clinch nut, M4', '5.6'],
  ['NUT-M4-08-CS', 'Clinch nut, M4', '5.6'],
  ['NUT-M3-10-CS', 'Clinch nut, M3', '4.35'],
  ['NUT-M5-15-CS', 'Clinch nut, M5', '6.85'],
  ['NUT-M6-15-CS', 'Clinch nut, M6', '8.1'],
  ['STUD-M4-10-12-CS', 'Clinch stud, M4 x 12', '4.15'],
  ['STUD-M5-10-16-CS', 'Clinch stud, M5 x 16', '5.2'],
  ['NUT-M3-08-CS', 'Clinch nut, M3', '4.35'],
  ['NUT-M2.5-06-S3', 'Clinch nut, M2.5', '3.75'],
  ['BLINDSPACER-M4-10-12-CS', 'Blind standoff, M4 x 12', '5.6'],
  ['SCREW-M4x10', 'Pan head machine screw M4 x 10', ''],
];

/** Numbers that look like chance and are the same each time (a linear congruence). */
export function numbersFrom(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (state * 1_664_525 + 1_013_904_223) % 4_294_967_296;
    return Math.floor((state / 4_294_967_296) * below);
  };
}

/**
 * A list of `size` rows on panels of about 25: every second panel's sheet stands on its own row alone, on the others each row has it.
 * Some rows stand there twice. Without references nothing names a single row.
 */
export function makeList(size: number, seed: number, hasReferences = true): Listed {
  const next = numbersFrom(seed);
  const rows: ListedRow[] = [];
  while (rows.length < size) {
    const at = Math.floor(rows.length / 25) + 1;
    const panel = `P${String(at).padStart(2, '0')}`;
    const sheet = { Panel: panel, Material: at % 3 === 0 ? '5052-H32' : 'DC01', 'Thickness (mm)': '1.5' };
    const isOwn = rows.length % 25 === 0;
    const [part, description, hole] = PARTS[next(PARTS.length)] ?? ['', '', ''];
    const fastener = {
      'Part number': part,
      Description: description,
      ...(at % 2 === 0 ? { Panel: panel } : sheet),
      ...(hole && { 'Hole (mm)': hole, 'Edge (mm)': '12' }),
      Qty: String(2 + 2 * next(6)),
      Remark: next(5) === 0 ? 'hinge side' : '',
    };
    const panelRow = { 'Part number': `PANEL ${panel}`, Description: `Panel ${at}`, ...sheet, Qty: '1' };
    const twin = !isOwn && next(12) === 0 ? rows.at(-1)?.cells : undefined;
    const own = twin && !twin['Part number']?.startsWith('PANEL') ? twin : isOwn ? panelRow : fastener;
    const number = rows.length + 1;
    const named = { Item: String(number), Position: `X${next(900)} Y${number}` };
    rows.push({ id: `r${number}`, cells: { ...own, ...(hasReferences && named) } });
  }
  const headings = hasReferences ? HEADINGS : HEADINGS.filter((one) => one !== 'Item' && one !== 'Position');
  return { headings, rows, titles: [] };
}

/** Rows and columns in any order that the seed gives, under title lines. */
export function shuffle({ headings, rows }: Listed, seed: number): Listed {
  const titles = ['Recorder cabinet', 'Revision B'];
  return { headings: mixed(headings, seed), rows: mixed(rows, seed + 1), titles };
}

export function mixed<T>(items: readonly T[], seed: number): readonly T[] {
  const next = numbersFrom(seed);
  return items
    .map((item) => ({ item, at: next(1_000_000) }))
    .sort((a, b) => a.at - b.at)
    .map(({ item }) => item);
}

const BASIS = { ...createBasis([CATALOGUE], DEFAULT_SHOP), findRemedies: () => [] };

export function judge(list: Listed, shop: Partial<ShopSettings> = {}): AuditedList {
  return auditFile(readFile(new TextEncoder().encode(csvOf(list)), 'list.csv'), {
    ...BASIS,
    shop: { ...DEFAULT_SHOP, ...shop },
  });
}

export function csvOf({ headings, rows, titles }: Listed): string {
  const lines = [headings, ...rows.map(({ cells }) => headings.map((heading) => cells[heading] ?? ''))];
  const quoted = lines.map((cells) => cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join(','));
  return `${[...titles, ...quoted].join('\n')}\n`;
}

/** A comparison in names that do not depend on where a row stands. */
export function told(comparison: Comparison, before: Listed, after: Listed) {
  const idIn =
    ({ rows, titles }: Listed) =>
    ({ row }: { readonly row: number }) =>
      rows[row - titles.length - 2]?.id ?? '?';
  const [was, is] = [idIn(before), idIn(after)];
  const { changed, rewritten, moved, added, removed, columns, panelsRenamed } = comparison;
  const cells = (rows: typeof changed) =>
    rows
      .flatMap((row) =>
        row.cells.map(
          (cell) =>
            `${was(row.before)}>${is(row.after)} ${cell.heading}: ${cell.before} -> ${cell.after}${cell.writtenOnly ? ' (written)' : ''}`,
        ),
      )
      .sort();
  return {
    changed: cells(changed),
    rewritten: cells(rewritten),
    moved: moved.map((row) => `${was(row.before)}>${is(row.after)} ${row.before.panel} -> ${row.after.panel}`).sort(),
    added: added.map(is).sort(),
    removed: removed.map(was).sort(),
    columns: columns.map(
      ({ change, before, after }) => `${change} ${before?.heading ?? ''} -> ${after?.heading ?? ''}`,
    ),
    panels: panelsRenamed.map((panel) => `${panel.before} -> ${panel.after}`),
  };
}

export const NOTHING: ReturnType<typeof told> = {
  changed: [],
  rewritten: [],
  moved: [],
  added: [],
  removed: [],
  columns: [],
  panels: [],
};
