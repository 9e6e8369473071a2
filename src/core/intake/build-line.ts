import { rememberTexts } from '../caching/remember.ts';
import type { Line } from '../model/line.ts';
import type { Column } from '../model/list.ts';
import type { RawRow } from '../model/raw.ts';
import type { MaterialReading } from '../model/sheet.ts';
import type { ThicknessReading } from '../model/thickness.ts';
import { namesFastener } from './columns.ts';
import { NO_FLAGS, type Places, placesOf } from './pick-cells.ts';
import { createCellReaders } from './read-cells.ts';
import { createWordReaders } from './read-words.ts';
import { isLooseHardware, seemsToBe } from './rows.ts';

/** Reads the rows of one list. What equal cells say is read once and comes out as the same object. */
export interface LineReader {
  /** One row, cell by cell. */
  readonly read: (row: RawRow) => Line;
  /** The line with the sheet of its panel; what its words say is read anew, as a sheet may bring its finish with it. */
  readonly withSheet: (line: Line, material: MaterialReading, thickness: ThicknessReading) => Line;
}

/** A reader for rows with those columns; it keeps what it has read for as long as it lives. */
export function createLineReader(columns: readonly Column[]): LineReader {
  const at = placesOf(columns);
  const readers = createCellReaders(at);
  const { factsOf, describedOf } = createWordReaders(at);
  const thingOf = createThingFinder(at);
  return {
    read: ({ number, cells, flags = NO_FLAGS }) => {
      const partNumber = at.partNumber.text(cells);
      const description = at.description.text(cells);
      const material = readers.material(at.material.text(cells));
      return {
        row: number,
        cells,
        flags,
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
    },
    withSheet: (line, material, thickness) => {
      const facts = factsOf(line.cells, line.flags, material);
      return { ...line, material, thickness, facts };
    },
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
