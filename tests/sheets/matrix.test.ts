import { readdirSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import type { AuditedLine } from '../../src/core/model/audited.ts';
import { DEFAULT_SHOP, type ShopSettings } from '../../src/core/model/shop.ts';
import { listRules, rules } from '../../src/core/rules/index.ts';
import { readFile } from '../../src/io/read-file.ts';

type Cells = Readonly<Record<string, string>>;

/** Columns of ours: the product never sees them. */
const OWN = ['list', 'settings', 'expect', 'why'] as const;

const FOLDER = new URL('./', import.meta.url);
const CATALOGUE = 'matrix-catalogue.csv';
/** Lists with a test of their own. */
const CASES = ['matrix-thin-sheet.csv', 'matrix-stainless-panel.csv'] as const;
const AREAS = readdirSync(FOLDER)
  .filter((name) => /^matrix-.*\.csv$/.test(name) && name !== CATALOGUE)
  .sort();

const catalogue = importCatalogue(readFile(readFileSync(new URL(CATALOGUE, FOLDER)), CATALOGUE));

/** One row of a matrix file. */
interface Row {
  readonly at: string;
  readonly cells: Cells;
}

/** The row with what became of it; undefined where the product did not judge it. */
interface Judged extends Row {
  readonly line: AuditedLine | undefined;
}

const judged = new Map(AREAS.map((name) => [name, judgeArea(name)] as const));
const all = [...judged].flatMap(([name, rows]) => ((CASES as readonly string[]).includes(name) ? [] : rows));

describe.each([...judged])('%s', (_, rows) => {
  it.each(rows.map((row) => [row.at, row.cells.expect, row.cells.why, row] as const))(
    '%s: %s, because %s',
    (_at, expected, _why, { line }) => {
      expect(notHolding(line)).toEqual(parseExpected(expected));
    },
  );
});

describe('the matrix', () => {
  it('has at least 300 rows, each with a reason', () => {
    expect(all.length).toBeGreaterThanOrEqual(300);
    expect(all.filter(({ cells }) => (cells.why ?? '').length < 3)).toEqual([]);
  });

  it('shows every outcome that every rule can give', () => {
    const seen = new Set(
      all.flatMap(({ line }) => line?.findings.map(({ rule, outcome }) => `${rule} ${outcome}`) ?? []),
    );
    expect(everyOutcome().filter((outcome) => !seen.has(outcome))).toEqual([]);
  });

  it('rests on a catalogue that loads without a problem and says that it is invented', () => {
    expect(catalogue.problems).toEqual([]);
    expect(catalogue.fasteners.filter(({ note }) => !/invented/.test(`${note}`))).toEqual([]);
  });
});

// Common practice, no source: in sheet under its minimum a part comes loose, or the press warps the panel.
describe('five kinds in aluminium of 0.032 in', () => {
  const lines = linesOf('matrix-thin-sheet.csv');

  it('are of five kinds, and all fail by the thickness of the sheet', () => {
    expect(new Set(lines.map((line) => line.fastener?.kind)).size).toBe(5);
    expect(lines.map(({ verdict }) => verdict)).toEqual(Array(5).fill('fails'));
    expect(lines.map(({ decidedBy }) => decidedBy?.rule)).toEqual(Array(5).fill('clinch/sheet-thickness'));
  });

  it('warn of the press force', () => {
    for (const line of lines) expect(textOf(line, 'press/force')).toMatch(/warp/);
  });
});

// Common practice, no source: aluminium and 300-series fasteners are too close in hardness to stainless sheet.
describe('aluminium and 300-series fasteners in a panel of 304', () => {
  const lines = linesOf('matrix-stainless-panel.csv');

  it('are nuts and standoffs of both metals, and all fail', () => {
    const pairs = lines.map(({ fastener }) => `${fastener?.kind?.replace(/^\w+ /, '')} of ${fastener?.material}`);
    expect(new Set(pairs).size).toBe(4);
    expect(lines.map(({ verdict }) => verdict)).toEqual(lines.map(() => 'fails'));
  });

  it('seat well under the press all the same, as the deciding sentence says', () => {
    for (const { decidedBy } of lines) expect(decidedBy?.text).toMatch(/seat well under the press/);
  });
});

/** The rows of a file, judged in lists: one for each name of a list and set of settings. */
function judgeArea(name: string): readonly Judged[] {
  const { data, meta } = Papa.parse<Cells>(readFileSync(new URL(name, FOLDER), 'utf8'), {
    header: true,
    skipEmptyLines: true,
  });
  const headings = (meta.fields ?? []).filter((field) => !(OWN as readonly string[]).includes(field));
  const rows = data.map((cells, index) => ({ at: `row ${index + 2}`, cells }));
  const names = new Set(rows.map(listOf));
  const lists = [...names].map((list) => rows.filter((row) => listOf(row) === list));
  const lines = new Map(lists.flatMap((list) => judgeOneList(name, headings, list)));
  return rows.map(({ at, cells }) => ({ at, cells, line: lines.get(at) }));
}

/** Rows of one list have its name and its settings in common. */
function listOf({ cells }: Row): string {
  return `${cells.list ?? ''}|${cells.settings ?? ''}`;
}

function judgeOneList(
  name: string,
  headings: readonly string[],
  list: readonly Row[],
): (readonly [string, AuditedLine])[] {
  const table = [headings, ...list.map(({ cells }) => headings.map((heading) => cells[heading] ?? ''))];
  const bytes = new TextEncoder().encode(Papa.unparse(table));
  const shop = parseSettings(list[0]?.cells.settings ?? '');
  const { lines } = auditFile(readFile(bytes, name), createBasis([catalogue], shop));
  return lines.map((line) => [list[line.row - 2]?.at ?? '', line] as const);
}

/** "pressKn=25; silence=unknown" over the defaults. */
function parseSettings(text: string): ShopSettings {
  const pairs = text.split(';').flatMap((pair): (readonly [string, unknown])[] => {
    const [key = '', value = ''] = pair.split('=').map((part) => part.trim());
    if (key === '') return [];
    if (!(key in DEFAULT_SHOP)) throw new Error(`no setting ${key}`);
    return [[key, /^[\d.]+$/.test(value) ? Number(value) : value]];
  });
  return { ...DEFAULT_SHOP, ...Object.fromEntries(pairs) };
}

/** "clinch/hole fails; clinch/edge note" in the order of the alphabet; "holds" alone is none. */
function parseExpected(text = ''): readonly string[] {
  return text === 'holds'
    ? []
    : text
        .split(';')
        .map((finding) => finding.trim())
        .sort();
}

function notHolding(line: AuditedLine | undefined): readonly string[] {
  if (!line) return ['not judged'];
  return line.findings
    .filter(({ outcome }) => outcome !== 'holds')
    .map(({ rule, outcome }) => `${rule} ${outcome}`)
    .sort();
}

function everyOutcome(): readonly string[] {
  const ofRows = rules.flatMap(({ id, examples }) => examples.map(({ outcome }) => `${id} ${outcome}`));
  const ofLists = listRules.flatMap(({ id, examples }) =>
    examples.flatMap((example) => example.expect.flatMap((said) => (said ? [`${id} ${said[0]}`] : []))),
  );
  return [...new Set([...ofRows, ...ofLists])];
}

function linesOf(name: (typeof CASES)[number]): readonly AuditedLine[] {
  return (judged.get(name) ?? []).flatMap(({ line }) => line ?? []);
}

function textOf(line: AuditedLine, rule: string): string {
  return line.findings.find((finding) => finding.rule === rule)?.text ?? '';
}
