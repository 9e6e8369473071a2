/** What the words say of the condition. */
export type Said = 'hardened' | 'soft' | 'nothing';

/** One way of naming a fastener's material. */
export interface FastenerWord {
  /** Words of one metal that are `general` count only where no other word named that metal. */
  readonly metal: string;
  readonly general: boolean;
  /** Upper case. What it matches is taken away before the next word is tried. */
  readonly pattern: RegExp;
  /** Entry ids of the table of fastener materials, from what is said of the condition and from the pattern's group. */
  readonly read: (said: Said, group: string) => readonly string[];
}

const SOFT_STEEL = ['iso-898-1-4-8', 'iso-898-1-5-8'];
const SOFT_300 = ['astm-f593-a'];
const SOFT_400 = ['iso-3506-1-c1-50'];

type ByCondition = Readonly<Record<Said, readonly string[]>>;

const AUSTENITIC: ByCondition = { hardened: ['stainless-300'], soft: SOFT_300, nothing: ['stainless-300'] };
const MARTENSITIC: ByCondition = {
  hardened: ['stainless-400-hardened'],
  soft: SOFT_400,
  nothing: ['stainless-400-hardened', ...SOFT_400],
};
const ANY_STAINLESS: ByCondition = {
  hardened: ['stainless-400-hardened', 'stainless-ph'],
  soft: [...SOFT_300, ...SOFT_400],
  nothing: ['stainless-300', 'stainless-400-hardened', 'stainless-ph'],
};
const AGE_HARDENING: ByCondition = { hardened: ['stainless-ph'], soft: ['sus630-s'], nothing: ['stainless-ph'] };
const CARBON_STEEL: ByCondition = {
  hardened: ['carbon-steel-hardened'],
  soft: SOFT_STEEL,
  nothing: ['carbon-steel-hardened', ...SOFT_STEEL],
};

function named(metal: string, pattern: RegExp, ...ids: readonly string[]): FastenerWord {
  return { metal, general: false, pattern, read: () => ids };
}

function general(metal: string, pattern: RegExp, ids: readonly string[]): FastenerWord {
  return { metal, general: true, pattern, read: () => ids };
}

function coded(metal: string, pattern: RegExp, read: (group: string) => readonly string[]): FastenerWord {
  return { metal, general: false, pattern, read: (_said, group) => read(group) };
}

function treated(metal: string, pattern: RegExp, ids: ByCondition): FastenerWord {
  return { metal, general: false, pattern, read: (said) => ids[said] };
}

const BRONZES: readonly FastenerWord[] = [
  named('bronze', /\bPH(?:OS(?:PHOR)?)?\.?\s*BRONZE\b|\bPB10\d\b|\bC510(?:00)?\b|\bCUSN\d\b/, 'c51000'),
  named('bronze', /\bSILICON\s*BRONZE\b/, 'c65100', 'c65500'),
  coded('bronze', /\bC(651|655)(?:00)?\b/, (alloy) => [`c${alloy}00`]),
  named('bronze', /\bALUMINI?UM\s*BRONZE\b|\bC61[34](?:00)?\b/, 'c61300'),
  general('bronze', /\bBRONZE\b/, ['bronze']),
];

const BRASSES: readonly FastenerWord[] = [
  coded('brass', /\bC(260|270|462|464)(?:00)?\b/, (alloy) => [`c${alloy}00`]),
  named('brass', /\bNAVAL\s*BRASS\b/, 'c46200', 'c46400'),
  named('brass', /\bCARTRIDGE\s*BRASS\b|\b260\s*BRASS\b|\bCUZN30\b/, 'c26000'),
  general('brass', /\b(?:BRASS|MESSING|LAITON|OTTONE|CUZN\d+\w*)\b/, ['brass']),
];

/** Copper, and metals that the table does not know: naming one of these gives nothing, rather than what stands beside it. */
const OTHERS: readonly FastenerWord[] = [
  named('tool steel', /\b(?:[A-Z]\d+\s*)?TOOL\s*STEEL\b/),
  named('beryllium copper', /\bBERYLLIUM\s*COPPER\b|\bBECU\b/),
  named('titanium', /\b(?:TITANIUM|TI)\b(?:\s*GR(?:ADE)?\.?\s*\d+)?/),
  named('copper', /\bC110(?:00)?\b|\bETP\b|\bCOPPER\b/, 'c11000'),
];

