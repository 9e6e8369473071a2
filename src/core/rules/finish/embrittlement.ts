import type { Judgement } from '../../model/finding.ts';
import { fastenerHardnesses } from '../clinch/hardness-fastener.ts';
import type { Rule, Subject } from '../rule.ts';
import { embrittlementTexts } from './embrittlement-texts.ts';
import { fastenerFinishes } from './fastener-finish.ts';
import { judgeNoting } from './judge-noting.ts';
import { isElectroplated, judgeHardness, unknownHardness } from './plated-hardness.ts';

/** Does plating endanger a hardened fastener? */
export const embrittlement: Rule = {
  id: 'finish/embrittlement',
  title: 'Hydrogen embrittlement',
  summary: 'An electroplated fastener of hardened steel is soft enough to need no baking.',
  reason:
    'Plating drives hydrogen into hard steel, which then breaks without warning. A pressed-in part is always under stress.',
  formula: 'least fastener hardness in HV against 320, 390 HV and the limit for plating.',
  reads: ['partNumber', 'finish', 'note', 'description', 'hole', 'load'],
  wordsOf: ['hole'],
  needs: ['embrittlement-thresholds', 'baking-astm-b850', 'practice-class-minimum'],
  texts: embrittlementTexts,
  examples: [
    {
      cells: {},
      part: { finish: 'zinc plated', hardnessMin: { scale: 'HV', value: 319 } },
      outcome: 'holds',
      says: 'none',
    },
    {
      cells: {},
      part: { finish: 'zinc plated', hardnessMin: { scale: 'HV', value: 320 } },
      outcome: 'note',
      says: 'note',
    },
    { cells: {}, part: { finish: 'zinc plated', hardnessMin: null }, outcome: 'note', says: 'assumed' },
    {
      cells: {},
      part: { finish: 'zinc plated', hardnessMin: { scale: 'HRC', value: 42 } },
      outcome: 'marginal',
      says: 'bake',
    },
    {
      cells: {},
      part: { finish: 'zinc plated', hardnessMin: { scale: 'HRC', value: 48 } },
      outcome: 'fails',
      says: 'do-not-plate',
    },
    {
      cells: {},
      part: { finish: 'zinc plated', hardnessMin: { scale: 'HRC', value: 70 } },
      outcome: 'unknown',
      says: 'no-hardness',
    },
    {
      cells: {},
      part: {
        finish: 'cadmium',
        hardnessMin: null,
        material: { text: 'steel', candidates: ['iso-898-1-4-8', 'case-hardened-steel'] },
      },
      outcome: 'unknown',
      says: 'some',
    },
    {
      cells: {},
      part: {
        finish: 'cadmium',
        hardnessMin: null,
        material: { text: 'steel', candidates: ['carbon-steel-hardened', 'case-hardened-steel'] },
      },
      outcome: 'unknown',
      says: 'some-may',
    },
  ],
  check(subject: Subject): Judgement | null {
    const { fastener, metals } = subject;
    const finish = fastenerFinishes(subject).find(isElectroplated);
    if (!fastener || !finish || !metals.some(({ fastenerClass }) => fastenerClass === 'carbon-steel-hardened'))
      return null;
    const options = fastenerHardnesses(subject).filter(({ metal }) => metal?.family === 'carbon-steel');
    const candidates = options.map((option) => ({
      name: option.name,
      judgement: judgeHardness(option, finish, fastener),
    }));
    return candidates.length === 0 ? unknownHardness(finish, fastener) : judgeNoting(candidates);
  },
};
