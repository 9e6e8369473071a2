/** Words that deny what follows, in English, German and French. */
const DENIAL = String.raw`(?:\bnot\b|n['’]t\b|\bdont\b|\bno\b|\bnever\b|\bwithout\b|\bw\/o\b|\bavoid\b|\bnon\b|\bnor\b|\bfree (?:of|from)\b|\bnicht\b|\bkeine?[nmrs]?\b|\bohne\b|\bne pas\b|\bsans\b|\bpas (?:de|d['’])|\bni\b|\baucune?\b)`;

/** Words that may stand between a denial and what it denies: "holes must not be deburred", "no hole chamfer". */
const BETWEEN =
  '(?:to|be|been|is|are|any|the|a|an|of|these|this|all|hole|holes|bore|edge|edges|rim|mounting|clinch|fastener|should|must|shall|der|die|das|den|dem|les?|la|trous?)';

const DENIED_BEFORE = new RegExp(String.raw`${DENIAL}(?:[\s:('"-]+${BETWEEN}\b)*[\s:('"-]*$`, 'i');

const DENIED_BEHIND =
  /^(?:ing|ed)?(?:\s+(?:of|the|all|any|both|sides?|holes?|edges?))*\s*(?::|=|\bis\b|\bare\b|\bmust\b|\bshall\b|\bmay\b|\bto\b|\bbe\b|\s)*(?:not (?:allowed|permitted|required|req'?d|necessary|needed|acceptable|to be|done|applied|ok)|not(?=\s*(?:$|[;,.)]))|prohibited|forbidden|none\b|no(?=\s*(?:$|[;,.)]))|n\/a\b|nicht (?:erlaubt|zul|n[öo]tig|erforderlich)|nicht(?=\s*(?:$|[;,.)]))|verboten|unzul|interdit)/i;

/** Whether the words right before or right behind deny a thing: "do not deburr", "csk not permitted", "ohne Fase". */
export function isDenied(before: string, behind: string): boolean {
  return isDeniedBefore(before) || DENIED_BEHIND.test(behind);
}

/** Whether a text ends in a denial of what comes next: "holes are not to be". */
export function isDeniedBefore(before: string): boolean {
  return DENIED_BEFORE.test(before);
}
