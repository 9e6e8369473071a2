import { describe, expect, it } from 'vitest';
import { parseProject } from '../../src/app/parse-project.ts';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { parseShopSettings } from '../../src/core/intake/shop-settings.ts';
import { describeOversize } from '../../src/core/model/oversize.ts';
import { type RawFile, Unreadable } from '../../src/core/model/raw.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';
import { oneSheet, row, utf8 } from './make.ts';

const CATALOGUE =
  'partNumber,kind,thread,material,hardnessMin,sheetMinMm,holeMm,edgeMm,note\nN-1,clinch nut,M4,carbon-steel-hardened,HRC 32,1,5.4,6.9,\n';
const HEADINGS = 'Part number,Qty,Panel,Material,Thickness (mm),Remarks,Log';
const basis = createBasis([importCatalogue(readFile(utf8(CATALOGUE), 'own.csv'))], DEFAULT_SHOP);
const deep = (depth: number) => '['.repeat(depth) + ']'.repeat(depth);

function judge(...rows: readonly string[]) {
  return auditFile(readFile(utf8(`${[HEADINGS, ...rows].join('\n')}\n`), 'list.csv'), basis);
}

/** Tables of many rows need no text to be made from. */
function listOf(count: number, headings: readonly string[] = HEADINGS.split(',')): RawFile {
  const cells = ['N-1', '4', 'P1', 'DC01', '1.5'];
  const rows = Array.from({ length: count }, (_, at) => ({ number: at + 2, cells }));
  return {
    file: 'list.csv',
    format: 'csv',
    tables: [{ name: '', rows: [{ number: 1, cells: headings }, ...rows] }],
    notices: [],
  };
}

describe('a text file with more than a list can need is refused', () => {
  it.each([
    [
      'in one line',
      `a,b\n${'x'.repeat(4_000_001)}\n`,
      '‘list.csv’, line 2, has more than 4,000,000 characters, which no list needs; ',
    ],
    [
      'in cells of one line',
      `a,b\r\n\r\n1${',2'.repeat(16_384)}\r\n`,
      '‘list.csv’, line 3, has more than 16,384 cells, which no list needs; ',
    ],
    [
      'in cells of a line with quotes that need a closer look',
      `a,b\n "1"${',2'.repeat(16_384)}\n`,
      '‘list.csv’, line 2, has more than 16,384 cells',
    ],
    ['in rows', 'a\n'.repeat(1_048_577), '‘list.csv’ has more than 1,048,576 filled rows, which no list needs; '],
    [
      'in rows with quotes that need a closer look',
      `"a"\n "b"\n${'a\n'.repeat(1_048_577)}`,
      '‘list.csv’ has more than 1,048,576 filled rows',
    ],
    [
      'in cells',
      `${'a,'.repeat(16_000)}\n`.repeat(1251),
      '‘list.csv’ has more than 20,000,000 cells, which no list needs; ',
    ],
  ])('%s', (_, text, says) => {
    expect(() => readFile(utf8(text), 'list.csv')).toThrow(Unreadable);
    expect(() => readFile(utf8(text), 'list.csv')).toThrow(says);
  });

  it('and one that is just within reads to its end', () => {
    const text = `a,b\n1${',2'.repeat(16_383)}\n${'x'.repeat(3_999_999)}\n${'a\n'.repeat(9)}${',,\n'.repeat(1_100_000)}z\n`;
    const rows = readFile(utf8(text), 'list.csv').tables[0]?.rows ?? [];
    expect(rows).toHaveLength(13);
    expect(rows.at(-1)).toEqual({ number: 1_100_013, cells: ['z'] });
  });
});

describe('reading ends when it is told to', () => {
  const options = { mostMs: -1 };
  const text = utf8('Part,Qty\nN-1,4\n');
  const book = oneSheet(row(1, 'Part', 'Qty') + row(2, 'N-1', 4));

  it.each([
    ['text', text],
    ['a workbook', book],
  ])('because %s takes too long', (_, bytes) => {
    expect(() => readFile(bytes, 'list', options)).toThrow(
      /^Reading ‘list’ took more than .* s and was given up; save /,
    );
  });

  it('within the rows of a long text', () => {
    let asked = 0;
    const isCancelled = () => ++asked > 3;
    expect(() => readFile(utf8('a,b\n'.repeat(100_000)), 'list', { isCancelled })).toThrow(
      'Reading ‘list’ was stopped',
    );
    expect(asked).toBe(4);
  });
});

