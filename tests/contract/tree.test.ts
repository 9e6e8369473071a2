import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { buildList } from '../../src/core/intake/build-list.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { textFile } from './list-file.ts';

/** Pieces in the whole product by row, titles left out. */
function pieces(lines: readonly string[]): readonly (number | null)[] {
  const { lines: rows, relations } = buildList(textFile(lines));
  return rows.map(({ row }) => relations.extended.get(row) ?? null);
}

const notices = (lines: readonly string[]) => buildList(textFile(lines)).notices.map(({ text }) => text);

/** A cabinet once, two doors in it, three hinge plates on each door, four and five nuts. Pieces: 1, 2, 6, 24, 10. */
const PIECES = [1, 2, 6, 24, 10];

describe('a tree of rows', () => {
  it.each<[string, readonly string[]]>([
    [
      'dotted positions',
      [
        'Item No.;P/N;Description;Qty',
        '1;CAB-1;Cabinet;1',
        '1.1;DR-1;Door;2',
        '1.1.1;HP-1;Plate;3',
        '1.1.1.1;A-1;Clinch nut M4;4',
        '1.1.2;A-2;Clinch nut M5;5',
      ],
    ],
    [
      'dotted positions in a column without a heading',
      [
        ';P/N;Description;Qty',
        '1.0;CAB-1;Cabinet;1',
        '1.1;DR-1;Door;2',
        '1.1.1;HP-1;Plate;3',
        '1.1.1.1;A-1;Clinch nut M4;4',
        '1.1.2;A-2;Clinch nut M5;5',
      ],
    ],
    [
      'dotted positions in any order of rows',
      [
        'Pos;P/N;Description;Qty',
        '1.1.2;A-2;Clinch nut M5;5',
        '1.1.1.1;A-1;Clinch nut M4;4',
        '1.1.1;HP-1;Plate;3',
        '1.1;DR-1;Door;2',
        '1;CAB-1;Cabinet;1',
      ],
    ],
    [
      'level numbers',
      [
        'BOM Level;P/N;Description;Qty',
        '0;CAB-1;Cabinet;1',
        '1;DR-1;Door;2',
        '2;HP-1;Plate;3',
        '3;A-1;Clinch nut M4;4',
        '2;A-2;Clinch nut M5;5',
      ],
    ],
    [
      'level numbers with dots before them',
      [
        'Level;P/N;Description;Qty',
        '1;CAB-1;Cabinet;1',
        '.2;DR-1;Door;2',
        '..3;HP-1;Plate;3',
        '...4;A-1;Clinch nut M4;4',
        '..3;A-2;Clinch nut M5;5',
      ],
    ],
    [
      'level numbers without a heading',
      [
        'P/N;;Description;Qty',
        'CAB-1;0;Cabinet;1',
        'DR-1;1;Door;2',
        'HP-1;2;Plate;3',
        'A-1;3;Clinch nut M4;4',
        'A-2;2;Clinch nut M5;5',
      ],
    ],
    [
      'parents by part number',
      [
        'P/N;Description;Qty;Parent',
        'CAB-1;Cabinet;1;',
        'DR-1;Door;2;cab-1',
        'HP-1;Plate;3;DR-1',
        'A-1;Clinch nut M4;4;HP-1',
        'A-2;Clinch nut M5;5;DR-1',
      ],
    ],
    [
      'parents by position',
      [
        'Item No.;P/N;Description;Qty;Parent',
        '10;CAB-1;Cabinet;1;-',
        '20;DR-1;Door;2;10',
        '30;HP-1;Plate;3;20',
        '40;A-1;Clinch nut M4;4;30',
        '50;A-2;Clinch nut M5;5;20',
      ],
    ],
    [
      'paths that end in the row itself',
      [
        'P/N;Description;Qty;Browser Path',
        'CAB-1;Cabinet;1;Cab:1',
        'DR-1;Door;2;Cab:1+Door:1',
        'HP-1;Plate;3;Cab:1+Door:1+Plate:1',
        'A-1;Clinch nut M4;4;Cab:1+Door:1+Plate:1+Nut:1',
        'A-2;Clinch nut M5;5;Cab:1+Door:1+Nut:2',
      ],
    ],
    [
      'paths to what the row stands in, over numbered columns',
      [
        'Path 1;Path 2;Path 3;P/N;Description;Qty',
        ';;;CAB-1;Cabinet;1',
        'CAB-1;;;DR-1;Door;2',
        'CAB-1;DR-1;;HP-1;Plate;3',
        'CAB-1;DR-1;HP-1;A-1;Clinch nut M4;4',
        'CAB-1;DR-1;;A-2;Clinch nut M5;5',
      ],
    ],
    [
      'names over columns of levels',
      [
        'Level 1;Level 2;Level 3;Level 4;P/N;Description;Qty',
        'x;;;;CAB-1;Cabinet;1',
        ';x;;;DR-1;Door;2',
        ';;x;;HP-1;Plate;3',
        ';;;x;A-1;Clinch nut M4;4',
        ';;x;;A-2;Clinch nut M5;5',
      ],
    ],
    [
      'spaces before the part number',
      [
        'P/N;Description;Qty',
        'CAB-1;Cabinet;1',
        '  DR-1;Door;2',
        '    HP-1;Plate;3',
        '      A-1;Clinch nut M4;4',
        '    A-2;Clinch nut M5;5',
      ],
    ],
    [
      'empty columns before the part number',
      [
        'P/N;;;;Description;Qty',
        'CAB-1;;;;Cabinet;1',
        ';DR-1;;;Door;2',
        ';;HP-1;;Plate;3',
        ';;;A-1;Clinch nut M4;4',
        ';;A-2;;Clinch nut M5;5',
      ],
    ],
  ])('is read from %s', (_, lines) => {
    const sorted = (counts: readonly (number | null)[]) => [...counts].sort();
    expect(sorted(pieces(lines))).toEqual(sorted(PIECES));
    expect(notices(lines)).toEqual([]);
  });

  it('reads part numbers that are spread over columns', () => {
    const list = buildList(textFile(['P/N;;Description;Qty', 'DR-1;;Door;2', ';A-1;Clinch nut M4;4']));
    expect(list.lines.map(({ partNumber }) => partNumber)).toEqual(['DR-1', 'A-1']);
  });

  it('sums quantity columns of single assemblies, each with the number of its assembly', () =>
    expect(
      pieces([
        'P/N;Description;Qty;DR-1;FR-1',
        'DR-1;Door;2;;',
        'FR-1;Frame;1;;',
        'A-1;Clinch nut M4;10;4;6',
        'A-2;Clinch nut M5;5;5;',
      ]),
    ).toEqual([2, 1, 14, 10]));

  it('sums columns of assemblies that are not on the list where a total adds them up', () => {
    const head = 'P/N;Description;Qty Door;Qty Frame';
    expect(pieces([`${head};Total qty`, 'A-1;Clinch nut M4;4;6;10', 'A-2;Clinch nut M5;;3;3'])).toEqual([10, 3]);
    expect(pieces(['P/N;Description;Qty Rev A;Qty Rev B', 'A-1;Clinch nut M4;4;6'])).toEqual([4]);
  });

  it('multiplies with a column of multipliers', () =>
    expect(
      pieces([
        'P/N;Description;# req in assy;Assembly multiplier',
        'A-1;Clinch nut;4;3',
        'A-2;Clinch nut;5;',
        'A-3;Clinch nut;6;1',
      ]),
    ).toEqual([12, null, 6]));

  it('counts an assembly that is used in two places in both', () => {
    const head = 'P/N;Description;Qty;Parent';
    const rows = ['CAB-1;Cabinet;1;', 'DR-1;Door;2;CAB-1', 'HP-1;Plate;3;CAB-1', 'HP-1;Plate;1;DR-1'];
    expect(pieces([head, ...rows, 'A-1;Clinch nut M4;4;HP-1'])).toEqual([1, 2, 3, 2, 20]);
  });

  it('takes the one assembly that all belong to and that is not listed for the product', () => {
    const rows = ['TOP;DR-1;Door;2', 'TOP;FR-1;Frame;1', 'DR-1;A-1;Clinch nut M4;4', 'FR-1;A-1;Clinch nut M4;6'];
    const lines = ['Assembly;P/N;Description;Qty', ...rows];
    expect([pieces(lines), notices(lines)]).toEqual([[2, 1, 8, 6], []]);
  });

  it('keeps a title among numbered rows as what stands above them, once', () =>
    expect(
      pieces(['Item;P/N;Description;Qty', '1;;REAR DOOR;', '1.1;A-1;Clinch nut M4;4', '1.2;A-2;Clinch nut M5;2']),
    ).toEqual([4, 2]));
});

