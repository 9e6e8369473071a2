import type { AuditedList } from '../../core/model/audited.ts';
import { Unreadable } from '../../core/model/raw.ts';
import { decodeXmlBytes, decodeXmlPieces } from '../xlsx/decode-xml.ts';
import { findWorkbookPart, readRelationships, readWorkbookParts } from '../xlsx/parts.ts';
import { isOn, XmlScanner } from '../xlsx/scan.ts';
import { openZip, type Zip } from '../xlsx/zip.ts';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const LINKS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const STRICT_MAIN = 'http://purl.oclc.org/ooxml/spreadsheetml/main';
const STRICT_LINKS = 'http://purl.oclc.org/ooxml/officeDocument/relationships';

/** A workbook that can be written into. Parts go by their stored names. */
export interface OpenBook {
  readonly zip: Zip;
  readonly workbook: string;
  /** Folder of the workbook part, with its slash. */
  readonly folder: string;
  /** The workbook's relationships. */
  readonly links: string;
  /** The list of content types. */
  readonly types: string;
  readonly styles: string | undefined;
  readonly calculationChain: string | undefined;
  /** Names of all sheets, those that hold no cells too. */
  readonly names: readonly string[];
  /** The part of the list's own sheet. */
  readonly sheet: string;
  readonly has1904Dates: boolean;
  /** Text of a part; throws `Unreadable` when it could not be written back as it is. */
  readonly read: (part: string) => string;
  /** The same as it unpacks, piece by piece. */
  readonly pieces: (part: string) => Iterable<string>;
  /** A name and a relationship id for a new worksheet part, each time another. */
  readonly takePart: () => { readonly part: string; readonly id: string };
  /** A sheet of ours in the namespaces of this workbook. */
  readonly dialect: (xml: string) => string;
}

/**
 * Opens a workbook for writing beside its list.
 * @throws Unreadable when that is not allowed or not safe.
 */
export function openBook(bytes: Uint8Array, list: AuditedList): OpenBook {
  const zip = openZip(bytes, list.file);
  const workbook = findWorkbookPart(zip);
  if (workbook === undefined) throw new Unreadable('The file holds no workbook.');
  const path = workbook.replaceAll('\\', '/');
  const folder = path.slice(0, path.lastIndexOf('/') + 1);
  const links = zip.find(`${folder}_rels/${path.slice(folder.length)}.rels`);
  const types = zip.find('[Content_Types].xml');
  if (links === undefined || types === undefined)
    throw new Unreadable('The workbook does not say where its parts are.');
  const xml = readText(zip, workbook);
  const names = readSheetNames(zip, xml);
  const { sheets, styles, has1904Dates } = readWorkbookParts(zip, workbook);
  const sheet = sheets.find(({ name }) => name === list.sheet)?.part;
  const related = readRelationships(zip, workbook);
  const isRelated = [...related.values()].some(({ part, type }) => part === sheet && type === 'worksheet');
  if (sheet === undefined || !isRelated) throw new Unreadable(`Sheet ‘${list.sheet}’ is not in the workbook.`);
  return {
    zip,
    workbook,
    folder: folder.replace(/^\/+/, ''),
    links,
    types,
    styles,
    calculationChain: [...related.values()].find(({ type }) => type === 'calcChain')?.part,
    names,
    sheet,
    has1904Dates,
    read: (part) => readText(zip, part),
    pieces: (part) => readPieces(zip, part),
    takePart: partTaker(zip, folder.replace(/^\/+/, ''), new Set(related.keys())),
    dialect: (own) =>
      xml.includes(STRICT_MAIN) ? own.replaceAll(MAIN, STRICT_MAIN).replaceAll(LINKS, STRICT_LINKS) : own,
  };
}

/** Names of all sheets, of a workbook that lets itself be changed. */
function readSheetNames(zip: Zip, workbook: string): readonly string[] {
  if (zip.names.some((name) => /^[\\/]?_xmlsignatures[\\/]/i.test(name))) {
    throw new Unreadable('The workbook is signed, and any change would break its signature.');
  }
  const scanner = new XmlScanner(workbook);
  const names: string[] = [];
  while (scanner.next()) {
    if (scanner.name === 'sheet' && !scanner.isClose) names.push(scanner.attribute('name') ?? '');
    if (scanner.name === 'workbookProtection' && isOn(scanner.attribute('lockStructure'))) {
      throw new Unreadable('The structure of the workbook is protected.');
    }
  }
  return names;
}

/** Text of a part that is UTF-8 through and through, so that it can be written back without a change. */
function readText(zip: Zip, part: string): string {
  const bytes = zip.read(part);
  const text = decodeXmlBytes(bytes);
  if (isWide(bytes) || !isWritable(text, true)) throw unusual();
  return text;
}

function* readPieces(zip: Zip, part: string): Generator<string> {
  let isFirst = true;
  for (const text of decodeXmlPieces(bytesOf(zip, part))) {
    if (!isWritable(text, isFirst)) throw unusual();
    isFirst = false;
    yield text;
  }
}

function* bytesOf(zip: Zip, part: string): Generator<Uint8Array> {
  let isFirst = true;
  for (const { bytes } of zip.pieces(part)) {
    if (isFirst && isWide(bytes)) throw unusual();
    isFirst &&= bytes.length === 0;
    yield bytes;
  }
}

/** Two bytes a character. */
function isWide([first]: Uint8Array): boolean {
  return first === 0xff || first === 0xfe;
}

function isWritable(text: string, isFirst: boolean): boolean {
  if (text.includes('\ufffd')) return false;
  const declared = isFirst ? /^\ufeff?<\?xml[^>]*\sencoding\s*=\s*["']([^"']+)/.exec(text)?.[1] : undefined;
  return /^(?:utf-?8|us-ascii)$/i.test(declared ?? 'utf-8');
}

function unusual(): Unreadable {
  return new Unreadable('The workbook is stored in an unusual character set.');
}

function partTaker(zip: Zip, folder: string, ids: Set<string>): OpenBook['takePart'] {
  const taken = new Set<string>();
  return () => {
    const free = countUp((number) => {
      const part = `${folder}worksheets/sheet${number}.xml`;
      return zip.find(part) === undefined && !taken.has(part) ? part : undefined;
    });
    const id = countUp((number) => (ids.has(`rId${number}`) ? undefined : `rId${number}`));
    taken.add(free);
    ids.add(id);
    return { part: free, id };
  };
}

function countUp(pick: (number: number) => string | undefined): string {
  for (let number = 1; ; number++) {
    const picked = pick(number);
    if (picked !== undefined) return picked;
  }
}
