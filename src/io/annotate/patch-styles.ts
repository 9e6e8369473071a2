import { XmlScanner } from '../xlsx/scan.ts';
import { prefixOf, type Splice, splice, withAttribute, withPrefix } from './splice.ts';

const LISTS = ['fonts', 'fills', 'borders', 'cellXfs'] as const;
/** Spreadsheets give up beyond 65,490 cell styles; we have a few dozen. */
const MOST_STYLES = 65_000;
/** Numbers below this are formats that every spreadsheet knows. */
const FIRST_CUSTOM_FORMAT = 164;

/** What an index into our styles grows by when they are appended to those of a workbook; null where they cannot be. */
export function styleOffset(theirs: string): number | null {
  const count = readLists(theirs)?.cellXfs.count ?? MOST_STYLES;
  return count < MOST_STYLES ? count : null;
}

/** Our cell styles behind those of a workbook. */
export function appendStyles(theirs: string, ours: string): string {
  const into = readLists(theirs);
  const from = readLists(ours);
  if (into === null || from === null) return theirs;
  const formats = appendFormats(theirs, into, from, ours);
  const shifts: Readonly<Record<string, number>> = {
    fontId: into.fonts.count,
    fillId: into.fills.count,
    borderId: into.borders.count,
  };
  const cellStyles = innerOf(ours, from.cellXfs).replace(
    / (fontId|fillId|borderId|numFmtId)="(\d+)"/g,
    (_, name: string, id: string) => ` ${name}="${formats.renumber(name, Number(id)) + (shifts[name] ?? 0)}"`,
  );
  const styles = into.hasNamedStyles ? cellStyles : cellStyles.replaceAll(' xfId="0"', '');
  const splices = LISTS.flatMap((name) =>
    append(theirs, into[name], name === 'cellXfs' ? styles : innerOf(ours, from[name]), from[name].count),
  );
  return splice(theirs, [...formats.splices, ...splices]);
}

/** A list of a styles part: its start tag, its items, where its end tag begins. */
interface StyleList {
  readonly start: number;
  readonly tagEnd: number;
  end: number;
  count: number;
}

interface StyleLists extends Readonly<Record<(typeof LISTS)[number], StyleList>> {
  readonly numFmts: StyleList | null;
  readonly hasNamedStyles: boolean;
  readonly rootEnd: number;
  readonly formatIds: readonly number[];
}

function readLists(xml: string): StyleLists | null {
  const scanner = new XmlScanner(xml);
  const lists = new Map<string, StyleList>();
  const formatIds: number[] = [];
  let rootEnd = -1;
  for (let depth = 0, current: StyleList | undefined; scanner.next(); ) {
    const { name, isClose, isEmpty, start, position } = scanner;
    if (isClose) {
      if (--depth === 1 && current) current.end = start;
      continue;
    }
    if (name === 'AlternateContent' && depth <= 2 && current?.end === -1) return null;
    if (depth === 0) rootEnd = position;
    if (depth === 1) {
      current = isEmpty ? undefined : { start, tagEnd: position, end: -1, count: 0 };
      if (current && !lists.has(name)) lists.set(name, current);
      else if (isEmpty && name === 'numFmts') return null;
    }
    if (depth === 2 && current) current.count++;
    if (depth === 2 && name === 'numFmt') formatIds.push(Number(scanner.attribute('numFmtId')));
    if (!isEmpty) depth++;
  }
  const [fonts, fills, borders, cellXfs] = LISTS.map((name) => lists.get(name));
  if (!fonts?.count || !fills?.count || !borders?.count || !cellXfs?.count) return null;
  if ([fonts, fills, borders, cellXfs].some(({ end }) => end < 0)) return null;
  const hasNamedStyles = (lists.get('cellStyleXfs')?.count ?? 0) > 0;
  return { fonts, fills, borders, cellXfs, numFmts: lists.get('numFmts') ?? null, hasNamedStyles, rootEnd, formatIds };
}

/** Number formats of ours under numbers that are still free. */
function appendFormats(theirs: string, into: StyleLists, from: StyleLists, ours: string) {
  const first = Math.max(FIRST_CUSTOM_FORMAT, ...into.formatIds.map((id) => id + 1));
  const numbers = new Map(from.formatIds.map((id, index) => [id, first + index]));
  const renumber = (name: string, id: number) => (name === 'numFmtId' ? (numbers.get(id) ?? id) : id);
  if (!from.numFmts) return { renumber, splices: [] };
  const formats = innerOf(ours, from.numFmts).replace(
    / numFmtId="(\d+)"/g,
    (_, id: string) => ` numFmtId="${renumber('numFmtId', Number(id))}"`,
  );
  if (into.numFmts) return { renumber, splices: append(theirs, into.numFmts, formats, from.numFmts.count) };
  const list = withPrefix(`<numFmts count="${numbers.size}">${formats}</numFmts>`, prefixAt(theirs, into.fonts.start));
  return { renumber, splices: [{ at: into.rootEnd, end: into.rootEnd, text: list }] };
}

function append(theirs: string, list: StyleList, items: string, count: number): readonly Splice[] {
  const tag = theirs.slice(list.start, list.tagEnd);
  return [
    { at: list.start, end: list.tagEnd, text: withAttribute(tag, 'count', String(list.count + count)) },
    { at: list.end, end: list.end, text: withPrefix(items, prefixOf(tag)) },
  ];
}

function innerOf(xml: string, { tagEnd, end }: StyleList): string {
  return xml.slice(tagEnd, end);
}

function prefixAt(xml: string, at: number): string {
  return prefixOf(xml.slice(at, at + 100));
}