describe('no tree', () => {
  it.each<[string, readonly string[], readonly (number | null)[]]>([
    ['positions that count up', ['Item;P/N;Qty', '1;A-1;4', '2;A-2;2', '3;A-3;1'], [4, 2, 1]],
    ['numbers without a heading that only count up', ['P/N;;Qty', 'A-1;1;4', 'A-2;2;2', 'A-3;3;1'], [4, 2, 1]],
    ['a stray space before a part number', ['P/N;Qty', 'DR-1;3', ' A-1;4', ' A-2;2'], [3, 4, 2]],
    [
      'blanks that would put nuts under a nut',
      ['P/N;Description;Qty', 'A-1;Clinch nut;3', '  A-2;Clinch nut;4', '  A-3;Clinch nut;2'],
      [3, 4, 2],
    ],
    ['a panel column', ['P/N;Description;Panel;Qty', 'PNL-1;Panel;;2', 'A-1;Clinch nut;PNL-1;4'], [2, 4]],
    [
      'names of groups in a parent column',
      ['P/N;Description;Subsystem;Qty', 'A-1;Clinch nut;Frame;4', 'A-2;Clinch nut;Door;2'],
      [4, 2],
    ],
    ['positions of which none stands above another', ['Item;P/N;Qty', '1.1;A-1;4', '1.2;A-2;2'], [4, 2]],
  ])('is seen in %s', (_, lines, counts) => {
    expect(pieces(lines)).toEqual(counts);
    expect(notices(lines)).toEqual([]);
  });
});

