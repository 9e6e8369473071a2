import type { CellFlag } from '../../src/core/model/raw.ts';
import { oneSheet, row, workbook } from './make.ts';

/** One odd workbook and what must come of its first sheet. */
export interface WorkbookCase {
  readonly trait: string;
  readonly bytes: Uint8Array;
  readonly cells: readonly (readonly string[])[];
  /** Row numbers, where they are not simply 1, 2, 3. */
  readonly numbers?: readonly number[];
  /** Flags by row number. */
  readonly flags?: Readonly<Record<number, Readonly<Record<number, CellFlag>>>>;
  readonly hidden?: readonly number[];
  readonly notices?: readonly RegExp[];
}

const PLAIN = row(1, '#0', '#1') + row(2, '#2', 4);
const PLAIN_STRINGS = ['Part', 'Qty', 'Nut'];
const PLAIN_CELLS = [
  ['Part', 'Qty'],
  ['Nut', '4'],
];

export type Parts = Record<string, string>;

/** The plain two-row sheet and another one, with the parts changed: two sheets leave nothing to guess. */
const changed = (change: (parts: Parts) => Parts) =>
  workbook({
    sheets: [
      { name: 'Parts', data: PLAIN },
      { name: 'Other', data: row(1, 'x') },
    ],
    strings: PLAIN_STRINGS,
    change,
  });

function rename(parts: Parts, from: string, to: string): Parts {
  const { [from]: content, ...rest } = parts;
  return { ...rest, [to]: content! };
}

/** Replaces text in one part. */
export function edit(parts: Parts, name: string, from: string | RegExp, to: string): Parts {
  return { ...parts, [name]: parts[name]!.replaceAll(from, to) };
}

/** The part that links the workbook to its sheets. */
export const LINKS = 'xl/_rels/workbook.xml.rels';
const SHEET = 'xl/worksheets/sheet1.xml';
const ghosts = Array.from(
  { length: 5000 },
  (_, at) => `<row r="${at + 3}" s="1" ht="15"><c r="A${at + 3}" s="1"/></row>`,
);
const cell = (at: string, value: string, style = 0) => `<c r="${at}" s="${style}"><v>${value}</v></c>`;

