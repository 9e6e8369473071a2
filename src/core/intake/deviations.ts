import { type LengthWord, parseLength, parseNumber } from '../units/length.ts';

/** A size and how far it may deviate, in the unit of the deviations or, where that is null, of the size. */
export interface Deviations {
  readonly nominal: string;
  readonly lower: number;
  readonly upper: number;
  readonly unit: LengthWord | null;
}

const NUMBER = String.raw`(?:\d+[.,]?\d*|[.,]\d+)`;
const SIGNED = `[+-] ?${NUMBER}`;
const UNIT = String.raw`(?<unit> ?(?:mm|in|inch(?:es)?|"|mils?|thou|[µμu]m)\.?)?`;
const SIDE = `${SIGNED}| 0(?:[.,]0*)?`;

const BOTH_SAME = new RegExp(
  String.raw`^(?<nominal>.*?[^ (]) ?\(? ?(?:±|\+ ?/ ?-|\+-) ?(?<size>${NUMBER})${UNIT}\)?$`,
  'i',
);
const TWO = new RegExp(
  String.raw`^(?<nominal>.*?[^ (/,;]) ?\(?(?<one>${SIDE})${UNIT.replace('unit', 'unitOne')} ?[/,;]? ?(?<other>${SIGNED}|(?<=[/ ,;])0(?:[.,]0*)?)${UNIT}\)?$`,
  'i',
);
const ONE = new RegExp(String.raw`^(?<nominal>.*?[^ (/,;]) ?\(?(?<one>${SIGNED})${UNIT}\)?$`, 'i');

/**
 * Parts a size from the tolerance behind it: `5.6 ±0.1`, `5.60 +0.08/-0`, `.221 +.003 -.000`, `5.6 0/+0.08`, `5.6 +0.08` (the other
 * side is then 0). Expects single spaces and plain minus signs. Null where no such tolerance is written.
 */
export function splitDeviations(text: string): Deviations | null {
  const same = BOTH_SAME.exec(text)?.groups;
  if (same) return deviations(same.nominal, [`-${same.size}`, `+${same.size}`], same.unit);
  const two = TWO.exec(text)?.groups;
  if (two) return deviations(two.nominal, [two.one, two.other], two.unit ?? two.unitOne);
  const one = ONE.exec(text)?.groups;
  return one ? deviations(one.nominal, [one.one, '0'], one.unit) : null;
}

function deviations(
  nominal: string | undefined,
  sides: readonly (string | undefined)[],
  unit: string | undefined,
): Deviations | null {
  const values = sides.map((side) => parseNumber((side ?? '').replaceAll(' ', '')));
  const [one, other] = values;
  if (nominal === undefined || typeof one !== 'number' || typeof other !== 'number') return null;
  const word = unit ? (parseLength(`1${unit}`)?.unit ?? null) : null;
  return { nominal, lower: Math.min(one, other), upper: Math.max(one, other), unit: word };
}
