import type { FinishKind } from '../model/facts.ts';

/** A finish and the words for it; without a kind, words that only look like one of ours. */
export interface FinishWord {
  readonly kind: FinishKind | null;
  readonly pattern: RegExp;
}

function word(kind: FinishKind | null, ...patterns: readonly string[]): FinishWord {
  return { kind, pattern: new RegExp(String.raw`(?<![\p{L}\d])(?:${patterns.join('|')})(?![\p{L}])`, 'giu') };
}

/** In the order in which they are tried: what is longer or more special before what it contains. What a word matches is gone for the next. */
export const FINISH_WORDS: readonly FinishWord[] = [
  word(
    null,
    String.raw`paint(?:ed)? ?(?:pen|mark(?:er|s|ing)?|stripe|dot|chip|witness)\p{L}*`,
    'zinc (?:alloy|die[- ]?cast)',
  ),
  word(null, String.raw`mech(?:anical(?:ly)?|\.)?[- ](?:plated |applied )?(?:zinc|galvani[sz]ed)(?: plat\p{L}*)?`),
  word(null, 'nickel (?:silver|alloy)', String.raw`powder(?:ed)? metal\p{L}*`),
  word('paint', 'zinc[- ]rich (?:primer|paint)'),
  word(
    'zinc-flake',
    String.raw`(?:zinc|zn)(?:[- /]?al(?:umini?um)?)?[- ]flake\p{L}*`,
    String.raw`zinklamell\p{L}*`,
    'iso 10683',
  ),
  word('phosphate', String.raw`(?:(?:zinc|zn|manganese|mn|iron)[ -])?phosphat\p{L}*`),
  word(
    'hot-dip-zinc',
    String.raw`hot[- ]?dip(?:ped)?(?:[- ](?:galvani[sz]\p{L}*|zinc))?`,
    'hdg',
    String.raw`feuerverzink\p{L}*`,
  ),
  word('hot-dip-zinc', 'galvanis[ée]e?s? [àa] chaud'),
  word('chromium-plate', String.raw`nickel[- /]chrom(?:e|ium)(?:[- ]plat\p{L}*)?`),
  word(
    'zinc-electroplate',
    String.raw`(?:electro[- ]?)(?:zinc|galvani[sz])\p{L}*(?: plat\p{L}*)?`,
    String.raw`(?:zinc|zn)[- /]?(?:ni(?:ckel)?|co(?:balt)?|fe)(?:[- ]plat\p{L}*)?`,
    String.raw`fe/zn ?\d*`,
    String.raw`(?:zinc|zn)(?:[- ](?:electro)?plat\p{L}*)?`,
    String.raw`b?zp|(?:astm )?b ?633|(?:galv?(?:anisch|\.)? )?verzink\p{L}*|zingu[ée]e?s?|zincado|zincato`,
  ),
  word(
    'cadmium-electroplate',
    String.raw`cadmium(?:[- ]plat\p{L}*)?`,
    String.raw`cad\.?[- ](?:plat\p{L}*|pl\b|yellow|clear)`,
  ),
  word('cadmium-electroplate', String.raw`cd[- ]plat\p{L}*`, 'cadmi[ée]e?s?'),
  word(
    'nickel-plate',
    String.raw`(?:electroless )?nickel(?:[- ]plat\p{L}*)?|enp|ni[- ]plat\p{L}*|vernickel\p{L}*|nickel[ée]e?s?`,
  ),
  word('tin-plate', String.raw`tin[- ](?:electro)?plat\p{L}*|tinned|sn[- ]plat\p{L}*|verzinn\p{L}*|[ée]tam[ée]e?s?`),
  word(null, String.raw`(?:tri(?:valent)?|hex(?:avalent)?)[- ]?chrom\p{L}*`, 'chrom(?:e|ium)[- ]?(?:free|vi|6)'),
  word('chromium-plate', String.raw`chrom(?:e|ium)[- ]?plat\p{L}*|chromed?|verchrom\p{L}*|chrom[ée]e?s?`),
  word('passivated', String.raw`passivat\p{L}*|passivi[eé]r?\p{L}*|(?:astm )?a ?967`),
  word(
    'hard-anodised',
    String.raw`hard[- ]?(?:coat(?:ed)? )?anod\p{L}*|hard[- ]?coat(?:ed|ing)?|hart(?:elox|anod)\p{L}*`,
    String.raw`anod\p{L}*[^;.\p{L}]{0,4}(?:[\w-]+ ){0,3}type (?:iii|3)|type (?:iii|3),? (?:hard )?(?:coat )?anod\p{L}*`,
    'anodis[ée]e?s? dure?s?|anodisation dure',
  ),
  word('anodised', String.raw`anodi[sz]\p{L}*|anod\.?|elox\p{L}+|mil-(?:a|prf)-8625`),
  word(
    'chem-film',
    String.raw`chem(?:ical)?\.?[- ]?(?:film|conv)\p{L}*(?: coat\p{L}*)?|(?:chromate )?conversion[- ]coat\p{L}*`,
    String.raw`chromate conv\p{L}*|mil-?(?:dtl|c)-?5541|mil-dtl-81706|chromatier\p{L}*`,
  ),
  word('powder-coat', String.raw`powder(?:[- ]?(?:coat|paint)\p{L}*)?|p/c|pulver(?:besch|lack)\p{L}*|thermolaqu\p{L}*`),
  word(
    'paint',
    String.raw`pre-?painted|paint(?:ed|ing|s)?|e-?coat(?:ed|ing)?|ktl|prim(?:er|ed)|lackier\p{L}*|lackierung|lacquer\p{L}*`,
    String.raw`peint(?:e?s?|ure)|laqu[ée]e?s?|enamel\p{L}*|verniciat\p{L}*|wet coat(?:ed|ing)?`,
  ),
  word('black-oxide', String.raw`black(?:ened)?[- ]oxid\p{L}*|oxide black|br[üu]nier\p{L}*|bruenier\p{L}*`),
];

/** What a finish cell says when the part has none; tried on the whole cell. */
export const PLAIN =
  /^(?:plain|none|natural|bare|raw|uncoated|unplated|unfinished|no (?:finish|plating|coating)|self[- ]?colou?r(?:ed)?|blank|mill finish|roh|brut)(?![\p{L}])/iu;
