import type { AuditedLine } from '../model/audited.ts';
import type { ChangedFact, Concession, Standing } from '../model/concession.ts';
import type { Finding } from '../model/finding.ts';
import { type Fact, FOUND, factsOf, isTold, nameOfFact } from './facts-of.ts';

const LAPSED_ROW: Standing = { kind: 'lapsed', changed: [{ name: 'row', before: 'a fastener', after: 'not judged' }] };

const LAPSED_FACTS: Standing = {
  kind: 'lapsed',
  changed: [{ name: 'what it rests on', before: 'on record', after: 'not readable' }],
};

/**
 * Does a concession still apply to its row? It stands while everything that the finding rested on is as it was; otherwise it has
 * lapsed, with what changed. Without a line (the row is no longer judged) it has lapsed.
 */
export function standing(concession: Concession, line: AuditedLine | null): Standing {
  if (!line) return LAPSED_ROW;
  const finding = line.findings.find(({ rule }) => rule === concession.rule);
  if (!finding) return { kind: 'lapsed', changed: [{ name: 'finding', before: concession.says, after: '' }] };
  const facts = parseFacts(concession.facts);
  if (!facts) return LAPSED_FACTS;
  const changed = differences(facts, factsOf(line, finding));
  return changed.length > 0 ? { kind: 'lapsed', changed } : { kind: 'stands' };
}

/** A concession of one finding of a row, resting on what the finding rests on now. Null for a finding that needs none. */
export function concede(
  line: AuditedLine,
  finding: Finding,
  { reason, by, date }: Pick<Concession, 'reason' | 'by' | 'date'>,
): Concession | null {
  const { rule, outcome, brief } = finding;
  if (outcome === 'holds' || outcome === 'note') return null;
  return { row: line.row, rule, outcome, says: brief, facts: JSON.stringify(factsOf(line, finding)), reason, by, date };
}

/** Null for facts that were damaged on the way: then the concession lapses. */
function parseFacts(facts: string): readonly Fact[] | null {
  try {
    const read: unknown = JSON.parse(facts);
    return Array.isArray(read) && read.every(isFact) ? read : null;
  } catch {
    return null;
  }
}

function isFact(value: unknown): value is Fact {
  return Array.isArray(value) && value.length === 2 && value.every((part) => typeof part === 'string');
}

function differences(before: readonly Fact[], after: readonly Fact[]): readonly ChangedFact[] {
  const [former, present] = [new Map(before), new Map(after)];
  return [...new Set([...former.keys(), ...present.keys()])].flatMap((key) => {
    const [was, is] = [former.get(key) ?? '', present.get(key) ?? ''];
    if (was === is) return [];
    return isTold(key) ? { name: nameOfFact(key), before: was, after: is } : { name: FOUND, before: '', after: '' };
  });
}
