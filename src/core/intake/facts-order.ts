import type { PressedWhen } from '../model/facts.ts';
import type { NamedFinish } from './facts-finish.ts';
import { isDeniedBefore } from './facts-negation.ts';

/** What a text says of the order of pressing and finishing. */
export interface WorkOrder {
  readonly when: PressedWhen;
  /** The finish that the order is about; null where it is called by no name ("after plating"). */
  readonly finish: NamedFinish | null;
}

/**
 * What a text says of pressing before or after a finish: "press before powder coat", "anodize after insertion", "zinc plate, then
 * press", "nach dem Lackieren einpressen". Empty when it says nothing of the kind.
 */
export function findOrders(text: string, finishes: readonly NamedFinish[]): readonly WorkOrder[] {
  if (!MAY_SAY.test(text)) return [];
  return sentencesOf(text).flatMap(({ start, end }) => ordersIn(text, start, end, finishes));
}

/** The order that counts: of a plating before and a paint after, the paint. Null for none, or for a contradiction. */
export function chooseOrder(orders: readonly WorkOrder[]): WorkOrder | null {
  const isOne = new Set(orders.map(({ when }) => when)).size < 2;
  return (isOne ? orders[0] : orders.find(isPaintedLast)) ?? null;
}

const MAY_SAY =
  /before|prior|ahead of|\bpre[- ]|after|following|subsequent|\bpost[- ]|\bonce\b|\bthen\b|followed by|\bvor\b|\bnach\b|avant|apr[èe]s|\bdann\b|danach|\bpuis\b|->|→/i;

const isPaintedLast = ({ when, finish }: WorkOrder) =>
  when === 'before-finish' && (finish?.kind === 'paint' || finish?.kind === 'powder-coat');

type Step = {
  readonly what: 'press' | 'finish';
  readonly start: number;
  readonly end: number;
  readonly finish: NamedFinish | null;
};

function sentencesOf(text: string): readonly { readonly start: number; readonly end: number }[] {
  return [...text.matchAll(/(?:[^;.\n]|\.(?=\S))+/g)].map(({ index, 0: all }) => ({
    start: index,
    end: index + all.length,
  }));
}

const COATING = String.raw`(?=(?:paint|plat(?:e|ing)|coat(?:ing)?|anodi[sz](?:e|ing)|finish(?:ing)?|powder)\b)`;
const CONNECTORS = new RegExp(
  [
    String.raw`(?<![\p{L}])(?<before>before|prior to|ahead of|pre[- ]${COATING}|vor(?: dem| der)?(?= )|avant)`,
    String.raw`(?<![\p{L}])(?<after>following|subsequent to|once|post[- ]${COATING}|nach(?: dem| der)?(?= )|apr[èe]s|after(?=\s+\p{L}))`,
    String.raw`(?<![\p{L}])(?<then>(?:and )?then|followed by|dann|danach(?! *$)|puis)(?![\p{L}])|->|→`,
    String.raw`(?<![\p{L}])(?<last>after(?:wards)?|later|danach)\s*$`,
  ].join('|'),
  'giu',
);

function ordersIn(text: string, from: number, to: number, finishes: readonly NamedFinish[]): readonly WorkOrder[] {
  const sentence = text.slice(from, to);
  const steps = stepsIn(sentence, from, finishes);
  return [...sentence.matchAll(CONNECTORS)].flatMap((match) => orderAt(sentence, match, steps) ?? []);
}

function orderAt(sentence: string, match: RegExpExecArray, steps: readonly Step[]): WorkOrder | null {
  const { before, after } = match.groups ?? {};
  const start = match.index;
  const end = start + match[0].length;
  const earlier = steps.filter((step) => step.end <= start);
  const later = steps.filter((step) => step.start >= end && step.start - end <= REACH);
  if (before === undefined && after === undefined) return inTurn(sentence, match, earlier, later);
  const object = later[0];
  if (!object || !isNear(sentence.slice(end, object.start))) return null;
  const subject = earlier.findLast(({ what }) => what !== object.what) ?? behind(sentence, start, object, later);
  if (!subject) return null;
  const isDeniedOrder = isDeniedBefore(sentence.slice(0, subject.start)) || isDeniedBefore(sentence.slice(0, start));
  return order(subject, object, (before !== undefined) !== isDeniedOrder);
}

const REACH = 40;

