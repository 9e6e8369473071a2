import { LINKS, MAIN } from './sheet-xml.ts';
import { escapeXml } from './xml-text.ts';

const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const SPREADSHEET = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
const CREATOR = 'Clinchsheet';
const WRITTEN_LAST = ['styles', 'sharedStrings'];

/** Relationships by their type's last word and their target, numbered `rId1` on. */
export type Links = readonly (readonly [type: string, target: string])[];

/** Relationships as a part. Those that the package itself defines are told by their target. */
export function linksXml(links: Links): string {
  const tags = links.map(([type, target], index) => {
    const kind = type.includes('/') ? `${PACKAGE}/relationships/${type}` : `${LINKS}/${type}`;
    return `<Relationship Id="rId${index + 1}" Type="${kind}" Target="${target}"/>`;
  });
  return `<Relationships xmlns="${PACKAGE}/relationships">${tags.join('')}</Relationships>`;
}

/** What the package holds. */
export const LINKS_OF_PACKAGE: Links = [
  ['officeDocument', 'xl/workbook.xml'],
  ['metadata/core-properties', 'docProps/core.xml'],
];

/** What the workbook holds: sheets first, so that their ids are their numbers. */
export function linksOfBook(sheets: number): Links {
  const numbers = Array.from({ length: sheets }, (_, index) => index + 1);
  return [
    ...numbers.map((number) => ['worksheet', `worksheets/sheet${number}.xml`] as const),
    ...WRITTEN_LAST.map((part) => [part, `${part}.xml`] as const),
  ];
}

/** What the parts are; `noted` are the numbers of sheets with notes. */
export function typesXml(sheets: number, noted: readonly number[]): string {
  const numbers = Array.from({ length: sheets }, (_, index) => index + 1);
  const parts = [
    ['xl/workbook', `${SPREADSHEET}.sheet.main+xml`],
    ...numbers.map((number) => [`xl/worksheets/sheet${number}`, `${SPREADSHEET}.worksheet+xml`]),
    ...noted.map((number) => [`xl/comments${number}`, `${SPREADSHEET}.comments+xml`]),
    ...WRITTEN_LAST.map((part) => [`xl/${part}`, `${SPREADSHEET}.${part}+xml`]),
    ['docProps/core', 'application/vnd.openxmlformats-package.core-properties+xml'],
  ];
  const defaults = [
    ['rels', 'application/vnd.openxmlformats-package.relationships+xml'],
    ['xml', 'application/xml'],
    ...(noted.length > 0 ? [['vml', 'application/vnd.openxmlformats-officedocument.vmlDrawing']] : []),
  ].map(([ending, type]) => `<Default Extension="${ending}" ContentType="${type}"/>`);
  const overrides = parts.map(([part, type]) => `<Override PartName="/${part}.xml" ContentType="${type}"/>`);
  return `<Types xmlns="${PACKAGE}/content-types">${defaults.join('')}${overrides.join('')}</Types>`;
}

/** The workbook part: the sheets by name, and that the first row of each repeats in print. */
export function bookXml(names: readonly string[]): string {
  const sheets = names.map(
    (name, index) => `<sheet name="${escapeXml(name)}" sheetId="${index + 1}" r:id="rId${index + 1}"/>`,
  );
  const titles = names.map((name, index) => definedName('Print_Titles', index, `${quoted(name)}!$1:$1`));
  return `<workbook xmlns="${MAIN}" xmlns:r="${LINKS}"><bookViews><workbookView/></bookViews><sheets>${sheets.join('')}</sheets><definedNames>${titles.join('')}</definedNames></workbook>`;
}

/** A name that spreadsheets know, for one sheet by its place among all. */
export function definedName(name: 'Print_Titles' | 'Print_Area', sheet: number, reference: string): string {
  return `<definedName name="_xlnm.${name}" localSheetId="${sheet}">${escapeXml(reference)}</definedName>`;
}

/** A sheet's name as it stands in a reference. */
export function quoted(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}

/** Who made the file. */
export function coreXml(): string {
  return `<cp:coreProperties xmlns:cp="${PACKAGE}/metadata/core-properties" xmlns:dc="http://purl.org/dc/elements/1.1/"><dc:creator>${CREATOR}</dc:creator></cp:coreProperties>`;
}
