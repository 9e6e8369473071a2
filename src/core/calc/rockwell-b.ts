import { rememberFor } from '../caching/remember.ts';
import type { SheetFamily } from '../model/sheet.ts';
import type { Hardness } from '../units/hardness.ts';
import { type Scatter, scatterOf } from './hardness-scatter.ts';
import { aluminiumToHrb } from './rockwell-b-aluminium.ts';
import { austeniticToHrb } from './rockwell-b-austenitic.ts';
import { brassToHrb } from './rockwell-b-brass.ts';
import { copperToHrb } from './rockwell-b-copper.ts';
import { HIGHEST_HRB } from './rockwell-b-equivalent.ts';
import type { Reading } from './rockwell-b-reading.ts';
import { steelToHrb } from './rockwell-b-steel.ts';

/** Which conversion applies: the same Brinell number means another Rockwell B in another metal. */
export type MetalClass = 'steel' | 'austenitic' | 'aluminium' | 'brass' | 'copper' | 'titanium';

/** A hardness on the one scale on which fastener and sheet are compared. */
export interface RockwellB {
  /** Rockwell B points, not rounded; Rockwell-B-equivalent above 100, counted as 110 beyond. */
  readonly hrb: number;
  /** True: the metal is softer than `hrb`, which is the foot of its scale. */
  readonly below: boolean;
  /** True above HRB 100, where Rockwell B is no longer measured. */
  readonly equivalent: boolean;
  readonly scatter: Scatter;
  /** Ids of the tables used; none for a value given in HRB. */
  readonly tables: readonly string[];
  /** What the other respected table gives, where there is one. */
  readonly other: { readonly hrb: number; readonly table: string } | null;
}

/**
 * Any stated hardness on Rockwell B. Feet of the scale, below which `below` is true: HRB 41 steel (60 for austenitic Brinell),
 * 35 aluminium, 10 brass and copper. Null where nothing is published for that scale and metal ("off the scale"): any but HRB for
 * titanium, beyond the end of a table, or a value that is not a positive number. Never decreases as the hardness rises.
 */
export function toRockwellB(given: Hardness, metal: MetalClass): RockwellB | null {
  return READERS[metal](given);
}

function convert(given: Hardness, metal: MetalClass): RockwellB | null {
  if (!Number.isFinite(given.value) || given.value < 0) return null;
  const reading = given.scale === 'HRB' ? ownHrb(given.value) : given.value === 0 ? null : CONVERSIONS[metal](given);
  if (reading === null) return null;
  const { hrb, below, tables, other = null } = reading;
  return { hrb, below, equivalent: hrb > 100, scatter: scatterOf(given.scale), tables, other };
}

/** Bronze goes with brass, the nearest metal that has a table; coated steel is compared by its base metal. */
export function metalClassOf(family: SheetFamily): MetalClass {
  return METAL_CLASS[family];
}

const CONVERSIONS: Readonly<Record<MetalClass, (given: Hardness) => Reading | null>> = {
  steel: steelToHrb,
  austenitic: austeniticToHrb,
  aluminium: aluminiumToHrb,
  brass: brassToHrb,
  copper: copperToHrb,
  titanium: () => null,
};

/** Hardnesses are those of alloys and parts, compared over and over. */
const READERS: Readonly<Record<MetalClass, (given: Hardness) => RockwellB | null>> = {
  steel: rememberFor((given) => convert(given, 'steel')),
  austenitic: rememberFor((given) => convert(given, 'austenitic')),
  aluminium: rememberFor((given) => convert(given, 'aluminium')),
  brass: rememberFor((given) => convert(given, 'brass')),
  copper: rememberFor((given) => convert(given, 'copper')),
  titanium: rememberFor((given) => convert(given, 'titanium')),
};

const METAL_CLASS: Readonly<Record<SheetFamily, MetalClass>> = {
  'carbon-steel': 'steel',
  'galvanized-steel': 'steel',
  'galvannealed-steel': 'steel',
  'stainless-austenitic': 'austenitic',
  'stainless-ferritic': 'steel',
  'stainless-martensitic': 'steel',
  aluminium: 'aluminium',
  copper: 'copper',
  brass: 'brass',
  bronze: 'brass',
  titanium: 'titanium',
};

/** The number at which the penetrator of a Rockwell B test has not moved: no reading can be higher. */
const END_OF_SCALE = 130;

/** Rockwell B is taken as given, in any metal; what lies beyond 110 counts as 110, as it does from every other scale. */
function ownHrb(value: number): Reading | null {
  return value > END_OF_SCALE ? null : { hrb: Math.min(value, HIGHEST_HRB), below: false, tables: [] };
}
