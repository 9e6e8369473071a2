/** What one check says. `note` informs and never changes a row's verdict. */
export type Outcome = 'holds' | 'marginal' | 'fails' | 'unknown' | 'note';

/** What a row is called: the worst of its findings. */
export type Verdict = Exclude<Outcome, 'note'>;

/** From worst to best: a failing check outweighs a missing fact, which outweighs doubt. */
export const VERDICTS: readonly Verdict[] = ['fails', 'unknown', 'marginal', 'holds'];

/** The worst of several outcomes; `unknown` when there is nothing to go by, so that silence never reads as good. */
export function worstOf(outcomes: Iterable<Outcome>): Verdict {
  const seen = new Set(outcomes);
  return VERDICTS.find((verdict) => seen.has(verdict)) ?? 'unknown';
}
