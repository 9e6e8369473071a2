import type { AuditedLine } from '../model/audited.ts';
import type { ChangedFact, Concession, Standing } from '../model/concession.ts';
import { standing } from './standing.ts';

/** The first say what happened; the rest follow from them. */
const MOST_TOLD = 2;

/** "stands", or what has changed: "lapsed: sheet thickness was 0.8 mm, is 1 mm". */
export function describeStanding(state: Standing): string {
  if (state.kind === 'stands') return 'stands';
  const changes = state.changed.filter(
    (one, index, all) => index === all.findIndex((other) => isSameChange(one, other)),
  );
  return `lapsed: ${changes.slice(0, MOST_TOLD).map(describeChange).join('; ')}`;
}

/**
 * What is conceded of a row, behind its verdict: nothing while no concession stands; "conceded: reason", or, where other checks of the
 * row do not hold either, "conceded 1 of 3: reason".
 */
export function describeConceded(line: AuditedLine, concessions: readonly Concession[]): string {
  const standingOnes = concessions.filter(
    (concession) => concession.row === line.row && standing(concession, line).kind === 'stands',
  );
  if (standingOnes.length === 0) return '';
  const open = line.findings.filter(({ outcome }) => outcome !== 'holds' && outcome !== 'note').length;
  const share = standingOnes.length < open ? ` ${standingOnes.length} of ${open}` : '';
  return `conceded${share}: ${standingOnes.map(({ reason }) => reason).join('; ')}`;
}

/** A cell and the number read from it change together. */
function isSameChange(one: ChangedFact, other: ChangedFact): boolean {
  return one.before === other.before && one.after === other.after;
}

function describeChange({ name, before, after }: ChangedFact): string {
  if (before === after) return `${name} has changed`;
  return `${name} was ${before || 'not there'}, is ${after || 'not there'}`;
}
