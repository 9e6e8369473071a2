import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';

/** Is the part kept in stock? Nothing about holding, but the reason why many a list comes back. */
export const stocked: Rule = {
  id: 'part/stocked',
  title: 'Stock',
  summary: 'The catalogue has the part in stock.',
  reason: 'A part that is not stocked is found out when it is ordered, after the panel was drawn around it.',
  reads: ['partNumber'],
  needs: [],
  texts: {
    stocked: { brief: 'In stock', full: '{partNumber} is in stock.' },
    'not-stocked': {
      brief: 'Not stocked',
      full: '{partNumber} is not stocked: ask for its lead time before ordering.',
    },
    'not-stocked-lead': {
      brief: 'Not stocked, {leadDays} days',
      full: '{partNumber} is not stocked: lead time {leadDays} days by the catalogue.',
    },
  },
  examples: [
    { cells: {}, outcome: 'holds', says: 'stocked' },
    { cells: {}, part: { stocked: { yes: false, quantity: 0 }, leadDays: null }, outcome: 'note', says: 'not-stocked' },
    {
      cells: {},
      part: { stocked: { yes: false, quantity: null }, leadDays: 42 },
      outcome: 'note',
      says: 'not-stocked-lead',
    },
  ],
  check({ fastener }: Subject): Judgement | null {
    if (!fastener?.stocked) return null;
    const { partNumber, leadDays } = fastener;
    const words = { partNumber };
    if (fastener.stocked.yes) return { outcome: 'holds', says: 'stocked', words };
    if (leadDays === null) return { outcome: 'note', says: 'not-stocked', words };
    return { outcome: 'note', says: 'not-stocked-lead', values: { leadDays }, words };
  },
};
