import type { Fastener } from '../../model/fastener.ts';
import { parseThread } from '../../units/thread.ts';
import type { Subject } from '../rule.ts';
import { pitchOf } from './thread-pitch.ts';

/** How a screw stands in the thread of a fastener. */
export interface ScrewFit {
  /** Thickness of what it clamps. */
  readonly matingMm: number;
  /** How far the thread lies behind the face of the sheet. */
  readonly recessMm: number;
  /** From the start of the thread to the end of the screw; negative where the screw does not reach. */
  readonly depthMm: number;
  /** Length of the thread that the fastener offers. */
  readonly threadMm: number;
  readonly pitchMm: number;
  /** One diameter; of a nut lower than that, the whole of it. */
  readonly wantedMm: number;
  readonly isBlind: boolean;
}

/** Does a screw go into it? Studs, pins and captive screws bring their own. */
export function takesScrew({ kind }: Fastener): boolean {
  return kind !== 'clinch stud' && kind !== 'clinch pin' && kind !== 'captive screw';
}

/** Null where a piece is missing: see `missingForScrew`. */
export function screwFit(subject: Subject): ScrewFit | null {
  const { fastener, line } = subject;
  const thread = fastener && parseThread(fastener.thread ?? '');
  const pitchMm = thread && pitchOf(thread);
  const threadMm = fastener && threadLength(fastener);
  const lengthMm = line.facts.screw?.lengthMm ?? null;
  const { matingMm } = line.facts;
  if (!thread || !pitchMm || !threadMm || lengthMm === null || matingMm === null) return null;
  const recessMm = recessOf(subject);
  return {
    matingMm,
    recessMm,
    depthMm: lengthMm - matingMm - recessMm,
    threadMm,
    pitchMm,
    wantedMm: isNut(fastener) ? Math.min(thread.majorMm, threadMm) : thread.majorMm,
    isBlind: fastener.kind === 'blind standoff',
  };
}

/** What would have to be known, in words. */
export function missingForScrew({ fastener, line }: Subject): string {
  const { screw, matingMm } = line.facts;
  const thread = fastener && parseThread(fastener.thread ?? '');
  const missing = [
    screw?.lengthMm == null ? 'the length of the screw' : null,
    matingMm === null ? 'the thickness of what it clamps' : null,
    thread && pitchOf(thread) ? null : 'the thread of the fastener',
    fastener && threadLength(fastener) ? null : 'kind and height of the fastener',
  ];
  return missing.filter((piece) => piece !== null).join(', ');
}

function isNut({ kind }: Fastener): boolean {
  return kind === 'clinch nut' || kind === 'floating nut';
}

/** A nut is threaded through head and shank, a standoff over its length. */
function threadLength(fastener: Fastener): number | null {
  const { kind, lengthMm, heightMm, shankMm } = fastener;
  if (isNut(fastener)) return heightMm === null ? null : heightMm + (shankMm ?? 0);
  return kind === null ? null : (lengthMm ?? heightMm);
}

/** How far the thread of a nut lies behind the face of the sheet that the screw comes through. */
function recessOf({ fastener, sheets }: Subject): number {
  if (!fastener || !isNut(fastener)) return 0;
  const thickest = Math.max(...sheets.map(({ thicknessMm }) => thicknessMm ?? 0));
  return Math.max(0, thickest - (fastener.shankMm ?? thickest));
}
