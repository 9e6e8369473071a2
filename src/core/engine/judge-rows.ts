import { numberTuples } from '../caching/numbers.ts';
import { once } from '../caching/remember.ts';
import { firstAlike } from '../intake/read-line.ts';
import type { FastenerSummary, Remedy, Requirement, SheetSummary } from '../model/audited.ts';
import type { Finding } from '../model/finding.ts';
import type { Line } from '../model/line.ts';
import type { Verdict } from '../model/outcome.ts';
import { rules } from '../rules/index.ts';
import type { Rule, Subject } from '../rules/rule.ts';
import { ASPECTS, type Aspect, groupRules, type RuleGroup } from './aspects.ts';
import { decide, runRule } from './audit-line.ts';
import type { Basis } from './basis.ts';
import { createPartTrials } from './part-trials.ts';
import { createJoiner } from './prepare.ts';
import { type AspectNumbers, createAspectNumbers, PLACE_OF } from './row-aspects.ts';
import { summariseFastener, summariseRequirement, summariseSheet } from './summarise.ts';

/** What the rules over single rows say of a row, and the row in short: the same object for rows that say the same. */
export interface Judged {
  readonly findings: readonly Finding[];
  readonly verdict: Verdict;
  readonly decidedBy: Finding | null;
  /** Sought when first asked for: they take far longer than judging does. */
  readonly remedies: () => readonly Remedy[];
  readonly fastener: FastenerSummary | null;
  readonly sheet: SheetSummary | null;
  readonly requires: Requirement | null;
}

/** A row with what the rules over single rows say of it: all that is kept between edits. */
export interface JudgedRow {
  readonly subject: Subject;
  readonly judged: Judged;
}

/** Judges one row; `pieces` are those of the row in the whole product. */
export type RowJudge = (line: Line, pieces: number | null) => JudgedRow;

/** A judge of that many different rows starts anew, so that a long session of edits does not fill the memory. */
const MOST = 500_000;

/**
 * A judge for the rows of one list. Rows that say the same (`firstAlike`) and count the same are seen to be so at a glance. Of others,
 * those that are the same in everything that rules read are judged once, and each group of rules that looks at the same is asked once
 * for rows that are the same in that. Remedies are there to be sought where not all holds.
 */
export function createRowJudge(basis: Basis): RowJudge {
  let share = createShare(basis);
  return (line, pieces) => {
    if (share.size() > MOST) share = createShare(basis);
    return share.judge(line, pieces);
  };
}

function createShare(basis: Basis): { readonly judge: RowJudge; readonly size: () => number } {
  const { partOf, subjectOf } = createJoiner(basis.parts, basis.shop);
  const aspectsOf = createAspectNumbers();
  const findingsOf = createFindingsFinder();
  const fastenerOf = shareBy(['part'], summariseFastener);
  const requirementOf = shareBy(['part'], summariseRequirement);
  const sheetOf = shareBy(['material', 'thickness'], summariseSheet);
  const trialIn = createPartTrials();
  const remediesOf = shareBy(OF_REMEDIES, (subject: Subject, findings: readonly Finding[], numbers: AspectNumbers) =>
    once(() => basis.findRemedies?.(subject, findings, trialIn(numbers)) ?? NO_REMEDIES),
  );
  const known: Judged[] = [];
  const numberOf = numberTuples(ASPECTS.length);
  const judgeByAspects: RowJudge = (line, pieces) => {
    const part = partOf(line);
    const subject = subjectOf(line, part, pieces);
    const numbers = aspectsOf(line, part, pieces);
    const number = numberOf(numbers);
    if (number === known.length) known.push(judgeAnew(subject, numbers));
    return { subject, judged: known[number] as Judged };
  };
  const alike = new Map<Line, JudgedRow>();
  const judge: RowJudge = (line, pieces) => {
    const first = firstAlike(line);
    const before = alike.get(first);
    if (before?.subject.pieces === pieces) return { subject: subjectLike(before.subject, line), judged: before.judged };
    const row = judgeByAspects(line, pieces);
    alike.set(first, row);
    return row;
  };
  const judgeAnew = (subject: Subject, numbers: AspectNumbers): Judged => {
    const findings = findingsOf(subject, numbers);
    const { verdict, decidedBy } = decide(findings);
    return {
      findings,
      verdict,
      decidedBy,
      remedies: verdict === 'holds' ? noRemedies : remediesOf(numbers, subject, findings, numbers),
      fastener: fastenerOf(numbers, subject),
      sheet: sheetOf(numbers, subject),
      requires: requirementOf(numbers, subject),
    };
  };
  return { judge, size: () => alike.size };
}

