import { Pairs } from '../caching/pairs.ts';
import { rememberFor } from '../caching/remember.ts';
import { ounceThickness } from '../calc/copper-ounces.ts';
import { gaugeThickness } from '../calc/gauge.ts';
import { type OrderedSheet, thinnest } from '../calc/thinnest.ts';
import type { PartIndex } from '../catalogue/find-part.ts';
import type { Fastener } from '../model/fastener.ts';
import type { Line } from '../model/line.ts';
import type { AlloyEntry, SheetFamily } from '../model/sheet.ts';
import type { ShopSettings } from '../model/shop.ts';
import type { NamedGauge, ThicknessReading } from '../model/thickness.ts';
import { findAlloy } from '../reference/alloys/index.ts';
import { findFastenerMaterial } from '../reference/fastener-materials.ts';
import type { Sheet, Subject } from '../rules/rule.ts';

const NEAR_MISSES = 3;

/** What a part number leads to: the part on file, or what is near it. */
export type JoinedPart = Pick<Subject, 'fastener' | 'near' | 'fitting' | 'metals'>;

/** Joins the lines of one list with their parts and sheets; equal part numbers give the same object, and so do equal sheets. */
export interface Joiner {
  readonly partOf: (line: Line) => JoinedPart;
  /** The line with its part, with every sheet that its words could mean, and with its pieces in the whole product. */
  readonly subjectOf: (line: Line, part: JoinedPart, pieces: number | null) => Subject;
}

/** Keeps what it has joined for as long as it lives. */
export function createJoiner(parts: PartIndex, shop: ShopSettings): Joiner {
  const onFile = new Map<string, JoinedPart | null>();
  const unlisted = new Pairs<string, Line['described'], JoinedPart>();
  const sheets = new Pairs<Line['material'], ThicknessReading, readonly Sheet[]>();
  const findPart = (partNumber: string) => {
    const fastener = parts.find(partNumber);
    return fastener && { fastener, near: [], fitting: [], metals: metalsOf(fastener) };
  };
  return {
    partOf: (line) => {
      const { partNumber, described } = line;
      let part = onFile.get(partNumber);
      if (part === undefined) {
        part = findPart(partNumber);
        onFile.set(partNumber, part);
      }
      return part ?? unlisted.get(partNumber, described, () => unlistedPart(line, parts));
    },
    subjectOf: (line, { fastener, near, fitting, metals }, pieces) => ({
      line,
      pieces,
      fastener,
      near,
      fitting,
      metals,
      sheets: sheets.get(line.material, line.thickness, () => sheetsOf(line, shop)),
      shop,
    }),
  };
}

function unlistedPart({ partNumber, described }: Line, parts: PartIndex): JoinedPart {
  const fitting = parts.fitting(described, NEAR_MISSES).map((part) => part.partNumber);
  return { fastener: null, near: nearMisses(partNumber, parts), fitting, metals: [] };
}

/** A line with the part given, counted by its own quantity: for trying a substitute. */
export function subjectFor(
  line: Line,
  fastener: Fastener | null,
  shop: ShopSettings,
  near: readonly string[] = [],
): Subject {
  const pieces = line.quantity.value;
  return { line, pieces, fastener, near, fitting: [], metals: metalsOf(fastener), sheets: sheetsOf(line, shop), shop };
}

/** What a part may be made of, by the catalogue's words: the same object for the same part. */
export function metalsOf(fastener: Fastener | null): Subject['metals'] {
  return fastener ? metalsNamed(fastener) : NO_METALS;
}

const NO_METALS: Subject['metals'] = [];
const metalsNamed = rememberFor(({ material }: Fastener): Subject['metals'] =>
  material.candidates.flatMap((id) => findFastenerMaterial(id) ?? []),
);

function nearMisses(partNumber: string, parts: PartIndex): readonly string[] {
  return partNumber.trim() === '' ? [] : parts.near(partNumber, NEAR_MISSES).map((part) => part.partNumber);
}

function sheetsOf({ material, thickness }: Line, shop: ShopSettings): readonly Sheet[] {
  const entries = material.candidates.flatMap((id) => findAlloy(id) ?? []);
  if (entries.length > 0) return entries.map((entry) => sheetOf(entry, entry.family, thickness, shop));
  return [sheetOf(null, material.family, thickness, shop)];
}

function sheetOf(
  entry: AlloyEntry | null,
  family: SheetFamily | null,
  thickness: ThicknessReading,
  shop: ShopSettings,
): Sheet {
  const nominal = nominalOf(thickness, family, entry);
  const least = nominal.thicknessMm !== null && entry ? thinnestOf(nominal.thicknessMm, entry, thickness, shop) : null;
  return {
    entry,
    ...nominal,
    thinnestMm: least?.mm ?? null,
    thinnestTable: least?.table ?? null,
    thinnestAssumed: least?.assumed ?? null,
    otherThinnest:
      nominal.thicknessMm !== null && entry ? otherThinnestOf(nominal.thicknessMm, entry, thickness, shop) : null,
  };
}

function nominalOf(
  { how, mm, number, gaugeSystem }: ThicknessReading,
  family: SheetFamily | null,
  entry: AlloyEntry | null,
) {
  if (how === 'length') return { thicknessMm: mm, thicknessTable: null, otherThickness: null };
  const found =
    number === null
      ? null
      : how === 'ounces'
        ? ouncesOf(number, family)
        : gaugeOf(number, how, family, gaugeSystem ?? systemOf(entry));
  return { thicknessMm: found?.mm ?? null, thicknessTable: found?.table ?? null, otherThickness: found?.other ?? null };
}

function gaugeOf(number: number, how: ThicknessReading['how'], family: SheetFamily | null, system: NamedGauge | null) {
  return how === 'gauge' ? gaugeThickness(number, family, system) : null;
}

/** Sheet sold by weight per area is copper; of another metal it says nothing. */
function ouncesOf(number: number, family: SheetFamily | null) {
  const found = family === 'copper' || family === null ? ounceThickness(number) : null;
  return found && { ...found, other: null };
}

/** Electro-galvanized sheet takes the uncoated gauge table: its coating is a few micrometres. */
function systemOf(entry: AlloyEntry | null): NamedGauge | null {
  return entry?.family === 'galvanized-steel' && entry.temper.includes('electro') ? 'msg' : null;
}

/** A tolerance written in the cell itself goes before any mill's. */
function thinnestOf(mm: number, entry: AlloyEntry, reading: ThicknessReading, shop: ShopSettings) {
  if (reading.toleranceMm) return { mm: mm - reading.toleranceMm.minus, table: null, assumed: null };
  return thinnest(orderedSheet(mm, entry, reading), { standard: shop.thicknessStandard, width: shop.sheetWidth });
}

function otherThinnestOf(mm: number, entry: AlloyEntry, reading: ThicknessReading, shop: ShopSettings) {
  if (reading.toleranceMm) return null;
  const european =
    shop.thicknessStandard === 'en' || (shop.thicknessStandard === 'as-written' && reading.writtenIn === 'mm');
  return thinnest(orderedSheet(mm, entry, reading), { standard: european ? 'us' : 'en', width: shop.sheetWidth });
}

function orderedSheet(mm: number, entry: AlloyEntry, { writtenIn }: ThicknessReading): OrderedSheet {
  return {
    mm,
    family: entry.family,
    alloy: entry.alloy,
    hotRolled: /hot rolled|thermomech/i.test(entry.temper),
    structural: /structural|hsla|thermomech/i.test(entry.temper),
    writtenIn: writtenIn ?? 'mm',
  };
}
