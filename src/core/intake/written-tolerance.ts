import { type Length, parseLength } from '../units/length.ts';

/** A size with the tolerance that was written behind it, both positive and in the unit of the size unless they carry their own. */
export interface ToleranceCell {
  readonly nominal: string;
  readonly plus: Length;
  readonly minus: Length;
}

/**
 * Parts `1.5 ±0.1`, `1.5±0.1 mm`, `1.5 +/-0.1` or `.060 +.003/-.000` into size and tolerance. A unit written behind the tolerance
 * alone counts for the size too. Null where no tolerance is written or it is no number (`±10%`).
 */
export function splitTolerance(text: string): ToleranceCell | null {
  const plain = text.replaceAll('−', '-');
  const [, nominal, plusText, minusText] = TWO_SIDED.exec(plain) ?? equalSides(plain);
  if (nominal === undefined || plusText === undefined || minusText === undefined) return null;
  const minus = parseLength(minusText);
  const plus = parseLength(plusText);
  if (!plus || !minus || plus.value < 0 || minus.value < 0) return null;
  const isBare = parseLength(nominal)?.unit === null;
  return { nominal: isBare && minus.unit ? `${nominal} ${minus.unit}` : nominal, plus: sharing(plus, minus), minus };
}

const TWO_SIDED = /^(.*?[^\s(])\s*\(?\s*\+\s*([\d.,]+[^\d+-]*?)\s*[/,;]?\s*-\s*([\d.,]+[^)]*)\)?$/;
const ONE_SIDED = /^(.*?[^\s(])\s*\(?\s*(?:±|\+\s*\/\s*-|\+-)\s*([\d.,][^)]*)\)?$/;

function equalSides(text: string): readonly string[] {
  const [all, nominal, size] = ONE_SIDED.exec(text) ?? [];
  return all === undefined || nominal === undefined || size === undefined ? [] : [all, nominal, size, size];
}

// In "+0.1/-0.0 mm" the unit stands once, behind the second number.
function sharing(plus: Length, { unit }: Length): Length {
  return plus.unit === null && unit !== null ? (parseLength(`${plus.value} ${unit}`) ?? plus) : plus;
}
