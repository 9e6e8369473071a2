import type { Line } from '../model/line.ts';

/** What a row says without its facts, because nobody knows which cell is which, or what all of a cell says. */
export function distrust<Said extends Omit<Line, 'row' | 'cells' | 'flags'>>(line: Said): Said {
  const unread = { how: 'unreadable', mm: null, otherMm: null, unitFrom: null } as const;
  return {
    ...line,
    seemsToBe: null,
    quantity: { text: line.quantity.text, how: 'unreadable', value: null },
    material: { text: line.material.text, how: 'unreadable', candidates: [], family: null, remarks: [] },
    thickness: { ...line.thickness, ...unread, number: null, gaugeSystem: null, toleranceMm: null },
    hole: { ...line.hole, ...unread, lowMm: null, highMm: null },
    edge: { ...line.edge, ...unread },
  };
}
