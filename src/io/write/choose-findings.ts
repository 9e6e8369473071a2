import type { AuditedList } from '../../core/model/audited.ts';
import type { Finding } from '../../core/model/finding.ts';
import type { Outcome } from '../../core/model/outcome.ts';

/** The gravest first: what there is no room for is left out from the end. */
const GRAVEST_FIRST: readonly Outcome[] = ['fails', 'unknown', 'marginal', 'note', 'holds'];
const WORDS: Readonly<Record<Outcome, string>> = {
  fails: 'that fail',
  unknown: 'that are unknown',
  marginal: 'that are marginal',
  note: 'that are notes',
  holds: 'that hold',
};

/** Which findings of a list are written. */
export interface ChosenFindings {
  readonly count: number;
  /** Asked of each finding once, in the order of the list. */
  readonly isChosen: (finding: Finding) => boolean;
  /** A sentence on those that are not; '' where all are. */
  readonly leftOut: string;
}

/** All findings, or, where those are more than `most`, the gravest; of the outcome that fills the room, the first in the list. */
export function chooseFindings(list: AuditedList, most: number): ChosenFindings {
  const counts = countByOutcome(list);
  const room = new Map<Outcome, number>();
  let free = most;
  for (const outcome of GRAVEST_FIRST) {
    const taken = Math.min(free, counts[outcome]);
    room.set(outcome, taken);
    free -= taken;
  }
  const leftOut = GRAVEST_FIRST.flatMap((outcome) => {
    const missing = counts[outcome] - (room.get(outcome) ?? 0);
    return missing > 0 ? [`${missing} ${WORDS[outcome]}`] : [];
  });
  return { count: most - free, isChosen: takeWhileRoom(room), leftOut: sentence(most, leftOut) };
}

function countByOutcome({ lines }: AuditedList): Record<Outcome, number> {
  const counts = { fails: 0, unknown: 0, marginal: 0, note: 0, holds: 0 };
  for (const { findings } of lines) for (const { outcome } of findings) counts[outcome]++;
  return counts;
}

function takeWhileRoom(room: ReadonlyMap<Outcome, number>): (finding: Finding) => boolean {
  const left = new Map(room);
  return ({ outcome }) => {
    const free = left.get(outcome) ?? 0;
    if (free > 0) left.set(outcome, free - 1);
    return free > 0;
  };
}

function sentence(most: number, leftOut: readonly string[]): string {
  if (leftOut.length === 0) return '';
  return `Beside a list this long there is room for ${most} findings here: the gravest are shown, and ${leftOut.join(' and ')} are left out. Open a row in the app, or ask the command line for JSON, to see them all.`;
}
