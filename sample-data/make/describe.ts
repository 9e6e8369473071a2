import type { FastenerKind } from '../../src/core/model/fastener.ts';
import { METALS } from './metals.ts';
import { type Part, parts } from './parts.ts';
import type { MaterialCode } from './ranges.ts';

/** A part as a list describes it, and its finish. */
export interface Described {
  readonly kind: string;
  /** "M4", "M4 x 12". */
  readonly size: string;
  readonly metal: string;
  readonly finish: string;
}

const KINDS: Readonly<Record<FastenerKind, string>> = {
  'clinch nut': 'Clinch nut',
  'clinch stud': 'Clinch stud',
  'through standoff': 'Through standoff',
  'blind standoff': 'Blind standoff',
  'clinch pin': 'Clinch pin',
  'captive screw': 'Captive screw',
  'floating nut': 'Floating nut',
};

const METAL_WORDS: Readonly<Record<MaterialCode, string>> = {
  CS: 'hardened steel',
  S3: '300-series stainless',
  S4: 'hardened 400-series stainless',
  AL: 'aluminium',
  PH: 'PH stainless',
};

/** Words for a part number of the demo catalogue; null for one that is not in it. */
export function describe(partNumber: string): Described | null {
  const part = findPart(partNumber.replace(/-A$/, ''));
  if (!part) return null;
  const size = part.lengthMm === null ? part.size : `${part.size} x ${part.lengthMm}`;
  const { finish } = METALS[part.material];
  return { kind: KINDS[part.kind], size, metal: METAL_WORDS[part.material], finish };
}

function findPart(partNumber: string): Part | undefined {
  return parts.find((part) => part.partNumber === partNumber);
}
