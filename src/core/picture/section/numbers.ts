import type { FastenerKind } from '../../model/fastener.ts';
import { holeBandOf } from '../../rules/hole-band.ts';
import { pitchOf } from '../../rules/joint/thread-pitch.ts';
import { parseThread } from '../../units/thread.ts';
import { drawable } from '../drawing.ts';
import type { PicturedRow } from '../pictured-row.ts';

/** Every number that a section is drawn from, in mm; null is not known. */
export interface SectionNumbers {
  readonly kind: FastenerKind | null;
  readonly flush: boolean | null;
  readonly thicknessMm: number | null;
  readonly thinnestMm: number | null;
  readonly sheetMinMm: number | null;
  readonly sheetMaxMm: number | null;
  /** As the list gives it. */
  readonly givenHoleMm: number | null;
  /** As the catalogue gives it. */
  readonly neededHoleMm: number | null;
  readonly holeLowMm: number | null;
  readonly holeHighMm: number | null;
  readonly flangeMm: number | null;
  readonly heightMm: number | null;
  readonly lengthMm: number | null;
  readonly shankMm: number | null;
  /** Outer and inner diameter of the thread. */
  readonly majorMm: number | null;
  readonly minorMm: number | null;
  readonly edgeMm: number | null;
  readonly edgeMinMm: number | null;
}

/** Depth of a basic thread profile on the diameter, in pitches. Source: ISO 68-1. */
const PROFILE_DEPTH = 1.082532;

/** The numbers of a row that can be drawn: what is no positive number counts as not known. */
export function sectionNumbers({ line: { line, sheet }, part }: PicturedRow): SectionNumbers {
  const thread = parseThread(part?.thread ?? '');
  const pitchMm = thread && pitchOf(thread);
  const band = part && holeBandOf(part);
  return {
    kind: part?.kind ?? null,
    flush: part?.flush ?? null,
    thicknessMm: drawable(sheet?.thicknessMm),
    thinnestMm: drawable(sheet?.thinnestMm),
    sheetMinMm: drawable(part?.sheetMinMm),
    sheetMaxMm: drawable(part?.sheetMaxMm),
    givenHoleMm: line.hole.how === 'size' ? drawable(line.hole.mm) : null,
    neededHoleMm: drawable(part?.holeMm),
    holeLowMm: drawable(band?.holeLowMm),
    holeHighMm: drawable(band?.holeHighMm),
    flangeMm: drawable(part?.flangeMm),
    heightMm: drawable(part?.heightMm),
    lengthMm: drawable(part?.lengthMm),
    shankMm: drawable(part?.shankMm),
    majorMm: drawable(thread?.majorMm),
    minorMm: thread && pitchMm ? drawable(thread.majorMm - PROFILE_DEPTH * pitchMm) : null,
    edgeMm: line.edge.how === 'size' ? drawable(line.edge.mm) : null,
    edgeMinMm: drawable(part?.edgeMm),
  };
}
