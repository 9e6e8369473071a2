import { type HardnessMargin, judgeLimit, judgeMargin } from '../../calc/hardness-margin.ts';
import { combineScatter } from '../../calc/hardness-scatter.ts';
import { metalClassOf, type RockwellB, toRockwellB } from '../../calc/rockwell-b.ts';
import { type SheetHardness, sheetHardness } from '../../calc/sheet-hardness.ts';
import type { Judgement, Values, Words } from '../../model/finding.ts';
import type { AlloyEntry } from '../../model/sheet.ts';
import { findFamilyAnswer } from '../../reference/families.ts';
import { type Hardness, showHardness } from '../../units/hardness.ts';
import type { Sheet, Subject } from '../rule.ts';
import type { FastenerHardness } from './hardness-fastener.ts';

/** One fastener metal against one sheet metal. */
export function judgePair(fastener: FastenerHardness, sheet: Sheet, subject: Subject): Judgement {
  const entry = sheet.entry;
  const hardness = entry && sheetHardness(entry);
  if (!entry || !hardness) return offScale('the hardness of the sheet', entry?.name ?? 'this sheet');
  const limit = subject.fastener?.sheetHardnessMax ?? null;
  const limitOn = limit && toRockwellB(limit, metalClassOf(entry.family));
  if (limit && !limitOn) return offScale(`the catalogue's limit of ${showHardness(limit)}`, entry.name);
  const judgement =
    limit && limitOn
      ? byLimit(limit, limitOn, hardness, fastener, entry, subject.shop.hardnessMarginHrb)
      : byMargin(fastener, hardness, entry, subject);
  return withPractice(judgement, fastener, entry);
}

/** Without a published conversion nothing is compared, least of all by another metal's table. */
function offScale(what: string, sheet: string): Judgement {
  return { outcome: 'unknown', says: 'off-scale', words: { what, sheet }, cites: ['practice-hardness-margin'] };
}

/** A pair that practice forbids never holds by its computed hardness. */
function withPractice(judgement: Judgement, fastener: FastenerHardness, entry: AlloyEntry): Judgement {
  const forbidden = findFamilyAnswer(fastener.metal?.fastenerClass ?? null, entry.family) === false;
  if (!forbidden || judgement.outcome !== 'holds') return judgement;
  const says = judgement.says.replace('holds', 'marginal');
  return {
    ...judgement,
    outcome: 'marginal',
    says,
    words: { ...judgement.words, remark: 'Practice forbids this pair. ' },
  };
}

function byLimit(
  limit: Hardness,
  on: RockwellB,
  hardness: SheetHardness,
  fastener: FastenerHardness,
  entry: AlloyEntry,
  needed: number,
): Judgement {
  const outcome = judgeLimit(hardness.typical.on.hrb, hardness.max?.on.hrb ?? null, on.hrb, needed);
  return {
    outcome,
    says: `limit-${outcome}${withoutMaximum(hardness)}`,
    values: {
      ...sheetValues(hardness),
      sheetHrbLimit: on.hrb,
      ...(fastener.on ? { fastenerHrb: fastener.on.hrb } : {}),
    },
    words: { ...sheetWords(hardness, entry), limitGiven: showHardness(limit) },
    cites: [
      ...new Set([
        'practice-catalogue-limit',
        ...(hardness.max ? [] : ['practice-no-maximum']),
        ...tablesOf(hardness),
        ...on.tables,
      ]),
    ],
  };
}

function byMargin(fastener: FastenerHardness, hardness: SheetHardness, entry: AlloyEntry, subject: Subject): Judgement {
  const on = fastener.on;
  if (!on)
    return { outcome: 'unknown', says: 'no-fastener', words: { partNumber: subject.fastener?.partNumber ?? '' } };
  const margin = marginOf(on, hardness);
  const needed = subject.shop.hardnessMarginHrb;
  const allowed = findFamilyAnswer(fastener.metal?.fastenerClass ?? null, entry.family);
  const outcome = judgeMargin(margin, needed, allowed === true && entry.commercial);
  const excused = outcome === 'fails' && fastener.assumed && allowed !== false;
  return {
    outcome: excused ? 'marginal' : outcome,
    says:
      (excused ? 'assumed' : outcome === 'fails' && margin.typical < 0 ? 'softer' : outcome) + withoutMaximum(hardness),
    values: { ...sheetValues(hardness), ...marginValues(on, margin) },
    words: {
      ...sheetWords(hardness, entry),
      fastenerGiven: fastener.given,
      needed: String(needed),
      more: margin.moreThan ? 'more than ' : '',
    },
    cites: [
      ...new Set(['practice-hardness-margin', ...practicesOf(fastener, hardness), ...tablesOf(hardness), ...on.tables]),
    ],
  };
}

function marginOf(on: RockwellB, { typical, max }: SheetHardness): HardnessMargin {
  return {
    typical: on.hrb - typical.on.hrb,
    worst: max && on.hrb - max.on.hrb,
    scatter: combineScatter(on.scatter, (max ?? typical).on.scatter),
    moreThan: (max ?? typical).on.below,
  };
}

function marginValues(on: RockwellB, margin: HardnessMargin): Values {
  return {
    fastenerHrb: on.hrb,
    marginTypical: margin.typical,
    ...(margin.worst === null ? {} : { marginWorst: margin.worst }),
    scatter: margin.scatter,
  };
}

function sheetValues({ typical, max }: SheetHardness): Values {
  return { sheetHrbTypical: typical.on.hrb, ...(max ? { sheetHrbMax: max.on.hrb } : {}) };
}

/** Ending of the text key where the sheet has no published maximum. */
function withoutMaximum({ max }: SheetHardness): string {
  return max ? '' : '-typical';
}

function sheetWords({ typical, max }: SheetHardness, entry: AlloyEntry): Words {
  const maxGiven = max ? (max.assumed ? 'typical + 4' : showHardness(max.given)) : '';
  return {
    sheet: typical.on.below ? `${entry.name} (below the foot of the scale)` : entry.name,
    typicalGiven: showHardness(typical.given),
    maxGiven: entry.maxFrom === 'strength' ? `${maxGiven}, derived from strength` : maxGiven,
    remark: '',
  };
}

function practicesOf(fastener: FastenerHardness, hardness: SheetHardness): readonly string[] {
  const practices: string[] = [];
  if (fastener.assumed) practices.push('practice-class-minimum');
  if (hardness.max?.assumed) practices.push('practice-soft-aluminium-maximum');
  if (!hardness.max) practices.push('practice-no-maximum');
  return practices;
}

function tablesOf({ typical, max }: SheetHardness): readonly string[] {
  return [...typical.on.tables, ...(max?.on.tables ?? [])];
}
