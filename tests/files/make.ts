import { strToU8, type Zippable, zipSync } from 'fflate';

/** Small odd files, built in memory: text in every encoding, workbooks with one trait each, and what only looks like a list. */

export const utf8 = (text: string): Uint8Array => strToU8(text);

export const utf8WithMark = (text: string): Uint8Array => strToU8(`\ufeff${text}`);

export function utf16(text: string, order: 'le' | 'be'): Uint8Array {
  const bytes = new Uint8Array(text.length * 2);
  const view = new DataView(bytes.buffer);
  for (let at = 0; at < text.length; at++) view.setUint16(at * 2, text.charCodeAt(at), order === 'le');
  return bytes;
}

/** Where Windows-1252 differs from Latin-1: most of the bytes from 0x80 to 0x9F. */
const WESTERN: Readonly<Record<string, number>> = {
  '€': 0x80,
  '…': 0x85,
  Œ: 0x8c,
  '‘': 0x91,
  '’': 0x92,
  '“': 0x93,
  '”': 0x94,
  '•': 0x95,
  '–': 0x96,
  '—': 0x97,
  '™': 0x99,
  œ: 0x9c,
};

/** Windows-1252: Latin-1 apart from the characters named above. */
export function western(text: string): Uint8Array {
  return Uint8Array.from(text, (character) => WESTERN[character] ?? character.charCodeAt(0));
}

export interface SheetSpec {
  readonly name: string;
  /** What stands inside `sheetData`. */
  readonly data: string;
  /** What stands after it: merges, validations. */
  readonly after?: string;
  /** What stands before it: columns. */
  readonly before?: string;
  readonly state?: string;
}

export interface WorkbookSpec {
  readonly sheets: readonly SheetSpec[];
  /** Items of the text table, as XML inside `si`; plain text is wrapped in `t`. */
  readonly strings?: readonly string[];
  /** Number format codes; style 1 is the first of them. */
  readonly formats?: readonly string[];
  /** Built-in format numbers, as the styles after those of `formats`. */
  readonly builtIns?: readonly number[];
  readonly workbookExtras?: string;
  /** Prefix of all spreadsheet elements. */
  readonly prefix?: string;
  readonly isStrict?: boolean;
  /** Changes the parts before zipping: rename, drop, add. */
  readonly change?: (parts: Record<string, string>) => Record<string, string | Uint8Array>;
}

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const PACKAGE_LINKS = 'http://schemas.openxmlformats.org/package/2006/relationships';
const TRANSITIONAL = {
  main: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main',
  links: 'http://schemas.openxmlformats.org/officeDocument/2006/relationships',
};
const STRICT = {
  main: 'http://purl.oclc.org/ooxml/spreadsheetml/main',
  links: 'http://purl.oclc.org/ooxml/officeDocument/relationships',
};

/** A workbook as bytes. */
export function workbook(spec: WorkbookSpec): Uint8Array {
  const parts = makeParts(spec);
  return zip(spec.change?.(parts) ?? parts);
}

/** A workbook with one sheet called Parts. */
export function oneSheet(data: string, spec: Omit<WorkbookSpec, 'sheets'> & Partial<SheetSpec> = {}): Uint8Array {
  return workbook({ ...spec, sheets: [{ ...spec, name: spec.name ?? 'Parts', data }] });
}

/** A zip of text parts. */
export function zip(parts: Readonly<Record<string, string | Uint8Array>>): Uint8Array {
  const entries: Zippable = {};
  for (const [name, content] of Object.entries(parts)) {
    entries[name] = typeof content === 'string' ? strToU8(content) : content;
  }
  return zipSync(entries, { level: 6, mtime: '2021-03-04T05:06:08' });
}

/** `<row>` with its number and cells in `A`, `B`, ... as numbers (given as number), shared texts (`#3`) or inline texts. */
export function row(number: number, ...values: readonly (number | string)[]): string {
  const cells = values.map((value, column) => {
    const at = `${String.fromCharCode(65 + column)}${number}`;
    if (typeof value === 'number') return `<c r="${at}"><v>${value}</v></c>`;
    if (value.startsWith('#')) return `<c r="${at}" t="s"><v>${value.slice(1)}</v></c>`;
    return `<c r="${at}" t="inlineStr"><is><t>${value}</t></is></c>`;
  });
  return `<row r="${number}">${cells.join('')}</row>`;
}

/** Rows of text for `sheetData`: every cell written, as shared text by the given table or inline. */
export function textRows(grid: readonly (readonly string[])[], strings?: string[]): string {
  const cellOf = (text: string) => {
    if (strings === undefined) return `<c t="inlineStr"><is><t xml:space="preserve">${escapeXml(text)}</t></is></c>`;
    return `<c t="s"><v>${strings.push(`<t xml:space="preserve">${escapeXml(text)}</t>`) - 1}</v></c>`;
  };
  return grid.map((cells) => `<row>${cells.map(cellOf).join('')}</row>`).join('');
}

/** Text as XML can hold it; other characters are written as spreadsheets do, and so is what looks like that already. */
function escapeXml(text: string): string {
  const byCode = (sign: string) => `_x${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, '0')}_`;
  return text
    .replace(/_(?=x[0-9a-f]{4}_)/gi, '_x005F_')
    .replace(/[\x00-\x08\x0b-\x1f\ufffe\uffff]/g, byCode)
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;');
}

