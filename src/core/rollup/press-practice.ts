import { zeroAcceptanceSample } from '../calc/zero-acceptance-sample.ts';
import type { FastenerKind } from '../model/fastener.ts';

/** Said wherever what follows is shown: nobody has written it down in a text that we have read. */
export const PRACTICE_MARK = 'common practice, no source';

/** In which order a panel is pressed where the user says nothing else. */
export const SUGGESTED_ORDER = `Suggested order: largest force last (${PRACTICE_MARK}).`;

/** Said where the user has put the steps in another order. */
export const ORDER_SET = 'Order as set by hand.';

/** From which side every press-in fastener goes in. Source: common practice, no source. */
export const PRESS_SIDE = 'Punch side; never the painted face';

/** Punch and anvil by kind of fastener. The part's own data go before it. Source: common practice, no source. */
export const FIXTURES: Readonly<Record<FastenerKind, string>> = {
  'clinch nut': 'flat punch on the nut, flat anvil under the sheet, faces parallel',
  'clinch stud':
    'flat punch on the head, flat anvil with a hole that clears the thread and is deeper than the stud is long',
  'through standoff':
    'flat punch on the head, flat anvil with a hole that clears the barrel and is deeper than the standoff is long',
  'blind standoff':
    'flat punch on the head, flat anvil with a hole that clears the barrel and is deeper than the standoff is long',
  'clinch pin': 'flat punch on the head, flat anvil with a hole that clears the pin and is deeper than the pin is long',
  'captive screw':
    'hollow punch on the rim of the retainer, clear of the screw; flat anvil, with a clearance hole where the screw comes through',
  'floating nut':
    'punch on the rim of the retainer only, clear of the nut, which must float afterwards; flat anvil under the sheet',
};

/** Looked at on the first piece, before the lot is pressed. Source: common practice, no source. */
export const FIRST_PIECE = {
  seat: 'Seated: head, flange or shoulder flat on the sheet all round or flush with it, no gap; the fastener square to the sheet.',
  sheet: 'Sheet: flat, no bulge at the edge, no crack or raised rim at the hole, finish unmarked.',
  thread: 'Thread: go gauge runs freely by hand, the whole length.',
} as const;

const CONFIDENCE = 0.9;
const DEFECTIVE = 0.1;

/** How many pieces the push-out sample shows to be good, in words. */
export const SAMPLE_WORDS = `Push-out sample: the pieces asked for, tested without one failure, show with ${CONFIDENCE * 100} % confidence that fewer than ${DEFECTIVE * 100} % are bad (binomial law; both shares are our judgement). A lot smaller than that: as many as the lot. The test spoils the joint: press the sample into offcuts of the same sheet, same hole and force.`;

/**
 * Pieces of the push-out sample, none of which may fail: 90 % confidence of at most 10 % bad, and never more than the lot. The
 * shares are our judgement. A lot that cannot be counted gets the full sample.
 */
export function pushOutSample(lot: number | null): number | null {
  const sample = zeroAcceptanceSample(CONFIDENCE, DEFECTIVE);
  return sample === null || lot === null ? sample : Math.min(sample, lot);
}
