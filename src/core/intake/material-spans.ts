import { materialLexicon } from './material-lexicon.ts';
import { materialKey } from './material-text.ts';

/** A stretch of a material cell that is no word. */
export interface MaterialSpan {
  readonly kind: 'thickness' | 'quarter' | 'date' | 'colour' | 'silent';
  readonly start: number;
  readonly end: number;
}

const NUMBER = String.raw`(?:\d{1,2}[ -]\d{1,2}/\d{1,2}|\d{1,2}/\d{1,2}|\d{0,4}\.\d+|\d{1,4})`;
const UNIT = String.raw`(?:MM\b|INCH(?:ES)?\b|IN\b\.?|MILS?\b|THOU\b|''|")`;
const BEFORE = String.raw`(?<![\dA-Z.+/])`;
const GAUGE = String.raw`(?:GA|GAGE|GAUGE|GGE|SWG|ISWG|AWG|BWG|MSG|USG|USS)\b\.?`;
const MONTH = '(?:JAN|FEB|MAR|APR|MAY|JUN|JUL|AUG|SEP|OCT|NOV|DEC)[A-Z]*';

// Earlier patterns win where two would take the same characters.
const PATTERNS: readonly (readonly [MaterialSpan['kind'], RegExp])[] = [
  ['date', new RegExp(String.raw`\b\d{1,2}[-/. ]${MONTH}(?:[-/. ]\d{2,4})?\b`, 'g')],
  ['date', new RegExp(String.raw`\b${MONTH}[-/. ]\d{1,4}\b`, 'g')],
  ['date', /\b\d{4}-\d{2}-\d{2}(?:[T ][\d:.]+Z?)?\b|\b\d{1,2}[/.]\d{1,2}[/.]\d{2,4}\b/g],
  ['colour', /\bRAL ?-?(?:CLASSIC |DESIGN )?\d{4,7}\b|\bPANTONE ?\d+ ?C?\b|\bNCS ?S? ?\d{4}[-A-Z\d]*/g],
  ['silent', /(?<=\bA(?:36|109|[1-9]\d{2}|10[01]\d)M?)-\d{2}[A-Z]?(?![\dA-Z])|(?<=\d):(?:19|20)\d{2}\b/g],
  ['thickness', new RegExp(String.raw`${BEFORE}(?:# ?)?\d{1,2} ?-?${GAUGE}`, 'g')],
  ['thickness', /\b(?:GA|GAGE|GAUGE|SWG)[.:]? ?#? ?\d{1,2}(?![\d.,/A-Z])/g],
  ['thickness', /(?<![\dA-Z.])\d{1,2} ?OZ\b\.?(?: ?\/ ?SQ\.? ?FT)?/g],
  ['thickness', new RegExp(`${BEFORE}${NUMBER} ?-?${UNIT}`, 'g')],
  ['thickness', /(?<=\b(?:T|THK|THICK|THICKNESS) ?[=:]? ?)(?:\d{0,2}\.\d+|(?<=[=:] ?)\d{1,2})(?![\dA-Z])/g],
  ['thickness', /(?<![\dA-Z.+/])(?:\d{1,2}|\d{0,2}\.\d+)T(?![\dA-Z])/g],
  ['thickness', new RegExp(String.raw`${BEFORE}${NUMBER}(?= ?(?:THK|THICK)\b)`, 'g')],
  ['quarter', /(?<![\dA-Z.+/])[1357]\/[248](?![\d/.]| ?-?(?:H|HARD)\b)/g],
  ['thickness', /(?<![\dA-Z.+/])\d{1,2}\/(?:16|32|64)(?![\d/.])/g],
  ['thickness', /(?<![\dA-Z.+/]|SN[\d.]{1,3}-)(?!1\.\d{4}(?!\d)|3\.\d{4}(?!\d))\d{0,2}\.\d{1,4}(?![\dA-Z.])/g],
];

// Length and width of the sheet behind its thickness: "1.5 x 1250 x 2500".
const SHEET_SIZE = /^(?: ?MM)?(?: ?X ?\d+(?:\.\d+)?(?: ?MM| ?IN| ?")?(?![\dA-WYZ]))+/;

/** Thicknesses, dates and numbered colours in an upper-case material cell, in order and apart from each other. */
export function materialSpans(upper: string): readonly MaterialSpan[] {
  const spans: MaterialSpan[] = [];
  for (const [kind, pattern] of PATTERNS) {
    for (const match of upper.matchAll(pattern)) addSpan(spans, upper, kind, match);
  }
  return spans.sort((one, other) => one.start - other.start);
}

function addSpan(spans: MaterialSpan[], upper: string, kind: MaterialSpan['kind'], match: RegExpMatchArray): void {
  const start = match.index ?? 0;
  const end = start + match[0].length;
  if (spans.some((span) => start < span.end && span.start < end)) return;
  if (kind === 'thickness' && materialLexicon.has(materialKey(match[0]))) return;
  spans.push({ kind, start, end });
  const size = kind === 'thickness' ? SHEET_SIZE.exec(upper.slice(end)) : null;
  if (size) spans.push({ kind: 'silent', start: end, end: end + size[0].length });
}
