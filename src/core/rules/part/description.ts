import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';
import { type Comparison, compareDescription } from './compare-description.ts';

/** Do the words of the row describe the part that its number names? */
export const description: Rule = {
  id: 'part/description',
  title: 'Description',
  summary: 'What the row says of kind, thread, material, length and finish is what the catalogue says of the part.',
  reason:
    'A number with one wrong character is often another good part. The words beside it are the only sign of what was meant.',
  reads: ['partNumber', 'description', 'fastenerMaterial', 'thread', 'length', 'finish'],
  needs: ['practice-description'],
  texts: {
    agrees: { brief: 'Description fits', full: 'The words of the list fit {partNumber}: {is}.' },
    'other-part': {
      brief: 'Listed as {said}, part is {is}',
      full: 'The list says {said} (“{quote}”), the catalogue says {is} for {partNumber}: either the part number or the description is wrong. Ask which part is meant.',
    },
    differs: {
      brief: 'Listed as {said}, part is {is}',
      full: 'The list says {said} (“{quote}”), the catalogue says {is} for {partNumber}: the right part number or description would settle this.',
    },
  },
  examples: [
    { cells: { description: 'Clinch nut M4' }, outcome: 'holds', says: 'agrees' },
    { cells: { description: 'Clinch stud M4 x 12' }, outcome: 'fails', says: 'other-part' },
    { cells: { description: 'Clinch nut M3' }, outcome: 'fails', says: 'other-part' },
    { cells: { description: 'Weld nut M4' }, outcome: 'fails', says: 'other-part' },
    { cells: { description: 'Clinch nut', thread: '8-32' }, outcome: 'fails', says: 'other-part' },
    { cells: { description: 'Clinch nut M4, stainless' }, outcome: 'marginal', says: 'differs' },
    {
      cells: { description: 'Clinch stud M4 x 16' },
      part: { kind: 'clinch stud', lengthMm: 12 },
      outcome: 'marginal',
      says: 'differs',
    },
    { cells: { finish: 'nickel plated' }, part: { finish: 'zinc plated' }, outcome: 'marginal', says: 'differs' },
    {
      cells: { description: 'Standoff M3 x 10' },
      part: { kind: 'blind standoff', thread: 'M3', lengthMm: 10 },
      outcome: 'holds',
      says: 'agrees',
    },
  ],
  check({ line, fastener, metals, shop }: Subject): Judgement | null {
    const compared = fastener ? compareDescription(line, fastener, metals, shop.units) : [];
    if (!fastener || compared.length === 0) return null;
    const { partNumber } = fastener;
    const against = compared.filter(({ agrees }) => !agrees);
    if (against.length === 0) {
      return { outcome: 'holds', says: 'agrees', words: { partNumber, is: join(compared, 'is') } };
    }
    const words = { partNumber, said: join(against, 'said'), is: join(against, 'is'), quote: join(against, 'quote') };
    const isOtherPart = against.some(({ about }) => about === 'kind' || about === 'thread');
    const cites = ['practice-description'];
    return isOtherPart
      ? { outcome: 'fails', says: 'other-part', words, cites }
      : { outcome: 'marginal', says: 'differs', words, cites };
  },
};

function join(compared: readonly Comparison[], side: 'said' | 'is' | 'quote'): string {
  return [...new Set(compared.map((one) => one[side]))].join(', ');
}
