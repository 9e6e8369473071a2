import { isDeniedBefore } from './facts-negation.ts';

const MASK =
  /(?<![\p{L}])(?:mask(?:ed|ing)?|plug(?:ged)?|abdeck\p{L}*|abgedeckt|maskier\p{L}*|abkleb\p{L}*|abgeklebt|masqu(?:er|[ée]e?s?|age))(?![\p{L}])/giu;
const SEAT =
  /(?<!\p{L})(?<!threaded |tapped |screw )(?:holes?|seats?|bores?|l[öo]ch(?:er)?|bohrung(?:en)?|sitz|trous?)(?! threads?)(?!\p{L})/iu;

/** Whether a text says that the hole or its seat is masked. Masked threads leave the hole open to the coating. */
export function isHoleMasked(text: string): boolean {
  return text.split(/[;\n]|\.(?=\s|$)/).some((sentence) => {
    const masks = [...sentence.matchAll(MASK)].filter(({ index }) => !isDeniedBefore(sentence.slice(0, index)));
    return masks.length > 0 && SEAT.test(sentence);
  });
}

const COATED_FACE =
  '(?:the )?(?:(?:powder[- ]?)?coated|(?:pre-?)?painted|paint|powder|plated|anodi[sz]ed|finish(?:ed)?|burr(?:ed)?|die) (?:side|face|surface)';
const PRESSED = String.raw`(?:press|install|insert|fit|clinch|assembl|mount|push)\p{L}*`;
const WRONG_SIDE = [
  new RegExp(
    String.raw`(?<!\p{L})${PRESSED}(?: (?!opposite|away)[\p{L}-]+){0,4}? (?:from|on|at|into) ${COATED_FACE}`,
    'giu',
  ),
  /von der (?:lackierten|beschichteten|pulverbeschichteten|eloxierten) seite(?: \p{L}+){0,2} (?:ein)?(?:ge)?press\p{L}*|von der grat ?seite(?: \p{L}+){0,2} (?:ein)?(?:ge)?press\p{L}*|einpress\p{L}* von (?:der )?(?:gratseite|lackierten seite|beschichteten seite)/giu,
  /(?:pos|sert|mont|ins[ée]r)\p{L}* (?:du|depuis le|par le|c[ôo]t[ée]) ?(?:c[ôo]t[ée] )?(?:peint|laqu[ée]|rev[êe]tu|bavures?)/giu,
];

/** Words that have the fastener pressed from the coated face or from the burr side, as written; null when none do. */
export function findWrongSide(text: string): string | null {
  return (
    WRONG_SIDE.flatMap((pattern) => [...text.matchAll(pattern)].filter((match) => !isDenied(text, match)))[0]?.[0] ??
    null
  );
}

const FORBIDDEN_SIDE = new RegExp(
  [
    String.raw`(?<!\p{L})(?:not|never|dont|\p{L}+n['’]t|avoid|no|opposite|away)(?: [\p{L}-]+){0,6}? ${COATED_FACE}`,
    String.raw`nicht (?:[\p{L}-]+ ){0,3}?von der \p{L}+ seite`,
    String.raw`(?:pas|jamais) (?:[\p{L}-]+ ){0,3}?c[ôo]t[ée] \p{L}+`,
  ].join('|'),
  'giu',
);

/** Whether a place in a text lies inside words that forbid a side: "do not press from the painted face" orders no paint. */
export function isForbiddenSide(
  text: string,
  { start, end }: { readonly start: number; readonly end: number },
): boolean {
  return [...text.matchAll(FORBIDDEN_SIDE)].some(({ index, 0: all }) => start >= index && end <= index + all.length);
}

// "Do not press from", "press only, not from", "press from the side away from".
function isDenied(text: string, { index, 0: words }: RegExpExecArray): boolean {
  return isDeniedBefore(text.slice(0, index)) || /\b(?:not|never|nicht|opposite|away)\b/i.test(words);
}
