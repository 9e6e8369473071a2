import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';

/** Has the part got a successor? The listed part is judged as it is; the successor needs a judgement of its own. */
export const superseded: Rule = {
  id: 'part/superseded',
  title: 'Successor',
  summary: 'The catalogue names no other part in place of the listed one.',
  reason: 'A superseded part runs out, and its successor may have another shank, hole or hardness.',
  reads: ['partNumber'],
  needs: [],
  texts: {
    superseded: {
      brief: 'Superseded by {successor}',
      full: '{partNumber} is superseded by {successor}: list that part, and check it against this sheet, before ordering.',
    },
  },
  examples: [{ cells: {}, part: { supersededBy: 'EXAMPLE-NUT-B' }, outcome: 'note', says: 'superseded' }],
  check({ fastener }: Subject): Judgement | null {
    const successor = fastener?.supersededBy?.trim() ?? '';
    if (!fastener || successor === '') return null;
    return { outcome: 'note', says: 'superseded', words: { partNumber: fastener.partNumber, successor } };
  },
};
