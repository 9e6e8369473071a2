import type { PartIndex } from '../catalogue/find-part.ts';
import { holdsThroughout } from '../engine/audit-line.ts';
import { subjectFor } from '../engine/prepare.ts';
import type { Remedy } from '../model/audited.ts';
import type { Fastener } from '../model/fastener.ts';
import type { Line } from '../model/line.ts';
import { rules } from '../rules/index.ts';
import type { Subject } from '../rules/rule.ts';
import { type Change, changeBetween } from './change.ts';

/** As many as a person reads. */
const MOST = 5;

/** The listed description speaks of the listed part: it is rewritten with a swap, so a substitute is not judged by it. */
const swapRules = rules.filter(({ id }) => id !== 'part/description');

/**
 * Parts of the same kind, thread and length that hold in the row's sheet, the smallest change first, unstocked ones last. Each
 * has passed every check against that row. None for a part that is not on file: there is nothing to measure a change from.
 * Rows that say the same are sought for once.
 */
export function createSubstituteFinder(parts: PartIndex): (subject: Subject) => readonly Remedy[] {
  const byShape = groupByShape(parts.all);
  const found = new Map<string, readonly Remedy[]>();
  return (subject) => {
    const listed = subject.fastener;
    if (!listed) return [];
    const key = `${listed.partNumber}|${factsKey(subject.line)}`;
    const remedies = found.get(key) ?? findSubstitutes(listed, byShape.get(shapeOf(listed)) ?? [], subject);
    found.set(key, remedies);
    return remedies;
  };
}

function findSubstitutes(listed: Fastener, sameShape: readonly Fastener[], subject: Subject): readonly Remedy[] {
  return sameShape
    .filter((part) => part !== listed && part.supersededBy === null && holds(part, subject))
    .map((part) => ({ part, change: changeBetween(listed, part) }))
    .sort(byLeastChange)
    .slice(0, MOST)
    .map(({ part, change }) => toRemedy(part, change, listed));
}

/** Everything of a line that a check of its part can depend on. */
function factsKey({ material, thickness, hole, edge, spacing, bend, facts, finish }: Line): string {
  const sizes = [thickness, hole, edge, spacing, bend].map(({ text, how, mm }) => [text, how, mm]);
  return JSON.stringify([material.text, material.candidates, sizes, finish, facts]);
}

function groupByShape(parts: readonly Fastener[]): ReadonlyMap<string, readonly Fastener[]> {
  const groups = new Map<string, Fastener[]>();
  for (const part of parts) {
    const group = groups.get(shapeOf(part));
    if (group) group.push(part);
    else groups.set(shapeOf(part), [part]);
  }
  return groups;
}

/** Kind, thread and length: what a substitute must share to do the same job. */
function shapeOf({ kind, thread, lengthMm }: Fastener): string {
  return [kind ?? '', thread ?? '', lengthMm ?? ''].join('|');
}

function holds(part: Fastener, { line, shop }: Subject): boolean {
  return holdsThroughout(subjectFor(line, part, shop), swapRules);
}

function byLeastChange(a: { part: Fastener; change: Change }, b: { part: Fastener; change: Change }): number {
  const stock = ({ part }: { part: Fastener }) => (part.stocked?.yes === false ? 1 : 0);
  return stock(a) - stock(b) || a.change.size - b.change.size || a.part.partNumber.localeCompare(b.part.partNumber);
}

function toRemedy(part: Fastener, change: Change, listed: Fastener): Remedy {
  const comparable = part.unitPrice !== null && listed.unitPrice !== null && part.currency === listed.currency;
  return {
    partNumber: part.partNumber,
    change: change.words,
    stocked: part.stocked?.yes ?? null,
    priceDifference: comparable ? Number(((part.unitPrice ?? 0) - (listed.unitPrice ?? 0)).toFixed(4)) : null,
  };
}
