import type { Judgement, Text } from '../model/finding.ts';
import type { Outcome } from '../model/outcome.ts';

/** One reading of vague words and what the rule says of it. */
export interface CandidateJudgement {
  readonly name: string;
  readonly judgement: Judgement;
}

/** What a rule says when some readings of vague words hold (or may hold) and others do not; spread into its texts. */
export const SOME_TEXTS = {
  some: { brief: 'Holds in {holding}, not in {failing}', full: 'Holds in {holding}, not in {failing}: which is it?' },
  'some-may': {
    brief: 'May hold in {holding}, not in {failing}',
    full: 'May hold in {holding}, does not in {failing}: which is it?',
  },
} as const satisfies Record<string, Text>;

const OPENNESS: readonly Outcome[] = ['fails', 'unknown', 'marginal', 'holds', 'note'];

/**
 * One judgement for words that may mean several things: all hold -> holds, none holds -> fails, a failing one among others ->
 * unknown, naming both sides; doubt among holding ones -> marginal. Of equal outcomes the least favourable speaks, by the value
 * under `tightest` (smaller is worse). At least one candidate is needed.
 */
export function judgeTogether(candidates: readonly CandidateJudgement[], tightest?: string): Judgement {
  const outcomes = new Set(candidates.map(({ judgement }) => judgement.outcome));
  if (outcomes.size === 1) return leastFavourable(candidates, tightest);
  if (!outcomes.has('fails')) return leastFavourable(withOutcome(candidates, worst(outcomes)), tightest);
  const failing = withOutcome(candidates, 'fails');
  const rest = candidates.filter(({ judgement }) => judgement.outcome !== 'fails');
  const cites = new Set(candidates.flatMap(({ judgement }) => judgement.cites ?? []));
  return {
    outcome: 'unknown',
    says: rest.every(({ judgement }) => judgement.outcome === 'holds') ? 'some' : 'some-may',
    words: { holding: nameAll(rest), failing: nameAll(failing) },
    cites: [...cites],
  };
}

function worst(outcomes: ReadonlySet<Outcome>): Outcome {
  return OPENNESS.find((outcome) => outcomes.has(outcome)) ?? 'unknown';
}

function withOutcome(candidates: readonly CandidateJudgement[], outcome: Outcome): readonly CandidateJudgement[] {
  return candidates.filter(({ judgement }) => judgement.outcome === outcome);
}

function leastFavourable(candidates: readonly CandidateJudgement[], tightest?: string): Judgement {
  const measure = ({ judgement }: CandidateJudgement) => (tightest && judgement.values?.[tightest]) ?? Infinity;
  return candidates.reduce((least, next) => (Number(measure(next)) < Number(measure(least)) ? next : least)).judgement;
}

/** Names in one phrase, the longest lists cut after the first few. */
function nameAll(candidates: readonly CandidateJudgement[]): string {
  const names = [...new Set(candidates.map(({ name }) => name))];
  const shown = names.length > 4 ? [...names.slice(0, 3), `${names.length - 3} others`] : names;
  return shown.length < 2 ? shown.join('') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}
