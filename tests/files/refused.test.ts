import { describe, expect, it } from 'vitest';
import { Unreadable } from '../../src/core/model/raw.ts';
import { readFile } from '../../src/io/read-file.ts';
import { announce, damage, oldContainer, oneSheet, ownerFile, row, utf8, utf16, zip } from './make.ts';

const SHEET = 'xl/worksheets/sheet1.xml';
const good = oneSheet(row(1, 'Part', 'Qty') + row(2, 'Nut', 4));
const SPREADSHEET = 'application/vnd.oasis.opendocument.spreadsheet';
const TEXT_DOCUMENT = 'application/vnd.oasis.opendocument.text';

interface Case {
  readonly what: string;
  readonly bytes: Uint8Array;
  readonly says: RegExp;
  readonly file?: string;
}

const CASES: readonly Case[] = [
  { what: 'an empty file', bytes: new Uint8Array(), says: /is empty; choose/ },
  { what: 'a byte order mark alone', bytes: utf8('\ufeff'), says: /nothing but blanks; choose/ },
  {
    what: 'an owner file of a longer name',
    bytes: ownerFile('M. van der Aalst', 171),
    says: /only marks a workbook as being open/,
  },
  { what: 'a packed archive', bytes: Uint8Array.of(0x1f, 0x8b, 8, 0, 0), says: /packed archive; unpack it/ },
  { what: 'a packed archive of another kind', bytes: utf8('Rar!\u001a\u0007'), says: /packed archive; unpack it/ },
  {
    what: 'random bytes',
    bytes: Uint8Array.from({ length: 3000 }, (_, at) => (at * at * 31 + at * 7) % 251),
    says: /neither text nor a workbook/,
  },
  {
    what: 'a sheet with a filled cell at the far right of every row',
    bytes: oneSheet(Array.from({ length: 1300 }, (_, at) => `<row><c r="XFD${at + 1}"><v>1</v></c></row>`).join('')),
    says: /^Sheet ‘Parts’ of ‘list\.xlsx’ spreads over millions of cells/,
  },
  { what: 'one line feed', bytes: utf8('\n'), says: /nothing but blanks; choose/ },
  { what: 'separators only', bytes: utf8(',,\n,,\n'), says: /holds no filled cells; choose/ },
  {
    what: 'an old binary workbook',
    bytes: oldContainer('Workbook'),
    says: /old binary workbook; open it .* save it as \.xlsx/,
  },
  {
    what: 'a workbook with a password',
    bytes: oldContainer('EncryptedPackage'),
    says: /protected by a password; .* remove the password/,
  },
  { what: 'an old text document', bytes: oldContainer('WordDocument'), says: /text document, not a list/ },
  {
    what: 'an old container of an unknown kind',
    bytes: oldContainer('Root Entry'),
    says: /old binary office file or protected/,
  },
  {
    what: 'a web page',
    bytes: utf8('\ufeff\n<html><table><tr><td>Part</td></tr></table></html>'),
    says: /web page named like a list/,
  },
  { what: 'a bare table', bytes: utf8('<TABLE border=1><tr><td>Part'), says: /web page named like a list/ },
  {
    what: 'a web page in UTF-16',
    bytes: utf16('\ufeff<!DOCTYPE html><p>Part', 'le'),
    says: /web page named like a list/,
  },
  {
    what: 'an XML workbook',
    bytes: utf8('<?xml version="1.0"?><Workbook xmlns="urn:x"/>'),
    says: /is an XML file; open it/,
  },
  {
    what: 'an owner file by its name',
    bytes: utf8('x'),
    says: /only marks a workbook as being open/,
    file: 'lists/~$list.xlsx',
  },
  { what: 'an owner file by its content', bytes: ownerFile('Mara'), says: /only marks a workbook as being open/ },
  { what: 'a PDF', bytes: utf8('%PDF-1.7\n'), says: /is a PDF; export the list/ },
  { what: 'a rich text document', bytes: utf8('{\\rtf1 Part'), says: /text document, not a list/ },
  {
    what: 'a picture',
    bytes: Uint8Array.from({ length: 400 }, (_, at) => (at * 7) % 256),
    says: /neither text nor a workbook/,
  },
  {
    what: 'an OpenDocument spreadsheet',
    bytes: zip({ mimetype: SPREADSHEET, 'content.xml': '<a/>' }),
    says: /OpenDocument spreadsheet; open it/,
  },
  { what: 'an OpenDocument text', bytes: zip({ mimetype: TEXT_DOCUMENT }), says: /text document, not a list/ },
  {
    what: 'a binary workbook in a zip',
    bytes: zip({ 'xl/workbook.bin': 'x' }),
    says: /binary workbook \(\.xlsb\); open it/,
  },
  {
    what: 'a text document in a zip',
    bytes: zip({ 'word/document.xml': '<document/>' }),
    says: /text document, not a list/,
  },
  { what: 'a presentation', bytes: zip({ 'ppt/presentation.xml': '<p/>' }), says: /is a presentation/ },
  { what: 'a workbook of another kind', bytes: zip({ 'Index/Document.iwa': 'x' }), says: /workbook of another kind/ },
  { what: 'a zip of lists', bytes: zip({ 'list.csv': 'Part,Qty' }), says: /zip archive without a workbook; unpack it/ },
  { what: 'a zip with nothing in it', bytes: zip({}), says: /zip archive without a workbook/ },
  {
    what: 'a workbook without its main part',
    bytes: oneSheet('', { change: ({ 'xl/workbook.xml': _, ...parts }) => parts }),
    says: /main part missing/,
  },
  {
    what: 'a workbook without filled cells',
    bytes: oneSheet('<row r="1"><c r="A1"/></row>'),
    says: /holds no filled cells/,
  },
  {
    what: 'a workbook without worksheets',
    bytes: oneSheet('', { change: ({ [SHEET]: _, ...parts }) => parts }),
    says: /holds no worksheet that can be read/,
  },
  {
    what: 'half a download',
    bytes: good.slice(0, good.length / 2),
    says: /damaged or incomplete; save or download it again/,
  },
  { what: 'a zip with damaged contents', bytes: damage(good), says: /damaged or incomplete|cut short/ },
  {
    what: 'a sheet that breaks off',
    bytes: oneSheet(row(1, 'Part') + row(2, 'Nut'), {
      change: (parts) => ({ ...parts, [SHEET]: cutAt(parts[SHEET]!, '</c></row></sheetData>') }),
    }),
    says: /cut short: sheet ‘Parts’ breaks off after row 2/,
  },
  {
    what: 'a table of texts that breaks off',
    bytes: oneSheet(row(1, '#0'), {
      strings: ['Part', 'Nut'],
      change: (parts) => ({ ...parts, 'xl/sharedStrings.xml': cutAt(parts['xl/sharedStrings.xml']!, '</si></sst>') }),
    }),
    says: /cut short: its table of texts breaks off/,
  },
  {
    what: 'a part that unpacks a thousandfold',
    bytes: zip({ 'xl/workbook.xml': '<workbook/>', [SHEET]: new Uint8Array(20_000_000) }),
    says: /would unpack to over 200 times its packed size/,
  },
  {
    what: 'a part that announces a gigabyte',
    bytes: announce(good, 2 ** 30),
    says: /would unpack to more than 250 MB in all/,
  },
  {
    what: 'a part that announces too much for one',
    bytes: announce(good, 200 * 2 ** 20),
    says: /more than 150 MB in one part/,
  },
  {
    what: 'a part that announces less than it holds',
    bytes: announce(good, 60),
    says: /damaged or incomplete/,
  },
  {
    what: 'thousands of parts',
    bytes: zip(Object.fromEntries(Array.from({ length: 2001 }, (_, at) => [`xl/${at}.xml`, '']))),
    says: /more than 2000 parts/,
  },
];

describe('what is no list is refused', () => {
  it.each(CASES)('$what', ({ bytes, says, file = 'list.xlsx' }) => {
    const error = refusal(bytes, file);
    expect(error).toBeInstanceOf(Unreadable);
    expect(error?.message).toMatch(says);
    expect(error?.message).toContain(`‘${file}’`);
    expect(error?.message).toMatch(/^[^.].*\.$/);
  });

  it('reads delimited text whatever its name', () => {
    expect(readFile(utf8('Part,Qty\nNut,4\n'), 'list.xlsx').format).toBe('csv');
    expect(readFile(good, 'list.csv').format).toBe('xlsx');
  });
});

function refusal(bytes: Uint8Array, file: string): Error | undefined {
  try {
    readFile(bytes, file);
  } catch (error) {
    return error as Error;
  }
  return undefined;
}

function cutAt(xml: string, mark: string): string {
  return xml.slice(0, xml.lastIndexOf(mark));
}
