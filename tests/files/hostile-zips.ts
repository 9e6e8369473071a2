import { strToU8, unzipSync, type Zippable, zipSync } from 'fflate';
import { HEAD, type HostileFiles, LIST, repeat, SHEET, withPart } from './hostile-file.ts';
import { announce, oneSheet, row, utf8, workbook, zip } from './make.ts';

/** Zips and their parts. */
export const HOSTILE_ZIPS: HostileFiles = {
  'a zip bomb that is honest': {
    make: bomb,
    says: /over 200 times its packed size/,
  },
  'a zip bomb that announces a kilobyte': {
    make: () => announce(bomb(), 1000),
    says: /damaged or incomplete/,
  },
  'a zip bomb of many parts': {
    make: () => {
      const part: Zippable[string] = [new Uint8Array(9_000_000), { level: 1 }];
      return zipSync(Object.fromEntries(Array.from({ length: 30 }, (_, at) => [`xl/media/${at}.xml`, part])));
    },
    says: /more than 250 MB in all/,
  },
  'zips in a zip': {
    make: () => {
      let inner: Uint8Array = utf8(CSV_LIST);
      for (let depth = 0; depth < 50; depth++) inner = zip({ 'list.xlsx': inner });
      return inner;
    },
    says: /zip archive without a workbook/,
  },
  'a sheet that is itself a zip': { make: () => withPart(SHEET, zip({ a: 'b' })), says: /cut short/ },
  'the sheet twice, with other contents': {
    make: () => {
      const other = oneSheet(HEAD + row(2, 'NUT-M4-10-CS', 4, 'DC01', 9, 5.6));
      return joinZips(oneSheet(LIST), other);
    },
    says: /holds its part ‘.*’ twice/,
  },
  'part names that climb out of the package': {
    make: () =>
      oneSheet(LIST, {
        change: (parts) => ({ ...parts, '../../etc/passwd': 'x', '/../xl/workbook.xml': 'y', 'C:\\x': 'z' }),
      }),
  },
  'relationships that lead outside, to themselves and to nothing': {
    make: () =>
      withPart(
        'xl/_rels/workbook.xml.rels',
        '<Relationships><Relationship Id="s0" Type="x/worksheet" Target="../../../../etc/passwd"/><Relationship Id="a" Type="x/officeDocument" Target="workbook.xml"/><Relationship Id="b" Type="x/sharedStrings" Target="_rels/workbook.xml.rels"/></Relationships>',
      ),
  },
  'no relationships of the package, and a workbook that is a relationship': {
    make: () =>
      withPart(
        '_rels/.rels',
        '<Relationships><Relationship Id="w" Type="x/officeDocument" Target="_rels/.rels"/></Relationships>',
      ),
  },
  'a sheet that two names share, a hundred times': {
    make: () => {
      const sheets = Array.from({ length: 100 }, (_, at) => ({ name: `S${at}`, data: at === 0 ? LIST : '' }));
      return workbook({
        sheets,
        change: (parts) => ({
          ...parts,
          'xl/_rels/workbook.xml.rels':
            parts['xl/_rels/workbook.xml.rels']?.replaceAll(/sheet\d+\.xml/g, 'sheet1.xml') ?? '',
        }),
      });
    },
  },
  'a hundred names for one sheet of many megabytes': {
    make: () => manyNames(100, oneSheet(`${LIST}${repeat(400_000, (at) => `<row r="${at + 3}" s="${at % 7}"/>`)}`)),
  },
  'a million names of sheets': {
    make: () => manyNames(1_000_000, oneSheet(LIST)),
    says: /more than 1,000 sheets|over 200 times its packed size/,
  },
  'a bit that fell over in a digit': {
    make: () => flipBit(zipSync({ ...plainParts() }, { level: 0 }), '5.6</v>'),
    says: /damaged or incomplete/,
  },
};

const CSV_LIST = 'Part number,Qty\nNUT-M4-10-CS,4\n';

let packed: Uint8Array | undefined;

/** A part of 140 MB of nothing, packed once. */
function bomb(): Uint8Array {
  packed ??= withPart(SHEET, new Uint8Array(140_000_000));
  return packed;
}

/** The workbook with many names for its only sheet. */
function manyNames(count: number, bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const xml = new TextDecoder().decode(parts['xl/workbook.xml']);
  const [sheet = ''] = /<sheet .*?\/>/.exec(xml) ?? [];
  const sheets = repeat(count, (at) => sheet.replace('Parts', `S${at * 7919}`));
  return zipSync({ ...parts, 'xl/workbook.xml': strToU8(xml.replace(sheet, sheets)) });
}

function plainParts(): Record<string, Uint8Array> {
  const parts: Record<string, Uint8Array> = {};
  oneSheet(LIST, {
    change: (made) => {
      for (const [name, xml] of Object.entries(made)) parts[name] = strToU8(xml);
      return made;
    },
  });
  return parts;
}

function flipBit(bytes: Uint8Array, mark: string): Uint8Array {
  const at = Buffer.from(bytes).indexOf(mark);
  const flipped = bytes.slice();
  flipped[at] = flipped[at]! ^ 1;
  return flipped;
}

/** One zip whose directory lists the parts of both: names come twice. */
function joinZips(first: Uint8Array, second: Uint8Array): Uint8Array {
  const view = (bytes: Uint8Array) => new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const split = (bytes: Uint8Array) => {
    const directory = view(bytes).getUint32(bytes.length - 6, true);
    return { body: bytes.slice(0, directory), lines: bytes.slice(directory, bytes.length - 22), end: bytes.slice(-22) };
  };
  const [a, b] = [split(first), split(second)];
  const lines = b.lines.slice();
  for (let at = 0; at < lines.length; ) {
    const line = view(lines);
    line.setUint32(at + 42, line.getUint32(at + 42, true) + a.body.length, true);
    at += 46 + line.getUint16(at + 28, true) + line.getUint16(at + 30, true) + line.getUint16(at + 32, true);
  }
  const end = a.end.slice();
  const count = view(a.end).getUint16(10, true) + view(b.end).getUint16(10, true);
  view(end).setUint16(8, count, true);
  view(end).setUint16(10, count, true);
  view(end).setUint32(12, a.lines.length + lines.length, true);
  view(end).setUint32(16, a.body.length + b.body.length, true);
  return Uint8Array.from([...a.body, ...b.body, ...a.lines, ...lines, ...end]);
}
