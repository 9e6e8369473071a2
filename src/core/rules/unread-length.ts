import type { Judgement, Text } from '../model/finding.ts';
import type { HoleReading } from '../model/hole.ts';
import type { DistanceReading } from '../model/line.ts';
import type { Role } from '../model/list.ts';
import type { Example } from './rule.ts';

/** What rules over holes and distances say of a cell that is there but cannot be used. */
export const LENGTH_NOT_READ = (what: string) =>
  ({
    unreadable: {
      brief: `${capital(what)} “{text}” not readable`,
      full: `The ${what} “{text}” cannot be read: a size with its unit would settle this.`,
    },
    'no-unit': {
      brief: '“{text}”: mm or inches?',
      full: `The ${what} “{text}” could be millimetres or inches, and nothing in its column settles it: is the column in mm or in inches?`,
    },
    impossible: {
      brief: `${capital(what)} “{text}” is not possible`,
      full: `The ${what} “{text}” is not possible in the unit that applies. {offer}The right size would settle this.`,
    },
  }) as const satisfies Record<string, Text>;

/** Examples of the same for a rule's page. */
export const LENGTH_NOT_READ_EXAMPLES = (role: Role, impossible: string): readonly Example[] => [
  { cells: { [role]: 'as drawn' }, outcome: 'unknown', says: 'unreadable' },
  { cells: { [role]: '1' }, unit: 'none', outcome: 'unknown', says: 'no-unit' },
  { cells: { [role]: impossible }, outcome: 'unknown', says: 'impossible' },
];

/** The judgement for a reading that gives no usable size. */
export function unreadLength(reading: HoleReading | DistanceReading, cites: readonly string[]): Judgement {
  const text = reading.text.trim();
  if (reading.how === 'ambiguous-unit') return { outcome: 'unknown', says: 'no-unit', words: { text }, cites };
  if (reading.how !== 'impossible') return { outcome: 'unknown', says: 'unreadable', words: { text }, cites };
  const offer = reading.otherMm === null ? '' : `Read the other way it would be ${reading.otherMm.toFixed(2)} mm. `;
  return { outcome: 'unknown', says: 'impossible', words: { text, offer }, cites };
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
