/** One accepted deviation: a check of a row that does not hold and was accepted all the same, by whom, why and when. */
export interface Concession {
  /** 1-based row in the file. */
  readonly row: number;
  /** The check, by its rule id. */
  readonly rule: string;
  /** What the check said when it was accepted; accepting does not change it. */
  readonly outcome: 'fails' | 'marginal' | 'unknown';
  /** The finding in one cell's length, as it was then. */
  readonly says: string;
  /** What the finding rested on (see concede/facts-of): when one of these changes, the concession lapses. */
  readonly facts: string;
  readonly reason: string;
  readonly by: string;
  /** ISO day: "2025-03-14". */
  readonly date: string;
}

/** Whether a concession still applies, and if not, what has changed since. */
export type Standing =
  | { readonly kind: 'stands' }
  | { readonly kind: 'lapsed'; readonly changed: readonly ChangedFact[] };

/** A fact that is no longer what it was. */
export interface ChangedFact {
  readonly name: string;
  /** '' where it was not there. */
  readonly before: string;
  readonly after: string;
}