/** "Before the panel is painted": few words, and no comma, stand between. */
function isNear(between: string): boolean {
  return !between.includes(',') && between.trim().split(/\s+/).length <= 4;
}

/** "Before paint, press nuts"; "vor dem Lackieren einpressen". */
function behind(sentence: string, start: number, object: Step, later: readonly Step[]): Step | undefined {
  const subject = later.find(({ what, start: at }) => what !== object.what && at >= object.end);
  if (!subject) return undefined;
  const opens = /(?:^|,)\s*(?:only )?$/i.test(sentence.slice(0, start));
  return opens || /^ ?\S* ?$/.test(sentence.slice(object.end, subject.start)) ? subject : undefined;
}

/** "Zinc plate, then press", "press nuts, paint after": the first step stands first. */
function inTurn(
  sentence: string,
  match: RegExpExecArray,
  earlier: readonly Step[],
  later: readonly Step[],
): WorkOrder | null {
  const second = match.groups?.last === undefined ? later[0] : earlier.at(-1);
  const first = earlier.findLast((step) => step !== second && step.what !== second?.what);
  if (!first || !second || isDeniedBefore(sentence.slice(0, second.start))) return null;
  return order(first, second, true);
}

function order(one: Step, other: Step, oneIsFirst: boolean): WorkOrder {
  const pressIsFirst = (one.what === 'press') === oneIsFirst;
  return { when: pressIsFirst ? 'before-finish' : 'after-finish', finish: one.finish ?? other.finish };
}

const FASTENER = 'hardware|fasteners?|nuts?|studs?|stand-?offs?|inserts?|pins?|muttern?|bolzen|[ée]crous?';
const PRESS_WORDS = [
  String.raw`press(?:ed|ing)?(?![- ]?(?:brake|force|load|tool|side|fit (?:nut|stud|pin)))(?![- ]in (?:${FASTENER})\b)`,
  'install(?:ed|ing|ation|s)?(?! (?:side|force|tool|face))|insert(?:ed|ing|ion)?(?! (?:nut|stud))',
  String.raw`(?<!self-)clinch(?:ed|ing)?(?! ?(?:${FASTENER}|holes?)\b)|assembl(?:e|ed|ing|y)|assy|mount(?:ed)?(?! holes?)`,
  String.raw`(?<!check |press |verify |gauge |thread |for )fit(?:ted|ting)?|add(?:ed|ing)?|set(?:ting)?|einpress\p{L}*|ein[sz]u?pressen|eingepresst\p{L}*`,
  String.raw`(?:ein)?montage|montier\p{L}*|pos(?:er?|[ée]e?s?)|sert(?:ir|ie?s?|issage)|insertion`,
  String.raw`(?<=^\s*)(?:${FASTENER})(?= (?:before|after|prior|vor|nach|avant|apr[èe]s)\b)`,
];
const PRESS = new RegExp(String.raw`(?<![\p{L}])(?:${PRESS_WORDS.join('|')})(?![\p{L}])`, 'giu');
const UNNAMED_FINISH =
  /(?<![\p{L}])(?:(?:electro)?plat(?:ing|ed|e)|coat(?:ing|ed)?|finish(?:ing|ed)?|galvani[sz]\p{L}*|(?:surface |(?<!heat ))treatment|beschicht\p{L}*|oberfl[äa]che\p{L}*|rev[êe]tement|traitement)(?![\p{L}])/giu;

/** Pressing and finishing as the sentence names them, in its order. Names of finishes cover the plain words inside them. */
function stepsIn(sentence: string, from: number, finishes: readonly NamedFinish[]): readonly Step[] {
  const named = finishes
    .map((finish): Step => ({ what: 'finish', start: finish.start - from, end: finish.end - from, finish }))
    .filter(({ start, end }) => start >= 0 && end <= sentence.length);
  const plain = [...sentence.matchAll(UNNAMED_FINISH)]
    .map((match) => step('finish', match))
    .filter(({ start }) => !named.some((one) => start >= one.start && start < one.end));
  const pressed = [...sentence.matchAll(PRESS)].map((match) => step('press', match));
  return [...named, ...plain, ...pressed].sort((a, b) => a.start - b.start);
}

function step(what: Step['what'], { index, 0: all }: RegExpExecArray): Step {
  return { what, start: index, end: index + all.length, finish: null };
}
