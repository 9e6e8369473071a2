import type { DescribedFastener, WorkFacts } from '../model/facts.ts';
import type { HoleReading } from '../model/hole.ts';
import type { DistanceReading, Line, QuantityReading } from '../model/line.ts';
import type { CellFlags, Column, Role } from '../model/list.ts';
import type { RawRow } from '../model/raw.ts';
import type { MaterialReading } from '../model/sheet.ts';
import type { ThicknessReading, UnitFrom } from '../model/thickness.ts';
import { namesFastener } from './columns.ts';
import { describe } from './description.ts';
import { parseDistance } from './distance.ts';
import { readFacts } from './facts.ts';
import { parseHole } from './hole.ts';
import { parseMaterial } from './material.ts';
import { parseQuantity } from './quantity.ts';
import { rememberCells } from './remember.ts';
import { isLooseHardware, seemsToBe } from './rows.ts';
import { parseThickness } from './thickness.ts';

/** Reads one row cell by cell. `readMaterial` may be given to read each distinct material once. */
export function buildLine(
  row: RawRow,
  columns: readonly Column[],
  readMaterial: (text: string) => MaterialReading = parseMaterial,
): Line {
  const cell = createPicker(row.cells, row.flags ?? {}, columns);
  const partNumber = cell('partNumber').text;
  const description = cell('description').text;
  const material = readMaterial(cell('material').text);
  return {
    row: row.number,
    cells: row.cells,
    flags: row.flags ?? {},
    partNumber,
    description,
    panel: cell('panel').text || cell('parent').text,
    quantity: readQuantity(cell('quantity')),
    material,
    thickness: readThickness(cell('thickness'), material),
    hole: readHole(cell('hole')),
    edge: readDistance(cell('edge')),
    spacing: readDistance(cell('spacing')),
    bend: readDistance(cell('bend')),
    fastenerMaterial: cell('fastenerMaterial').text,
    finish: cell('finish').text,
    thread: cell('thread').text,
    length: cell('length').text,
    load: cell('load').text,
    note: cell('note').text,
    facts: readWords(cell, material),
    described: readDescription(cell),
    seemsToBe: otherThing(partNumber, description, cell('partNumber').column),
  };
}

/** The line with the sheet of its panel; what its words say is read anew, as a sheet may bring its finish with it. */
export function withSheet(
  line: Line,
  columns: readonly Column[],
  material: MaterialReading,
  thickness: ThicknessReading,
): Line {
  const facts = readWords(createPicker(line.cells, line.flags, columns), material);
  return { ...line, material, thickness, facts };
}

/** The cell of a row that has a role. */
interface Picked {
  readonly text: string;
  /** The file holds a date, an error or an uncalculated formula here: what stands in the cell is not what the sender typed. */
  readonly spoiled: boolean;
  readonly column: Column | null;
}

type PickCell = (role: Role) => Picked;

function createPicker(cells: readonly string[], flags: CellFlags, columns: readonly Column[]): PickCell {
  return (role) => {
    const column = columns.find((one) => one.role === role) ?? null;
    const flag = column ? flags[column.index] : undefined;
    return {
      text: column ? textIn(cells, column) : '',
      spoiled: flag !== undefined && flag !== 'merged',
      column,
    };
  };
}

/** The text of a column, or the one text in the columns that it is spread over. */
function textIn(cells: readonly string[], { index, through = index }: Column): string {
  const spread = cells.slice(index, through + 1).find((cell) => cell.trim() !== '');
  return (spread ?? '').trim();
}

const readFactsOnce = rememberCells(readFacts);
const describeOnce = rememberCells(describe);

function readWords(cell: PickCell, material: MaterialReading): WorkFacts {
  const load = cell('load');
  return readFactsOnce({
    finish: cell('finish').text,
    note: cell('note').text,
    description: cell('description').text,
    hole: cell('hole').text,
    load: load.spoiled ? '' : load.text,
    sheetFinish: material.finish ?? '',
    loadHeading: load.column?.heading ?? '',
  });
}

function readDescription(cell: PickCell): DescribedFastener {
  const [thread, length] = [cell('thread'), cell('length')];
  return describeOnce({
    description: cell('description').text,
    thread: thread.spoiled ? '' : thread.text,
    length: length.spoiled ? '' : length.text,
    finish: cell('finish').text,
    fastenerMaterial: cell('fastenerMaterial').text,
    lengthUnit: length.column?.unit ?? null,
  });
}

/** In a column headed "Fastener P/N" a row is a fastener, even if its description only says which panel it is for. */
function otherThing(partNumber: string, description: string, column: Column | null): string | null {
  const thing = seemsToBe(partNumber, description);
  const isFastenerColumn = column !== null && partNumber !== '' && namesFastener(column.heading);
  return isFastenerColumn && thing && !isLooseHardware(thing) ? null : thing;
}

function unitOf(column: Column | null): { unit: Column['unit']; from: UnitFrom | null } {
  const from = column?.unitFrom ?? null;
  return { unit: column?.unit ?? null, from: from === 'user' ? 'heading' : from };
}

function readQuantity({ text, spoiled }: Picked): QuantityReading {
  return spoiled ? { text, how: 'unreadable', value: null } : parseQuantity(text);
}

/** A blank thickness is taken from the material cell when that names one ("CRS 16 ga"). */
function readThickness({ text, spoiled, column }: Picked, material: MaterialReading): ThicknessReading {
  const own = parseThickness(text, unitOf(column));
  if (spoiled) return { ...own, ...NO_SIZE, number: null, gaugeSystem: null, toleranceMm: null };
  if (own.how !== 'blank' || !material.thicknessText) return own;
  return parseThickness(material.thicknessText, { unit: null, from: 'cell' });
}

function readHole({ text, spoiled, column }: Picked): HoleReading {
  const reading = parseHole(text, unitOf(column));
  return spoiled ? { ...reading, ...NO_SIZE, lowMm: null, highMm: null } : reading;
}

function readDistance({ text, spoiled, column }: Picked): DistanceReading {
  const reading = parseDistance(text, unitOf(column));
  return spoiled ? { ...reading, ...NO_SIZE } : reading;
}

const NO_SIZE = { how: 'unreadable', mm: null, otherMm: null, unitFrom: null } as const;
