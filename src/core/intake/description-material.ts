import { parseFastenerMaterial } from '../catalogue/fastener-material.ts';

/**
 * Ids in the table of fastener materials that a description could mean for the fastener itself: words about the sheet ("for stainless
 * panel") and numbers that only look like an alloy or property class are left out. Empty: it does not say.
 */
export function findMaterials(description: string): readonly string[] {
  if (!/\p{L}{2}|\d{3}/u.test(description)) return [];
  return parseFastenerMaterial(ownWords(description)).candidates;
}

const SHEET_METAL =
  /(?<![\p{L}])(?:(?:for(?: use)?|into|onto|to suit|suits?|f[üu]r|pour)\b|(?<!\d ?)(?:in|on)(?= ))[^,;()]*/giu;
const CLASS = String.raw`(?:4\.[68]|5\.[68]|6\.8|8\.8|9\.8|10\.9|12\.9)`;
const SAID_CLASS = new RegExp(
  String.raw`(?:\b(?:class|cl\.?|pc|grade|gr\.?|festigkeitsklasse|fkl\.?|classe)\s*|(?<=\dx? ?\d*)-)(${CLASS})(?![.\d])|(?<![.\d])(${CLASS})(?=\s*(?:steel|stl|stahl|acier))`,
  'gi',
);

/** The description without what is not the fastener's metal, its abbreviations written out. */
function ownWords(description: string): string {
  const classes = [...description.matchAll(SAID_CLASS)].map((match) => match[1] ?? match[2] ?? '');
  const words = description
    .replace(SHEET_METAL, ' ')
    .replace(/\b(?:fits?|takes|accepts|with|w\/)\s[^,;()]*/gi, ' ')
    // Sizes, threads and colours: "x .416", "x 316 mm", "5.6", "RAL 7035".
    .replace(/\bRAL ?\d{4}\b|\d*[.,]\d+|\d+ ?(?:mm|in\b|")|\bM ?\d+(?: ?x ?\d+)*\b|\bx ?\d+\b/gi, ' ')
    .replace(/\bst['’]?l\b\.?/gi, 'steel')
    .replace(/\b(?:brs)\b/gi, 'brass')
    // Alone these are a countersunk or Phillips head, a machine screw, or a place on a drawing.
    .replace(/\b(?:CS|MS|[CF]\d)\b(?!-)/g, ' ')
    .replace(
      /(?<!(?:1[57]-[457]|stainless|sst|ss|steel|cres)[ -]?)\bPH\b(?![ -]*(?:stainless|sst|ss|steel|bronze))/gi,
      ' ',
    );
  return [words, ...classes].join(' ');
}
