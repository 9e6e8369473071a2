import { escapeXml } from '../write/xml-text.ts';
import { XmlScanner } from '../xlsx/scan.ts';
import { opened, prefixOf, type Splice, splice, withAttribute, withPrefix } from './splice.ts';

/** A sheet to be added: its name, its part as a path from the root, the id of its relationship. */
export interface NewSheet {
  readonly name: string;
  readonly part: string;
  readonly id: string;
}

const WORKSHEET_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
/** Elements of a workbook that come before its defined names. */
const BEFORE_NAMES = ['sheets', 'functionGroups', 'externalReferences'];

/** What changes in the workbook part. */
export interface WorkbookPatch {
  /** Sheets that come behind the others. */
  readonly sheets: readonly NewSheet[];
  /** Defined names as XML without prefixes. */
  readonly names: readonly string[];
  /** Cells were edited: the workbook is to be calculated on opening. */
  readonly calculates: boolean;
}

/** The workbook part with sheets, defined names and, where cells were edited, the order to calculate on opening. */
export function patchWorkbookPart(xml: string, { sheets, names, calculates }: WorkbookPatch): string {
  const places = findPlaces(xml);
  const { ids, sheetTag } = places;
  const prefix = prefixOf(sheetTag);
  const linkPrefix = /\s([^\s=:]+:)id\s*=/.exec(sheetTag)?.[1] ?? 'r:';
  const first = Math.max(0, ...ids) + 1;
  const added = sheets.map(
    ({ name, id }, index) =>
      `<${prefix}sheet name="${escapeXml(name)}" sheetId="${first + index}" ${linkPrefix}id="${id}"/>`,
  );
  return splice(xml, [
    { at: places.sheetsEnd, end: places.sheetsEnd, text: added.join('') },
    ...addNames(xml, places, withPrefix(names.join(''), prefix), prefix),
    ...(calculates ? [orderCalculation(xml, places, prefix)] : []),
  ]);
}

interface Tag {
  readonly start: number;
  readonly end: number;
  readonly isEmpty: boolean;
}

interface Places {
  readonly ids: number[];
  sheetTag: string;
  sheetsEnd: number;
  /** The start tag of the defined names, and where their end tag begins. */
  names: Tag | null;
  namesEnd: number;
  calculation: Tag | null;
  /** Where defined names would go, and behind them settings of calculation. */
  beforeNames: number;
  behindNames: number;
}

function findPlaces(xml: string): Places {
  const places: Places = {
    ids: [],
    sheetTag: '',
    sheetsEnd: -1,
    names: null,
    namesEnd: -1,
    calculation: null,
    beforeNames: -1,
    behindNames: -1,
  };
  const scanner = new XmlScanner(xml);
  while (scanner.next()) notePlace(scanner, xml, places);
  return places;
}

function notePlace(scanner: XmlScanner, xml: string, places: Places): void {
  const { name, isClose, isEmpty, start, position: end } = scanner;
  if (name === 'sheets' && isClose) places.sheetsEnd = start;
  if (name === 'definedNames' && isClose) places.namesEnd = start;
  if (isClose || isEmpty) {
    if (BEFORE_NAMES.includes(name)) places.beforeNames = end;
    if (BEFORE_NAMES.includes(name) || name === 'definedNames') places.behindNames = end;
  }
  if (isClose) return;
  if (name === 'definedNames') places.names = { start, end, isEmpty };
  if (name === 'calcPr') places.calculation = { start, end, isEmpty };
  if (name !== 'sheet') return;
  places.ids.push(Number(scanner.attribute('sheetId')));
  places.sheetTag = xml.slice(start, end);
}

function addNames(
  xml: string,
  { names, namesEnd, beforeNames }: Places,
  added: string,
  prefix: string,
): readonly Splice[] {
  if (added === '') return [];
  if (names === null) {
    const all = `<${prefix}definedNames>${added}</${prefix}definedNames>`;
    return [{ at: beforeNames, end: beforeNames, text: all }];
  }
  if (!names.isEmpty) return [{ at: namesEnd, end: namesEnd, text: added }];
  const { start, end } = opened(xml.slice(names.start, names.end));
  return [{ at: names.start, end: names.end, text: start + added + end }];
}

function orderCalculation(xml: string, { calculation, behindNames }: Places, prefix: string): Splice {
  const { start: at, end } = calculation ?? { start: behindNames, end: behindNames };
  const tag = calculation ? xml.slice(at, end) : `<${prefix}calcPr/>`;
  return { at, end, text: withAttribute(tag, 'fullCalcOnLoad', '1') };
}

/** The workbook's relationships with those of new sheets, and without those of the types named. */
export function patchRelationships(
  xml: string,
  folder: string,
  sheets: readonly NewSheet[],
  dropped: readonly string[],
): string {
  const scanner = new XmlScanner(xml);
  const gone: Splice[] = [];
  let type = '';
  let prefix = '';
  let end = -1;
  while (scanner.next()) {
    if (scanner.name === 'Relationships' && scanner.isClose) end = scanner.start;
    if (scanner.name !== 'Relationship' || scanner.isClose) continue;
    const found = scanner.attribute('Type') ?? '';
    if (found.endsWith('/worksheet')) type = found;
    prefix = prefixOf(xml.slice(scanner.start, scanner.position));
    if (dropped.some((word) => found.endsWith(`/${word}`))) {
      gone.push({ at: scanner.start, end: scanner.position, text: '' });
    }
  }
  const added = sheets.map(({ id, part }) => {
    const target = part.startsWith(folder) ? part.slice(folder.length) : `/${part}`;
    return `<${prefix}Relationship Id="${id}" Type="${type}" Target="${escapeXml(target)}"/>`;
  });
  return splice(xml, [...gone, { at: end, end, text: added.join('') }]);
}

/** The list of content types with new worksheets, and without parts that are gone. */
export function patchContentTypes(xml: string, sheets: readonly NewSheet[], dropped: readonly string[]): string {
  const scanner = new XmlScanner(xml);
  const isGone = (name: string) => dropped.some((part) => `/${part}`.toLowerCase() === name.toLowerCase());
  const changes: Splice[] = [];
  while (scanner.next()) {
    const { name, isClose, isEmpty, start, position } = scanner;
    const tag = xml.slice(start, position);
    if (name === 'Override' && !isClose && isGone(scanner.attribute('PartName') ?? '')) {
      changes.push({ at: start, end: position, text: '' });
    }
    if (name !== 'Types' || (!isClose && !isEmpty)) continue;
    const added = sheets.map(
      ({ part }) => `<${prefixOf(tag)}Override PartName="/${escapeXml(part)}" ContentType="${WORKSHEET_TYPE}"/>`,
    );
    if (isClose) changes.push({ at: start, end: start, text: added.join('') });
    else changes.push({ at: start, end: position, text: opened(tag).start + added.join('') + opened(tag).end });
  }
  return splice(xml, changes);
}
