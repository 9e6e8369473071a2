import type { Judgement, Text } from '../../model/finding.ts';
import { judgeTogether, SOME_TEXTS } from '../each-candidate.ts';
import type { Subject } from '../rule.ts';
import { isEnough, judgeRatings, RATING_TEXTS, type Ratings, showLoad } from './rating.ts';

/** A load that the list asks for. */
export interface RequiredLoad {
  /** As listed. */
  readonly required: number;
  /** What the shop multiplies it by. */
  readonly safety: number;
  readonly unit: 'N' | 'N m';
  readonly ratings: Ratings;
}

/** What the checks of push-out and torque-out can say. */
export const REQUIRED_LOAD_TEXTS = (what: string): Readonly<Record<string, Text>> => ({
  ...SOME_TEXTS,
  ...RATING_TEXTS(what),
  enough: {
    brief: 'Rated {rated}, needs {required}',
    full: `Rated ${what} in {sheet} is {rated}, and {required} is needed ({listed}{factor}).`,
  },
  weak: {
    brief: 'Rated {rated}, needs {required}',
    full: `Rated ${what} in {sheet} is {rated}, and {required} is needed ({listed}{factor}): {short} too little. A larger thread or thicker sheet would carry more, or a test on the actual sheet.`,
  },
});

/** The load times the shop's safety factor against the rating in each metal that the sheet could be. */
export function judgeRequiredLoad(subject: Subject, { required, safety, unit, ratings }: RequiredLoad): Judgement {
  const wanted = required * safety;
  const keys = unit === 'N' ? (['requiredN', 'ratedN'] as const) : (['requiredNm', 'ratedNm'] as const);
  const candidates = judgeRatings(subject, ratings, (rated, sheet) => ({
    outcome: isEnough(rated, wanted) ? 'holds' : 'fails',
    says: isEnough(rated, wanted) ? 'enough' : 'weak',
    values: { [keys[0]]: wanted, [keys[1]]: rated },
    words: {
      sheet,
      rated: showLoad(rated, unit),
      required: showLoad(wanted, unit),
      listed: `${showLoad(required, unit)} listed`,
      factor: `, safety factor ${Number(safety.toFixed(2))}`,
      short: showLoad(wanted - rated, unit),
    },
    cites: ['practice-load-ratings'],
  }));
  return judgeTogether(candidates, keys[1]);
}
