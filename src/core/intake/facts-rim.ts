import { isDenied } from './facts-negation.ts';

const HOLE_EDGES = '(?:hole edges?|edges? of (?:the |all |any )*holes?)';

/** Work that takes away the metal at the rim of a hole. */
const RIM_WORDS = [
  "de[- ]?burr?(?:ed|ing|s)?|remove (?:all |any |the )?(?:sharp )?burrs?|csk(?:['’]?d|s)?|c[ '’/-]?s[iu]nk(?:ed|ing|s)?|counter[- ]?s[iu]nk(?:s|ing)?|⌵",
  String.raw`chamf(?:\.|er(?:ed|ing|s)?)?|chmfr`,
  `(?:break|radius|round(?: off)?|blend|ease|relieve|dress) (?:(?:all|the|any|sharp) )*${HOLE_EDGES}`,
  `${HOLE_EDGES}(?: (?:to be|are|is|must be|shall be|should be))? (?:broken|radius(?:s?ed)?|rounded|blended|eased|relieved|dressed)`,
  'entgrat(?:en|et|ung)|(?:an|ver|auf)?(?:gesenkt|senken|senkung(?:en)?)|fasen?|(?:an)?gefast|anfasen',
  '[ée]bavur(?:er|[ée]e?s?|age)|frais(?:ur(?:er?|[ée]e?s?|age))|chanfrein(?:er|[ée]e?s?|s)?',
];
const RIM = new RegExp(String.raw`(?<![\p{L}\d])(?:${RIM_WORDS.join('|')})(?![\p{L}])`, 'giu');

/**
 * The first word in a text that says that the rim of the hole is deburred, countersunk or chamfered, as written. Null when none
 * does: also when it is forbidden ("do not deburr"), when it is about other metal ("deburr edges", "csk other holes") or about a
 * screw's head. In a text that is about the hole alone its edges are the rim.
 */
export function findRimWork(text: string, about: 'part' | 'hole' = 'part'): string | null {
  return sentences(text).flatMap((sentence) => rimWordsIn(sentence, about))[0] ?? null;
}

/** Whether a text speaks of a hole at all. */
export function namesHole(text: string): boolean {
  return HOLE.test(text);
}

const HOLE_WORDS = String.raw`(?:holes?|bores?|l[öo]ch(?:er)?n?|bohrung(?:en)?|trous?|per[çc]ages?)(?!\p{L})`;
const HOLE = new RegExp(String.raw`(?<!\p{L})${HOLE_WORDS}`, 'iu');

function sentences(text: string): readonly string[] {
  return text.split(/;|\n|\.(?=\s|$)(?<!\b(?:incl|excl|min|max|dia|approx)\.)/i);
}

function rimWordsIn(sentence: string, about: 'part' | 'hole'): readonly string[] {
  let deniedTo = -1;
  return [...sentence.matchAll(RIM)].flatMap((match) => {
    const [word] = match;
    const end = match.index + word.length;
    const before = sentence.slice(0, match.index);
    const behind = sentence.slice(end);
    const goesOn = deniedTo >= 0 && isSameList(sentence.slice(deniedTo, match.index), behind);
    if (goesOn || isDenied(before, behind)) deniedTo = end;
    const isOther = isElsewhere(word, before, behind) || (about === 'part' && isAtOuterEdges(word, before, behind));
    return deniedTo === end || isHead(before, behind) || isOther ? [] : [word];
  });
}

const OUTER =
  /\b(?:outer|outside|external|exterior) (?:\p{L}+ )?(?:edges?|contours?|profiles?|corners?)\b|\b(?:outline|perimeter|periphery|contours?|profile)\b|\bedges? only\b|\bonly (?:the )?edges?\b|au(?:ß|ss)en(?:kant|kontur|rand)|\bumriss|\bnur kanten|bords? ext/iu;
const OTHER_PLACE =
  /^\s*(?:all |the )?(?:(?:other|clearance|remaining|vent|tapped|screw|rivet) holes?|(?:panel |sheet )?corners?)\b/i;
const BUT_HOLES = new RegExp(
  String.raw`\b(?:(?:except|excluding|excl\.?|other than|all but|au(?:ß|ss)er|sauf)\b[^;]*?(?<!\p{L})|(?:but |, ?)not (?:at |the |any )?(?:clinch |mounting |fastener |hardware |insert )?)${HOLE_WORDS}`,
  'iu',
);

/** The outline alone, other holes, or everything but the holes. */
function isElsewhere(word: string, before: string, behind: string): boolean {
  if (OTHER_PLACE.test(behind)) return true;
  if (HOLE.test(word)) return false;
  if (/csk|s[iu]n?k|senk|frais|⌵/i.test(word)) return false;
  const clause = `${before.split(CLAUSE).at(-1)} ${behind.split(CLAUSE)[0]}`;
  return (OUTER.test(clause) && !HOLE.test(clause)) || BUT_HOLES.test(word + behind);
}

const EDGES = String.raw`(?:edges?|kanten?|bords?|ar[êe]tes?)(?!\p{L})`;
const EDGES_BEHIND = new RegExp(
  String.raw`^ (?:(?:the|sharp|both|long|cut|sheet|panel|outer|die|les) )*${EDGES}(?! ?(?:,|and|&|\+|/|und|et|of|on|at|in|around) (?:[\p{L}]+ ){0,3}?${HOLE_WORDS}(?! (?:as|un|not|only punch|punch)))`,
  'iu',
);
const EDGES_BEFORE = new RegExp(
  String.raw`(?<!\p{L})(?<!(?:all|every|each|any|hole|bore|alle|and|&|/) (?:\p{L}+ )?)${EDGES}(?: (?:to be|are|is|must be|shall be|should be|only))*[ :=-]*$`,
  'iu',
);

/** The edges of the sheet, where no hole is named with them: "deburr edges". "All edges" are those of the holes too. */
function isAtOuterEdges(word: string, before: string, behind: string): boolean {
  if (/csk|s[iu]n?k|senk|frais|⌵/i.test(word) || HOLE.test(word)) return false;
  if (EDGES_BEHIND.test(behind)) return true;
  return EDGES_BEFORE.test(before) && !HOLE.test(behind.split(CLAUSE)[0] ?? '');
}

const CLAUSE = new RegExp(String.raw`,|\bbut\b|${RIM.source}`, 'iu');

/** "Do not deburr or countersink" forbids both; "do not deburr, csk far side" only the first. */
function isSameList(between: string, behind: string): boolean {
  if (/^\s*(?:ing|ed)?\s*,?\s*(?:or|nor|oder|ou|ni|\/)\s*(?:the |any )?$/i.test(between)) return true;
  if (/^\s*(?:and|&|und|et)\s*$/i.test(between)) return true;
  return /^\s*,\s*$/.test(between) && /^\s*,?\s*(?:or|nor|and|oder|und|ou|ni)\b/i.test(behind);
}

/** A countersunk screw, not a countersunk hole. */
function isHead(before: string, behind: string): boolean {
  const isBehind = /^[ -]*(?:head|hd|socket|machine|flat|phillips|torx|screw|scr\b|bolt|m\d)/i.test(behind);
  return isBehind || /(?:screws?|bolts?|vis|head|schrauben?),? $/i.test(before);
}
