import { renumberFacts } from '../concede/renumber-facts.ts';
import { standing } from '../concede/standing.ts';
import type { Concession } from '../model/concession.ts';
import type { ConcessionFate, RowName } from './comparison.ts';
import type { Row } from './rows.ts';

/**
 * What becomes of concessions given on the list before. Each rests on facts of its row: where the row in the list after has the same,
 * it is carried over. Row numbers that a check over the list has named are put into those of the list after first.
 */
export function carryConcessions(
  concessions: readonly Concession[],
  before: readonly Row[],
  pairs: readonly (readonly [Row, Row])[],
): readonly ConcessionFate[] {
  const named = new Map(before.map(({ name }) => [name.row, name]));
  const mates = new Map(pairs.map(([one, other]) => [one.name.row, other]));
  const rowAfter = (row: number) => mates.get(row)?.name.row ?? null;
  return concessions.map((given) => fateOf(given, named.get(given.row) ?? null, mates.get(given.row), rowAfter));
}

function fateOf(
  given: Concession,
  before: RowName | null,
  mate: Row | undefined,
  rowAfter: (row: number) => number | null,
): ConcessionFate {
  if (!mate) return { state: 'gone', given, before, after: null, rekeyed: null, changed: [] };
  const rekeyed = { ...given, row: mate.name.row, facts: renumberFacts(given.facts, rowAfter) };
  const state = standing(rekeyed, mate.audited);
  const shared = { given, before, after: mate.name, rekeyed };
  if (state.kind === 'stands') return { state: 'carried', ...shared, changed: [] };
  return { state: 'lapsed', ...shared, changed: state.changed };
}
