import { XmlScanner } from '../xlsx/scan.ts';
import { escapeXml, opened, prefixOf, type Splice, splice, withAttribute } from './splice.ts';

/** A sheet to be added: its name, its part as a path from the root, the id of its relationship. */
export interface NewSheet {
  readonly name: string;
  readonly part: string;
  readonly id: string;
}

const WORKSHEET_TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml.worksheet+xml';
/** Elements of a workbook that come before its calculation settings. */
const BEFORE_CALCULATION = ['sheets', 'functionGroups', 'externalReferences', 'definedNames'];

/** The workbook part with sheets behind the others and, where cells were edited, the order to calculate on opening. */
export function patchWorkbookPart(xml: string, sheets: readonly NewSheet[], calculates: boolean): string {
  const scanner = new XmlScanner(xml);
  const ids: number[] = [];
  let sheetTag = '';
  let sheetsEnd = -1;
  let calculation: Splice | null = null;
  let before = -1;
  while (scanner.next()) {
    const { name, isClose, isEmpty, start, position } = scanner;
    if (name === 'sheets' && isClose) sheetsEnd = start;
    if (BEFORE_CALCULATION.includes(name) && (isClose || isEmpty)) before = position;
    if (isClose) continue;
    if (name === 'sheet') {
      ids.push(Number(scanner.attribute('sheetId')));
      sheetTag = xml.slice(start, position);
    }
    if (name === 'calcPr') calculation = { at: start, end: position, text: xml.slice(start, position) };
  }
  const prefix = prefixOf(sheetTag);
  const linkPrefix = /\s([^\s=:]+:)id\s*=/.exec(sheetTag)?.[1] ?? 'r:';
  const first = Math.max(0, ...ids) + 1;
  const added = sheets.map(
    ({ name, id }, index) =>
      `<${prefix}sheet name="${escapeXml(name)}" sheetId="${first + index}" ${linkPrefix}id="${id}"/>`,
  );
  const settings = calculation ?? { at: before, end: before, text: `<${prefix}calcPr/>` };
  const calculate = { ...settings, text: withAttribute(settings.text, 'fullCalcOnLoad', '1') };
  return splice(xml, [{ at: sheetsEnd, end: sheetsEnd, text: added.join('') }, ...(calculates ? [calculate] : [])]);
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
