import { countable } from '../../intake/quantity.ts';
import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';

/**
 * Can the row be counted? A row without a usable quantity stays out of the purchase total, unless columns of single assemblies
 * count it; it holds or not all the same.
 */
export const quantity: Rule = {
  id: 'list/quantity',
  title: 'Quantity',
  summary: 'The quantity is a whole number above zero, or columns of single assemblies give one.',
  reason: 'A row without a usable quantity cannot be ordered; it is asked about instead.',
  reads: ['quantity'],
  needs: [],
  texts: {
    whole: { brief: '{pieces} pieces', full: '{pieces} pieces.' },
    counted: { brief: '{pieces} pieces', full: '{pieces} pieces, by the columns of single assemblies.' },
    otherwise: {
      brief: 'Quantity “{text}”, yet {pieces} pieces',
      full: 'The quantity “{text}” is no number of pieces; the columns of single assemblies give {pieces}, and those are ordered. Which is right?',
    },
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
    { cells: { quantity: '' }, piecesByAssembly: 12, outcome: 'holds', says: 'counted' },
    { cells: { quantity: 'see assemblies' }, piecesByAssembly: 12, outcome: 'note', says: 'otherwise' },
    { cells: { quantity: '0' }, piecesByAssembly: 12, outcome: 'note', says: 'otherwise' },
    { cells: { quantity: '' }, outcome: 'note', says: 'blank' },
    { cells: { quantity: '0' }, outcome: 'note', says: 'zero' },
    { cells: { quantity: '2.5' }, outcome: 'note', says: 'not-whole' },
    { cells: { quantity: 'as needed' }, outcome: 'note', says: 'unreadable' },
  ],
  check({ line, pieces }: Subject): Judgement {
    const { how, text, value } = line.quantity;
    if (how === 'whole') return { outcome: 'holds', says: 'whole', words: { pieces: String(value) } };
    const counted = countable(pieces);
    if (counted !== null) {
      const words = { pieces: String(counted), text: text.trim() };
      return how === 'blank'
        ? { outcome: 'holds', says: 'counted', words }
        : { outcome: 'note', says: 'otherwise', words };
    }
    return { outcome: 'note', says: how, words: { text: text.trim() } };
  },
};
