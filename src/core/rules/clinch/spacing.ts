import { isAtLeast } from '../../calc/closeness.ts';
import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';
import { LENGTH_NOT_READ, LENGTH_NOT_READ_EXAMPLES, unreadLength } from '../unread-length.ts';

/** Is there enough metal between two fasteners? Asked only where the list gives the distance. */
export const spacing: Rule = {
  id: 'clinch/spacing',
  title: 'Spacing',
  summary:
    "From hole centre to the next there is at least the spacing of the part, by default the part's own edge distance.",
  reason: 'Two fasteners too near each other squeeze the same metal: it bulges, and the one pressed first comes loose.',
  formula: 'centre to centre >= spacing of the catalogue, else the larger edge distance of the two.',
  reads: ['partNumber', 'spacing'],
  needs: ['practice-spacing'],
  texts: {
    ...LENGTH_NOT_READ('spacing'),
    holds: {
      brief: 'Spacing {spacingMm}, needs {spacingMinMm:unit}',
      full: 'Centre to centre {spacingMm}, needs {spacingMinMm:unit} by the catalogue.',
    },
    'holds-default': {
      brief: 'Spacing {spacingMm}, needs {spacingMinMm:unit}',
      full: "Centre to centre {spacingMm}, needs {spacingMinMm:unit}: the part's own edge distance, by default of the trade, as the catalogue gives no spacing. A neighbour with a larger edge distance needs that.",
    },
    close: {
      brief: 'Spacing {spacingMm}, needs {spacingMinMm:unit}',
      full: 'Centre to centre {spacingMm}, needs {spacingMinMm:unit} by the catalogue: {shortfallMm:unit} too close. Move one of the holes.',
    },
    'close-default': {
      brief: 'Spacing {spacingMm}, needs {spacingMinMm:unit}',
      full: "Centre to centre {spacingMm}, needs {spacingMinMm:unit}: {shortfallMm:unit} too close. That is the part's own edge distance, by default of the trade, as the catalogue gives no spacing. Move one of the holes, or ask the maker for the part's own spacing.",
    },
    'no-minimum': {
      brief: 'No spacing in the catalogue',
      full: 'The catalogue gives neither spacing nor edge distance for {partNumber}: its least distance from centre to centre would settle this.',
    },
  },
  examples: [
    { cells: { spacing: '14' }, part: { spacingMm: 14 }, outcome: 'holds', says: 'holds' },
    { cells: { spacing: '9' }, outcome: 'holds', says: 'holds-default' },
    { cells: { spacing: '13.9' }, part: { spacingMm: 14 }, outcome: 'fails', says: 'close' },
    { cells: { spacing: '8.9' }, outcome: 'fails', says: 'close-default' },
    { cells: { spacing: '9' }, part: { edgeMm: null }, outcome: 'unknown', says: 'no-minimum' },
    ...LENGTH_NOT_READ_EXAMPLES('spacing', '900 in'),
  ],
  check({ line, fastener }: Subject): Judgement | null {
    const { how, mm: spacingMm } = line.spacing;
    if (!fastener || how === 'blank') return null;
    const cites = ['practice-spacing'];
    if (how !== 'size' || spacingMm === null) return unreadLength(line.spacing, cites);
    const spacingMinMm = fastener.spacingMm ?? fastener.edgeMm;
    if (spacingMinMm === null) {
      return { outcome: 'unknown', says: 'no-minimum', words: { partNumber: fastener.partNumber }, cites };
    }
    const says = (key: 'holds' | 'close') => (fastener.spacingMm === null ? `${key}-default` : key);
    const values = { spacingMm, spacingMinMm };
    if (isAtLeast(spacingMm, spacingMinMm)) return { outcome: 'holds', says: says('holds'), values, cites };
    return {
      outcome: 'fails',
      says: says('close'),
      values: { ...values, shortfallMm: spacingMinMm - spacingMm },
      cites,
    };
  },
};
