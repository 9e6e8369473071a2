import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';

/** Can the row be counted? A row without a usable quantity stays out of the purchase total; it holds or not all the same. */
export const quantity: Rule = {
  id: 'list/quantity',
  title: 'Quantity',
  summary: 'The quantity is a whole number above zero.',
  reason: 'A row without a usable quantity cannot be ordered; it is asked about instead.',
  reads: ['quantity'],
  needs: [],
  texts: {
    whole: { brief: '{pieces} pieces', full: '{pieces} pieces.' },
    blank: { brief: 'Quantity missing', full: 'The quantity is missing: the row stays out of the purchase total.' },
    zero: {
      brief: 'Quantity is zero',
      full: 'The quantity is zero: the row stays out of the purchase total. Should it be on the list?',
    },
    'not-whole': {
      brief: 'Quantity {text} is not whole',
      full: 'The quantity “{text}” is not a whole number of pieces: the row stays out of the purchase total.',
    },
    unreadable: {
      brief: 'Quantity “{text}” not readable',
      full: 'The quantity “{text}” cannot be read as a number: the row stays out of the purchase total.',
    },
  },
  examples: [
    { cells: { quantity: '8' }, outcome: 'holds', says: 'whole' },
    { cells: { quantity: '' }, outcome: 'note', says: 'blank' },
    { cells: { quantity: '0' }, outcome: 'note', says: 'zero' },
    { cells: { quantity: '2.5' }, outcome: 'note', says: 'not-whole' },
    { cells: { quantity: 'as needed' }, outcome: 'note', says: 'unreadable' },
  ],
  check({ line }: Subject): Judgement {
    const { how, text, value } = line.quantity;
    if (how === 'whole') return { outcome: 'holds', says: 'whole', words: { pieces: String(value) } };
    return { outcome: 'note', says: how, words: { text: text.trim() } };
  },
};
