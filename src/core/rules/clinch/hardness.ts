import { rememberFor } from '../../caching/remember.ts';
import { canBeMeasuredHrb } from '../../calc/thin-sheet-hardness.ts';
import type { Judgement } from '../../model/finding.ts';
import { type CandidateJudgement, judgeTogether } from '../each-candidate.ts';
import type { Rule, Sheet, Subject } from '../rule.ts';
import { quoted } from '../texts.ts';
import { hardnessExamples } from './hardness-examples.ts';
import { type FastenerHardness, fastenerHardnesses } from './hardness-fastener.ts';
import { judgePair } from './hardness-pair.ts';
import { hardnessTexts } from './hardness-texts.ts';

/** Is the sheet clearly softer than the fastener? The heart of it all. */
export const hardness: Rule = {
  id: 'clinch/hardness',
  title: 'Hardness',
  summary:
    'The sheet is at least 20 points softer than the fastener on Rockwell B, or within the limit that the catalogue states.',
  reason:
    'The softer of the two flows. Unless that is clearly the sheet, the groove stays empty and the fastener is only wedged in.',
  formula:
    'margin = least fastener hardness - sheet hardness, both on Rockwell B; u = root sum square of both scatters (2 from HRB, 3 from HRC or HV, 4 from HB or tensile strength; never below 2). Fails: typical margin < 20 - u. Holds: worst margin >= 20 + u, or >= 20 - u where the table of families says yes for that sheet in its commercial condition and the typical margin is 20. Between: marginal. A sheet limit in the catalogue decides instead.',
  reads: ['partNumber', 'material', 'thickness'],
  needs: [
    'practice-hardness-margin',
    'practice-catalogue-limit',
    'practice-class-minimum',
    'practice-soft-aluminium-maximum',
    'practice-no-maximum',
  ],
  texts: hardnessTexts,
  examples: hardnessExamples,
  check(subject: Subject): Judgement | null {
    const { line, fastener, sheets } = subject;
    if (!fastener) return null;
    const cites = ['practice-hardness-margin'];
    if (sheets.some(({ entry }) => !entry)) {
      return { outcome: 'unknown', says: 'no-sheet', words: { listed: quoted(line.material.text) }, cites };
    }
    const options = fastenerHardnesses(subject);
    if (options.length === 0)
      return { outcome: 'unknown', says: 'no-fastener', words: { partNumber: fastener.partNumber }, cites };
    return judgeTogether(hardnessCandidates(subject), 'marginTypical');
  },
};

/** One reading of the fastener's and the sheet's words, and what the rule says of it. */
export interface HardnessCandidate extends CandidateJudgement {
  readonly fastener: FastenerHardness;
  readonly sheet: Sheet;
}

/** Every fastener metal against every sheet metal that the words of a row allow; none while either side is not known. */
export function hardnessCandidates(subject: Subject): readonly HardnessCandidate[] {
  const options = fastenerHardnesses(subject);
  return options.flatMap((option) =>
    subject.sheets.flatMap((sheet) =>
      sheet.entry ? { ...judgeCandidate(option, sheet, subject, options.length > 1), fastener: option, sheet } : [],
    ),
  );
}

function judgeCandidate(
  option: FastenerHardness,
  sheet: Sheet,
  subject: Subject,
  several: boolean,
): CandidateJudgement {
  const judgement = judgePair(option, sheet, subject);
  const name = sheet.entry?.name ?? '';
  return { name: several ? `${name} with ${option.name}` : name, judgement: withMeasuringAdvice(judgement, sheet) };
}

/** A certificate cannot state Rockwell B measured on sheet as thin as this; says what to ask for instead. */
function withMeasuringAdvice(judgement: Judgement, { thicknessMm }: Sheet): Judgement {
  const hrb = judgement.values?.sheetHrbTypical;
  const measurable = thicknessMm === null || hrb === undefined || canBeMeasuredHrb(thicknessMm, hrb);
  return measurable ? withoutAdvice(judgement) : withAdvice(judgement);
}

const withoutAdvice = rememberFor((judgement: Judgement) => asked(judgement, ''));
const withAdvice = rememberFor((judgement: Judgement) =>
  asked(judgement, ' (HV or HR30T: Rockwell B cannot be measured on sheet this thin)'),
);

function asked(judgement: Judgement, how: string): Judgement {
  return { ...judgement, words: { ...judgement.words, how } };
}
