/** A hardness unit as written: Brinell without its load, strength in MPa or thousand pounds per square inch. */
export type HardnessUnit = 'HR30T' | 'HRB' | 'HRC' | 'HRF' | 'HRE' | 'HV' | 'HB' | 'MPa' | 'ksi';

export type HardnessToken = '-' | '±' | { readonly number: number } | { readonly unit: HardnessUnit };

/**
 * Cuts upper-case text into numbers, units, dashes and plus-minus signs. Null as soon as something is none of them:
 * half-read text is not read.
 */
export function tokenizeHardness(text: string): HardnessToken[] | null {
  const tokens: HardnessToken[] = [];
  let rest = text.trim();
  while (rest !== '') {
    const found = firstToken(rest);
    if (found === null) return null;
    tokens.push(found.token);
    rest = rest.slice(found.length).trimStart();
  }
  return tokens;
}

/** Longest spelling first; none may run on into another letter. */
const UNITS: readonly (readonly [RegExp, HardnessUnit])[] = [
  [/^(?:HR|R|ROCKWELL )?\s*30\s*-?TW?(?![A-Z])/, 'HR30T'],
  [/^(?:HR\s?|R\s?|ROCKWELL )B[WS]?(?![A-Z])/, 'HRB'],
  [/^(?:HR\s?|R\s?|ROCKWELL )C(?![A-Z])/, 'HRC'],
  // "B95" and "C38" are how drawings and US standards shorten Rockwell B and C.
  [/^B(?=\s?\d)/, 'HRB'],
  [/^C(?=\s?\d)/, 'HRC'],
  [/^(?:HR\s?|R\s?|ROCKWELL )F[WS]?(?![A-Z])/, 'HRF'],
  [/^(?:HR\s?|R\s?|ROCKWELL )E[WS]?(?![A-Z])/, 'HRE'],
  [/^(?:HV|VICKERS|VPN|VHN|DPH)(?![A-Z])/, 'HV'],
  [/^(?:HB[WS]?|BHN|BRINELL)(?![A-Z])/, 'HB'],
  [/^(?:MPA|N\/MM2)(?![A-Z\d])/, 'MPa'],
  [/^KSI(?![A-Z])/, 'ksi'],
];

function firstToken(text: string): { readonly token: HardnessToken; readonly length: number } | null {
  for (const [spelling, unit] of UNITS) {
    const written = spelling.exec(text)?.[0];
    if (written !== undefined) return { token: { unit }, length: written.length };
  }
  const digits = /^\d+(?:\.\d+)?/.exec(text)?.[0];
  if (digits !== undefined) return { token: { number: Number(digits) }, length: digits.length };
  const plusMinus = /^(?:±|\+\s*\/?\s*-)/.exec(text)?.[0];
  if (plusMinus !== undefined) return { token: '±', length: plusMinus.length };
  const to = /^(?:-|TO\b|\.\.+)/.exec(text)?.[0];
  return to === undefined ? null : { token: '-', length: to.length };
}
