export type Outcome = 'holds' | 'marginal' | 'fails' | 'unknown' | 'note';
export type Verdict = Exclude<Outcome, 'note'>;

/** Row = worst of its findings; a note never counts. */
export function worst(outcomes: readonly Outcome[]): Verdict {
  return (['fails', 'unknown', 'marginal'] as const).find((one) => outcomes.includes(one)) ?? 'holds';
}

/** Several metals that a word could mean: all alike, or holds with marginal is marginal, or a fails among them asks. */
export function together(outcomes: readonly Outcome[]): Outcome {
  const kinds = new Set(outcomes);
  if (kinds.size === 1) return outcomes[0]!;
  if (kinds.has('fails') || kinds.has('unknown')) return 'unknown';
  return kinds.has('marginal') ? 'marginal' : 'holds';
}
