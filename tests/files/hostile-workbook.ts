import { strToU8, type Zippable, zipSync } from 'fflate';

/** How a hostile workbook is written. */
export interface HostileForm {
  /** Prefix of the spreadsheet elements: `x`. */
  readonly prefix?: string;
  readonly isStrict?: boolean;
  /** Relationship targets begin at the root. */
  readonly isAbsolute?: boolean;
  /** Rows of the list carry no number, its cells no reference. */
  readonly isCounted?: boolean;
  /** More of the workbook part or the package. */
  readonly workbook?: string;
  readonly parts?: Readonly<Record<string, string>>;
}

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const TRANSITIONAL = {
  main: 'http://schemas.openxmlformats.org/spreadsheetml/2006/main',
  links: 'http://schemas.openxmlformats.org/officeDocument/2006/relationships',
};
const STRICT = {
  main: 'http://purl.oclc.org/ooxml/spreadsheetml/main',
  links: 'http://purl.oclc.org/ooxml/officeDocument/relationships',
};

/** Name of the part that holds the list. */
export const LIST_PART = 'xl/worksheets/sheet2.xml';

const TEXTS = [
  'Hardware for the bench',
  'Item',
  'P/N',
  'Qty',
  'Panel',
  'Material',
  'Thk (mm)',
  'Hole (mm)',
  'Note',
  'NUT-M4-10-CS',
  'NUT-M5-15-CS',
  'SCREW-M4x8',
  'BP-01',
  'DC01',
  '=HYPERLINK("http://example.invalid","press") & <now>',
  'Total',
  'Screw M4x8, ISO 4762',
  'BP-02',
  'BP-03',
];

/** Rows of the list from row 4 on; text by its place in the table of texts, other texts inline. */
const HEADINGS = ['1', '2', '3', '4', '5', '6', '7', '8'].map((index) => text(Number(index)));
const ROWS: readonly (readonly string[])[] = [
  HEADINGS,
  [num(1, 2), text(9), num(4), text(12), text(13), num(1.5, 3), num(5.6, 3), text(14)],
  [num(2, 2), text(10), '<F t="shared" ref="D6:D7" si="0">B6*2</F><V>4</V>', text(17), text(13), num(1, 3), num(7), ''],
  [
    num(3, 2),
    text(9),
    '<F t="shared" si="0"/><V>6</V>',
    text(18),
    text(13),
    num(0.5, 3),
    num(5.6),
    inline('a &amp; b'),
  ],
  [num(4, 2), text(11), num(8), text(12), '', '', '', text(16)],
  ['', text(15), '<F>SUM(D5:D8)</F><V>22</V>', '', '', '', '', ''],
];
const HIDDEN_ROW = 7;
const FIRST_ROW = 4;

/** The workbook as bytes: packed in several ways, every trait that a rewrite would lose. */
export function hostileWorkbook(form: HostileForm = {}): Uint8Array {
  const entries: Zippable = {};
  for (const [index, [name, content]] of Object.entries(hostileParts(form)).entries()) {
    const bytes = typeof content === 'string' ? strToU8(content) : content;
    entries[name] = [bytes, { level: ([6, 0, 9, 1] as const)[index % 4] ?? 6, mtime: '2021-03-04T05:06:08' }];
  }
  return zipSync(entries, { comment: 'kept' });
}