/** The bytes of an old office container that names the given stream in its directory. */
export function oldContainer(stream: string): Uint8Array {
  const bytes = new Uint8Array(1536);
  bytes.set([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1]);
  bytes.set(utf16(stream, 'le'), 1024);
  return bytes;
}

/** An owner file as left beside a workbook that is open. */
export function ownerFile(user: string, size = 165): Uint8Array {
  const bytes = new Uint8Array(size).fill(0x20);
  bytes.set([user.length, ...strToU8(user)]);
  return bytes;
}

/** Spoils the packed contents of every part but leaves the directory whole. */
export function damage(bytes: Uint8Array): Uint8Array {
  const spoilt = bytes.slice();
  for (const at of headers(spoilt, 0x0403_4b50)) {
    const length = spoilt[at + 26]! + spoilt[at + 28]!;
    spoilt.fill(0xff, at + 30 + length, at + 30 + length + 12);
  }
  return spoilt;
}

/** Lets the directory announce another unpacked size for the worksheet, which is the last part. */
export function announce(bytes: Uint8Array, size: number): Uint8Array {
  const lying = bytes.slice();
  const last = headers(lying, 0x0201_4b50).at(-1)!;
  new DataView(lying.buffer).setUint32(last + 24, size, true);
  return lying;
}

function makeParts(spec: WorkbookSpec): Record<string, string> {
  const { main, links } = spec.isStrict ? STRICT : TRANSITIONAL;
  const sheetLinks = spec.sheets.map((_, index) =>
    link(`s${index}`, `${links}/worksheet`, `worksheets/sheet${index + 1}.xml`),
  );
  const otherLinks = ['sharedStrings', 'styles'].map((kind) => link(kind, `${links}/${kind}`, `${kind}.xml`));
  const parts: Record<string, string> = {
    '[Content_Types].xml': contentTypes(),
    '_rels/.rels': linkPart([link('w', `${links}/officeDocument`, 'xl/workbook.xml')]),
    'xl/workbook.xml': prefixed(spec, workbookXml(spec, main, links)),
    'xl/_rels/workbook.xml.rels': linkPart([...sheetLinks, ...otherLinks]),
    'xl/styles.xml': prefixed(spec, stylesXml(spec, main)),
    'xl/sharedStrings.xml': prefixed(spec, stringsXml(spec, main)),
  };
  spec.sheets.forEach((sheet, index) => {
    const body = `${sheet.before ?? ''}<sheetData>${sheet.data}</sheetData>${sheet.after ?? ''}`;
    parts[`xl/worksheets/sheet${index + 1}.xml`] = prefixed(spec, `<worksheet xmlns="${main}">${body}</worksheet>`);
  });
  return parts;
}

function workbookXml(spec: WorkbookSpec, main: string, links: string): string {
  const sheets = spec.sheets.map((sheet, index) => {
    const state = sheet.state === undefined ? '' : ` state="${sheet.state}"`;
    return `<sheet name="${sheet.name}" sheetId="${index + 1}"${state} r:id="s${index}"/>`;
  });
  const extras = spec.workbookExtras ?? '';
  return `<workbook xmlns="${main}" xmlns:r="${links}">${extras}<sheets>${sheets.join('')}</sheets></workbook>`;
}

function stylesXml(spec: WorkbookSpec, main: string): string {
  const codes = spec.formats ?? [];
  const formats = codes.map((code, index) => {
    const escaped = code.replaceAll('&', '&amp;').replaceAll('"', '&quot;').replaceAll('>', '&gt;');
    return `<numFmt numFmtId="${164 + index}" formatCode="${escaped}"/>`;
  });
  const ids = [0, ...codes.map((_, index) => 164 + index), ...(spec.builtIns ?? [])];
  const cellFormats = ids.map((id) => `<xf numFmtId="${id}" applyNumberFormat="1"/>`);
  const named = '<cellStyleXfs><xf numFmtId="14"/></cellStyleXfs>';
  return `<styleSheet xmlns="${main}"><numFmts>${formats.join('')}</numFmts>${named}<cellXfs>${cellFormats.join('')}</cellXfs></styleSheet>`;
}

function stringsXml(spec: WorkbookSpec, main: string): string {
  const items = (spec.strings ?? []).map((item) => `<si>${item.startsWith('<') ? item : `<t>${item}</t>`}</si>`);
  return `<sst xmlns="${main}">${items.join('')}</sst>`;
}

/** Puts the prefix before every element name and before the default namespace. */
function prefixed({ prefix }: WorkbookSpec, xml: string): string {
  if (prefix === undefined) return HEAD + xml;
  return HEAD + xml.replace(/<(\/?)(\w)/g, `<$1${prefix}:$2`).replace(' xmlns="', ` xmlns:${prefix}="`);
}

function link(id: string, type: string, target: string): string {
  return `<Relationship Id="${id}" Type="${type}" Target="${target}"/>`;
}

function linkPart(links: readonly string[]): string {
  return `${HEAD}<Relationships xmlns="${PACKAGE_LINKS}">${links.join('')}</Relationships>`;
}

function contentTypes(): string {
  const type = 'application/vnd.openxmlformats-officedocument.spreadsheetml.sheet.main+xml';
  return `${HEAD}<Types><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${type}"/></Types>`;
}

function headers(bytes: Uint8Array, signature: number): number[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const found: number[] = [];
  for (let at = 0; at + 4 <= bytes.length; at++) if (view.getUint32(at, true) === signature) found.push(at);
  return found;
}
