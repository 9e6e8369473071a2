import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';
import { judgeRequiredLoad, REQUIRED_LOAD_TEXTS } from './required-load.ts';

/** Does the fastener keep from turning under the torque that the list asks for? */
export const torqueOut: Rule = {
  id: 'joint/torque-out',
  title: 'Torque-out',
  summary:
    'The catalogue rates torque-out in that sheet metal at the required torque or more, with the safety factor of the shop.',
  reason: 'A fastener that turns in its hole can be neither tightened nor undone.',
  formula: 'required torque-out x safety factor <= rated torque-out for that sheet.',
  reads: ['partNumber', 'material', 'load', 'note', 'description', 'finish', 'hole'],
  wordsOf: ['hole'],
  needs: ['practice-load-ratings'],
  texts: REQUIRED_LOAD_TEXTS('torque-out'),
  examples: [
    { cells: { load: 'torque-out 3 Nm' }, outcome: 'holds', says: 'enough' },
    { cells: { load: 'torque-out 3.1 Nm' }, outcome: 'fails', says: 'weak' },
    { cells: { load: 'torque-out 2.5 Nm' }, shop: { torqueOutSafety: 1.25 }, outcome: 'fails', says: 'weak' },
    { cells: { load: 'torque-out 2.5 Nm', material: '5052-H32 or DC01' }, outcome: 'unknown', says: 'some' },
    {
      cells: { load: 'torque-out 2.5 Nm', material: '5052-H32, DC01 or copper' },
      outcome: 'unknown',
      says: 'some-may',
    },
    { cells: { load: 'torque-out 2.5 Nm', material: '304' }, outcome: 'unknown', says: 'other-metal' },
    { cells: { load: 'torque-out 2.5 Nm', material: '' }, outcome: 'unknown', says: 'no-sheet' },
    { cells: { load: 'torque-out 2.5 Nm' }, part: { torqueOutSteelNm: null }, outcome: 'unknown', says: 'no-rating' },
  ],
  check(subject: Subject): Judgement | null {
    const { line, fastener, shop } = subject;
    const required = line.facts.requiredTorqueOutNm;
    if (!fastener || required === null) return null;
    const ratings = { steel: fastener.torqueOutSteelNm, aluminium: fastener.torqueOutAluminiumNm };
    return judgeRequiredLoad(subject, { required, safety: shop.torqueOutSafety, unit: 'N m', ratings });
  },
};