function hostileParts(form: HostileForm): Record<string, string | Uint8Array> {
  const { main, links } = form.isStrict ? STRICT : TRANSITIONAL;
  const dressed = (xml: string) => HEAD + prefixed(xml.replaceAll('{main}', main).replaceAll('{links}', links), form);
  const linked = (folder: string, all: readonly (readonly [string, string, string])[]) =>
    `${HEAD}<Relationships xmlns="${PACKAGE}/relationships">${all
      .map(([id, type, target]) => {
        const path = form.isAbsolute && !target.includes(':') ? `/${resolve(folder, target)}` : target;
        const mode = target.includes(':') ? ' TargetMode="External"' : '';
        return `<Relationship Id="${id}" Type="${links}/${type}" Target="${path}"${mode}/>`;
      })
      .join('')}</Relationships>`;
  return {
    '[Content_Types].xml': contentTypes(),
    '_rels/.rels': linked('', [
      ['rId1', 'officeDocument', 'xl/workbook.xml'],
      ['rId2', 'extended-properties', 'docProps/app.xml'],
    ]),
    'docProps/app.xml': `${HEAD}<Properties xmlns="http://schemas.openxmlformats.org/officeDocument/2006/extended-properties"><Application>Sheets</Application></Properties>`,
    'xl/workbook.xml': dressed(workbookXml(form)),
    'xl/_rels/workbook.xml.rels': linked('xl/', [
      ['rId1', 'worksheet', 'worksheets/sheet1.xml'],
      ['rId2', 'worksheet', 'worksheets/sheet2.xml'],
      ['rId3', 'worksheet', 'worksheets/sheet3.xml'],
      ['rId5', 'styles', 'styles.xml'],
      ['rId6', 'sharedStrings', 'sharedStrings.xml'],
      ['rId7', 'theme', 'theme/theme1.xml'],
      ['rId8', 'externalLink', 'externalLinks/externalLink1.xml'],
      ['rId9', 'calcChain', 'calcChain.xml'],
      ['rId10', 'vbaProject', 'vbaProject.bin'],
      ['rId11', 'pivotCacheDefinition', 'pivotCache/pivotCacheDefinition1.xml'],
      ['rId12', 'customXml', '../customXml/item1.xml'],
    ]),
    'xl/worksheets/sheet1.xml': dressed(
      '<worksheet xmlns="{main}"><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>Read me first</t></is></c></row></sheetData></worksheet>',
    ),
    [LIST_PART]: dressed(listXml(form)),
    'xl/worksheets/sheet3.xml': dressed(
      '<worksheet xmlns="{main}"><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>my own findings</t></is></c></row></sheetData></worksheet>',
    ),
    'xl/worksheets/_rels/sheet1.xml.rels': linked('xl/worksheets/', [
      ['rId1', 'pivotTable', '../pivotTables/pivotTable1.xml'],
    ]),
    'xl/worksheets/_rels/sheet2.xml.rels': linked('xl/worksheets/', [
      ['rId1', 'drawing', '../drawings/drawing1.xml'],
      ['rId2', 'vmlDrawing', '../drawings/vmlDrawing1.vml'],
      ['rId3', 'comments', '../comments1.xml'],
      ['rId4', 'table', '../tables/table1.xml'],
      ['rId5', 'printerSettings', '../printerSettings/printerSettings1.bin'],
      ['rId6', 'hyperlink', 'mailto:bench@example.invalid'],
    ]),
    'xl/styles.xml': dressed(STYLES),
    'xl/sharedStrings.xml': dressed(
      `<sst xmlns="{main}" count="${TEXTS.length}" uniqueCount="${TEXTS.length}">${TEXTS.map(item).join('')}</sst>`,
    ),
    'xl/theme/theme1.xml': `${HEAD}<a:theme xmlns:a="http://schemas.openxmlformats.org/drawingml/2006/main" name="x"><a:themeElements>${THEME}</a:themeElements></a:theme>`,
    'xl/calcChain.xml': dressed('<calcChain xmlns="{main}"><c r="D6" i="2"/><c r="D7"/><c r="D9"/></calcChain>'),
    'xl/comments1.xml': dressed(
      '<comments xmlns="{main}"><authors><author>Ann</author></authors><commentList><comment ref="C5" authorId="0"><text><t>check</t></text></comment></commentList></comments>',
    ),
    'xl/tables/table1.xml': dressed(TABLE),
    'xl/drawings/drawing1.xml': DRAWING,
    'xl/drawings/_rels/drawing1.xml.rels': linked('xl/drawings/', [
      ['rId1', 'chart', '../charts/chart1.xml'],
      ['rId2', 'image', '../media/image-1.png'],
    ]),
    'xl/drawings/vmlDrawing1.vml': '<xml xmlns:v="urn:schemas-microsoft-com:vml"><v:shape id="_x0000_s1025"/></xml>',
    'xl/charts/chart1.xml': `${HEAD}<c:chartSpace xmlns:c="http://schemas.openxmlformats.org/drawingml/2006/chart"><c:chart><c:plotArea><c:layout/></c:plotArea></c:chart></c:chartSpace>`,
    'xl/media/image-1.png': PIXEL,
    'xl/printerSettings/printerSettings1.bin': Uint8Array.from({ length: 300 }, (_, at) => (at * 37) % 256),
    'xl/pivotTables/pivotTable1.xml': dressed(
      '<pivotTableDefinition xmlns="{main}" name="P" cacheId="1"><location ref="D1:F9" firstHeaderRow="1" firstDataRow="1" firstDataCol="1"/></pivotTableDefinition>',
    ),
    'xl/pivotCache/pivotCacheDefinition1.xml': dressed(
      '<pivotCacheDefinition xmlns="{main}"><cacheSource type="worksheet"><worksheetSource ref="B4:I9" sheet="Hardware"/></cacheSource></pivotCacheDefinition>',
    ),
    'xl/externalLinks/externalLink1.xml': dressed('<externalLink xmlns="{main}"/>'),
    'xl/vbaProject.bin': Uint8Array.from({ length: 4000 }, (_, at) => (at * at) % 251),
    'customXml/item1.xml': '<note>for the machine</note>',
    ...form.parts,
  };
}

