import { judgeLimit, judgeMargin } from '../../calc/hardness-margin.ts';
import { metalClassOf, type RockwellB, toRockwellB } from '../../calc/rockwell-b.ts';
import { bySecondTable, type SheetHardness, sheetHardness } from '../../calc/sheet-hardness.ts';
import type { Judgement } from '../../model/finding.ts';
import type { AlloyEntry } from '../../model/sheet.ts';
import { findFamilyAnswer } from '../../reference/families.ts';
import { type Hardness, showHardness } from '../../units/hardness.ts';
import type { Sheet, Subject } from '../rule.ts';
import type { FastenerHardness } from './hardness-fastener.ts';
import {
  isBelowScale,
  marginOf,
  marginValues,
  practicesOf,
  sheetValues,
  sheetWords,
  tablesOf,
  textEnding,
} from './hardness-numbers.ts';
import { addRemark, secondTableRemark, writtenLimitRemark } from './hardness-remarks.ts';

/** One fastener metal against one sheet metal. */
export function judgePair(fastener: FastenerHardness, sheet: Sheet, subject: Subject): Judgement {
  const entry = sheet.entry;
  const hardness = entry && sheetHardness(entry);
  if (!entry || !hardness) return offScale('the hardness of the sheet', entry?.name ?? 'this sheet');
  const limit = subject.fastener?.sheetHardnessMax ?? null;
  const limitOn = limit && toRockwellB(limit, metalClassOf(entry.family));
  if (limit && !limitOn) return offScale(`the catalogue's limit of ${showHardness(limit)}`, entry.name);
  const judge = (given: SheetHardness) =>
    limit && limitOn
      ? byLimit(limit, limitOn, given, fastener, entry, subject.shop.hardnessMarginHrb)
      : byMargin(fastener, given, entry, subject);
  const judgement = withPractice(judge(hardness), fastener, entry);
  const second = bySecondTable(hardness);
  const remarks = [
    writtenLimitRemark(subject.line.material),
    second ? secondTableRemark(judgement, withPractice(judge(second), fastener, entry), second) : '',
  ];
  return addRemark(judgement, remarks.join(''));
}

/** Without a published conversion nothing is compared, least of all by another metal's table. */
function offScale(what: string, sheet: string): Judgement {
  return { outcome: 'unknown', says: 'off-scale', words: { what, sheet }, cites: ['practice-hardness-margin'] };
}

/** A pair that practice forbids never holds, and no certificate would make it hold. */
function withPractice(judgement: Judgement, fastener: FastenerHardness, entry: AlloyEntry): Judgement {
  const forbidden = findFamilyAnswer(fastener.metal?.fastenerClass ?? null, entry.family) === false;
  if (!forbidden || (judgement.outcome !== 'holds' && judgement.outcome !== 'marginal')) return judgement;
  const says = judgement.says.replace(/holds|marginal|assumed/, 'forbidden');
  return { ...judgement, outcome: 'marginal', says };
}

function byLimit(
  limit: Hardness,
  on: RockwellB,
  hardness: SheetHardness,
  fastener: FastenerHardness,
  entry: AlloyEntry,
  needed: number,
): Judgement {
  const judged = judgeLimit(hardness.typical.on.hrb, hardness.max?.on.hrb ?? null, on.hrb, needed);
  const outcome = judged === 'fails' && isBelowScale(hardness) ? 'marginal' : judged;
  const practices = ['practice-catalogue-limit', ...(hardness.max ? [] : ['practice-no-maximum'])];
  return {
    outcome,
    says: `limit-${outcome}${textEnding(hardness)}`,
    values: {
      ...sheetValues(hardness),
      sheetHrbLimit: on.hrb,
      ...(fastener.on ? { fastenerHrb: fastener.on.hrb } : {}),
    },
    words: { ...sheetWords(hardness, entry), limitGiven: showHardness(limit) },
    cites: [...new Set([...practices, ...tablesOf(hardness), ...on.tables])],
  };
}

function byMargin(fastener: FastenerHardness, hardness: SheetHardness, entry: AlloyEntry, subject: Subject): Judgement {
  const on = fastener.on;
  if (!on) return offScale(`the hardness of the fastener, ${fastener.given},`, entry.name);
  const margin = marginOf(on, hardness);
  const needed = subject.shop.hardnessMarginHrb;
  const allowed = findFamilyAnswer(fastener.metal?.fastenerClass ?? null, entry.family);
  const outcome = judgeMargin(margin, needed, allowed === true && entry.commercial);
  // A hardness that was only assumed may pass a row but not refuse it, unless practice refuses the pair anyway.
  const excused = outcome === 'fails' && fastener.assumed && allowed !== false;
  const says = excused ? 'assumed' : outcome === 'fails' && margin.typical < 0 ? 'softer' : outcome;
  return {
    outcome: excused ? 'marginal' : outcome,
    says: says + textEnding(hardness),
    values: { ...sheetValues(hardness), ...marginValues(on, margin, outcome) },
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
