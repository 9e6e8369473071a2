import type { Judgement } from '../../model/finding.ts';
import { type CandidateJudgement, judgeTogether } from '../each-candidate.ts';

/**
 * `judgeTogether` for checks whose doubt is a note: a reading that gives a note speaks before those that hold, so that a remark
 * about one of the metals that vague words could mean is not lost behind the others.
 */
export function judgeNoting(candidates: readonly CandidateJudgement[], tightest?: string): Judgement {
  const outcomes = new Set(candidates.map(({ judgement }) => judgement.outcome));
  const isNoted = outcomes.has('note') && !outcomes.has('fails');
  return judgeTogether(
    isNoted ? candidates.filter(({ judgement }) => judgement.outcome !== 'holds') : candidates,
    tightest,
  );
}
