import type { Judgement, Text } from '../../model/finding.ts';
import type { CandidateJudgement } from '../each-candidate.ts';
import type { Sheet, Subject } from '../rule.ts';
import { NO_SHEET_METAL, quoted } from '../texts.ts';

/** What a part bears in sheet of steel and of aluminium, by the catalogue; null: not catalogued. */
export interface Ratings {
  readonly steel: number | null;
  readonly aluminium: number | null;
}

/** Said wherever a rating is needed that nobody gives. */
export const RATING_TEXTS = (what: string) =>
  ({
    'no-sheet': NO_SHEET_METAL,
    'no-rating': {
      brief: `No ${what} rating in the catalogue`,
      full: `The catalogue gives no ${what} rating of {partNumber} in {sheet}: the rating, or a test on that sheet, would settle this.`,
    },
    'other-metal': {
      brief: `No ${what} rating in {sheet}`,
      full: `Catalogues rate ${what} in steel and in aluminium, not in {sheet}: a ${what} test on that sheet would settle this.`,
    },
  }) as const satisfies Record<string, Text>;

/**
 * One judgement for each metal that the sheet could be: `judge` where its rating is known, else unknown and why. A single one where
 * nobody knows the metal.
 */
export function judgeRatings(
  { line, fastener, sheets }: Subject,
  ratings: Ratings,
  judge: (rated: number, sheet: string) => Judgement,
): readonly CandidateJudgement[] {
  const cites = ['practice-load-ratings'];
  return sheets.map(({ entry }) => {
    if (!entry)
      return {
        name: '',
        judgement: { outcome: 'unknown', says: 'no-sheet', words: { listed: quoted(line.material.text) }, cites },
      };
    const words = { partNumber: fastener?.partNumber ?? '', sheet: entry.name };
    const metal = ratedMetal(entry);
    const rated = metal && ratings[metal];
    if (metal === null)
      return { name: entry.name, judgement: { outcome: 'unknown', says: 'other-metal', words, cites } };
    if (rated === null) return { name: entry.name, judgement: { outcome: 'unknown', says: 'no-rating', words, cites } };
    return { name: entry.name, judgement: judge(rated, entry.name) };
  });
}

function ratedMetal({ family }: NonNullable<Sheet['entry']>): keyof Ratings | null {
  if (family === 'aluminium') return 'aluminium';
  return family === 'carbon-steel' || family === 'galvanized-steel' || family === 'galvannealed-steel' ? 'steel' : null;
}

/** Ratings are given to three digits at most, so that the same load written in another unit gets the same verdict. */
const LOAD_CLOSENESS = 0.001;

/** Is a load or torque at least the wanted one, up to the rounding of its unit? False for anything that is not a number. */
export function isEnough(given: number, wanted: number): boolean {
  return given >= wanted * (1 - LOAD_CLOSENESS);
}

/** "440 N", "2.25 N m": a load in a sentence. */
export function showLoad(value: number, unit: 'N' | 'N m'): string {
  return `${Number(value.toFixed(unit === 'N' ? 0 : 2))} ${unit}`;
}
