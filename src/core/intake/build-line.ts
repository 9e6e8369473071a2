import { createNumbers, numberTuples } from '../caching/numbers.ts';
import { rememberTexts } from '../caching/remember.ts';
import { createRowKinds } from '../caching/row-kinds.ts';
import type { Line } from '../model/line.ts';
import type { CellFlags, Column, Role } from '../model/list.ts';
import type { RawRow } from '../model/raw.ts';
import type { MaterialReading } from '../model/sheet.ts';
import type { ThicknessReading } from '../model/thickness.ts';
import { namesFastener } from './columns.ts';
import { distrust } from './distrust.ts';
import { findLongCell } from './long-cells.ts';
import { NO_FLAGS, type Places, placesOf } from './pick-cells.ts';
import { createCellReaders } from './read-cells.ts';
import { firstAlike, firstLine, lineLike, type Said } from './read-line.ts';
import { createWordReaders } from './read-words.ts';
import { isLooseHardware, seemsToBe } from './rows.ts';

/**
 * Reads the rows of one list. What equal cells say is read once and comes out as the same object; of rows that are the same in all cells
 * that are read, each knows the first (`firstAlike`).
 */
export interface LineReader {
  /** One row, cell by cell; without its facts where a cell is too long to be read. */
  readonly read: (row: RawRow) => Line;
  /** The line with the sheet of its panel; what its words say is read anew, as a sheet may bring its finish with it. */
  readonly withSheet: (line: Line, material: MaterialReading, thickness: ThicknessReading) => Line;
}

/** A reader for rows with those columns; it keeps what it has read for as long as it lives. */
export function createLineReader(columns: readonly Column[]): LineReader {
  const at = placesOf(columns);
  const say = createSayer(at);
  const kindOf = createRowKinds(cellsRead(at));
  const firsts: Line[] = [];
  return {
    read: ({ number, cells, flags }) => {
      if (flags) return firstLine(number, cells, flags, say(cells, flags));
      const kind = kindOf(cells);
      const first = firsts[kind];
      if (first) return lineLike(first, number, cells, NO_FLAGS);
      const line = firstLine(number, cells, NO_FLAGS, say(cells, NO_FLAGS));
      firsts.push(line);
      return line;
    },
    withSheet: createSheetGiver(at),
  };
}

/** Roles whose cells are read into lines. */
const READ: readonly Role[] = [
  ...(['partNumber', 'description', 'panel', 'parent', 'quantity', 'material', 'thickness', 'hole', 'edge'] as const),
  ...(['spacing', 'bend', 'fastenerMaterial', 'finish', 'thread', 'length', 'load', 'note'] as const),
];

/** 0-based columns of the cells that are read into lines. */
export function columnsRead(columns: readonly Column[]): readonly number[] {
  return cellsRead(placesOf(columns));
}

function cellsRead(at: Places): readonly number[] {
  return READ.flatMap((role) => {
    const { index = 0, through = index } = at[role].column ?? {};
    return at[role].column ? Array.from({ length: through - index + 1 }, (_, step) => index + step) : [];
  });
}

function createSayer(at: Places): (cells: readonly string[], flags: CellFlags) => Said {
  const readers = createCellReaders(at);
  const { factsOf, describedOf } = createWordReaders(at);
  const thingOf = createThingFinder(at);
  const places = cellsRead(at);
  return (cells, flags) => {
    const partNumber = at.partNumber.text(cells);
    const description = at.description.text(cells);
    const material = readers.material(at.material.text(cells));
    const said: Said = {
      partNumber,
      description,
      panel: at.panel.text(cells) || at.parent.text(cells),
      quantity: readers.quantity(at.quantity.text(cells), at.quantity.isSpoiled(flags)),
      material,
      thickness: readers.thickness(at.thickness.text(cells), at.thickness.isSpoiled(flags), material),
      hole: readers.hole(at.hole.text(cells), at.hole.isSpoiled(flags)),
      edge: readers.edge(at.edge.text(cells), at.edge.isSpoiled(flags)),
      spacing: readers.spacing(at.spacing.text(cells), at.spacing.isSpoiled(flags)),
      bend: readers.bend(at.bend.text(cells), at.bend.isSpoiled(flags)),
      fastenerMaterial: at.fastenerMaterial.text(cells),
      finish: at.finish.text(cells),
      thread: at.thread.text(cells),
      length: at.length.text(cells),
      load: at.load.text(cells),
      note: at.note.text(cells),
      facts: factsOf(cells, flags, material),
      described: describedOf(cells, flags),
      seemsToBe: thingOf(partNumber, description),
    };
    return findLongCell(cells, places) === undefined ? said : distrust(said);
  };
}

/** Lines that say the same and take the same sheet say the same again. */
function createSheetGiver(at: Places): LineReader['withSheet'] {
  const { factsOf } = createWordReaders(at);
  const numberOf = createNumbers<object>();
  const together = numberTuples(3);
  const firsts: Line[] = [];
  return (line, material, thickness) => {
    const { row, cells, flags } = line;
    const first = firsts[together([firstAlike(line), material, thickness].map(numberOf))];
    if (first) return lineLike(first, row, cells, flags);
    const facts = factsOf(cells, flags, material);
    const given = firstLine(row, cells, flags, { ...line, material, thickness, facts });
    firsts.push(given);
    return given;
  };
}

/** One row by itself; for several rows of one list a reader is made once. */
export function buildLine(row: RawRow, columns: readonly Column[]): Line {
  return createLineReader(columns).read(row);
}

/** In a column headed "Fastener P/N" a row is a fastener, even if its description only says which panel it is for. */
function createThingFinder({
  partNumber: { column },
}: Places): (partNumber: string, description: string) => string | null {
  const isOfFasteners = namesFastener(column?.heading ?? '');
  return rememberTexts((partNumber: string, description: string) => {
    const thing = seemsToBe(partNumber, description);
    return isOfFasteners && partNumber !== '' && thing && !isLooseHardware(thing) ? null : thing;
  });
}
