import type { FinishKind } from '../../model/facts.ts';
import type { AlloyEntry, SheetFamily } from '../../model/sheet.ts';
import type { FastenerMaterialEntry } from '../../reference/fastener-materials.ts';
import { anodicIndex } from '../../reference/finish/anodic-index.ts';
import { galvanicDisagreements } from '../../reference/finish/galvanic-disagreements.ts';

/** What one part shows to the other where they touch. */
export interface Surface {
  readonly name: string;
  /** Volts from gold, by the table of anodic indices. */
  readonly indexV: number;
  /** How far an independent list is from that index, where the two disagree: the screen then says little. */
  readonly apartV: number | null;
}

/** How a surface is called, and its row in the table of anodic indices. */
type Named = readonly [name: string, index: string];

const ZINC_PLATE: Named = ['zinc plate', 'zinc'];

/** The metal of a plating; films of chromate, phosphate and oxide do not count (MIL-DTL-14072F 3.13.1a), nor do paints, which are torn at the hole. */
const PLATINGS: Readonly<Partial<Record<FinishKind, Named>>> = {
  'zinc-electroplate': ZINC_PLATE,
  'zinc-flake': ['zinc flake, taken as zinc', 'zinc'],
  'cadmium-electroplate': ['cadmium plate', 'cadmium'],
  'hot-dip-zinc': ['hot-dip zinc', 'hot-dip-zinc'],
  'nickel-plate': ['nickel plate', 'nickel'],
  'tin-plate': ['tin plate', 'tin'],
  'chromium-plate': ['chromium plate', 'chromium'],
};

const BASES: Readonly<Record<SheetFamily, Named>> = {
  'carbon-steel': ['bare steel', 'steel'],
  'galvanized-steel': ['galvanized steel', 'hot-dip-zinc'],
  'galvannealed-steel': ['galvannealed steel, taken as hot-dip zinc', 'hot-dip-zinc'],
  'stainless-austenitic': ['300-series stainless', 'stainless-300'],
  'stainless-ferritic': ['400-series stainless', 'stainless-400'],
  'stainless-martensitic': ['400-series stainless', 'stainless-400'],
  aluminium: ['aluminium', 'aluminium'],
  copper: ['copper', 'copper'],
  brass: ['brass', 'brass'],
  bronze: ['bronze', 'brass'],
  titanium: ['titanium', 'nickel'],
};

const SERIES_2000: Named = ['aluminium, 2000 series', 'aluminium-2000'];
const PRECIPITATION: Named = ['precipitation-hardened stainless, taken as 300 series', 'stainless-300'];

/** Surface of a fastener; null under a hard anodic film, which does not conduct. */
export function fastenerSurface(metal: FastenerMaterialEntry, finish: FinishKind | null): Surface | null {
  if (metal.fastenerClass === 'stainless-ph') return surfaceOf(finish, PRECIPITATION);
  return surfaceOf(finish, /2024/.test(metal.id) ? SERIES_2000 : BASES[metal.family]);
}

/** Surface of a sheet; null under a hard anodic film. */
export function sheetSurface({ family, alloy, temper }: AlloyEntry, finish: FinishKind | null): Surface | null {
  const isElectro = family === 'galvanized-steel' && temper.includes('electro');
  if (isElectro) return surfaceOf(finish, ZINC_PLATE);
  return surfaceOf(finish, family === 'aluminium' && /^2\d{3}/.test(alloy) ? SERIES_2000 : BASES[family]);
}

function surfaceOf(finish: FinishKind | null, base: Named): Surface | null {
  if (finish === 'hard-anodised') return null;
  const [name, id] = (finish && PLATINGS[finish]) ?? base;
  const index = anodicIndex.rows.find((row) => row.id === id);
  return index ? { name, indexV: index.indexV, apartV: apartOf(name === 'titanium' ? name : id) } : null;
}

function apartOf(material: string): number | null {
  const row = galvanicDisagreements.rows.find((one) => one.material === material && one.verdict === 'disagree');
  return row ? Math.abs(row.indexLowV - row.otherListV) : null;
}
