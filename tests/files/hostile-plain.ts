import type { HostileFiles } from './hostile-file.ts';
import { utf8, utf16 } from './make.ts';

const CSV_HEAD = 'Part number,Qty,Material,Thickness (mm),Hole (mm)\n';
const CSV_GOOD = 'NUT-M4-10-CS,4,DC01,1.5,5.6\n';

/** Text. */
export const HOSTILE_TEXTS: HostileFiles = {
  'one endless line of words': {
    make: () => utf8('part '.repeat(19_000_000)),
    says: /line 1, has more than 4,000,000/,
  },
  'one endless line of cells': {
    make: () => utf8('part,'.repeat(19_000_000)),
    says: /line 1, has more than 4,000,000/,
  },
  'one column of five million rows': {
    make: () => utf8(`Part number\n${'N-1\n'.repeat(5_000_000)}`),
    says: /more than 1,048,576 filled rows/,
  },
  'half a million filled rows': {
    make: () => utf8(CSV_HEAD + CSV_GOOD.repeat(500_000)),
    says: /more than 250,000 filled rows/,
  },
  'a line of commas behind a list': {
    make: () => utf8(`${CSV_HEAD}${CSV_GOOD}${','.repeat(3_000_000)}x\n`),
    says: /line 3, has more than 16,384 cells/,
  },
  'a heading and a row that reach to the last column': {
    make: () => utf8(`Part number,Qty${','.repeat(16_300)}Note\n${CSV_GOOD.repeat(5000)}${','.repeat(16_302)}x\n`),
    says: /5,002 rows that reach over 16,302 columns/,
  },
  'two thousand columns with headings': {
    make: () =>
      utf8(`Part number,Qty,Material${Array.from({ length: 2000 }, (_, at) => `,Stock ${at}`).join('')}\n${CSV_GOOD}`),
  },
  'only quotes': { make: () => utf8('"'.repeat(20_000_001)), says: /line 1, has more than 4,000,000/ },
  'only quotes, a line each': { make: () => utf8('"\n'.repeat(900_000)) },
  'quotes and commas': { make: () => utf8(`${CSV_HEAD}${'",'.repeat(8000)}\n${'"a""'.repeat(100_000)}\n`) },
  'quoted cells that hold quoted cells': {
    make: () => utf8(`${CSV_HEAD}${'"a ""b"" c", "d" e,"f\n'.repeat(150_000)}`),
  },
  'only commas': {
    make: () => utf8(','.repeat(50_000_000)),
    says: /line 1, has more than 4,000,000/,
  },
  'only commas in short lines': {
    make: () => utf8(',,,,,,,,,\n'.repeat(5_000_000)),
    says: /holds no filled cells/,
  },
  'only line ends': { make: () => utf8('\n'.repeat(50_000_000)), says: /nothing but blanks/ },
  'only spaces, then a word': { make: () => utf8(`${' '.repeat(50_000_000)}x`), says: /has more than 4,000,000/ },
  'only NULs': { make: () => new Uint8Array(50_000_000), says: /neither text nor a workbook/ },
  'a list with NULs in every cell': { make: () => utf8(CSV_HEAD + CSV_GOOD.replaceAll(',', '\0,\0').repeat(5)) },
  'more than a hundred megabytes': { make: () => new Uint8Array(110_000_000).fill(65), says: /larger than 100 MB/ },
  'a list in UTF-16 of forty megabytes': { make: () => utf16(`\ufeff${CSV_HEAD}${CSV_GOOD.repeat(100_000)}`, 'le') },
  'bytes of no encoding': { make: () => bytesOfChance(20_000_000) },
  'high bytes and line ends': {
    make: () => Uint8Array.from({ length: 20_000_000 }, (_, at) => (at % 40 === 0 ? 10 : 0xa1 + (at % 90))),
  },
};

function bytesOfChance(length: number): Uint8Array {
  let state = 7;
  return Uint8Array.from({ length }, () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state >>> 24;
  });
}
