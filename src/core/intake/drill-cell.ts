import { findLetterDrillMm, findNumberDrillMm } from '../calc/drill-size.ts';

/** A drill named in a hole cell. */
export interface DrillCell {
  readonly mm: number;
  readonly writtenIn: 'number-drill' | 'letter-drill';
}

const NUMBER_DRILL = /^(?:#|no\b\.?|nr\b\.?|n°|№) ?(\d{1,2})(?: (?:drill|drl)\.?)?$/i;
const NAMED_LETTER = /^(?:(?:ltr|letter)\.? ?([a-z])(?: (?:drill|drl)\.?)?|([a-z]) (?:drill|drl)\.?)$/i;
/** A lone X, Y or N may be a tick, a yes or a no. */
const LONE_LETTER = /^([A-MO-WZ])$/;

/** Reads `#8`, `NO. 8 DRILL`, `F`, `LTR F`; in a hole column #8 is a drill of 0.199 in and not a screw size. Null for anything else. */
export function parseDrill(text: string): DrillCell | null {
  const number = NUMBER_DRILL.exec(text)?.[1];
  if (number !== undefined) return drill(findNumberDrillMm(Number(number)), 'number-drill');
  const named = NAMED_LETTER.exec(text);
  const letter = named?.[1] ?? named?.[2] ?? LONE_LETTER.exec(text)?.[1];
  return letter === undefined ? null : drill(findLetterDrillMm(letter), 'letter-drill');
}

function drill(mm: number | null, writtenIn: DrillCell['writtenIn']): DrillCell | null {
  return mm === null ? null : { mm: Number(mm.toPrecision(12)), writtenIn };
}