describe('a row without a place', () => {
  it('that stands above itself counts as top level and is named', () => {
    const lines = ['P/N;Description;Qty;Parent', 'X-1;Door;2;X-2', 'X-2;Plate;3;X-1', 'A-1;Clinch nut;4;X-2'];
    expect(pieces(lines)).toEqual([2, 3, 12]);
    expect(notices(lines)).toEqual([expect.stringMatching(/^Rows 2 and 3: .*circle/)]);
  });

  it('whose parent is not there counts as top level and is named', () => {
    const lines = ['P/N;Description;Qty;Parent', 'DR-1;Door;2;', 'A-1;Clinch nut;4;DR-1', 'A-2;Clinch nut;5;DR-9'];
    expect(pieces(lines)).toEqual([2, 8, 5]);
    expect(notices(lines)).toEqual([expect.stringMatching(/^Row 4: counted as top level/)]);
  });

  it('whose upper number is not there counts as top level and is named', () => {
    const lines = ['Item;P/N;Description;Qty', '1;DR-1;Door;2', '1.1;A-1;Clinch nut;4', '1.2.1;A-2;Clinch nut;5'];
    expect(pieces(lines)).toEqual([2, 8, 5]);
    expect(notices(lines)).toEqual([expect.stringMatching(/^Row 4: .*upper level/)]);
  });

  it('whose level jumps counts as top level and is named, with those beside it', () => {
    const lines = [
      'Level;P/N;Description;Qty',
      '1;CAB-1;Cabinet;3',
      '2;DR-1;Door;2',
      '1;CAB-2;Cabinet;3',
      '3;A-1;Clinch nut;4',
      '3;A-2;Clinch nut;5',
      '2;DR-2;Door;2',
      '3;A-3;Clinch nut;6',
    ];
    expect(pieces(lines)).toEqual([3, 6, 3, 4, 5, 6, 36]);
    expect(notices(lines)).toEqual([expect.stringMatching(/^Rows 5 and 6: .*skip a level/)]);
  });
});

