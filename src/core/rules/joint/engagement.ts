import { isAtLeast, isAtMost } from '../../calc/closeness.ts';
import { engagedThreads } from '../../calc/engaged-threads.ts';
import type { WorkFacts } from '../../model/facts.ts';
import type { Judgement } from '../../model/finding.ts';
import type { LengthUnit } from '../../model/list.ts';
import { showValue } from '../../say/show-value.ts';
import { parseThread } from '../../units/thread.ts';
import type { Rule, Subject } from '../rule.ts';
import { missingForScrew, type ScrewFit, screwFit, takesScrew } from './screw-fit.ts';
import { isSameThread } from './thread-pitch.ts';

/** Does the screw that the list names reach far enough into the fastener, and not too far? */
export const engagement: Rule = {
  id: 'joint/engagement',
  title: 'Screw length',
  summary:
    'The screw fits the thread, engages at least one diameter (or the whole of a lower nut), and does not bottom out.',
  reason:
    'Too few threads strip; a screw on the bottom of a blind standoff pushes it out of the sheet instead of clamping.',
  formula:
    'engaged threads = min(screw length - what it clamps, thread of the part) / pitch; at least 1 diameter is wanted.',
  reads: ['partNumber', 'thickness', 'material', 'note', 'load', 'description', 'finish', 'hole'],
  wordsOf: ['hole'],
  needs: ['thread-minimum-engagement', 'practice-bottoming'],
  texts: {
    enough: {
      brief: '{engagedThreads} threads engaged',
      full: 'Screw {screw} through {matingMm:unit}{recess} engages {engagedThreads} full threads ({engagedMm:unit}); {wantedMm:unit} is needed.',
    },
    short: {
      brief: 'Engages {engagedMm}, needs {wantedMm:unit}',
      full: 'Screw {screw} through {matingMm:unit}{recess} engages {engagedThreads} full threads ({engagedMm:unit}), and {wantedMm:unit} is needed. A longer screw would cure it; a stripping test of the joint would settle this.',
    },
    'not-reached': {
      brief: 'Screw does not reach the thread',
      full: 'Screw {screw} through {matingMm:unit}{recess} ends {shortMm:unit} before the thread: take a longer screw.',
    },
    bottoms: {
      brief: 'Screw bottoms out by {beyondMm:unit}',
      full: 'Screw {screw} through {matingMm:unit}{recess} enters {depthMm:unit}, and the blind standoff is {threadMm:unit} long: it bottoms out and does not clamp. Take a shorter screw.',
    },
    'may-bottom': {
      brief: 'Screw may bottom out',
      full: 'Screw {screw} through {matingMm:unit}{recess} enters {depthMm:unit}, less than one pitch from the {threadMm:unit} of the blind standoff. The depth of its thread would settle this; a shorter screw would cure it.',
    },
    'other-thread': {
      brief: 'Screw {screwThread}, fastener {thread}',
      full: 'The list names a screw {screwThread}, and {partNumber} has the thread {thread}: they do not go together.',
    },
    missing: {
      brief: 'Screw length not judged',
      full: 'The list names a screw {screw}, but not everything is known: {missing} would settle this.',
    },
  },
  examples: [
    { cells: { note: 'screw M4x12-8.8, clamps 1.5 mm' }, outcome: 'holds', says: 'enough' },
    { cells: { note: 'screw M4x4, clamps 1.5 mm' }, outcome: 'marginal', says: 'short' },
    { cells: { note: 'screw M4x5, clamps 6 mm' }, outcome: 'fails', says: 'not-reached' },
    {
      cells: { note: 'screw M4x12, clamps 1.5 mm' },
      part: { kind: 'blind standoff', lengthMm: 10 },
      outcome: 'fails',
      says: 'bottoms',
    },
    {
      cells: { note: 'screw M4x12, clamps 2.5 mm' },
      part: { kind: 'blind standoff', lengthMm: 10 },
      outcome: 'marginal',
      says: 'may-bottom',
    },
    { cells: { note: 'screw M5x12, clamps 1.5 mm' }, outcome: 'fails', says: 'other-thread' },
    { cells: { note: 'screw M4x12' }, outcome: 'unknown', says: 'missing' },
  ],
  check(subject: Subject): Judgement | null {
    const { line, fastener, shop } = subject;
    const { screw, matingMm } = line.facts;
    if (!fastener || !screw || !takesScrew(fastener)) return null;
    const words = { screw: nameScrew(screw, shop.units) };
    const cites = ['thread-minimum-engagement', 'practice-bottoming'];
    const own = parseThread(fastener.thread ?? '');
    const its = parseThread(screw.thread);
    if (own && its && !isSameThread(own, its)) {
      const names = { screwThread: its.name, thread: own.name, partNumber: fastener.partNumber };
      return { outcome: 'fails', says: 'other-thread', words: names, cites };
    }
    if (screw.lengthMm === null && matingMm === null) return null;
    const fit = screwFit(subject);
    if (!fit)
      return { outcome: 'unknown', says: 'missing', words: { ...words, missing: missingForScrew(subject) }, cites };
    const recess =
      fit.recessMm > 0 ? `, and ${showValue('recessMm', fit.recessMm, shop.units)} of sheet before the thread,` : '';
    return { ...judgeFit(fit), words: { ...words, recess }, cites };
  },
};

function nameScrew({ thread, lengthMm }: NonNullable<WorkFacts['screw']>, units: LengthUnit): string {
  return lengthMm === null ? thread : `${thread} x ${showValue('lengthMm', lengthMm, units)} ${units}`;
}

function judgeFit({ matingMm, depthMm, threadMm, pitchMm, wantedMm, isBlind }: ScrewFit): Judgement {
  if (isAtMost(depthMm, 0))
    return { outcome: 'fails', says: 'not-reached', values: { engagedThreads: 0, matingMm, shortMm: -depthMm } };
  const engagedMm = Math.min(depthMm, threadMm);
  const engaged = engagedThreads(engagedMm, pitchMm) ?? Number.NaN;
  const values = { engagedThreads: engaged, matingMm, engagedMm, wantedMm, depthMm, threadMm };
  if (isBlind && !isAtMost(depthMm, threadMm)) {
    return { outcome: 'fails', says: 'bottoms', values: { ...values, beyondMm: depthMm - threadMm } };
  }
  if (isBlind && !isAtMost(depthMm, threadMm - pitchMm)) return { outcome: 'marginal', says: 'may-bottom', values };
  if (isAtLeast(engagedMm, wantedMm)) return { outcome: 'holds', says: 'enough', values };
  return { outcome: 'marginal', says: 'short', values };
}
