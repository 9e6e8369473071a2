import type { DescribedFastener, WorkFacts } from '../model/facts.ts';
import type { HoleReading } from '../model/hole.ts';
import type { DistanceReading, Line, QuantityReading } from '../model/line.ts';
import type { CellFlags } from '../model/list.ts';
import type { MaterialReading } from '../model/sheet.ts';
import type { ThicknessReading } from '../model/thickness.ts';

/** What the cells of a row say, whichever row it is. */
export type Said = Omit<Line, 'row' | 'cells' | 'flags'>;

/**
 * A line that knows which line before it says the same. A copy with something changed (`{ ...line, material }`) does not, nor does one
 * that was sent elsewhere: what they say is theirs alone.
 */
class ReadLine implements Line {
  declare readonly row: number;
  declare readonly cells: readonly string[];
  declare readonly flags: CellFlags;
  declare readonly partNumber: string;
  declare readonly description: string;
  declare readonly panel: string;
  declare readonly quantity: QuantityReading;
  declare readonly material: MaterialReading;
  declare readonly thickness: ThicknessReading;
  declare readonly hole: HoleReading;
  declare readonly edge: DistanceReading;
  declare readonly spacing: DistanceReading;
  declare readonly bend: DistanceReading;
  declare readonly fastenerMaterial: string;
  declare readonly finish: string;
  declare readonly thread: string;
  declare readonly length: string;
  declare readonly load: string;
  declare readonly note: string;
  declare readonly facts: WorkFacts;
  declare readonly described: DescribedFastener;
  declare readonly seemsToBe: string | null;
  readonly #first: Line;

  constructor(row: number, cells: readonly string[], flags: CellFlags, said: Said, first?: Line) {
    this.row = row;
    this.cells = cells;
    this.flags = flags;
    this.partNumber = said.partNumber;
    this.description = said.description;
    this.panel = said.panel;
    this.quantity = said.quantity;
    this.material = said.material;
    this.thickness = said.thickness;
    this.hole = said.hole;
    this.edge = said.edge;
    this.spacing = said.spacing;
    this.bend = said.bend;
    this.fastenerMaterial = said.fastenerMaterial;
    this.finish = said.finish;
    this.thread = said.thread;
    this.length = said.length;
    this.load = said.load;
    this.note = said.note;
    this.facts = said.facts;
    this.described = said.described;
    this.seemsToBe = said.seemsToBe;
    this.#first = first ?? this;
  }

  static firstOf<Row extends object>(line: Row): Row | Line {
    return #first in line ? line.#first : line;
  }
}

/** The first line that says something. */
export function firstLine(row: number, cells: readonly string[], flags: CellFlags, said: Said): Line {
  return new ReadLine(row, cells, flags, said);
}

/** A further line that says what `first` does. */
export function lineLike(first: Line, row: number, cells: readonly string[], flags: CellFlags): Line {
  return new ReadLine(row, cells, flags, first, first);
}

/** The line that stands for all that say the same in every cell that is read, from one reading of a list; for any other line itself. */
export function firstAlike<Row extends object>(line: Row): Row | Line {
  return ReadLine.firstOf(line);
}
