import { isAtLeast } from '../../calc/closeness.ts';
import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';
import { LENGTH_NOT_READ, LENGTH_NOT_READ_EXAMPLES, unreadLength } from '../unread-length.ts';

/** Is there enough metal between the hole and the edge of the sheet? */
export const edge: Rule = {
  id: 'clinch/edge',
  title: 'Edge distance',
  summary: 'From hole centre to sheet edge there is at least the edge distance of the part.',
  reason: 'Too near the edge the sheet bulges outwards instead of flowing into the groove.',
  formula: 'hole centre to edge >= edge distance of the part.',
  reads: ['partNumber', 'edge'],
  needs: ['practice-edge-distance'],
  texts: {
    ...LENGTH_NOT_READ('edge distance'),
    holds: {
      brief: 'Edge {edgeMm}, needs {edgeMinMm:unit}',
      full: 'Hole centre to edge {edgeMm}, needs {edgeMinMm:unit}.',
    },
    close: {
      brief: 'Edge {edgeMm}, needs {edgeMinMm:unit}',
      full: 'Hole centre to edge {edgeMm}, needs {edgeMinMm:unit}: {shortfallMm:unit} too close. Move the hole, or press with a fixture that keeps the edge from bulging and accept it as a concession.',
    },
    'call-out': {
      brief: 'Edge distance to keep: {edgeMinMm:unit}',
      full: 'The list gives no edge distance. Keep hole centre to edge at least {edgeMinMm:unit}.',
    },
    'no-minimum': {
      brief: 'No edge distance in the catalogue',
      full: 'The catalogue gives no edge distance for {partNumber}: its least distance from hole centre to edge would settle this.',
    },
  },
  examples: [
    { cells: { edge: '9' }, outcome: 'holds', says: 'holds' },
    { cells: { edge: '8.9' }, outcome: 'fails', says: 'close' },
    { cells: { edge: '' }, outcome: 'note', says: 'call-out' },
    { cells: { edge: '' }, shop: { silence: 'unknown' }, outcome: 'unknown', says: 'call-out' },
    { cells: { edge: '9' }, part: { edgeMm: null }, outcome: 'unknown', says: 'no-minimum' },
    ...LENGTH_NOT_READ_EXAMPLES('edge', '900 in'),
  ],
  check({ line, fastener, shop }: Subject): Judgement | null {
    if (!fastener) return null;
    const cites = ['practice-edge-distance'];
    const edgeMinMm = fastener.edgeMm;
    if (edgeMinMm === null) {
      return { outcome: 'unknown', says: 'no-minimum', words: { partNumber: fastener.partNumber }, cites };
    }
    const { how, mm: edgeMm } = line.edge;
    if (how === 'blank') return { outcome: shop.silence, says: 'call-out', values: { edgeMinMm }, cites };
    if (how !== 'size' || edgeMm === null) return unreadLength(line.edge, cites);
    if (isAtLeast(edgeMm, edgeMinMm)) return { outcome: 'holds', says: 'holds', values: { edgeMm, edgeMinMm }, cites };
    return { outcome: 'fails', says: 'close', values: { edgeMm, edgeMinMm, shortfallMm: edgeMinMm - edgeMm }, cites };
  },
};
