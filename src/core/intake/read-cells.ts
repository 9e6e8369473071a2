import { rememberText } from '../caching/remember.ts';
import type { HoleReading } from '../model/hole.ts';
import type { DistanceReading, QuantityReading } from '../model/line.ts';
import type { MaterialReading } from '../model/sheet.ts';
import type { ThicknessReading, UnitFrom } from '../model/thickness.ts';
import { parseDistance } from './distance.ts';
import { parseHole } from './hole.ts';
import { parseMaterial } from './material.ts';
import type { Place, Places } from './pick-cells.ts';
import { parseQuantity } from './quantity.ts';
import { type AroundUnit, parseThickness } from './thickness.ts';

/** Reads a cell; what stands in a spoiled one is not believed. */
type ReadCell<Reading> = (text: string, isSpoiled: boolean) => Reading;

/** Readers for the cells of one list: equal cells of a column give the same object. */
export interface CellReaders {
  readonly material: (text: string) => MaterialReading;
  readonly quantity: ReadCell<QuantityReading>;
  readonly thickness: (text: string, isSpoiled: boolean, material: MaterialReading) => ThicknessReading;
  readonly hole: ReadCell<HoleReading>;
  readonly edge: ReadCell<DistanceReading>;
  readonly spacing: ReadCell<DistanceReading>;
  readonly bend: ReadCell<DistanceReading>;
}

/** Readers that keep what they have read for as long as they live. */
export function createCellReaders(places: Places): CellReaders {
  const distance = (place: Place) => {
    const around = unitAround(place);
    return believed(
      (text) => parseDistance(text, around),
      (reading) => ({ ...reading, ...NO_SIZE }),
    );
  };
  const holeUnit = unitAround(places.hole);
  return {
    material: rememberText(parseMaterial),
    quantity: believed(parseQuantity, ({ text }) => ({ text, how: 'unreadable', value: null })),
    thickness: createThicknessReader(places.thickness),
    hole: believed(
      (text) => parseHole(text, holeUnit),
      (reading) => ({ ...reading, ...NO_SIZE, lowMm: null, highMm: null }),
    ),
    edge: distance(places.edge),
    spacing: distance(places.spacing),
    bend: distance(places.bend),
  };
}

/** A blank thickness is taken from the material cell when that names one ("CRS 16 ga"). */
function createThicknessReader(place: Place): CellReaders['thickness'] {
  const around = unitAround(place);
  const inCell = believed(
    (text) => parseThickness(text, around),
    (reading) => ({ ...reading, ...NO_SIZE, number: null, gaugeSystem: null, toleranceMm: null }),
  );
  const inMaterial = rememberText((text) => parseThickness(text, { unit: null, from: 'cell' }));
  return (text, isSpoiled, { thicknessText }) => {
    const own = inCell(text, isSpoiled);
    return own.how !== 'blank' || !thicknessText ? own : inMaterial(thicknessText);
  };
}

const NO_SIZE = { how: 'unreadable', mm: null, otherMm: null, unitFrom: null } as const;

function believed<Reading>(read: (text: string) => Reading, spoil: (reading: Reading) => Reading): ReadCell<Reading> {
  const known = rememberText(read);
  return (text, isSpoiled) => (isSpoiled ? spoil(known(text)) : known(text));
}

function unitAround({ column }: Place): AroundUnit {
  const from: UnitFrom | null = column?.unitFrom === 'user' ? 'heading' : (column?.unitFrom ?? null);
  return { unit: column?.unit ?? null, from };
}