describe('quantities as really written', () => {
  const under = (quantity: string) =>
    pieces(['Level;P/N;Description;Qty', `1;DR-1;Door;${quantity}`, '2;A-1;Clinch nut;4 pcs', '2;A-2;Clinch nut;2'])[1];

  it.each([
    ['2', 8],
    ['2.0', 8],
    ['3 ea', 12],
    ['1,000', 4000],
    ['', null],
    ['0', null],
    ['2.5', null],
    ['8-10', null],
    ['as needed', null],
  ])('%s doors', (quantity, count) => expect(under(quantity)).toBe(count));

  it('that cannot be used are told once, not on every row', () => {
    const lines = ['Level;P/N;Description;Qty', '1;DR-1;Door;TBD', '2;A-1;Clinch nut;4', '2;A-2;Clinch nut;x'];
    expect(notices(lines)).toEqual([expect.stringMatching(/^Row 3: no quantity for the whole product/)]);
  });

  it('of the row itself leave it without pieces, and are no matter for the notices', () => {
    const lines = ['Level;P/N;Description;Qty', '1;DR-1;Door;2', '2;A-1;Clinch nut;as needed', '2;A-2;Clinch nut;3'];
    expect([pieces(lines), notices(lines)]).toEqual([[2, null, 6], []]);
  });
});

describe('any list', () => {
  const COLUMNS = ['Level', 'Item', 'P/N', 'Description', 'Qty', 'Parent', 'Matl'] as const;
  const row = fc.record({
    level: fc.integer({ min: 1, max: 3 }),
    qty: fc.integer({ min: 1, max: 9 }),
    up: fc.nat({ max: 9 }),
  });

  it('has the same tree in any order of columns', () =>
    fc.assert(
      fc.property(
        fc.array(row, { minLength: 2, maxLength: 10 }),
        fc.shuffledSubarray([...COLUMNS], { minLength: 7 }),
        (rows, order) => {
          const cells = rows.map(({ level, qty, up }, at) => ({
            Level: String(level),
            Item: `1.${level}.${at}`,
            'P/N': `DR-${at}`,
            Description: 'Door',
            Qty: String(qty),
            Parent: `DR-${up}`,
            Matl: 'DC01',
          }));
          const table = (columns: readonly (typeof COLUMNS)[number][]) => [
            columns.join(';'),
            ...cells.map((texts) => columns.map((column) => texts[column]).join(';')),
          ];
          expect(pieces(table(order))).toEqual(pieces(table(COLUMNS)));
        },
      ),
    ));

  it('that is flat has as many pieces as it lists', () =>
    fc.assert(
      fc.property(
        fc.array(fc.constantFrom('4', '12 pcs', '0', '2.5', '', 'as needed', '1,000'), { minLength: 1, maxLength: 12 }),
        (quantities) => {
          const lines = [
            'P/N;Description;Qty',
            ...quantities.map((quantity, at) => `A-${at};Clinch nut M4;${quantity}`),
          ];
          const audited = auditFile(textFile(lines), createBasis([], DEFAULT_SHOP));
          expect(audited.lines.map(({ extendedQuantity }) => extendedQuantity)).toEqual(
            audited.lines.map(({ quantity }) => quantity),
          );
        },
      ),
    ));
});
