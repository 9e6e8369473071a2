import { isDenied } from './facts-negation.ts';

/** Work that takes away the metal at the rim of a hole. */
const RIM_WORDS = [
  "de[- ]?burr?(?:ed|ing|s)?|remove (?:all |any |the )?(?:sharp )?burrs?|csk(?:['’]?d|s)?|c[ '’/-]?s[iu]nk(?:ed|ing|s)?|counter[- ]?s[iu]nk(?:s|ing)?|⌵",
  String.raw`chamf(?:\.|er(?:ed|ing|s)?)?|chmfr|break (?:the )?(?:sharp )?(?:edges? of (?:the |all )?holes?|hole edges?)`,
  'entgrat(?:en|et|ung)|(?:an|ver|auf)?(?:gesenkt|senken|senkung(?:en)?)|fasen?|(?:an)?gefast|anfasen',
  '[ée]bavur(?:er|[ée]e?s?|age)|frais(?:ur(?:er?|[ée]e?s?|age))|chanfrein(?:er|[ée]e?s?|s)?',
];
const RIM = new RegExp(String.raw`(?<![\p{L}\d])(?:${RIM_WORDS.join('|')})(?![\p{L}])`, 'giu');

/**
 * The first word in a text that says that the rim of the hole is deburred, countersunk or chamfered, as written. Null when none
 * does: also when it is forbidden ("do not deburr"), when it is about other metal ("deburr edges only", "csk other holes") or
 * about a screw's head.
 */
export function findRimWork(text: string): string | null {
  return sentences(text).flatMap((sentence) => rimWordsIn(sentence))[0] ?? null;
}

/** Whether a text speaks of a hole at all. */
export function namesHole(text: string): boolean {
  return HOLE.test(text);
}

const HOLE = /(?<!\p{L})(?:holes?|bores?|l[öo]ch(?:er)?|bohrung(?:en)?|trous?|per[çc]ages?)(?!\p{L})/iu;

function sentences(text: string): readonly string[] {
  return text.split(/;|\n|\.(?=\s|$)(?<!\b(?:incl|excl|min|max|dia|approx)\.)/i);
}

function rimWordsIn(sentence: string): readonly string[] {
  if (isElsewhere(sentence)) return [];
  let deniedTo = -1;
  return [...sentence.matchAll(RIM)].flatMap((match) => {
    const [word] = match;
    const end = match.index + word.length;
    const before = sentence.slice(0, match.index);
    const behind = sentence.slice(end);
    const goesOn = deniedTo >= 0 && isSameList(sentence.slice(deniedTo, match.index), behind);
    if (goesOn || isDenied(before, behind)) deniedTo = end;
    return deniedTo === end || isHead(before, behind) || isOtherPlace(behind) ? [] : [word];
  });
}

const OUTER =
  /\b(?:outer|outside|external|exterior) (?:\p{L}+ )?(?:edges?|contours?|profiles?|corners?)\b|\b(?:outline|perimeter|periphery|contours?|profile)\b|\bedges? only\b|\bonly (?:the )?edges?\b|au(?:ß|ss)en(?:kant|kontur|rand)|\bumriss|\bnur kanten|\bcontour|bords? ext/iu;
const BUT_HOLES =
  /\b(?:except|excluding|excl|but|not|other than|away from|au(?:ß|ss)er|sauf|nicht|without)\b[^;]*?(?<!\p{L})(?:holes?|bores?|l[öo]ch(?:er)?n?|bohrung(?:en)?|trous?)/iu;

/** The outline alone, or everything but the holes. */
function isElsewhere(sentence: string): boolean {
  if (/csk|s[iu]nk|senk|frais/i.test(sentence)) return false;
  return OUTER.test(sentence) ? !HOLE.test(sentence) || BUT_HOLES.test(sentence) : isAllBut(sentence);
}

function isAllBut(sentence: string): boolean {
  return (
    /\b(?:all|edges?|everything|part|panel|kanten|alles?|tout|ar[êe]tes)\b/i.test(sentence) && EXCEPT.test(sentence)
  );
}

const EXCEPT =
  /\b(?:(?:except|excluding|excl\.?|other than|all but|au(?:ß|ss)er|sauf)\b[^;]*?(?<!\p{L})|(?:but |, ?)not (?:at |the |any )?(?:clinch |mounting |fastener |hardware |insert )?)(?:holes?|bores?|l[öo]ch(?:er)?n?|bohrung(?:en)?|trous?)/iu;

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

function isOtherPlace(behind: string): boolean {
  return /^\s*(?:all |the )?(?:(?:other|clearance|remaining|vent|tapped|screw|rivet) holes?|(?:panel |sheet )?corners?)\b/i.test(
    behind,
  );
}
