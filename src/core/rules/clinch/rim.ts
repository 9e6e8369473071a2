import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';

/** Is the rim of the hole to be left as struck? A list that asks for no work on it gets no finding. */
export const rim: Rule = {
  id: 'clinch/rim',
  title: 'Rim of the hole',
  summary: 'Nothing on the list asks to deburr, chamfer or countersink the hole.',
  reason: 'The metal at the rim is what flows into the groove: taken away, nothing fills it.',
  reads: ['partNumber', 'hole', 'description', 'finish', 'note'],
  wordsOf: ['hole'],
  needs: ['practice-hole-rim'],
  texts: {
    spoiled: {
      brief: 'Hole: “{rimWork}”',
      full: 'The list says “{rimWork}”: that takes away the metal that fills the groove. Delete that note for this hole: punch or drill it, and leave the rim as struck.',
    },
  },
  examples: [
    { cells: { hole: '5.6 csk' }, outcome: 'fails', says: 'spoiled' },
    { cells: { note: 'deburr holes' }, outcome: 'fails', says: 'spoiled' },
  ],
  check({ line, fastener }: Subject): Judgement | null {
    const { rimWork } = line.facts;
    if (!fastener || rimWork === null) return null;
    return { outcome: 'fails', says: 'spoiled', words: { rimWork: rimWork.trim() }, cites: ['practice-hole-rim'] };
  },
};
