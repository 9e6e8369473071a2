import type { ReadOptions } from '../../src/io/options.ts';
import { utf8, utf8WithMark, utf16, western } from './make.ts';

/** One odd text file and what must come of it. */
export interface CsvCase {
  readonly trait: string;
  readonly bytes: Uint8Array;
  readonly cells: readonly (readonly string[])[];
  /** Row numbers, where they are not simply 1, 2, 3. */
  readonly numbers?: readonly number[];
  readonly delimiter?: string;
  readonly encoding?: string;
  /** What each notice must say; none otherwise. */
  readonly notices?: readonly RegExp[];
  readonly options?: ReadOptions;
}

const notes = Array.from({ length: 12 }, (_, at) => `Note ${at}, see the drawing, sheet ${at % 3}`);
const longNote = 'Deburr no hole,\nmask,\nthen paint,\nthen pack,\nand ship,\ndone';

/** Traits of delimited text as programs and hands write it. */
export const CSV_CASES: readonly CsvCase[] = [
  {
    trait: 'two columns with decimal commas between semicolons',
    bytes: utf8('Teil;Dicke\nBlech;1,5\nDeckel;0,8'),
    cells: [
      ['Teil', 'Dicke'],
      ['Blech', '1,5'],
      ['Deckel', '0,8'],
    ],
    delimiter: ';',
  },
  {
    trait: 'a dozen notes full of commas above a list cut by semicolons',
    bytes: utf8(`${notes.join('\n')}\nPos;Menge;Dicke\n1;4;1,5\n2;6;0,8\n`),
    cells: [...notes.map((note) => [note]), ['Pos', 'Menge', 'Dicke'], ['1', '4', '1,5'], ['2', '6', '0,8']],
    delimiter: ';',
  },
  {
    trait: 'tabs with decimal commas',
    bytes: utf8('X\tY\n120,5\t50,3'),
    cells: [
      ['X', 'Y'],
      ['120,5', '50,3'],
    ],
    delimiter: '\t',
  },
  {
    trait: 'commas inside headings cut by semicolons',
    bytes: utf8('Länge, mm;Breite, mm\n12,5;30,1\n8,2;11,0'),
    cells: [
      ['Länge, mm', 'Breite, mm'],
      ['12,5', '30,1'],
      ['8,2', '11,0'],
    ],
    delimiter: ';',
  },
  {
    trait: 'a quoted note of six lines full of commas',
    bytes: utf8(`Pos;Note;Qty\n1;"${longNote}";4\n2;none;6`),
    cells: [
      ['Pos', 'Note', 'Qty'],
      ['1', longNote, '4'],
      ['2', 'none', '6'],
    ],
    delimiter: ';',
  },
  {
    trait: 'a separator line, which is no row',
    bytes: utf8('sep=;\r\nPos;Menge\r\n1;4'),
    cells: [
      ['Pos', 'Menge'],
      ['1', '4'],
    ],
    delimiter: ';',
  },
  {
    trait: 'a separator line after a byte order mark, naming a tab',
    bytes: utf8WithMark('sep=\t\nPos, old\tQty\n1\t4'),
    cells: [
      ['Pos, old', 'Qty'],
      ['1', '4'],
    ],
    delimiter: '\t',
  },
  {
    trait: 'UTF-8 with byte order mark',
    bytes: utf8WithMark('Teil,Größe\nMutter,M4'),
    cells: [
      ['Teil', 'Größe'],
      ['Mutter', 'M4'],
    ],
  },
  {
    trait: 'UTF-16 little endian with byte order mark',
    bytes: utf16('\ufeffPart\tØ\nNut\t5.6', 'le'),
    cells: [
      ['Part', 'Ø'],
      ['Nut', '5.6'],
    ],
    delimiter: '\t',
    encoding: 'utf-16le',
  },
  {
    trait: 'UTF-16 big endian with byte order mark',
    bytes: utf16('\ufeffPart;Qty\nNut;4', 'be'),
    cells: [
      ['Part', 'Qty'],
      ['Nut', '4'],
    ],
    delimiter: ';',
    encoding: 'utf-16be',
  },
  {
    trait: 'UTF-16 without byte order mark',
    bytes: utf16('Part,Qty\nNut,4', 'le'),
    cells: [
      ['Part', 'Qty'],
      ['Nut', '4'],
    ],
    encoding: 'utf-16le',
  },
  {
    trait: 'a mark for UTF-8 and a byte that does not fit',
    bytes: Uint8Array.from([0xef, 0xbb, 0xbf, ...utf8('Part,Note\nNut,a'), 0xff, ...utf8('b')]),
    cells: [
      ['Part', 'Note'],
      ['Nut', 'a\ufffdb'],
    ],
    notices: [/do not fit UTF-8/],
  },
  {
    trait: 'an inch mark at the start of a cell',
    bytes: utf8('Part,Size,Qty\nPlate,"1/4" thick,2\nLid,3/8" thick,1'),
    cells: [
      ['Part', 'Size', 'Qty'],
      ['Plate', '"1/4" thick', '2'],
      ['Lid', '3/8" thick', '1'],
    ],
    notices: [/^Row 2 has a quote that never closes/],
  },
  {
    trait: 'a quote that is never closed, at the top of many rows',
    bytes: utf8('Part,Size,Qty\nPlate,"6 in,2\nLid,small,1\nNut,M4,8\n'),
    cells: [
      ['Part', 'Size', 'Qty'],
      ['Plate', '"6 in', '2'],
      ['Lid', 'small', '1'],
      ['Nut', 'M4', '8'],
    ],
    notices: [/^Row 2 has a quote that never closes/],
  },
  {
    trait: 'an unclosed quote that a later inch mark seems to close',
    bytes: utf8('Part,Size,Qty,Note\nPlate,"6 in,2,\nLid,small,1,6"\nNut,M4,8,'),
    cells: [
      ['Part', 'Size', 'Qty', 'Note'],
      ['Plate', '"6 in', '2', ''],
      ['Lid', 'small', '1', '6"'],
      ['Nut', 'M4', '8', ''],
    ],
    notices: [/^Row 2 has a quote that never closes/],
  },
  {
    trait: 'a quoted cell over two lines that could be two rows',
    bytes: utf8('Part,Size,Qty\nPlate,"6 in,2\nLid,8",1\nNut,M4,8'),
    cells: [
      ['Part', 'Size', 'Qty'],
      ['Plate', '6 in,2\nLid,8', '1'],
      ['Nut', 'M4', '8'],
    ],
    notices: [/^Row 2 has a quoted cell over several lines/],
  },
  {
    trait: 'spaces around quoted cells',
    bytes: utf8('Part, Note ,Qty\nNut, "black, matt" , 4'),
    cells: [
      ['Part', ' Note ', 'Qty'],
      ['Nut', 'black, matt', ' 4'],
    ],
  },
  {
    trait: 'line ends of three kinds in one file',
    bytes: utf8('part,finish\nLid,black\r\nBase,red\rFoot,"a\r\nb"\r\n'),
    cells: [
      ['part', 'finish'],
      ['Lid', 'black'],
      ['Base', 'red'],
      ['Foot', 'a\r\nb'],
    ],
  },
  {
    trait: 'headings that come twice, are empty or are names of the language',
    bytes: utf8('Qty,Part,Qty,,__proto__,constructor\n1,Nut,2,x,a,b'),
    cells: [
      ['Qty', 'Part', 'Qty', '', '__proto__', 'constructor'],
      ['1', 'Nut', '2', 'x', 'a', 'b'],
    ],
  },
  {
    trait: 'blank rows that count, and a cell with line breaks that is one row',
    bytes: utf8('Part,Qty\n\n,,\n"Nut\n\nM4",4\n \nStud,2\n\n'),
    cells: [
      ['Part', 'Qty'],
      ['Nut\n\nM4', '4'],
      ['Stud', '2'],
    ],
    numbers: [1, 4, 6],
  },
  {
    trait: 'unquoted commas that shift cells',
    bytes: utf8('Pos,Part,Supplier,Qty\n1,Washer for M2, 2.2 mm ID,X1,18\n2,Nut,X1,4,,'),
    cells: [
      ['Pos', 'Part', 'Supplier', 'Qty'],
      ['1', 'Washer for M2', ' 2.2 mm ID', 'X1', '18'],
      ['2', 'Nut', 'X1', '4', '', ''],
    ],
  },
  {
    trait: 'a title above the headings does not decide how wide a row may be',
    bytes: utf8('Cabinet parts\n\nPart,Qty,Note\nNut,4,a\nStud,2,b'),
    cells: [['Cabinet parts'], ['Part', 'Qty', 'Note'], ['Nut', '4', 'a'], ['Stud', '2', 'b']],
    numbers: [1, 3, 4, 5],
  },
  {
    trait: 'a block of particulars above wider headings',
    bytes: utf8(
      'Customer,Alder Reach,Contact,Mara\nPart,Size,Qty,Note,Panel,Finish\nNut,M4,4,a,P1,zinc\nStud,M5,2,b,P1,zinc',
    ),
    cells: [
      ['Customer', 'Alder Reach', 'Contact', 'Mara'],
      ['Part', 'Size', 'Qty', 'Note', 'Panel', 'Finish'],
      ['Nut', 'M4', '4', 'a', 'P1', 'zinc'],
      ['Stud', 'M5', '2', 'b', 'P1', 'zinc'],
    ],
  },
  {
    trait: 'numbers with leading zeros or exponents stay text',
    bytes: utf8('No,Part,Qty\n007,1E5,12E3\n008,TRUE,1.50'),
    cells: [
      ['No', 'Part', 'Qty'],
      ['007', '1E5', '12E3'],
      ['008', 'TRUE', '1.50'],
    ],
  },
  {
    trait: 'rows that begin with a number sign are no comments',
    bytes: utf8('# Component,Qty\n#4-40 screw,4\n#10-32 nut,2'),
    cells: [
      ['# Component', 'Qty'],
      ['#4-40 screw', '4'],
      ['#10-32 nut', '2'],
    ],
  },
  {
    trait: 'full-width commas',
    bytes: utf8('品名，数量\n螺母，4\n螺柱，2'),
    cells: [
      ['品名', '数量'],
      ['螺母', '4'],
      ['螺柱', '2'],
    ],
    delimiter: '，',
  },
  {
    trait: 'enumeration commas',
    bytes: utf8('品名、数量、板厚\n螺母、4、1,5\n螺柱、2、2,0'),
    cells: [
      ['品名', '数量', '板厚'],
      ['螺母', '4', '1,5'],
      ['螺柱', '2', '2,0'],
    ],
    delimiter: '、',
  },
  {
    trait: 'tabs as padding beside commas',
    bytes: utf8('Part,\tQty\nNut,\t4\nStud,\t2'),
    cells: [
      ['Part', '\tQty'],
      ['Nut', '\t4'],
      ['Stud', '\t2'],
    ],
  },
  {
    trait: 'bars between cells',
    bytes: utf8('Part|Size, mm|Qty\nNut|4, 5|4\nStud|6, 8|2'),
    cells: [
      ['Part', 'Size, mm', 'Qty'],
      ['Nut', '4, 5', '4'],
      ['Stud', '6, 8', '2'],
    ],
    delimiter: '|',
  },
  {
    trait: 'two columns and a blank line at the end',
    bytes: utf8('part,qty\nNut,4\n\n'),
    cells: [
      ['part', 'qty'],
      ['Nut', '4'],
    ],
  },
  {
    trait: 'tabs in a file called comma-separated, with a dozen blank rows of tabs',
    bytes: utf8(`Part\tQty\tNote\nNut, M4\t4\tflush, both sides\n${'\t\t\n'.repeat(12)}Total\t4\t`),
    cells: [
      ['Part', 'Qty', 'Note'],
      ['Nut, M4', '4', 'flush, both sides'],
      ['Total', '4', ''],
    ],
    numbers: [1, 2, 15],
    delimiter: '\t',
  },
  {
    trait: 'many quotes that never close, said once',
    bytes: utf8(`Part,Size,Qty\n${'Plate,"6 in,2\n'.repeat(3)}Lid,small,1`),
    cells: [
      ['Part', 'Size', 'Qty'],
      ['Plate', '"6 in', '2'],
      ['Plate', '"6 in', '2'],
      ['Plate', '"6 in', '2'],
      ['Lid', 'small', '1'],
    ],
    notices: [/^Rows 2, 3 and 4 have quotes that never close/],
  },
  {
    trait: 'cells that look like formulas stay text',
    bytes: utf8('Part,Note\nNut,=1+1\nStud,"@sum, -1"'),
    cells: [
      ['Part', 'Note'],
      ['Nut', '=1+1'],
      ['Stud', '@sum, -1'],
    ],
  },
  {
    trait: 'one byte',
    bytes: utf8('x'),
    cells: [['x']],
  },
  {
    trait: 'one byte beyond ASCII',
    bytes: Uint8Array.of(0xef),
    cells: [['ï']],
    encoding: 'windows-1252',
    notices: [/is a guess/],
  },
  {
    trait: 'prose',
    bytes: utf8('Dear Mara,\nplease press the nuts before paint, not after.\nRegards'),
    cells: [['Dear Mara', ''], ['please press the nuts before paint', ' not after.'], ['Regards']],
  },
  {
    trait: 'tabs that became letters',
    bytes: utf8('PartNumbertQuantitytNote\nNutt4tflush'),
    cells: [['PartNumbertQuantitytNote'], ['Nutt4tflush']],
  },
  {
    trait: 'one column',
    bytes: utf8('Part\nNut M4\nStud M5\n'),
    cells: [['Part'], ['Nut M4'], ['Stud M5']],
  },
  {
    trait: 'a heading that begins like a tag',
    bytes: utf8('<Plan> part number,Qty\nNut,4\n'),
    cells: [
      ['<Plan> part number', 'Qty'],
      ['Nut', '4'],
    ],
  },
  {
    trait: 'the user chooses separator and encoding',
    bytes: western('Teil,alt;Größe\nMutter,neu;M4'),
    cells: [
      ['Teil', 'alt;Größe'],
      ['Mutter', 'neu;M4'],
    ],
    encoding: 'windows-1252',
    options: { delimiter: ',', encoding: 'windows-1252' },
  },
];
