import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';
import { judgeRequiredLoad, REQUIRED_LOAD_TEXTS } from './required-load.ts';

/** Does the fastener stay in the sheet under the axial load that the list asks for? */
export const pushOut: Rule = {
  id: 'joint/push-out',
  title: 'Push-out',
  summary:
    'The catalogue rates push-out in that sheet metal at the required load or more, with the safety factor of the shop.',
  reason: 'Pushed from the thread side, a press-in fastener is held by nothing but the metal in its groove.',
  formula: 'required push-out x safety factor <= rated push-out for that sheet.',
  reads: ['partNumber', 'material', 'load', 'note', 'description', 'finish', 'hole'],
  wordsOf: ['hole'],
  needs: ['practice-load-ratings'],
  texts: REQUIRED_LOAD_TEXTS('push-out'),
  examples: [
    { cells: { load: 'push-out 500 N' }, outcome: 'holds', says: 'enough' },
    { cells: { load: 'push-out 510 N' }, outcome: 'fails', says: 'weak' },
    { cells: { load: 'push-out 400 N' }, shop: { pushOutSafety: 1.5 }, outcome: 'fails', says: 'weak' },
    { cells: { load: 'push-out 400 N', material: '5052-H32 or DC01' }, outcome: 'unknown', says: 'some' },
    { cells: { load: 'push-out 400 N', material: '5052-H32, DC01 or copper' }, outcome: 'unknown', says: 'some-may' },
    { cells: { load: 'push-out 400 N', material: '304' }, outcome: 'unknown', says: 'other-metal' },
    { cells: { load: 'push-out 400 N', material: '' }, outcome: 'unknown', says: 'no-sheet' },
    { cells: { load: 'push-out 400 N' }, part: { pushOutSteelN: null }, outcome: 'unknown', says: 'no-rating' },
  ],
  check(subject: Subject): Judgement | null {
    const { line, fastener, shop } = subject;
    const required = line.facts.requiredPushOutN;
    if (!fastener || required === null) return null;
    const ratings = { steel: fastener.pushOutSteelN, aluminium: fastener.pushOutAluminiumN };
    return judgeRequiredLoad(subject, { required, safety: shop.pushOutSafety, unit: 'N', ratings });
  },
};
