import type { PartIndex } from '../catalogue/find-part.ts';
import { holdsAlone, holdsThroughout } from '../engine/audit-line.ts';
import type { Basis } from '../engine/basis.ts';
import type { PartTrial } from '../engine/part-trials.ts';
import { metalsOf } from '../engine/prepare.ts';
import { addTo } from '../intake/tree-row.ts';
import type { Remedy } from '../model/audited.ts';
import type { Fastener } from '../model/fastener.ts';
import type { Finding } from '../model/finding.ts';
import type { Line } from '../model/line.ts';
import { listRules } from '../rules/index.ts';
import type { ListRule, Rule, Subject } from '../rules/rule.ts';
import { type Change, changeBetween } from './change.ts';
import { swapRules } from './trial.ts';

/** As many as a person reads. */
const MOST = 5;

/**
 * Parts of the same kind, thread and length that hold in the row's sheet, the smallest change first, unstocked ones last. Each
 * has passed every check against that row. None for a part that is not on file: there is nothing to measure a change from.
 */
export function createSubstituteFinder(parts: PartIndex): NonNullable<Basis['findRemedies']> {
  const ranked = new Map<Fastener, readonly Substitute[]>();
  const byShape = new Map<string, Fastener[]>();
  for (const part of parts.all) addTo(byShape, shapeOf(part), part);
  return (subject, findings, trial) => {
    const listed = subject.fastener;
    if (!listed) return [];
    const alike = byShape.get(shapeOf(listed)) ?? [];
    const substitutes = ranked.get(listed) ?? rankedSubstitutes(listed, { all: alike });
    ranked.set(listed, substitutes);
    return findSubstitutes(listed, substitutes, subject, { ordered: likeliestFirst(findings), trial });
  };
}

/** A part that could do the same job, and what would change. */
export interface Substitute {
  readonly part: Fastener;
  readonly change: Change;
}

/** Parts of the same kind, thread and length, whether they hold or not: the smallest change first, unstocked ones last. */
export function rankedSubstitutes(listed: Fastener, { all }: Pick<PartIndex, 'all'>): readonly Substitute[] {
  const shape = shapeOf(listed);
  return all
    .filter((part) => part !== listed && part.supersededBy === null && shapeOf(part) === shape)
    .map((part) => ({ part, change: changeBetween(listed, part) }))
    .sort(byLeastChange);
}

/** The rules in an order that is soon done with a part that does not hold: what the listed part fails by, most others fail by too. */
function likeliestFirst(findings: readonly Finding[]): readonly Rule[] {
  const failed = new Set(
    findings.filter(({ outcome }) => outcome !== 'holds' && outcome !== 'note').map(({ rule }) => rule),
  );
  return [...swapRules.filter(({ id }) => failed.has(id)), ...swapRules.filter(({ id }) => !failed.has(id))];
}

/** The rules in the order in which they are asked, and how. */
interface Checks {
  readonly ordered: readonly Rule[];
  readonly trial: PartTrial;
}

function findSubstitutes(
  listed: Fastener,
  substitutes: readonly Substitute[],
  subject: Subject,
  checks: Checks,
): readonly Remedy[] {
  const found: Remedy[] = [];
  for (const { part, change } of substitutes) {
    if (found.length === MOST) break;
    if (holds(part, subject, checks)) found.push(toRemedy(part, change, listed));
  }
  return found;
}

/** Everything of a line that a check of its part can depend on. */
export function factsKey({ material, thickness, hole, edge, spacing, bend, facts, finish }: Line): string {
  const sizes = [thickness, hole, edge, spacing, bend].map(({ text, how, mm }) => [text, how, mm]);
  return JSON.stringify([material.text, material.candidates, sizes, finish, facts]);
}

/** Kind, thread and length: what a substitute must share to do the same job. */
function shapeOf({ kind, thread, lengthMm }: Fastener): string {
  return [kind ?? '', thread ?? '', lengthMm ?? ''].join('|');
}

/** By every check of single rows, and by what those over the list say of the row alone (its own spacing). */
function holds(part: Fastener, listed: Subject, { ordered, trial }: Checks): boolean {
  let made: Subject | undefined;
  const subject = () => {
    made ??= withPart(part, listed);
    return made;
  };
  const isHeldBy = (rule: Rule) => trial(rule, part, () => holdsThroughout(subject(), [rule]));
  const isHeldAloneBy = (rule: ListRule) => trial(rule, part, () => holdsAlone(subject(), rule));
  return ordered.every(isHeldBy) && listRules.every(isHeldAloneBy);
}

function withPart(part: Fastener, { line, sheets, shop }: Subject): Subject {
  const pieces = line.quantity.value;
  return { line, pieces, fastener: part, near: [], fitting: [], metals: metalsOf(part), sheets, shop };
}

function byLeastChange(a: Substitute, b: Substitute): number {
  const stock = ({ part }: Substitute) => (part.stocked?.yes === false ? 1 : 0);
  return stock(a) - stock(b) || a.change.size - b.change.size || a.part.partNumber.localeCompare(b.part.partNumber);
}

/** The part as it is offered in place of the listed one. */
export function toRemedy(part: Fastener, change: Change, listed: Fastener): Remedy {
  const comparable = part.unitPrice !== null && listed.unitPrice !== null && part.currency === listed.currency;
  return {
    partNumber: part.partNumber,
    change: change.words,
    stocked: part.stocked?.yes ?? null,
    priceDifference: comparable ? Number(((part.unitPrice ?? 0) - (listed.unitPrice ?? 0)).toFixed(4)) : null,
  };
}
