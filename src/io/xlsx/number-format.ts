/** What a number format means for the text of a cell. */
export type NumberFormat =
  | { readonly kind: 'general' }
  /** `isElapsed`: hours may pass 24, as in `[h]:mm`. */
  | { readonly kind: 'date'; readonly isElapsed: boolean }
  | {
      readonly kind: 'number';
      /** The value is shown a hundredfold; the sign itself is part of prefix or suffix. */
      readonly isPercent: boolean;
      /** Decimals that are always shown. */
      readonly decimals: number;
      readonly prefix: string;
      readonly suffix: string;
      /** Digits and literals of a whole-number pattern, left to right: `000-000`. */
      readonly digits: readonly string[];
    };

export const GENERAL: NumberFormat = { kind: 'general' };

const DATE_LETTERS = /[ymdhs]/i;
const ELAPSED = /\[(?:h+|m+|s+)\]/i;
/** Quoted text, escaped character, room or filling, currency, colour or condition, or a single sign. */
const TOKENS = /"([^"]*)"?|\\(.)|[_*](.)|\[\$([^\]-]*)[^\]]*\]|\[([^\]]*)\]|([\s\S])/g;

/**
 * Reads a number format code. Only its first section counts, the one for positive numbers. A letter inside quotes or
 * after a backslash is text, so `0.0\ \m\m` is a number in millimetres and no date.
 */
export function parseNumberFormat(code: string): NumberFormat {
  const tokens = tokenise(code);
  const signs = tokens.map((token) => (token.isLiteral ? '' : token.text)).join('');
  if (ELAPSED.test(code)) return { kind: 'date', isElapsed: true };
  const isGeneral = /general/i.test(signs);
  if (!isGeneral && DATE_LETTERS.test(signs)) return { kind: 'date', isElapsed: false };
  if (!isGeneral && !/[0#?]/.test(signs)) return GENERAL;
  return describeNumber(tokens, signs, isGeneral);
}

interface Token {
  readonly text: string;
  /** Shown as it is. */
  readonly isLiteral: boolean;
  readonly isPercent: boolean;
}

function tokenise(code: string): Token[] {
  const tokens: Token[] = [];
  for (const [, quoted, escaped, padding, currency, , sign] of code.matchAll(TOKENS)) {
    if (sign === ';') break;
    if (padding !== undefined) continue;
    const literal = quoted ?? escaped ?? currency;
    if (literal !== undefined) tokens.push({ text: literal, isLiteral: true, isPercent: false });
    else if (sign !== undefined) tokens.push({ text: sign, isLiteral: isPlainLiteral(sign), isPercent: sign === '%' });
  }
  return tokens;
}

/** Signs that a format shows as they are, without quotes. */
function isPlainLiteral(sign: string): boolean {
  return /[\s$€£¥°µ×()+:!^&'~{}<>=%-]/.test(sign);
}

function describeNumber(tokens: readonly Token[], signs: string, isGeneral: boolean): NumberFormat {
  const first = tokens.findIndex((token) => !token.isLiteral);
  const last = tokens.findLastIndex((token) => !token.isLiteral);
  const isPercent = tokens.some((token) => token.isPercent);
  const isPattern = /^[0#]+$/.test(signs) && !isPercent;
  return {
    kind: 'number',
    isPercent,
    decimals: isGeneral || /[eE?/]/.test(signs) ? 0 : (/\.(0*)/.exec(signs)?.[1]?.length ?? 0),
    prefix: joinLiterals(tokens.slice(0, first)),
    suffix: joinLiterals(tokens.slice(last + 1)),
    digits: isPattern ? tokens.slice(first, last + 1).map((token) => token.text) : [],
  };
}

/** Brackets around negative amounts come from the accounting formats and say nothing about a positive one. */
function joinLiterals(tokens: readonly Token[]): string {
  return tokens
    .filter((token) => token.isLiteral && !/^[()]$/.test(token.text))
    .map((token) => token.text)
    .join('');
}