/** The subject of a row that says the same as another. */
function subjectLike({ pieces, fastener, near, fitting, metals, sheets, shop }: Subject, line: Line): Subject {
  return { line, pieces, fastener, near, fitting, metals, sheets, shop };
}

const NO_REMEDIES: readonly Remedy[] = [];
const noRemedies = () => NO_REMEDIES;

/** A substitute is pressed into the same sheet and counted alike; words about the listed part say nothing of it. */
const OF_REMEDIES: readonly Aspect[] = ASPECTS.filter((aspect) => aspect !== 'words' && aspect !== 'quantity');

/** Quantities differ where all else repeats: what does not look at them is put together first. */
const BUT_QUANTITY: readonly Aspect[] = ASPECTS.filter((aspect) => aspect !== 'quantity');
const GROUPS = groupRules(rules);
const isCounted = ({ aspects }: RuleGroup) => aspects.includes('quantity');
const COUNTED = GROUPS.filter(isCounted);
const UNCOUNTED = GROUPS.filter((group) => !isCounted(group));

function createFindingsFinder(): (subject: Subject, numbers: AspectNumbers) => readonly Finding[] {
  const uncounted = shareBy(BUT_QUANTITY, createPlacer(UNCOUNTED));
  const counted = createPlacer(COUNTED);
  return (subject, numbers) => {
    const own = uncounted(numbers, subject, numbers);
    const others = counted(subject, numbers);
    const findings: Finding[] = [];
    for (let place = 0; place < rules.length; place++) {
      const finding = own[place] ?? others[place];
      if (finding) findings.push(finding);
    }
    return findings;
  };
}

/** What rules say of a row, each at the place where it stands among all of them; null where one says nothing. */
type Placed = readonly (Finding | null)[];

/** Asks groups of rules, each once for rows that are the same in what it looks at. */
function createPlacer(groups: readonly RuleGroup[]): (subject: Subject, numbers: AspectNumbers) => Placed {
  const runs = groups.map(({ aspects, rules: own }) => {
    const run = shareBy(aspects, (subject: Subject) => own.map((rule: Rule) => runRule(rule, subject)));
    return { run, places: own.map((rule) => rules.indexOf(rule)) };
  });
  return (subject, numbers) => {
    const placed = new Array<Finding | null>(rules.length).fill(null);
    for (const { run, places } of runs) {
      const said = run(numbers, subject);
      for (let at = 0; at < places.length; at++) placed[places[at]!] = said[at]!;
    }
    return placed;
  };
}

/** The function worked out once for rows that are the same in those aspects. */
function shareBy<Args extends readonly unknown[], T>(
  aspects: readonly Aspect[],
  make: (...args: Args) => T,
): (numbers: AspectNumbers, ...args: Args) => T {
  const places = aspects.map((aspect) => PLACE_OF[aspect]);
  const numberOf = numberTuples(places.length);
  const tuple = new Int32Array(places.length);
  const made: T[] = [];
  return (numbers, ...args) => {
    for (let at = 0; at < places.length; at++) tuple[at] = numbers[places[at]!]!;
    const number = numberOf(tuple);
    if (number === made.length) made.push(make(...args));
    return made[number] as T;
  };
}
