/** What one finding asks of the sender. */
export interface AskText {
  /** Findings of one row about the same thing are asked once, by the first of them; null: each for itself. */
  readonly topic:
    | 'part'
    | 'metal'
    | 'thickness'
    | 'fastener-metal'
    | 'certificate'
    | 'mill'
    | 'data'
    | 'quantity'
    | null;
  /** Whether one answer serves the whole list, or each panel has its own. */
  readonly scope: 'list' | 'panel';
  /** Question with slots of the finding and of its row; for `data` only what is missing, as its questions are put together. */
  readonly text: string;
}

const METAL = 'Which alloy and temper is it?';
const THICKNESS = 'What is it, in mm, in inches or as a gauge?';

/** Questions by "rule says"; the first that fits is asked. */
const ASK_TEXTS: readonly (readonly [RegExp, AskText])[] = [
  ask(/^part\/listed blank/, 'part', 'panel', 'The part number is missing. Which part is it?'),
  ask(
    /^part\/listed near/,
    'part',
    'list',
    'Part “{partNumber}” is in none of our catalogues; similar numbers there: {near}. Which part is meant, or can you send its data sheet?',
  ),
  ask(
    /^part\/listed/,
    'part',
    'list',
    'Part “{partNumber}” is in none of our catalogues. Is the number right, and can you send its data sheet?',
  ),
  ask(
    /^part\/description/,
    null,
    'list',
    'The list says {said} (“{quote}”), our catalogue says {is} for {partNumber}. Which is right?',
  ),
  ask(/^sheet\/material blank/, 'metal', 'panel', `The sheet metal is missing{disputed}. ${METAL}`),
  ask(/^sheet\/material not-a-metal/, 'metal', 'panel', `“{text}” does not tell us the sheet metal. ${METAL}`),
  ask(
    /^sheet\/material/,
    'metal',
    'panel',
    'We do not know the sheet metal “{text}”. What is it by an AISI, ASTM, EN, JIS or GB name, with its temper?',
  ),
  ask(/^sheet\/thickness-read blank/, 'thickness', 'panel', `The sheet thickness is missing{disputed}. ${THICKNESS}`),
  ask(/^sheet\/thickness-read unreadable/, 'thickness', 'panel', `We cannot read the thickness “{text}”. ${THICKNESS}`),
  ask(
    /^sheet\/thickness-read impossible/,
    'thickness',
    'panel',
    `No sheet is “{text}” {unit} thick. {offer}${THICKNESS}`,
  ),
  ask(
    /^sheet\/thickness-read no-metal/,
    'metal',
    'panel',
    'The thickness is a gauge number (“{text}”), which means a thickness only together with a metal. Which metal is it, or how thick is it in mm or inches?',
  ),
  ask(
    / no-unit$/,
    null,
    'list',
    'The numbers in the column “{heading}” have no unit, and nothing settles it. Are they mm or inches?',
  ),
  ask(/ no-thickness$/, 'thickness', 'panel', `The sheet thickness is not known. ${THICKNESS}`),
  ask(
    / no-sheet$|^(?:clinch\/shank|press\/force) no-metal/,
    'metal',
    'panel',
    `The sheet metal is not known. ${METAL}`,
  ),
  ask(
    /^clinch\/hardness (?:limit-)?marginal/,
    'certificate',
    'panel',
    'The sheet, {sheet}, may be too hard for the fastener. Can you send a mill certificate that states its hardness?',
  ),
  ask(
    /^clinch\/hardness .*forbidden/,
    null,
    'panel',
    'By practice a fastener of this metal does not hold in {sheet}. May it be one of another metal?',
  ),
  ask(
    / thinnest$/,
    'mill',
    'panel',
    'The sheet may be delivered thinner than the fastener needs. Will it be ordered to a minimum thickness, or measured?',
  ),
  ask(/^clinch\/hardness (?:assumed|no-fastener)/, 'data', 'list', 'hardness, or the hardest sheet that it is for'),
  ask(/^clinch\/sheet-thickness no-minimum/, 'data', 'list', 'minimum sheet thickness'),
  ask(/^clinch\/edge no-minimum/, 'data', 'list', 'least distance from hole centre to edge'),
  ask(/^clinch\/spacing no-minimum/, 'data', 'list', 'least distance from centre to centre'),
  ask(/ no-hole$/, 'data', 'list', 'mounting hole with its tolerance'),
  ask(/ no-flange$/, 'data', 'list', 'flange diameter'),
  ask(/^press\/force silent/, 'data', 'list', 'installation force'),
  ask(/^joint\/push-out no-rating/, 'data', 'list', 'push-out rating in {sheet}'),
  ask(/ no-rating$/, 'data', 'list', 'torque-out rating in {sheet}'),
  ask(/^(?:clinch\/family|finish\/order) no-metal/, 'data', 'list', 'metal'),
  ask(/^finish\/embrittlement no-hardness/, 'data', 'list', 'hardness in HV or HRC'),
  ask(
    /^clinch\/hole leaves/,
    null,
    'panel',
    'The hole {holeMm:unit} may come out {smallestMm} to {largestMm:unit}. May it be called out as {callOut}?',
  ),
  ask(/^clinch\/hole call-out/, null, 'panel', 'The list gives no hole. Will it be {callOut}?'),
  ask(
    /^clinch\/edge call-out/,
    null,
    'panel',
    'The list gives no edge distance. Is it at least {edgeMinMm:unit} from hole centre to edge?',
  ),
  ask(
    /^finish\/order say-order/,
    null,
    'panel',
    'The sheet gets {finish}. Are the fasteners pressed before it or after it?',
  ),
  ask(
    /^finish\/order silent/,
    null,
    'panel',
    'The list says nothing of a finish. Which finish does the sheet get, if any, and are the fasteners pressed before it or after it?',
  ),
  ask(
    /^finish\/embrittlement bake/,
    null,
    'list',
    'The fastener is hardened and plated. Can you send evidence that it was baked after plating?',
  ),
  ask(/^list\/quantity blank/, 'quantity', 'panel', 'The quantity is missing. How many pieces are needed?'),
  ask(
    /^list\/quantity zero/,
    'quantity',
    'panel',
    'The quantity is zero. Should the row be on the list, and with how many pieces?',
  ),
  ask(
    /^list\/quantity (?:not-whole|unreadable)/,
    'quantity',
    'panel',
    'The quantity “{text}” is no whole number of pieces. How many are needed?',
  ),
  ask(
    /^list\/quantity/,
    'quantity',
    'panel',
    'A quantity above the row, or its multiplier, cannot be used. How many pieces are needed in one product?',
  ),
];

/** How a finding is asked about; null: by its own sentence. */
export function findAskText(rule: string, says: string): AskText | null {
  return ASK_TEXTS.find(([fits]) => fits.test(`${rule} ${says}`))?.[1] ?? null;
}

/** Asked where the words of the sheet could mean several metals, not all of which would do. */
export const WHICH_METAL: AskText = {
  topic: 'metal',
  scope: 'panel',
  text: 'The sheet is listed as “{rowMetal}”, which can be several metals or tempers. Which one is it?',
};

/** Asked where the catalogue's words for the fastener's metal leave it open. */
export const WHICH_FASTENER_METAL: AskText = {
  topic: 'fastener-metal',
  scope: 'list',
  text: 'It is not clear what {rowPart} is made of, and not everything that it may be would do. Which metal is it?',
};

function ask(fits: RegExp, topic: AskText['topic'], scope: AskText['scope'], text: string): readonly [RegExp, AskText] {
  return [fits, { topic, scope, text }];
}
