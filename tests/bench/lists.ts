/** A list as bytes of a CSV file, with the catalogue that it is judged by. */
export interface BenchList {
  readonly list: Uint8Array;
  readonly catalogue: Uint8Array;
}

/** Whether rows say the same as others, as in a real list of many panels, or never. */
export type Repetition = 'realistic' | 'none';

/** Headings of the 25 columns. */
const HEADINGS = [
  'Line',
  'Part No.',
  'Description',
  'Qty',
  'Panel',
  'Ref. des.',
  'Material',
  'Thickness (mm)',
  'Hole dia. (mm)',
  'Edge distance (mm)',
  'Spacing (mm)',
  'Bend distance (mm)',
  'Finish',
  'Thread',
  'Length (mm)',
  'Remarks',
  'Supplier',
  'Unit price',
  'UOM',
  'Stock',
  'Drawing',
  'Revision',
  'Buyer',
  'Cost centre',
  'Released',
] as const;

const SEED = 20_250_115;
const PANELS = 60;
/** Different part, sheet, hole and finish together. */
const COMBINATIONS = 300;
/** Every so many rows has a remark, and of those every so many one that no other row has. */
const REMARK_EVERY = 12;
const OWN_REMARK_EVERY = 20;
const PARTS_PER_KIND = 250;

/** A list of so many rows below its headings, the same each time. */
export function makeList(rows: number, repetition: Repetition): BenchList {
  const random = createRandom(SEED);
  const parts = makeParts(random);
  const rowOf = repetition === 'none' ? distinctRows(parts) : repeatingRows(parts, random);
  const lines = Array.from({ length: rows }, (_, at) => rowOf(at));
  const bytes = (table: readonly (readonly string[])[]) => new TextEncoder().encode(table.map(toLine).join(''));
  return { list: bytes([HEADINGS, ...lines]), catalogue: bytes([PART_FIELDS, ...parts.map(cellsOfPart)]) };
}

/** What a list asks of one row; the other columns are filled alike. */
interface Asked {
  readonly part: Part;
  readonly panel: string;
  readonly metal: string;
  readonly thickness: string;
  readonly hole: string;
  readonly edge: string;
  readonly spacing: string;
  readonly bend: string;
  readonly finish: string;
}

const METALS = ['DC01', '5052-H32', '6061-T6', '304', '430', 'S355MC', 'DX51D+Z', '3003-H14', 'CRS', '1.4301'];
const THICKNESSES = ['0.8', '1', '1.2', '1.5', '1.6', '2', '2.5', '3'];
const FINISHES = ['', 'zinc plated', 'passivated', 'plain', 'panel powder coated 80 um after assembly'];
const REMARKS = ['do not deburr', 'mask hole', 'see drawing', 'punched', 'press from burr side', 'first article'];

/** Some hundred sheets with their parts, over and over on the same panels; designators and some remarks are the row's own. */
function repeatingRows(parts: readonly Part[], random: Random): (at: number) => readonly string[] {
  const panels = Array.from({ length: PANELS }, (_, at) => ({
    panel: `PNL-${String(at + 1).padStart(3, '0')}`,
    metal: random.oneOf(METALS),
    thickness: random.oneOf(THICKNESSES),
  }));
  const combinations = Array.from({ length: COMBINATIONS }, (_, at): Asked => {
    const part = random.oneOf(parts);
    return {
      ...(panels[at % PANELS] ?? panels[0]!),
      part,
      hole: random.below(8) === 0 ? (part.holeMm + 0.15).toFixed(2) : part.holeMm.toFixed(2),
      edge: (part.edgeMm + random.below(6) - 1).toFixed(1),
      spacing: random.below(3) === 0 ? (part.edgeMm + random.below(4)).toFixed(1) : '',
      bend: random.below(4) === 0 ? (part.edgeMm + 4).toFixed(1) : '',
      finish: random.oneOf(FINISHES),
    };
  });
  return (at) => {
    return cellsOf(at, random.oneOf(combinations), 1 + random.below(12), remarkOf(at));
  };
}

/** No two rows ask for the same part in the same sheet and hole at the same distance, and hardly two cells of lengths are alike. */
function distinctRows(parts: readonly Part[]): (at: number) => readonly string[] {
  return (at) => {
    const part = parts[(at * 7919) % parts.length]!;
    const asked: Asked = {
      part,
      panel: `PNL-${String((at % PANELS) + 1).padStart(3, '0')}`,
      metal: METALS[(at % PANELS) % METALS.length]!,
      thickness: (0.6 + ((at * 31) % 4001) / 1000).toFixed(3),
      hole: (part.holeMm - 0.015 + ((at * 17) % 107) / 1000).toFixed(3),
      edge: (part.edgeMm - 1 + ((at * 13) % 9973) / 1000).toFixed(3),
      spacing: (part.edgeMm - 1 + ((at * 11) % 9967) / 1000).toFixed(3),
      bend: (part.edgeMm + ((at * 19) % 9949) / 1000).toFixed(3),
      finish: FINISHES[at % FINISHES.length]!,
    };
    return cellsOf(at, asked, 1 + (at % 97), remarkOf(at));
  };
}