function workbookXml({ workbook = '' }: HostileForm): string {
  const names =
    '<definedName name="Limit">0.8</definedName><definedName name="_xlnm.Print_Area" localSheetId="1">Hardware!$B$2:$I$9</definedName><definedName name="Scope">OFFSET(Hardware!$B$4,0,0,COUNTA(Hardware!$C:$C),8)</definedName>';
  return `<workbook xmlns="{main}" xmlns:r="{links}"><workbookPr codeName="ThisWorkbook"/>${workbook}<bookViews><workbookView activeTab="1"/></bookViews><sheets><sheet name="Cover" sheetId="7" r:id="rId1"/><sheet name="Hardware" sheetId="2" r:id="rId2"/><sheet name="Findings" sheetId="9" state="hidden" r:id="rId3"/></sheets><externalReferences><externalReference r:id="rId8"/></externalReferences><definedNames>${names}</definedNames><calcPr calcId="191029"/><pivotCaches><pivotCache cacheId="1" r:id="rId11"/></pivotCaches></workbook>`;
}

function listXml(form: HostileForm): string {
  const title = `<row r="2" spans="2:9" ht="24" customHeight="1"><c r="B2" s="1" t="s"><v>0</v></c><c r="C2" s="1"/><c r="I2" s="1"/></row><row r="3" spans="2:28"><c r="AB3"><v>7</v></c></row>`;
  const rows = ROWS.map((cells, index) => listRow(FIRST_ROW + index, cells, form)).join('');
  const last = form.isCounted ? '' : '<row r="40" spans="2:9" ht="30" customHeight="1"/>';
  const blank = form.isCounted ? '<row/>' : '';
  return `<worksheet xmlns="{main}" xmlns:r="{links}"><sheetPr codeName="Sheet2"/><dimension ref="B2:I9"/><sheetViews><sheetView workbookViewId="0"><pane xSplit="3" ySplit="4" topLeftCell="D5" activePane="bottomRight" state="frozen"/></sheetView></sheetViews><sheetFormatPr defaultRowHeight="15"/><cols><col min="2" max="9" width="14" style="2" customWidth="1"/><col min="11" max="16384" width="9" hidden="1"/></cols><sheetData>${blank}${title}${rows}${last}</sheetData>${AFTER_ROWS}<pageSetup orientation="landscape" r:id="rId5"/><drawing r:id="rId1"/><legacyDrawing r:id="rId2"/><tableParts count="1"><tablePart r:id="rId4"/></tableParts>${EXTRA}</worksheet>`;
}