describe('a list that is larger than any', () => {
  it('is refused by its rows, and one of 200,000 is not', () => {
    expect(() => auditFile(listOf(250_000), basis)).toThrow(
      'list.csv has more than 250,000 filled rows, which no list needs: delete ',
    );
    expect(auditFile(listOf(200_000), basis).totals.holds).toBe(200_000);
  });

  it('is refused by its headings', () => {
    const headings = [...HEADINGS.split(','), ...Array.from({ length: 1000 }, (_, at) => `Stock ${at}`)];
    expect(() => auditFile(listOf(1, headings), basis, { headerRow: 1 })).toThrow(
      'list.csv has more than 1,000 column headings in row 1, which no list needs: delete the columns',
    );
  });

  it('but not for a stray heading or a stray cell at the far right', () => {
    const far = (cells: readonly string[]) => Object.assign(Array<string>(16_384).fill(''), cells, { 16383: 'x' });
    const { tables, ...file } = listOf(4000);
    const rows = (at: number) =>
      tables[0]!.rows.map((row, index) => (index === at ? { ...row, cells: far(row.cells) } : row));
    for (const at of [0, 9]) {
      const list = auditFile({ ...file, format: 'xlsx', tables: [{ name: 'A', rows: rows(at) }] }, basis);
      expect(list.totals.holds).toBe(4000);
    }
  });

  it('is refused as a catalogue too', () => {
    expect(() => importCatalogue(listOf(250_000))).toThrow('list.csv has more than 250,000 filled rows');
  });
});

describe('a cell that is too long to be read', () => {
  const long = 'after plating '.repeat(200);

  it.each([
    ['material', `N-1,4,P1,DC01 ${long},1.5,,`],
    ['thickness', `N-1,4,P1,DC01,1.5 ${long},,`],
    ['remarks', `N-1,4,P1,DC01,1.5,${long},`],
  ])('in the column of %s leaves its row unknown and says so', (_, line) => {
    const { lines, notices } = judge('N-1,4,P2,DC01,1.5,,', line);
    expect(lines.map(({ verdict }) => verdict)).toEqual(['holds', 'unknown']);
    expect(notices.map(({ text }) => text).join()).toMatch(
      /^Row 3 has more than 2,000 characters in one cell \(column [DEF]\) and was not judged: shorten what stands there\.$/,
    );
  });

  it('in a column that nobody reads makes no difference', () => {
    const { lines, notices } = judge(`N-1,4,P1,DC01,1.5,,${long}`);
    expect(lines[0]?.verdict).toBe('holds');
    expect(lines[0]?.line.cells.at(-1)).toBe(long);
    expect(notices).toEqual([]);
  });

  it('in a catalogue leaves its row out and says so', () => {
    const { fasteners, problems } = importCatalogue(
      readFile(utf8(`${CATALOGUE}N-2,clinch nut,M4,,,1,5.4,6.9,${long}\n`), 'own.csv'),
    );
    expect(fasteners.map(({ partNumber }) => partNumber)).toEqual(['N-1']);
    expect(problems).toEqual([
      { row: 3, column: 'note', text: 'The cell has more than 2,000 characters; the row was left out.' },
    ]);
  });
});

describe('settings and projects', () => {
  it('that are too large are refused', () => {
    expect(() => parseShopSettings(`{"pressKn": 20${' '.repeat(100_000)}}`, 'shop.json')).toThrow(
      '“shop.json” does not hold shop settings: it has more than 100,000 characters',
    );
  });

  it('that are nested too deeply are refused', () => {
    expect(() => parseShopSettings(`{"pressKn": ${deep(40_000)}}`, 'shop.json')).toThrow('does not hold shop settings');
    expect(() => parseShopSettings(`{"pressKn": ${deep(90)}}`, 'shop.json')).toThrow(
      '“pressKn” in “shop.json” is a number from',
    );
    expect(() => parseProject(`{"app": "clinchsheet", "version": 1, "x": ${deep(90_000)}}`, 'p.json')).toThrow(
      '“p.json” is damaged: it holds more than 100 lists or objects within each other. Open an earlier copy',
    );
  });

  it('may hold brackets in their texts', () => {
    const text = JSON.stringify({ pressKn: `\\"${'['.repeat(200)}` });
    expect(() => parseShopSettings(text, 'shop.json')).toThrow(/“pressKn” in “shop\.json” is .*, not ".{78}…\.$/);
  });
});

describe('a file of any kind', () => {
  it('is refused by its size before it is read', () => {
    expect(describeOversize(250 * 2 ** 20, 'list.xlsx')).toBeUndefined();
    expect(describeOversize(250 * 2 ** 20 + 1, 'list.xlsx')).toBe(
      '‘list.xlsx’ is larger than 250 MB, which no list needs; choose the file with your list.',
    );
  });
});