function remarkOf(at: number): string {
  if (at % REMARK_EVERY !== 0) return '';
  const turn = at / REMARK_EVERY;
  const remark = REMARKS[turn % REMARKS.length]!;
  return turn % OWN_REMARK_EVERY === 0 ? `${remark}, point ${at}` : remark;
}

function cellsOf(at: number, asked: Asked, quantity: number, remark: string): readonly string[] {
  const { part, panel, metal, thickness, hole, edge, spacing, bend, finish } = asked;
  return [
    String(at + 1),
    part.partNumber,
    `${part.kind}, ${part.thread}${part.lengthMm ? ` x ${part.lengthMm}` : ''}, ${part.words}`,
    String(quantity),
    panel,
    `F${at + 1}`,
    metal,
    thickness,
    hole,
    edge,
    spacing,
    bend,
    finish,
    part.thread,
    part.lengthMm ? String(part.lengthMm) : '',
    remark,
    'Invented Supply',
    part.price,
    'pcs',
    'yes',
    `DWG-${panel}`,
    'B',
    'J. Doe',
    'CC-4711',
    '2025-01-15',
  ];
}

/** A catalogued part, invented. */
interface Part {
  readonly partNumber: string;
  readonly kind: string;
  readonly thread: string;
  readonly lengthMm: number | null;
  readonly material: string;
  readonly hardness: string;
  readonly words: string;
  readonly sheetMinMm: number;
  readonly holeMm: number;
  readonly edgeMm: number;
  readonly price: string;
}

const KINDS = ['clinch nut', 'clinch stud', 'through standoff', 'blind standoff'];
const THREADS = [
  { thread: 'M2.5', holeMm: 3.75, edgeMm: 6 },
  { thread: 'M3', holeMm: 4.35, edgeMm: 7 },
  { thread: 'M4', holeMm: 5.6, edgeMm: 9 },
  { thread: 'M5', holeMm: 6.85, edgeMm: 11 },
  { thread: 'M6', holeMm: 8.5, edgeMm: 13 },
];
const FASTENER_METALS = [
  { material: 'carbon-steel-hardened', hardness: 'HRC 32', words: 'hardened steel' },
  { material: 'stainless-300', hardness: 'HRB 95', words: 'stainless' },
  { material: 'stainless-400-hardened', hardness: 'HRC 38', words: 'hardened stainless' },
  { material: '2024-T4', hardness: 'HRB 70', words: 'aluminium' },
];
const SHEET_MINIMA = [0.6, 0.8, 1, 1.4, 2];

function makeParts(random: Random): readonly Part[] {
  return KINDS.flatMap((kind, kindAt) =>
    Array.from({ length: PARTS_PER_KIND }, (_, at): Part => {
      const size = THREADS[at % THREADS.length]!;
      return {
        partNumber: `${'NSTB'[kindAt]}-${size.thread}-${String(at).padStart(4, '0')}`,
        kind,
        ...size,
        ...random.oneOf(FASTENER_METALS),
        lengthMm: kind === 'clinch nut' ? null : 4 + (at % 25),
        sheetMinMm: random.oneOf(SHEET_MINIMA),
        price: (0.05 + random.below(90) / 100).toFixed(2),
      };
    }),
  );
}

const PART_FIELDS = [
  'partNumber',
  'kind',
  'thread',
  'lengthMm',
  'material',
  'hardnessMin',
  'sheetMinMm',
  'shankMm',
  'flush',
  'holeMm',
  'holePlusMm',
  'holeMinusMm',
  'edgeMm',
  'forceSteelKn',
  'forceAluminiumKn',
  'pushOutSteelN',
  'pushOutAluminiumN',
  'torqueOutSteelNm',
  'torqueOutAluminiumNm',
  'stocked',
  'packSize',
  'unitPrice',
  'currency',
  'note',
];

function cellsOfPart(part: Part): readonly string[] {
  const { partNumber, kind, thread, lengthMm, material, hardness, sheetMinMm, holeMm, edgeMm, price } = part;
  const sizes = [sheetMinMm, sheetMinMm - 0.03, 'yes', holeMm, 0.08, 0, edgeMm].map(String);
  const loads = [9.5, 6, 280, 180, 1.1, 0.7].map(String);
  const length = lengthMm === null ? '' : String(lengthMm);
  const head = [partNumber, kind, thread, length, material, hardness];
  return [...head, ...sizes, ...loads, '1000', '500', price, 'EUR', 'invented for the bench'];
}

function toLine(cells: readonly string[]): string {
  return `${cells.map((cell) => (/[",]/.test(cell) ? `"${cell.replaceAll('"', '""')}"` : cell)).join(',')}\r\n`;
}

/** Numbers that look random and are the same each time. */
interface Random {
  below(limit: number): number;
  oneOf<T>(items: readonly T[]): T;
}

/** A linear congruential generator; its upper bits are random enough for a list. */
function createRandom(seed: number): Random {
  let state = seed >>> 0;
  const below = (limit: number) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * limit);
  };
  return { below, oneOf: (items) => items[below(items.length)]! };
}