const AFTER_ROWS =
  '<mergeCells count="1"><mergeCell ref="B2:I2"/></mergeCells><conditionalFormatting sqref="B:J"><cfRule type="duplicateValues" priority="1" stopIfTrue="1"/></conditionalFormatting><dataValidations count="1"><dataValidation type="whole" sqref="D5:D1048576 K1:K1048576"><formula1>1</formula1></dataValidation></dataValidations><hyperlinks><hyperlink ref="C5" r:id="rId6"/></hyperlinks>';
const EXTRA =
  '<extLst><ext uri="{CCE6A557-97BC-4b89-ADB6-D9C93CAAB3DF}" xmlns:x14="http://schemas.microsoft.com/office/spreadsheetml/2009/9/main"><x14:dataValidations xmlns:xm="http://schemas.microsoft.com/office/excel/2006/main"><x14:dataValidation type="list"><x14:formula1><xm:f>Cover!$A$1</xm:f></x14:formula1><xm:sqref>F5:F9</xm:sqref></x14:dataValidation></x14:dataValidations></ext></extLst>';

/** A row from column B on, with a formatted blank cell behind it. */
function listRow(number: number, cells: readonly string[], { isCounted }: HostileForm): string {
  const written = cells.map((cell, index) => {
    const reference = isCounted ? '' : ` r="${String.fromCharCode(66 + index)}${number}"`;
    if (cell === '') return `<c${reference} s="2"/>`;
    return cell.startsWith('<c ') ? cell.replace('<c ', `<c${reference} `) : `<c${reference} s="2">${lower(cell)}</c>`;
  });
  const hidden = number === HIDDEN_ROW ? ' hidden="1"' : '';
  if (isCounted) return `<row spans="2:9"${hidden}><c/>${written.join('')}</row>`;
  return `<row r="${number}" spans="2:9"${hidden}>${written.join('')}<c r="J${number}" s="3"/></row>`;
}

function text(index: number): string {
  return `<c s="2" t="s"><v>${index}</v></c>`;
}

function inline(content: string): string {
  return `<c s="2" t="inlineStr"><is><t>${content}</t></is></c>`;
}

function num(value: number, style = 2): string {
  return `<c s="${style}"><v>${value}</v></c>`;
}

function lower(cell: string): string {
  return cell.replaceAll('<F', '<f').replaceAll('</F>', '</f>').replaceAll('<V>', '<v>').replaceAll('</V>', '</v>');
}

function item(content: string, index: number): string {
  const escaped = content.replaceAll('&', '&amp;').replaceAll('<', '&lt;');
  if (index !== 0) return `<si><t>${escaped}</t></si>`;
  return `<si><r><t xml:space="preserve">Hardware </t></r><r><rPr><b/></rPr><t>for the bench</t></r></si>`;
}

const STYLES =
  '<styleSheet xmlns="{main}"><numFmts count="1"><numFmt numFmtId="170" formatCode="0.0\\ \\m\\m"/></numFmts><fonts count="2"><font><sz val="11"/><name val="Arial"/></font><font><b/><sz val="14"/><name val="Arial"/></font></fonts><fills count="2"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill></fills><borders count="1"><border><left/><right/><top/><bottom/><diagonal/></border></borders><cellStyleXfs count="1"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/></cellStyleXfs><cellXfs count="4"><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"/><xf numFmtId="0" fontId="1" fillId="0" borderId="0" xfId="0" applyFont="1"/><xf numFmtId="0" fontId="0" fillId="0" borderId="0" xfId="0"><protection locked="0"/></xf><xf numFmtId="170" fontId="0" fillId="0" borderId="0" xfId="0" applyNumberFormat="1"/></cellXfs><cellStyles count="1"><cellStyle name="Normal" xfId="0" builtinId="0"/></cellStyles><dxfs count="0"/><colors><indexedColors><rgbColor rgb="00000000"/></indexedColors></colors></styleSheet>';

const TABLE =
  '<table xmlns="{main}" id="1" name="List" displayName="List" ref="B4:I8" totalsRowShown="0"><autoFilter ref="B4:I8"/><tableColumns count="8"><tableColumn id="1" name="Item"/><tableColumn id="2" name="P/N"/><tableColumn id="3" name="Qty"><calculatedColumnFormula>B4*2</calculatedColumnFormula></tableColumn><tableColumn id="4" name="Panel"/><tableColumn id="5" name="Material"/><tableColumn id="6" name="Thk (mm)"/><tableColumn id="7" name="Hole (mm)"/><tableColumn id="8" name="Note"/></tableColumns></table>';

