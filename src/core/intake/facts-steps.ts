import type { NamedFinish } from './facts-finish.ts';

/** Pressing or finishing, where a sentence names it. */
export interface Step {
  readonly what: 'press' | 'finish';
  readonly start: number;
  readonly end: number;
  readonly finish: NamedFinish | null;
  /** What the finish is when it follows pressing, where only a plain word tells. */
  readonly bath: NamedFinish | null;
}

/** What is pressed in, in English, German and French. */
export const FASTENER = 'hardware|fasteners?|nuts?|studs?|stand-?offs?|inserts?|pins?|muttern?|bolzen|[ée]crous?';

/** "Insert nuts prior to plating": the verb stands first, and the fastener is its object. A "clinch nut, zinc plated" is a noun. */
const PRESS_FASTENER = [
  String.raw`(?<=(?:^|[,:&]|\b(?:and|then|to))\s*)(?:press|insert|(?:self-?)?clinch|push)(?:[- ]?(?:in|fit))?`,
  String.raw`(?= (?:[\p{L}\d.#/-]+ ){0,3}?(?:${FASTENER})(?: [\p{L}\d.#/-]+){0,2}? (?:before|prior|ahead|after|following|once|pre-|post-|vor|nach|avant|apr[èe]s))`,
].join('');
const PRESS_WORDS = [
  PRESS_FASTENER,
  String.raw`press(?:ed|ing)?(?![- ]?(?:brake|force|load|tool|side|fit (?:nut|stud|pin)))(?![- ]in (?:${FASTENER})\b)`,
  'install(?:ed|ing|ation|s)?(?! (?:side|force|tool|face))|insert(?:ed|ing|ion)?(?! (?:nut|stud))',
  String.raw`(?<!self-)clinch(?:ed|ing)?(?! ?(?:${FASTENER}|holes?)\b)|assembl(?:e|ed|ing|y)|assy|mount(?:ed)?(?! holes?)`,
  String.raw`(?<!check |press |verify |gauge |thread |for )fit(?:ted|ting)?|add(?:ed|ing)?|set(?:ting)?|einpress\p{L}*|ein[sz]u?pressen|eingepresst\p{L}*`,
  String.raw`(?:ein)?montage|montier\p{L}*|pos(?:er?|[ée]e?s?)|sert(?:ir|ie?s?|issage)|insertion`,
  String.raw`(?<=^\s*)(?:${FASTENER})(?= (?:before|after|prior|vor|nach|avant|apr[èe]s)\b)`,
];
const PRESS = new RegExp(String.raw`(?<![\p{L}])(?:${PRESS_WORDS.join('|')})(?![\p{L}])`, 'giu');
/** "Plated sheet", "coated panel": what it is made of, no step of the work. */
const NOT_ADJECTIVE =
  '(?! (?:sheets?|panels?|steel|parts?|brackets?|blanks?|metal|stock|surfaces?|faces?|sides?|holes?|hardware|fasteners?|nuts?|studs?)(?![\\p{L}]))';
/** "Plate" as a verb: other plates are sheet metal. */
const PLATE = String.raw`(?<=(?:^|[,:&→>]|\b(?:and|then|not|no|never|before|after|prior to|following|must|shall|once)|pre-|post-)\s*|\b(?:pre|post|pressing|insertion|installation) )plate(?! (?:to|is|are|must|shall|should|has|with|in|on|of|for|thickness|\p{L}+ed)(?![\p{L}]))`;
const UNNAMED_FINISH = new RegExp(
  [
    String.raw`(?<![\p{L}])(?:(?:electro)?plat(?:ing|ed${NOT_ADJECTIVE})|electroplate|${PLATE}|coat(?:ing|ed${NOT_ADJECTIVE})?`,
    String.raw`|finish(?:ing|ed${NOT_ADJECTIVE})?(?! (?:drill|ream|machin|bor|turn|grind|mill|tap)\p{L}*)|galvani[sz](?:ed${NOT_ADJECTIVE}|e|ing|ation)`,
    String.raw`|(?:surface |(?<!heat ))treatment|beschicht\p{L}*|oberfl[äa]che\p{L}*|rev[êe]tement|traitement)(?![\p{L}])`,
  ].join(''),
  'giu',
);

/**
 * Pressing and finishing as a sentence names them, in its order; `from` is where it starts in the text of the finishes. Names of finishes
 * cover the plain words inside them.
 */
export function findSteps(sentence: string, from: number, finishes: readonly NamedFinish[]): readonly Step[] {
  const named = finishes
    .map((finish): Step => ({ what: 'finish', start: finish.start - from, end: finish.end - from, finish, bath: null }))
    .filter(({ start, end }) => start >= 0 && end <= sentence.length);
  const plain = [...sentence.matchAll(UNNAMED_FINISH)]
    .map((match) => step('finish', match, from))
    .filter(({ start }) => !named.some((one) => start >= one.start && start < one.end));
  const pressed = [...sentence.matchAll(PRESS)].map((match) => step('press', match, from));
  const finished = [...named, ...plain].filter(({ start, end }) => !isCaredFor(sentence, start, end));
  return [...finished, ...pressed].sort((a, b) => a.start - b.start);
}

/** "Touch up the plating after pressing": there is a finish already. */
function isCaredFor(sentence: string, start: number, end: number): boolean {
  return CARE_BEFORE.test(sentence.slice(0, start)) || CARE_BEHIND.test(sentence.slice(end));
}

const CARE_BEFORE =
  /(?<!\p{L})(?:check|inspect|verif|touch(?:ing)?[- ]?up|repair|protect|damag|scratch|crack|measur)\p{L}*(?: (?:to|of|the|any|for|in|on|all|panel|sheet))* $/iu;
const CARE_BEHIND =
  /^ (?:thickness|damage|adhesion|quality|inspection|check|touch[- ]?up|(?:must|shall|should|may) not (?:crack|flake|chip|peel|be (?:damaged|scratched)))(?!\p{L})/iu;

function step(what: Step['what'], { index, 0: all }: RegExpExecArray, from: number): Step {
  const end = index + all.length;
  const kind = /plat/i.test(all) ? 'plating' : /^galvani/i.test(all) ? 'hot-dip-zinc' : null;
  const bath = what === 'finish' && kind ? ({ kind, start: from + index, end: from + end } as const) : null;
  return { what, start: index, end, finish: null, bath };
}
