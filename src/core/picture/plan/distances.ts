import type { Outcome } from '../../model/outcome.ts';
import { drawable } from '../drawing.ts';
import { findingOf, markOf, type PicturedRow, showMm } from '../pictured-row.ts';

/** One distance from the centre of the hole, given and needed. */
export interface Distance {
  readonly what: 'edge' | 'bend' | 'neighbour';
  readonly givenMm: number | null;
  readonly neededMm: number | null;
  /** "edge 12.00", "edge not given". */
  readonly given: string;
  /** "needs 9.00"; null where nothing says what is needed. */
  readonly needed: string | null;
  /** What the check of this distance is worth a mark for. */
  readonly mark: { readonly outcome?: Outcome };
  /** Set where the given distance is too short. */
  readonly missing: Outcome | null;
  /** False where it would make everything else too small to see. */
  readonly isDrawn: boolean;
  readonly note: string | null;
}

/** Farther than so many times the needed distance, or the flange, a line is told and not drawn. */
const FARTHEST = 3;
const NAMES = { edge: 'edge', bend: 'bend', neighbour: 'next hole' } as const;
const RULES = { edge: 'clinch/edge', bend: 'clinch/bend', neighbour: 'clinch/spacing' } as const;
const NOTES = {
  edge: null,
  bend: 'The bend is taken as the outside face of a right-angled flange.',
  neighbour: 'The size of the next hole is not known.',
} as const;

/** The distances that the list gives, and beside them those that the part needs. */
export function planDistances(row: PicturedRow): readonly Distance[] {
  const { edge, bend, spacing } = row.line.line;
  const values = (rule: string) => findingOf(row, rule)?.values ?? {};
  const { spacingMinMm = 0, neighbourMinMm = 0 } = values('clinch/spacing');
  return [
    distance(row, 'edge', edge, row.part?.edgeMm),
    distance(row, 'bend', bend, values('clinch/bend').bendMinMm),
    distance(row, 'neighbour', spacing, Math.max(spacingMinMm, neighbourMinMm)),
  ].filter(({ what, givenMm, neededMm }) => givenMm !== null || (what === 'edge' && neededMm !== null));
}

/** Given and needed in one line: "edge 12.00, needs 9.00". */
export function describeDistance({ given, needed }: Distance): string {
  return [given, ...(needed === null ? [] : [needed])].join(', ');
}

function distance(
  row: PicturedRow,
  what: Distance['what'],
  reading: { readonly how: string; readonly mm: number | null },
  needed: number | null | undefined,
): Distance {
  const givenMm = reading.how === 'size' ? drawable(reading.mm) : null;
  const neededMm = drawable(needed);
  const mark = markOf(row, RULES[what]);
  const isShort = givenMm !== null && neededMm !== null && givenMm < neededMm;
  const reach = Math.max(neededMm ?? 0, drawable(row.part?.flangeMm) ?? 0, drawable(row.part?.holeMm) ?? 0) || 10;
  return {
    what,
    givenMm,
    neededMm,
    given: givenMm === null ? `${NAMES[what]} not given` : `${NAMES[what]} ${showMm(givenMm, row)}`,
    needed: neededMm === null ? null : `needs ${showMm(neededMm, row)}`,
    mark,
    missing: isShort && (mark.outcome === 'fails' || mark.outcome === 'marginal') ? mark.outcome : null,
    isDrawn: givenMm === null || givenMm <= FARTHEST * reach,
    note: NOTES[what],
  };
}
