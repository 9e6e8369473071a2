/** Texts that make a careless pattern try every way there is to match: runs of one kind of sign, broken at the end. */
const RUNS: readonly string[] = [
  ' ',
  '\t',
  '1',
  '0',
  '.',
  ',',
  '-',
  '"',
  "'",
  '(',
  ')',
  '[',
  '/',
  'x',
  'M',
  'a',
  '1 ',
  '1.',
  '1,',
  '1/',
  '1-',
  ' -',
  ' x ',
  '1x',
  '( ',
  '()',
  '"1',
  'M4 ',
  'M4x',
  '#4-40 ',
  '1/4-20 ',
  'mm ',
  '1 mm ',
  '1.5mm x ',
  'ga ',
  '16 ga ',
  '+/-',
  '±0.1 ',
  '+0.1/-',
  'HRB ',
  'HRB 60-',
  'DC01 ',
  'AlMg3-',
  '5052-H32 / ',
  '304 or ',
  'not ',
  'without ',
  'zinc, ',
  'plated ',
  'after ',
  'Ø',
  'Ø4.2 ',
  '\u00a0',
  '\u3000',
  'ß',
  'é',
  '材',
  '😀',
  '\u0301',
  'İ',
  'A1,',
  'R1-R9,',
  'R1-R99999 ',
  '1e9',
  '9'.repeat(9),
];
const ENDS: readonly string[] = ['', '!', 'x', '\u0000'];

/** Just short enough to be read (see `long-cells` of the intake). */
const LONG = 1990;
/** As long as a cell of a spreadsheet may be. */
const LONGEST = 32_767;

/** Every run in the length asked for, with every end. */
function longTexts(length = LONG): readonly string[] {
  return RUNS.flatMap((run) => ENDS.map((end) => run.repeat(Math.ceil(length / run.length)).slice(0, length) + end));
}

const FILLED = [
  'NUT-M4-10-CS',
  'Clinch nut M4',
  '4',
  'P1',
  'DC01',
  '1.5',
  '5.6',
  '9',
  'M4',
  '10',
  'zinc plated',
  'see drawing',
];
const HEADINGS =
  'Part number,Description,Qty,Panel,Material,Thickness (mm),Hole (mm),Edge distance (mm),Thread,Length (mm),Finish,Remarks'.split(
    ',',
  );

/** For each column a list with every long text in it. */
export function longColumns(): Readonly<Record<string, Uint8Array>> {
  const texts = longTexts();
  return Object.fromEntries(
    HEADINGS.map((heading, column) => [heading, toCsv([HEADINGS, ...texts.map((text) => FILLED.with(column, text))])]),
  );
}

/** A list in which every cell is as long as cells may be, in many ways. */
export function longestCells(): Uint8Array {
  return toCsv([
    HEADINGS,
    ...longTexts(LONGEST)
      .filter((_, at) => at % 5 === 0)
      .map((text) => FILLED.map(() => text)),
  ]);
}

/** Lists with long texts as headings, some at a time. */
export function longHeadings(): readonly Uint8Array[] {
  const texts = longTexts(LONGEST / 4);
  const halves = [texts.slice(0, texts.length / 2), texts.slice(texts.length / 2)];
  return halves.map((half) => toCsv([[...HEADINGS, ...half], FILLED, FILLED]));
}

const FIELDS = 'partNumber,kind,thread,lengthMm,material,hardnessMin,finish,sheetMinMm,holeMm,edgeMm,note'.split(',');
const PART = ['N-1', 'clinch nut', 'M4', '', 'carbon-steel-hardened', 'HRC 32', 'zinc plated', '1', '5.6', '9', ''];

/** For each field a catalogue with every long text in it. */
export function longCatalogue(): Readonly<Record<string, Uint8Array>> {
  const texts = longTexts();
  return Object.fromEntries(
    FIELDS.map((field, column) => [
      field,
      toCsv([FIELDS, PART, ...texts.map((text, at) => PART.with(0, `N-${at}`).with(column, text))]),
    ]),
  );
}

function toCsv(grid: readonly (readonly string[])[]): Uint8Array {
  const quote = (cell: string) => `"${cell.replaceAll('"', '""')}"`;
  return new TextEncoder().encode(grid.map((cells) => `${cells.map(quote).join(',')}\n`).join(''));
}
