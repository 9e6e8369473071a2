import type { PartIndex } from '../catalogue/find-part.ts';
import { metalsOf } from '../engine/prepare.ts';
import { summariseSheet } from '../engine/summarise.ts';
import { type Together, tryTogether } from '../engine/together.ts';
import type { Remedy } from '../model/audited.ts';
import type { Fastener } from '../model/fastener.ts';
import { type Verdict, worstOf } from '../model/outcome.ts';
import type { Subject } from '../rules/rule.ts';
import { showValue } from '../say/show-value.ts';
import { factsKey, rankedSubstitutes, toRemedy } from './substitutes.ts';
import { tryPart } from './trial.ts';

/** Rows in the same sheet. */
export interface SheetGroup {
  /** "5052-H32, 0.80 mm". */
  readonly sheet: string;
  readonly rows: readonly number[];
}

/** A part that holds in place of the listed one, on all the rows that list it or on some. */
export interface SwapOffer extends Remedy {
  readonly stock: Fastener['stocked'];
  /** What every row would be called with this part in it, in file order. */
  readonly verdicts: readonly { readonly row: number; readonly verdict: Verdict }[];
  /** Rows on which it holds: at least one. */
  readonly rows: readonly number[];
  /** It holds on every row that lists the part. */
  readonly everywhere: boolean;
  /** Sheets on all of whose rows it holds. */
  readonly sheets: readonly string[];
}

/** What could be put in place of one part, over all the rows that list it. */
export interface Swaps {
  readonly partNumber: string;
  readonly groups: readonly SheetGroup[];
  /** The least change first, unstocked parts last. */
  readonly offers: readonly SwapOffer[];
}

/** The rows of a list that list one part, and what the rules over the whole list say of all rows. */
export interface SwapGround {
  readonly rows: readonly Subject[];
  readonly together: Together;
}

/**
 * Parts of the same kind, thread and length for the rows that list one part. A part is offered for the rows on which every check
 * holds, those over the whole list included; where it holds on none it is left out. Stops after each part that was tried, for other
 * work to come in between.
 */
export function* seekSwaps(listed: Fastener, { rows, together }: SwapGround, parts: PartIndex): Generator<void, Swaps> {
  const keys = new Map(rows.map((subject) => [subject, factsKey(subject.line)]));
  const groups = groupBySheet(rows);
  const offers: SwapOffer[] = [];
  for (const { part, change } of rankedSubstitutes(listed, parts)) {
    const verdicts = judgeSwap(part, rows, together, keys);
    const held = verdicts.filter(({ verdict }) => verdict === 'holds').map(({ row }) => row);
    const holding = new Set(held);
    const isHeld = (group: SheetGroup) => group.rows.every((row) => holding.has(row));
    const offer = {
      ...toRemedy(part, change, listed),
      stock: part.stocked,
      verdicts,
      rows: held,
      everywhere: held.length === rows.length,
      sheets: groups.filter(isHeld).map(({ sheet }) => sheet),
    };
    if (held.length > 0) offers.push(offer);
    yield;
  }
  return { partNumber: listed.partNumber, groups, offers };
}

/** Everything of a row that a check of its part can depend on, made once for all parts that are tried. */
type FactsKeys = ReadonlyMap<Subject, string>;

/** Each row by itself, rows that say the same once; then the rows that hold together, as the list would stand with them swapped. */
function judgeSwap(
  part: Fastener,
  rows: readonly Subject[],
  together: Together,
  keys: FactsKeys,
): SwapOffer['verdicts'] {
  const alone = judgeAlone(part, rows, keys);
  const gone = rows.filter(({ line }) => alone.get(line.row) === 'holds');
  const metals = metalsOf(part);
  const come = gone.map((subject) => ({ ...subject, fastener: part, metals, near: [] }));
  const outcomes = tryTogether(together, { gone, come });
  return rows.map(({ line: { row } }) => ({
    row,
    verdict: worstOf([alone.get(row) ?? 'unknown', ...(outcomes.get(row) ?? [])]),
  }));
}

function judgeAlone(part: Fastener, rows: readonly Subject[], keys: FactsKeys): ReadonlyMap<number, Verdict> {
  const known = new Map<string, Verdict>();
  return new Map(
    rows.map((subject) => {
      const key = keys.get(subject) ?? '';
      const verdict = known.get(key) ?? tryPart(part, subject);
      known.set(key, verdict);
      return [subject.line.row, verdict];
    }),
  );
}

function groupBySheet(rows: readonly Subject[]): readonly SheetGroup[] {
  const groups = new Map<string, { sheet: string; rows: number[] }>();
  for (const subject of rows) {
    const key = JSON.stringify(subject.sheets.map(({ entry, thicknessMm }) => [entry?.id, thicknessMm]));
    const group = groups.get(key) ?? { sheet: nameOfSheet(subject), rows: [] };
    group.rows.push(subject.line.row);
    groups.set(key, group);
  }
  return [...groups.values()];
}

function nameOfSheet(subject: Subject): string {
  const sheet = summariseSheet(subject);
  const { units } = subject.shop;
  const thickness = sheet?.thicknessMm == null ? '' : `${showValue('thicknessMm', sheet.thicknessMm, units)} ${units}`;
  return [sheet?.name, thickness].filter(Boolean).join(', ') || 'sheet not known';
}
