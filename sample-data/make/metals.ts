import type { Part } from './parts.ts';
import type { MaterialCode } from './ranges.ts';

/** What the demo catalogue says of each material code, in the words of the catalogue table. */
export const METALS: Readonly<Record<MaterialCode, { material: string; hardnessMin: string; finish: string }>> = {
  CS: { material: 'carbon-steel-hardened', hardnessMin: 'HRC 32', finish: 'zinc plated' },
  S3: { material: 'stainless-300', hardnessMin: 'HRB 95', finish: 'passivated' },
  S4: { material: 'stainless-400-hardened', hardnessMin: 'HRC 38', finish: 'passivated' },
  AL: { material: '2024-T4', hardnessMin: 'HRB 70', finish: 'plain' },
  PH: { material: 'stainless-ph', hardnessMin: 'HRC 40', finish: 'passivated' },
};

interface Statement {
  readonly kind: Part['kind'];
  readonly sizes: readonly Part['size'][];
  readonly material: MaterialCode;
  /** Empty: the catalogue names neither a hardness nor a limit, so that the minimum of the class is all there is. */
  readonly limit: string;
}

/** Where the catalogue does not state the hardness of the part: it gives the hardest sheet instead, or nothing. */
const INSTEAD: readonly Statement[] = [
  { kind: 'clinch nut', sizes: ['M5'], material: 'CS', limit: 'HRB 82' },
  { kind: 'clinch nut', sizes: ['M5', 'M6'], material: 'S4', limit: 'HRB 94' },
  { kind: 'clinch nut', sizes: ['M3'], material: 'S4', limit: 'HRB 86' },
  { kind: 'clinch pin', sizes: ['3', '4', '5'], material: 'S4', limit: 'HRB 86' },
  { kind: 'clinch nut', sizes: ['10-24', '1/4-20'], material: 'CS', limit: '' },
  { kind: 'clinch pin', sizes: ['3', '4', '5'], material: 'CS', limit: '' },
];

/** Hardness of the part, or the hardest sheet it takes, or neither. */
export function hardnessOf({ kind, size, material }: Part): { hardnessMin: string; sheetHardnessMax: string } {
  const instead = INSTEAD.find((one) => one.kind === kind && one.material === material && one.sizes.includes(size));
  if (instead) return { hardnessMin: '', sheetHardnessMax: instead.limit };
  return { hardnessMin: METALS[material].hardnessMin, sheetHardnessMax: '' };
}