const ALUMINIUM: readonly FastenerWord[] = [
  coded('aluminium', /(?<![\d.])([23567]\d{3}(?:[\s-]*T\d{1,4}\b|[\s-]*[HO]\d{0,3}\b)?)(?!\d)/, aluminiumAlloy),
  general('aluminium', /\b(?:ALL?UMINI?U[MN]|ALUM|ALU|AL)\b(?:\s*ALLOY\b)?/, [
    'aluminium-2024-t4',
    '6061-t6',
    '7075-t73',
  ]),
];

/** A temper that is not in the table gives nothing, rather than the hardness of another. */
function aluminiumAlloy(written: string): readonly string[] {
  const entries: Readonly<Record<string, readonly string[]>> = {
    '2024': ['aluminium-2024-t4'],
    '2024T4': ['aluminium-2024-t4'],
    '6061': ['6061-t6'],
    '6061T6': ['6061-t6'],
    '6061T651': ['6061-t6'],
    '6262': ['6262-t9'],
    '6262T9': ['6262-t9'],
    '7075': ['7075-t73', '7075-t6'],
    '7075T6': ['7075-t6'],
    '7075T651': ['7075-t6'],
    '7075T73': ['7075-t73'],
  };
  return entries[written.replace(/[\s-]/g, '')] ?? [];
}

/** Words that say stainless, so that a bare 300 or 400 beside them is a series. */
const SAYS_STAINLESS = '(?:SERIES|STAINLESS|SST|SS|CRES)';

/** "300 series", "SS 300", "stainless steel 300". */
function series(hundred: 3 | 4): RegExp {
  const number = `(?:${hundred}00|${hundred}XX)`;
  return new RegExp(String.raw`\b${SAYS_STAINLESS}\s*(?:STEEL\s*)?${number}\b|\b${number}\s*${SAYS_STAINLESS}\b`);
}

const STAINLESS: readonly FastenerWord[] = [
  named('stainless', /\bA-?286\b|\bS66286\b|\b1\.4980\b/, 'a286-aged'),
  coded(
    'stainless',
    /(?:\b17\s*-\s*4|\b(?:SUS\s*)?630|\bS17400|\b1\.4542)[\s,-]*(?:PH\b)?[\s,-]*(?:COND(?:ITION)?\.?\s*)?H\s?(900|1025|1075|1150)\b/,
    (condition) => [`sus630-h${condition}`],
  ),
  treated(
    'stainless',
    /\b17\s*-\s*4(?:\s*PH)?\b|\b1[57]\s*-\s*[57]\s*PH\b|\b(?:SUS\s*)?630\b|\bS17400\b|\b1\.4542\b/,
    AGE_HARDENING,
  ),
  named('stainless', /\bPRECIPITATION[\s-]*HARD\w*|\bAGE[\s-]*HARDENED\b|\bPH\b/, 'stainless-ph'),
  named('stainless', /\bA[1-5][\s-]*50\b/, 'iso-3506-1-a-50'),
  coded('stainless', /\bC1[\s-]*(50|70|110)\b/, (strength) => [`iso-3506-1-c1-${strength}`]),
  named('stainless', /\bC1\b/, 'iso-3506-1-c1-50', 'iso-3506-1-c1-70', 'iso-3506-1-c1-110'),
  named('stainless', /\bC3(?:[\s-]*80)?\b/, 'iso-3506-1-c3-80'),
  named('stainless', /\bC4(?:[\s-]*70)?\b/, 'iso-3506-1-c4-70'),
  named('stainless', /\bF1(?:[\s-]*45)?\b/, 'iso-3506-1-f1-45'),
  coded('stainless', /\b(12|21)H\b/, (setScrew) => [`iso-3506-3-${setScrew}h`]),
  coded('stainless', /\b(20|25|30)H\b/, (tappingScrew) => [`iso-3506-4-${tappingScrew}h`]),
  treated('stainless', /\bA[1-5](?:[\s-]*(?:70|80|100))?\b|\b18\s*[-/]\s*(?:8|9|10)\b|\bAUSTENITIC\b/, AUSTENITIC),
  treated('stainless', /\b(?:AISI|SUS|SS|TYPE)?\s*(?:30[1-5]|316|321|347|384)(?:L|SE|HQ|CU|TI|H)?\b/, AUSTENITIC),
  treated(
    'stainless',
    /\bS3(?:0[1-5]|16|21|47)\d\d\b|\b1\.4(?:301|303|305|307|310|401|404|541|567|571|578)\b/,
    AUSTENITIC,
  ),
  treated('stainless', series(3), AUSTENITIC),
  treated(
    'stainless',
    /\b(?:AISI|SUS|SS|TYPE)?\s*(?:41[06]|420|431|440)(?:SE|F|A|B|C)?\b|\bMARTENSITIC\b/,
    MARTENSITIC,
  ),
  treated('stainless', /\bS4(?:1[06]|20|31)\d\d\b|\b1\.40(?:05|06|21|28|34|57)\b/, MARTENSITIC),
  treated('stainless', series(4), MARTENSITIC),
  named('stainless', /\b(?:AISI|SUS|SS|TYPE)?\s*430F?\b|\b1\.4016\b|\bFERRITIC\b/, 'astm-f593-430'),
  {
    ...treated(
      'stainless',
      /\b(?:STAIN?LES+|STANLESS|CRES|SST|SS|S\/S|EDELSTAHL|ROSTFREI\w*|(?:(?:ACIER|ACERO|ACCIAIO)\s*)?INOX\w*)(?:\s*(?:STEEL|STAHL)\b)?/,
      ANY_STAINLESS,
    ),
    general: true,
  },
];