/** Traits of workbooks as spreadsheets, libraries and hands write them. */
export const WORKBOOK_CASES: readonly WorkbookCase[] = [
  { trait: 'prefixed elements', bytes: oneSheet(PLAIN, { strings: PLAIN_STRINGS, prefix: 'x' }), cells: PLAIN_CELLS },
  {
    trait: 'strict namespaces',
    bytes: oneSheet(PLAIN, { strings: PLAIN_STRINGS, isStrict: true }),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'absolute targets',
    bytes: changed((parts) => edit(parts, LINKS, 'Target="', 'Target="/xl/')),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'targets from the root without a slash',
    bytes: changed((parts) => edit(parts, LINKS, 'Target="', 'Target="xl/')),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'part names with backslashes',
    bytes: changed((parts) =>
      Object.fromEntries(Object.entries(parts).map(([name, xml]) => [name.replaceAll('/', '\\'), xml])),
    ),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'a worksheet of another name, in other capitals than its target',
    bytes: changed((parts) => rename(edit(parts, LINKS, 'sheet1', 'Liste%20a'), SHEET, 'xl/Worksheets/liste a.xml')),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'a workbook part of another name',
    bytes: changed((parts) =>
      rename(
        rename(edit(parts, '_rels/.rels', 'xl/workbook', 'xl/book'), 'xl/workbook.xml', 'xl/book.xml'),
        LINKS,
        'xl/_rels/book.xml.rels',
      ),
    ),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'no package relationships, only content types',
    bytes: changed(({ '_rels/.rels': _, ...parts }) => parts),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'no workbook relationships at all, but only one sheet',
    bytes: oneSheet(PLAIN, { strings: PLAIN_STRINGS, change: ({ [LINKS]: _, ...parts }) => parts }),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'a comment, a drawing and a chart that point nowhere',
    bytes: changed((parts) => ({
      ...edit(parts, SHEET, '</worksheet>', '<drawing r:id="d"/><legacyDrawing r:id="c"/></worksheet>'),
      'xl/worksheets/_rels/sheet1.xml.rels':
        '<Relationships><Relationship Id="c" Type="t/comments" Target="/xl/comments/c.xml"/></Relationships>',
    })),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'rows and cells without references',
    bytes: oneSheet(
      '<row><c t="inlineStr"><is><t>Part</t></is></c><c t="inlineStr"><is><t>Qty</t></is></c></row><row/><row><c/><c><v>4</v></c></row>',
    ),
    cells: [
      ['Part', 'Qty'],
      ['', '4'],
    ],
    numbers: [1, 3],
  },
  {
    trait: 'rows without numbers whose cells have references',
    bytes: oneSheet(`<row>${cell('A5', '1')}</row><row>${cell('C7', '2')}</row>`),
    cells: [['1'], ['', '', '2']],
    numbers: [5, 7],
  },
  {
    trait: 'attributes in odd order and quotes, comments, CDATA, signs and entities',
    bytes: oneSheet(
      "<row spans='1:2' r='1' ><!-- a > b --><c t='inlineStr' r = 'A1'><is><t><![CDATA[1 < 2 & ]]>&#8960; &amp;lt; &quot;x&quot;</t></is></c>" +
        '<c r="B1" t="str"><f a="1>0">IF(1&gt;0,"a>b")</f><v>a<!-- cut -->b</v></c></row>',
    ),
    cells: [['1 < 2 & ⌀ &lt; "x"', 'ab']],
  },
  {
    trait: 'inline and shared texts with a reading aid, rich text, escapes and blanks',
    bytes: oneSheet(
      '<row r="1"><c r="A1" t="inlineStr"><is><t>材質</t><rPh sb="0" eb="2"><t>ザイシツ</t></rPh></is></c>' +
        '<c r="B1" t="s"><v>0</v></c><c r="C1" t="s"><v>1</v></c><c r="D1" t="s"><v>2</v></c><c r="E1" t="s"><v>3</v></c></row>',
      {
        strings: [
          '<r><t>数</t></r><r><rPr><b/></rPr><t>量</t></r><rPh sb="0" eb="2"><t>スウリョウ</t></rPh>',
          'a_x000A_b _x005F_x0041_',
          '<t xml:space="preserve">  two  </t>',
          '<t/>',
        ],
      },
    ),
    cells: [['材質', '数量', 'a\nb _x0041_', '  two  ']],
  },
  {
    trait: 'ghost rows below and styled cells beside',
    bytes: oneSheet(PLAIN + ghosts.join(''), { strings: PLAIN_STRINGS }),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'strays in the last row and the last column, and references beyond them',
    bytes: oneSheet(
      `${row(1, 1)}<row r="1048576">${cell('B1048576', '9')}</row><row r="9999999">${cell('ZZZZ1', '3')}</row>`,
    ),
    cells: [['1'], ['', '9'], ['3']],
    numbers: [1, 1048576, 1048577],
  },
  {
    trait: 'errors',
    bytes: oneSheet('<row r="3"><c r="A3" t="e"><v>#N/A</v></c><c r="B3" t="e"><f>1/0</f><v>#DIV/0!</v></c></row>'),
    cells: [['#N/A', '#DIV/0!']],
    numbers: [3],
    flags: { 3: { 0: 'error', 1: 'error' } },
    notices: [/^Sheet ‘Parts’ has 2 cells in error \(A3, B3\)/],
  },
  {
    trait: 'a text that the table of texts does not hold',
    bytes: oneSheet(row(1, '#0', '#7'), { strings: ['Part'] }),
    cells: [['Part', '']],
    flags: { 1: { 1: 'error' } },
    notices: [/1 cell in error \(B1\)/],
  },
  {
    trait: 'formulas with and without results',
    bytes: oneSheet(
      '<row r="1"><c r="A1"><f>B9</f><v>0</v></c><c r="B1"><f>1+1</f></c><c r="C1"><f>1+1</f><v></v></c><c r="D1" t="str"><f>""</f><v></v></c>' +
        '<c r="E1" t="s"><f>"a"</f><v>0</v></c><c r="F1"><f t="shared" si="0"/><v>6</v></c><c r="G1" t="b"><f>1=1</f></c></row>',
      { strings: ['Nut'] },
    ),
    cells: [['0', '', '', '', 'Nut', '6', '']],
    flags: { 1: { 1: 'not-calculated', 2: 'not-calculated', 6: 'not-calculated' } },
    notices: [/^Sheet ‘Parts’ has 3 formulas without a result \(B1, C1, G1\)/],
  },
  {
    trait: 'a result of 0 in a workbook that still asks to be calculated',
    bytes: oneSheet(
      '<row r="1"><c r="A1"><f>B9</f><v>0</v></c><c r="B1"><f>B9</f><v>7</v></c><c r="C1"><v>0</v></c></row>',
      {
        workbookExtras: '<calcPr fullCalcOnLoad="1"/>',
      },
    ),
    cells: [['', '7', '0']],
    flags: { 1: { 0: 'not-calculated' } },
    notices: [/1 formula without a result \(A1\)/],
  },
  {
    trait: 'dates and times, stored as numbers and as text',
    bytes: oneSheet(
      `<row r="1">${cell('A1', '45356', 4)}${cell('B1', '45356.4375', 5)}${cell('C1', '0.00347222222222222', 6)}${cell('D1', '1.5', 1)}${cell('E1', '2.5', 2)}` +
        `<c r="F1" t="d"><v>2024-03-05T00:00:00</v></c>${cell('G1', '59', 3)}${cell('H1', '61', 3)}</row>`,
      { formats: ['[h]:mm', 'h:mm', '[$-409]d\\-mmm;@'], builtIns: [14, 22, 20] },
    ),
    cells: [
      [
        '2024-03-05',
        '2024-03-05 10:30:00',
        '00:05:00',
        '36:00:00',
        '1900-01-02 12:00:00',
        '2024-03-05',
        '1900-02-28',
        '1900-03-01',
      ],
    ],
    flags: { 1: { 0: 'date', 1: 'date', 2: 'date', 3: 'date', 4: 'date', 5: 'date', 6: 'date', 7: 'date' } },
  },
  {
    trait: 'dates counted from 1904',
    bytes: oneSheet(`<row r="1">${cell('A1', '0.5', 1)}${cell('B1', '43894', 1)}</row>`, {
      builtIns: [14],
      workbookExtras: '<workbookPr date1904="true"/>',
    }),
    cells: [['12:00:00', '2024-03-05']],
    flags: { 1: { 0: 'date', 1: 'date' } },
  },
  {
    trait: 'a text under a date format stays text, a date format on no date stays a number',
    bytes: oneSheet(`<row r="1"><c r="A1" s="1" t="str"><f>A2</f><v>M4</v></c>${cell('B1', '-3', 1)}</row>`, {
      builtIns: [17],
    }),
    cells: [['M4', '-3']],
    flags: { 1: { 1: 'date' } },
  },
  {
    trait: 'formats that add zeros, units, letters and signs',
    bytes: oneSheet(
      `<row r="1">${cell('A1', '7', 1)}${cell('B1', '3.5', 2)}${cell('C1', '3', 3)}${cell('D1', '1234567', 4)}${cell('E1', '12', 5)}${cell('F1', '3.5', 6)}` +
        `${cell('G1', '4', 7)}${cell('H1', '1.1', 8)}${cell('I1', '0.07', 9)}${cell('J1', '1200', 10)}${cell('K1', '3.5', 11)}${cell('L1', '-2', 12)}</row>`,
      {
        formats: [
          '0000',
          '0.0\\ \\m\\m',
          '\\M0',
          '000\\-0000',
          '0"Stk."',
          'General" pcs"',
          '0\\h',
          '0.00',
          '0%',
          '#,##0.00\\ [$kr-41D]',
          '#\\ ??/??',
          '0.0_);[Red]\\(0.0\\);"zero day"',
        ],
      },
    ),
    cells: [['0007', '3.5 mm', 'M3', '123-4567', '12Stk.', '3.5 pcs', '4h', '1.10', '7%', '1200.00 kr', '3.5', '-2.0']],
  },
  {
    trait: 'long numbers, float noise and booleans',
    bytes: oneSheet(
      `<row r="1">${cell('A1', '4006381333931')}${cell('B1', '1.2345E+14')}${cell('C1', '95.996000001')}${cell('D1', '0.30000000000000004')}` +
        `${cell('E1', '1E-3')}${cell('F1', '12345678901234567890')}<c r="G1" t="b"><v>1</v></c><c r="H1" t="b"><v>0</v></c>${cell('I1', '0.060', 1)}${cell('J1', '1.016', 1)}</row>`,
      { formats: ['0.0'] },
    ),
    cells: [
      [
        '4006381333931',
        '123450000000000',
        '95.996',
        '0.3',
        '0.001',
        '12345678901234600000',
        'TRUE',
        'FALSE',
        '0.06',
        '1.016',
      ],
    ],
  },
  {
    trait: 'merged title and merged category, with texts left under them',
    bytes: oneSheet(
      row(1, 'Cabinet', 'left', 'over') + row(2, 'Nuts', 'M4', 4) + row(3, 'x', 'M5', 2) + row(4, 'Studs', 'M6', 1),
      {
        after: '<mergeCells><mergeCell ref="A1:XFD1"/><mergeCell ref="A2:A3"/></mergeCells>',
      },
    ),
    cells: [
      ['Cabinet', '', ''],
      ['Nuts', 'M4', '4'],
      ['', 'M5', '2'],
      ['Studs', 'M6', '1'],
    ],
    flags: { 1: { 1: 'merged', 2: 'merged' }, 3: { 0: 'merged' } },
  },
  {
    trait: 'hidden rows and columns',
    bytes: oneSheet(
      `${row(1, 'Part', 'Qty')}${row(2, 'Nut', 4).replace('<row', '<row hidden="1"')}<row r="3" hidden="1"/>${row(4, 'Stud', 2)}`,
      {
        before: '<cols><col min="2" max="16384" hidden="true"/></cols>',
      },
    ),
    cells: [
      ['Part', 'Qty'],
      ['Nut', '4'],
      ['Stud', '2'],
    ],
    numbers: [1, 2, 4],
    hidden: [2],
    notices: [/^Sheet ‘Parts’ hides 1 filled row \(2\)/, /hides 1 column \(B\)/],
  },
  {
    trait: 'a row that comes twice, and rows out of order',
    bytes: oneSheet(
      `<row r="2">${cell('A2', '1')}</row><row r="1">${cell('A1', '8')}</row><row r="2">${cell('B2', '2')}</row>`,
    ),
    cells: [['8'], ['1', '2']],
  },
  {
    trait: 'a validation over whole columns and a control that is placed by row and column',
    bytes: oneSheet(PLAIN, {
      strings: PLAIN_STRINGS,
      after:
        '<dataValidations><dataValidation sqref="B2:D1048576"/></dataValidations><controls><from><row>5</row><c>1</c></from></controls>',
    }),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'a style that the workbook does not define',
    bytes: oneSheet(`<row r="1">${cell('A1', '4', 77)}</row>`),
    cells: [['4']],
  },
  {
    trait: 'parts in UTF-16',
    bytes: workbook({
      sheets: [{ name: 'Teile', data: row(1, 'Größe') }],
      change: (parts) => ({
        ...parts,
        [SHEET]: new Uint8Array(new Uint16Array([...`\ufeff${parts[SHEET]}`].map((sign) => sign.charCodeAt(0))).buffer),
      }),
    }),
    cells: [['Größe']],
  },
  {
    trait: 'a table, a comment and a chart whose parts are linked by absolute targets',
    bytes: changed((parts) => ({
      ...edit(
        parts,
        SHEET,
        '</worksheet>',
        '<legacyDrawing r:id="c"/><tableParts><tablePart r:id="t"/></tableParts></worksheet>',
      ),
      'xl/worksheets/_rels/sheet1.xml.rels':
        '<Relationships><Relationship Id="c" Type="t/comments" Target="/xl/comments/comment1.xml"/><Relationship Id="t" Type="t/table" Target="/xl/tables/table1.xml"/></Relationships>',
      'xl/comments/comment1.xml':
        '<comments><commentList><comment ref="A1"><text><t>ask</t></text></comment></commentList></comments>',
      'xl/tables/table1.xml': '<table ref="A1:B2" totalsRowShown="0"/>',
      'xl/charts/chart1.xml': '<chartSpace/>',
    })),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'a hyperlink over rich text, and a formula that makes a link',
    bytes: oneSheet(
      '<row r="1"><c r="A1" t="s"><v>0</v></c><c r="B1" t="str"><f>HYPERLINK("x","N-4")</f><v>N-4</v></c></row>',
      {
        strings: ['<r><t>Nut </t></r><r><rPr><u/></rPr><t>M4</t></r>'],
        after: '<hyperlinks><hyperlink ref="A1" r:id="gone" display="other"/></hyperlinks>',
      },
    ),
    cells: [['Nut M4', 'N-4']],
  },
  {
    trait: 'formulas whose results are false, nothing, or an error',
    bytes: oneSheet(
      '<row r="1"><c r="A1" t="b"><f>1=2</f><v>0</v></c><c r="B1" t="str"><f>""</f><v></v></c><c r="C1" t="e"><f>A9/0</f><v>#DIV/0!</v></c><c r="D1"><v>1</v></c></row>',
    ),
    cells: [['FALSE', '', '#DIV/0!', '1']],
    flags: { 1: { 2: 'error' } },
    notices: [/1 cell in error \(C1\)/],
  },
  {
    trait: 'a formula filled down: the first holds it, the others share it',
    bytes: oneSheet(
      '<row r="1"><c r="A1"><v>2</v></c><c r="B1"><f t="shared" ref="B1:B3" si="0">A1*2</f><v>4</v></c></row>' +
        '<row r="2"><c r="A2"><v>3</v></c><c r="B2"><f t="shared" si="0"/><v>6</v></c></row><row r="3"><c r="B3"><f t="shared" si="0"/></c></row>',
    ),
    cells: [
      ['2', '4'],
      ['3', '6'],
      ['', ''],
    ],
    flags: { 3: { 1: 'not-calculated' } },
    notices: [/1 formula without a result \(B3\)/],
  },
  {
    trait: 'sizes that a spreadsheet took for dates and times',
    bytes: oneSheet(
      `${row(1, 'Size', 'Length')}<row r="2">${cell('A2', '45413', 1)}${cell('B2', '0.00347222222222222', 2)}</row>`,
      { builtIns: [16, 21] },
    ),
    cells: [
      ['Size', 'Length'],
      ['2024-05-01', '00:05:00'],
    ],
    flags: { 2: { 0: 'date', 1: 'date' } },
  },
  {
    trait: 'thousands of names, some of them broken',
    bytes: oneSheet(PLAIN, {
      strings: PLAIN_STRINGS,
      workbookExtras: `<definedNames>${Array.from({ length: 5000 }, (_, at) => `<definedName name="n${at}" hidden="1">#REF!$A$1:OFFSET(</definedName>`).join('')}</definedNames>`,
    }),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'filters by values and by dates, with rows filtered out',
    bytes: oneSheet(`${PLAIN}${row(3, 'Stud', 2).replace('<row', '<row hidden="true"')}`, {
      strings: PLAIN_STRINGS,
      after:
        '<autoFilter ref="A1:B3"><filterColumn colId="0"><filters><filter val="Nut"/><dateGroupItem year="2024" dateTimeGrouping="year"/></filters></filterColumn></autoFilter>',
    }),
    cells: [...PLAIN_CELLS, ['Stud', '2']],
    hidden: [3],
    notices: [/hides 1 filled row \(3\), read like the others/],
  },
  {
    trait: 'colours and styles that no standard knows',
    bytes: changed((parts) =>
      edit(
        parts,
        'xl/styles.xml',
        '<cellXfs>',
        '<fonts><font><color rgb="teal"/><sz val="x"/></font></fonts><cellXfs>',
      ),
    ),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'a merged quantity counts once',
    bytes: oneSheet(row(1, 'Part', 'Qty') + row(2, 'N-4', 8) + row(3, 'N-5', 8) + row(4, 'N-6', 8), {
      after: '<mergeCells><mergeCell ref="B2:B4"/></mergeCells>',
    }),
    cells: [
      ['Part', 'Qty'],
      ['N-4', '8'],
      ['N-5', ''],
      ['N-6', ''],
    ],
    flags: { 3: { 1: 'merged' }, 4: { 1: 'merged' } },
  },
  {
    trait: 'an online sheet: far more rows and columns announced than filled',
    bytes: oneSheet(
      `${PLAIN}${Array.from({ length: 998 }, (_, at) => `<row r="${at + 3}" s="1" customFormat="1">${'<c s="1"/>'.repeat(26)}</row>`).join('')}`,
      { strings: PLAIN_STRINGS, before: '<dimension ref="A1:Z1000"/>' },
    ),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'only the sheet has prefixed elements',
    bytes: changed((parts) => ({
      ...parts,
      [SHEET]: parts[SHEET]!.replace(/<(\/?)(\w)/g, '<$1x:$2').replace(' xmlns="', ' xmlns:x="'),
    })),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'a workbook without styles whose cells refer to some',
    bytes: oneSheet(`<row r="1">${cell('A1', '7', 3)}</row>`, { change: ({ 'xl/styles.xml': _, ...parts }) => parts }),
    cells: [['7']],
  },
  {
    trait: 'a workbook without table of texts',
    bytes: oneSheet(row(1, 'Part', 'Qty') + row(2, 'Nut', 4), {
      change: ({ 'xl/sharedStrings.xml': _, ...parts }) => parts,
    }),
    cells: PLAIN_CELLS,
  },
  {
    trait: 'a sheet name and a text with signs that XML reserves',
    bytes: workbook({
      sheets: [{ name: 'a&lt;b &amp; c', data: row(1, 'x &lt; y &amp; z') }],
    }),
    cells: [['x < y & z']],
  },
];
