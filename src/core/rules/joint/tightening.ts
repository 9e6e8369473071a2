import type { Judgement, Words } from '../../model/finding.ts';
import { judgeTogether, SOME_TEXTS } from '../each-candidate.ts';
import type { Rule, Subject } from '../rule.ts';
import { isEnough, judgeRatings, RATING_TEXTS, showLoad } from './rating.ts';
import { type Torque, torqueForClass } from './tightening-range.ts';

/** Does the fastener keep from turning while its screw is tightened? */
export const tightening: Rule = {
  id: 'joint/tightening',
  title: 'Tightening',
  summary: 'The tightening torque, given or usual for the class of the screw, stays below the rated torque-out.',
  reason: 'A fastener that turns while it is tightened has lost its grip for good.',
  formula: 'T = K d F with K from 0.15 to 0.25 and F = 0.75 x proof stress x stress area; T < rated torque-out.',
  reads: ['partNumber', 'material', 'load', 'note', 'description', 'finish', 'hole'],
  wordsOf: ['hole'],
  needs: ['practice-load-ratings', 'torque-factors', 'preload-practice', 'screw-proof-iso-898-1'],
  texts: {
    ...SOME_TEXTS,
    ...RATING_TEXTS('torque-out'),
    below: {
      brief: 'Tightened to {torque}, rated {rated}',
      full: 'Tightening torque {torque} ({because}) stays within the rated torque-out of {rated} in {sheet}.',
    },
    'may-turn': {
      brief: 'Tightened to {torque}, rated {rated}',
      full: 'Tightening torque {torque} ({because}) may exceed the rated torque-out of {rated} in {sheet}. A stated tightening torque of at most {rated} would settle this.',
    },
    turns: {
      brief: 'Tightened to {torque}, rated {rated}',
      full: 'Tightening torque {torque} ({because}) exceeds the rated torque-out of {rated} in {sheet}: the fastener would turn. Tighten less, or take a fastener with a higher rating.',
    },
    'no-class': {
      brief: 'Proof stress of the screw unknown',
      full: 'No proof stress is on file for screws of class {propertyClass} in {thread}: a stated tightening torque would settle this.',
    },
  },
  examples: [
    { cells: { load: 'tighten to 3 Nm' }, outcome: 'holds', says: 'below' },
    { cells: { load: 'tighten to 3.1 Nm' }, outcome: 'fails', says: 'turns' },
    { cells: { note: 'screw M4x12-8.8, clamps 1.5 mm' }, outcome: 'marginal', says: 'may-turn' },
    { cells: { note: 'screw M4x12-A2-70, clamps 1.5 mm' }, outcome: 'unknown', says: 'no-class' },
    { cells: { load: 'tighten to 2.5 Nm', material: '5052-H32 or DC01' }, outcome: 'unknown', says: 'some' },
    {
      cells: { load: 'tighten to 2.5 Nm', material: '5052-H32, DC01 or copper' },
      outcome: 'unknown',
      says: 'some-may',
    },
    { cells: { load: 'tighten to 2.5 Nm', material: '304' }, outcome: 'unknown', says: 'other-metal' },
    { cells: { load: 'tighten to 2.5 Nm', material: '' }, outcome: 'unknown', says: 'no-sheet' },
    { cells: { load: 'tighten to 2.5 Nm' }, part: { torqueOutSteelNm: null }, outcome: 'unknown', says: 'no-rating' },
  ],
  check(subject: Subject): Judgement | null {
    const { line, fastener } = subject;
    const { tighteningNm, screw } = line.facts;
    const propertyClass = screw?.propertyClass ?? null;
    if (!fastener || (tighteningNm === null && propertyClass === null)) return null;
    const thread = screw?.thread ?? fastener.thread ?? '';
    const torque = tighteningNm === null ? torqueForClass(propertyClass ?? '', thread) : listedTorque(tighteningNm);
    if (!torque) {
      const words = { propertyClass: propertyClass ?? '', thread: thread || 'an unknown thread' };
      return { outcome: 'unknown', says: 'no-class', words, cites: ['screw-proof-iso-898-1'] };
    }
    const ratings = { steel: fastener.torqueOutSteelNm, aluminium: fastener.torqueOutAluminiumNm };
    return judgeTogether(
      judgeRatings(subject, ratings, (rated, sheet) => judgeTorque(torque, rated, sheet)),
      'ratedNm',
    );
  },
};

function listedTorque(torqueNm: number): Torque {
  return { lowNm: torqueNm, highNm: torqueNm, because: 'listed', cites: [] };
}

function judgeTorque({ lowNm, highNm, because, cites: own }: Torque, ratedNm: number, sheet: string): Judgement {
  const words: Words = {
    sheet,
    because,
    rated: showLoad(ratedNm, 'N m'),
    torque: showTorques(lowNm, highNm),
  };
  const cites = ['practice-load-ratings', ...own];
  if (isEnough(ratedNm, highNm))
    return { outcome: 'holds', says: 'below', values: { requiredNm: highNm, ratedNm }, words, cites };
  if (!isEnough(ratedNm, lowNm))
    return { outcome: 'fails', says: 'turns', values: { requiredNm: lowNm, ratedNm }, words, cites };
  return { outcome: 'marginal', says: 'may-turn', values: { requiredNm: highNm, ratedNm }, words, cites };
}

/** "3 N m", "2.29 to 3.82 N m". */
function showTorques(lowNm: number, highNm: number): string {
  const high = showLoad(highNm, 'N m');
  return lowNm === highNm ? high : `${Number(lowNm.toFixed(2))} to ${high}`;
}