const STEEL: readonly FastenerWord[] = [
  coded(
    'steel',
    /(?<![\d.,])(4[.,][68]|5[.,][68]|6[.,]8|8[.,]8|9[.,]8|10[.,]9|12[.,]9)(?![.,]?\d)/,
    (propertyClass) => [`iso-898-1-${propertyClass.replace(/[.,]/, '-')}`],
  ),
  coded('steel', /\b(?:CLASS|CL\.?)\s*(5|6|8|10|12)\b/, (nutClass) => [`iso-898-2-${nutClass}`]),
  coded('steel', /\b(?:CLASS|CL\.?)\s*(04|05)\b/, (nutClass) => [`iso-898-6-${nutClass}`]),
  coded('steel', /\b(14|22|33|45)H\b/, (setScrew) => [`iso-898-5-${setScrew}h`]),
  coded('steel', /\bJ429\s*(?:GR(?:ADE)?\.?\s*)?(5\.2|[1258])\b/, boltGrade),
  coded('steel', /\bJ995\s*(?:GR(?:ADE)?\.?\s*)?([258])\b/, nutGrade),
  // Bolts and nuts share grade numbers, not hardness: the number alone could be either.
  coded('steel', /\bGR(?:ADE)?\.?\s*(5\.2|[1258])\b/, (grade) => [...boltGrade(grade), ...nutGrade(grade)]),
  named(
    'steel',
    /\bCASE[\s-]*HARDENED\b|\bCARBURI[SZ]ED\b|\bCARBONITRIDED\b/,
    'carbon-steel-hardened',
    'case-hardened-steel',
  ),
  {
    ...treated('steel', /\b(?:MS|CS|STEEL|STAHL|ACIER|ACERO|ACCIAIO|1[012]\d\d|12L14|41[34]0|8740)\b/, CARBON_STEEL),
    general: true,
  },
];

function boltGrade(grade: string): readonly string[] {
  return [`sae-j429-${grade.replace('.', '-')}`];
}

function nutGrade(grade: string): readonly string[] {
  return /^[258]$/.test(grade) ? [`sae-j995-${grade}`] : [];
}

/** Every word, in the order in which they are tried: what is longer or more special before what it contains. */
export const FASTENER_WORDS: readonly FastenerWord[] = [
  ...BRONZES,
  ...BRASSES,
  ...OTHERS,
  ...ALUMINIUM,
  ...STAINLESS,
  ...STEEL,
];
