import { rememberFor, rememberForTwo } from '../../caching/remember.ts';
import { judgeLimit, judgeMargin } from '../../calc/hardness-margin.ts';
import { metalClassOf, type RockwellB, toRockwellB } from '../../calc/rockwell-b.ts';
import { bySecondTable, type SheetHardness, sheetHardness } from '../../calc/sheet-hardness.ts';
import type { Judgement } from '../../model/finding.ts';
import type { AlloyEntry } from '../../model/sheet.ts';
import type { ShopSettings } from '../../model/shop.ts';
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
export function judgePair(fastener: FastenerHardness, { entry }: Sheet, { line, shop }: Subject): Judgement {
  if (!entry) return offScale('the hardness of the sheet', 'this sheet');
  const { judgement, isCompared } = pairsBy(shop)(fastener, entry);
  return isCompared ? addRemark(judgement, writtenLimitRemark(line.material)) : judgement;
}

/** What is said of a pair, whichever row it is in. */
interface Pair {
  readonly judgement: Judgement;
  /** False: one of the two is not known on a scale of the other. */
  readonly isCompared: boolean;
}

/** A long list has few pairs, each in many rows. */
const pairsBy = rememberFor((shop: ShopSettings) =>
  rememberForTwo((fastener: FastenerHardness, entry: AlloyEntry): Pair => comparePair(fastener, entry, shop)),
);

function comparePair(fastener: FastenerHardness, entry: AlloyEntry, { hardnessMarginHrb }: ShopSettings): Pair {
  const hardness = sheetHardness(entry);
  if (!hardness) return notCompared('the hardness of the sheet', entry);
  const { sheetLimit } = fastener;
  const limitOn = sheetLimit && toRockwellB(sheetLimit, metalClassOf(entry.family));
  if (sheetLimit && !limitOn) return notCompared(`the catalogue's limit of ${showHardness(sheetLimit)}`, entry);
  const judge = (given: SheetHardness) => {
    const judged =
      sheetLimit && limitOn
        ? byLimit(sheetLimit, limitOn, given, fastener, entry, hardnessMarginHrb)
        : byMargin(fastener, given, entry, hardnessMarginHrb);
    return withPractice(judged, fastener, entry);
  };
  const judgement = judge(hardness);
  const other = bySecondTable(hardness);
  const remark = other ? secondTableRemark(judgement, judge(other), other) : '';
  return { judgement: addRemark(judgement, remark), isCompared: true };
}

function notCompared(what: string, { name }: AlloyEntry): Pair {
  return { judgement: offScale(what, name), isCompared: false };
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

function byMargin(fastener: FastenerHardness, hardness: SheetHardness, entry: AlloyEntry, needed: number): Judgement {
  const on = fastener.on;
  if (!on) return offScale(`the hardness of the fastener, ${fastener.given},`, entry.name);
  const margin = marginOf(on, hardness);
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
