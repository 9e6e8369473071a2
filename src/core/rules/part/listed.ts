import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';

/** Is the part number on file? Everything about the fastener comes from the catalogue, never from its name. */
export const listed: Rule = {
  id: 'part/listed',
  title: 'Part on file',
  summary: 'The part number is in a loaded catalogue.',
  reason:
    'Minimum sheet, hole and hardness come from the catalogue. A part that is not on file cannot be judged, whatever its description promises.',
  reads: ['partNumber', 'description', 'thread', 'length', 'finish', 'fastenerMaterial'],
  needs: ['practice-three-facts'],
  texts: {
    found: { brief: 'On file', full: '{partNumber} is on file in {catalogue}.' },
    blank: {
      brief: 'Part number missing',
      full: 'The part number is missing: the part number of the fastener would settle this.{fitting}',
    },
    'not-found': {
      brief: 'No such part on file',
      full: 'No part “{partNumber}” is on file: the right part number, or a catalogue that lists it, would settle this.{fitting}',
    },
    near: {
      brief: 'No such part on file; near: {near}',
      full: 'No part “{partNumber}” is on file; near: {near}. The right part number, or a catalogue that lists it, would settle this.{fitting}',
    },
  },
  examples: [
    { cells: { partNumber: 'EXAMPLE-NUT' }, outcome: 'holds', says: 'found' },
    { cells: { partNumber: '' }, part: null, outcome: 'unknown', says: 'blank' },
    { cells: { partNumber: 'SOMETHING-ELSE' }, part: null, outcome: 'unknown', says: 'not-found' },
    { cells: { partNumber: 'EXAMPLE-NUTT' }, part: null, outcome: 'unknown', says: 'near' },
  ],
  check({ line, fastener, near, fitting: described }: Subject): Judgement {
    const partNumber = line.partNumber.trim();
    if (fastener) {
      return {
        outcome: 'holds',
        says: 'found',
        words: { partNumber: fastener.partNumber, catalogue: fastener.origin.catalogue },
      };
    }
    const cites = ['practice-three-facts'];
    // A description proposes; it is never judged by.
    const fitting = described.length === 0 ? '' : ` By its description it could be ${described.join(', ')}.`;
    if (partNumber === '') return { outcome: 'unknown', says: 'blank', words: { fitting }, cites };
    if (near.length === 0) return { outcome: 'unknown', says: 'not-found', words: { partNumber, fitting }, cites };
    return { outcome: 'unknown', says: 'near', words: { partNumber, near: near.join(', '), fitting }, cites };
  },
};