const DRAWING = `${HEAD}<xdr:wsDr xmlns:xdr="http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing"><xdr:twoCellAnchor><xdr:from><xdr:col>12</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>5</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:from><xdr:to><xdr:col>13</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>12</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:to><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>`;

const COLOURS = ['dk1', 'lt1', 'dk2', 'lt2', ...[1, 2, 3, 4, 5, 6].map((at) => `accent${at}`), 'hlink', 'folHlink'];
const THEME = `<a:clrScheme name="x">${COLOURS.map((name) => `<a:${name}><a:srgbClr val="336699"/></a:${name}>`).join('')}</a:clrScheme><a:fontScheme name="x"><a:majorFont><a:latin typeface="Arial"/></a:majorFont></a:fontScheme><a:fmtScheme name="x"><a:fillStyleLst/></a:fmtScheme>`;

const PIXEL = Uint8Array.from(
  atob('iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg=='),
  (sign) => sign.charCodeAt(0),
);

function contentTypes(): string {
  const sheet = 'application/vnd.openxmlformats-officedocument.spreadsheetml';
  const overrides = [
    ['/xl/workbook.xml', 'application/vnd.ms-excel.sheet.macroEnabled.main+xml'],
    ['/xl/worksheets/sheet1.xml', `${sheet}.worksheet+xml`],
    ['/xl/worksheets/sheet2.xml', `${sheet}.worksheet+xml`],
    ['/xl/worksheets/sheet3.xml', `${sheet}.worksheet+xml`],
    ['/xl/styles.xml', `${sheet}.styles+xml`],
    ['/xl/sharedStrings.xml', `${sheet}.sharedStrings+xml`],
    ['/xl/calcChain.xml', `${sheet}.calcChain+xml`],
    ['/xl/comments1.xml', `${sheet}.comments+xml`],
    ['/xl/tables/table1.xml', `${sheet}.table+xml`],
    ['/xl/pivotTables/pivotTable1.xml', `${sheet}.pivotTable+xml`],
    ['/xl/pivotCache/pivotCacheDefinition1.xml', `${sheet}.pivotCacheDefinition+xml`],
    ['/xl/externalLinks/externalLink1.xml', `${sheet}.externalLink+xml`],
    ['/xl/theme/theme1.xml', 'application/vnd.openxmlformats-officedocument.theme+xml'],
    ['/xl/drawings/drawing1.xml', 'application/vnd.openxmlformats-officedocument.drawing+xml'],
    ['/xl/charts/chart1.xml', 'application/vnd.openxmlformats-officedocument.drawingml.chart+xml'],
  ];
  const defaults = [
    ['rels', 'application/vnd.openxmlformats-package.relationships+xml'],
    ['xml', 'application/xml'],
    ['bin', 'application/vnd.ms-office.vbaProject'],
    ['png', 'image/png'],
    ['vml', 'application/vnd.openxmlformats-officedocument.vmlDrawing'],
  ];
  return `${HEAD}<Types xmlns="${PACKAGE}/content-types">${defaults
    .map(([extension, type]) => `<Default Extension="${extension}" ContentType="${type}"/>`)
    .join('')}${overrides
    .map(([part, type]) => `<Override PartName="${part}" ContentType="${type}"/>`)
    .join('')}</Types>`;
}

/** Puts the prefix before every element name that has none and before the default namespace. */
function prefixed(xml: string, { prefix }: HostileForm): string {
  if (prefix === undefined) return xml;
  return xml.replace(/<(\/?)(?=\w+[\s/>])/g, `<$1${prefix}:`).replace(' xmlns="', ` xmlns:${prefix}="`);
}

function resolve(folder: string, target: string): string {
  const steps: string[] = [];
  for (const step of (folder + target).split('/')) {
    if (step === '..') steps.pop();
    else steps.push(step);
  }
  return steps.join('/');
}
