/** A cell with one kind of space, minus sign, quote and multiplication sign. */
export function plainCell(text: string): string {
  return text
    .replace(/[\s\u00a0]+/g, ' ')
    .replace(/[‐-―−]/g, '-')
    .replace(/[×✕]/g, 'x')
    .replace(/[“”„″]|''/g, '"')
    .trim();
}

/** Is a cell empty but for dashes or "n/a"? */
export function isBlankCell(plain: string): boolean {
  return /^(?:-*|n\/?a\.?)$/i.test(plain);
}

const SIGN = /[⌀Øø∅Φφ]/gu;
/** "4x ⌀5.6", "4X 5.6", "(4) ⌀5.6", "2 PL ⌀5.6"; a bare "4x5.6" could be a slot and keeps its count. */
const COUNT_BEFORE =
  /^(?:\d{1,3} ?x ?(?=[⌀Øø∅Φφ])|\d{1,3}x (?=[\d.,#])|\(\d{1,3}x?\) ?|\d{1,3} (?:pl(?:c|cs|aces?)?|holes?|off)\b\.?,? ?)/iu;
const COUNT_BEHIND = /(?:,? ?\(? ?\b\d{1,3} ?(?:x|pl(?:c|cs|aces?)?|holes?|off)\b\.?\)?| ?\(\d{1,3}\))$/i;
const LABEL =
  /^(?:(?:hole|bore|loch|bohrung)(?: ?(?:ø|dia\.?|diameter|size))?|dia(?:m(?:eter)?)?\.?|d(?= ?[=:\d.]))\.? ?[:=]? ?(?=\S)/i;
const WORDS =
  / ?\b(?:dia(?:m(?:eter)?)?|thru|through|all|typ(?:ical)?|ref|nom(?:inal)?|holes?|punch(?:ed)?|drill(?:ed)?|drl|(?:(?:do )?not? )?(?:edges? )?debur(?:r(?:ed)?)?(?: (?:the )?edges?)?)\b\.?/gi;

/** Words about the making or the rim of the hole, behind its size; before it a number may be that of the countersink. */
const WORK =
  "(?:laser(?:[- ]?cut)?|water[- ]?jet(?:[- ]?cut)?|pierced?|stamped|bored?|ream(?:ed)?|csk|c['’]?[- ]?sink|c['’]sk|counter[- ]?s[iu]nk|chamf(?:er(?:ed)?)?)";
const WORK_BEHIND = new RegExp(
  String.raw`(?:,? \(?(?:(?:do )?not? |w\/o |without )?${WORK}(?: (?:both|one|far|near) sides?)?\.?\)?)+$`,
  'i',
);

/** A hole cell without diameter sign, label, count and words that say nothing of its size. */
export function withoutHoleWords(plain: string): string {
  const bare = plain.replace(COUNT_BEFORE, '').replace(COUNT_BEHIND, '').replace(SIGN, '').trim().replace(LABEL, '');
  return bare
    .replace(WORDS, '')
    .replace(/[ ,;]+$/, '')
    .replace(WORK_BEHIND, '')
    .replace(/[ ,;]+$/, '')
    .replace(/ {2,}/g, ' ')
    .trim();
}

/** A distance cell without the words that say nothing of its size. */
export function withoutDistanceWords(plain: string): string {
  return plain
    .replace(/^(?:>=?|≥|min(?:imum)?\b\.?) ?/i, '')
    .replace(/ ?\b(?:min(?:imum)?|typ(?:ical)?|ref|nom(?:inal)?|c\/c|ctrs?|centers?|centres?)\b\.?/gi, '')
    .trim();
}
