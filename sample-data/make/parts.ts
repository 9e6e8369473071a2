import type { FastenerKind } from '../../src/core/model/fastener.ts';
import { type MaterialCode, type Range, ranges } from './ranges.ts';
import type { Size } from './threads.ts';

/** One made-up part: what its number says. */
export interface Part {
  readonly partNumber: string;
  readonly kind: FastenerKind;
  readonly size: Size;
  /** Minimum sheet in tenths of a millimetre. */
  readonly shank: number;
  readonly lengthMm: number | null;
  readonly material: MaterialCode;
}

const WORDS: Readonly<Record<FastenerKind, string>> = {
  'clinch nut': 'NUT',
  'clinch stud': 'STUD',
  'through standoff': 'SPACER',
  'blind standoff': 'BLINDSPACER',
  'clinch pin': 'PIN',
  'captive screw': 'CAPTIVE',
  'floating nut': 'FLOATNUT',
};

/** Every part of every range. */
export const parts: readonly Part[] = ranges.flatMap(partsOf);

function partsOf({ kind, sizes, shanks, lengths, materials }: Range): Part[] {
  const lengthsOrNone: readonly (number | null)[] = lengths ?? [null];
  return sizes.flatMap((size) =>
    shanks.flatMap((shank) =>
      lengthsOrNone.flatMap((lengthMm) =>
        materials.map((material) => numbered({ kind, size, shank, lengthMm, material })),
      ),
    ),
  );
}

function numbered(part: Omit<Part, 'partNumber'>): Part {
  const shank = String(part.shank).padStart(2, '0');
  const length = part.lengthMm === null ? [] : [part.lengthMm];
  return { ...part, partNumber: [WORDS[part.kind], part.size, shank, ...length, part.material].join('-') };
}
