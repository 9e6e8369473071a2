import type { PressedWhen } from '../model/facts.ts';
import { isFinishedAsAssembly } from './facts-assembly.ts';
import type { NamedFinish } from './facts-finish.ts';
import { isDenied, isDeniedBefore } from './facts-negation.ts';
import { findSteps, type Step } from './facts-steps.ts';

/** What a text says of the order of pressing and finishing. */
export interface WorkOrder {
  readonly when: PressedWhen;
  /** The finish that the order is about, a plating after pressing even without a name; else null ("finish after insertion"). */
  readonly finish: NamedFinish | null;
}

/**
 * What a text says of pressing before or after a finish: "press before powder coat", "anodize after insertion", "zinc plate, then
 * press", "nach dem Lackieren einpressen"; where assemblies are of the panel also "zinc plate assembly". Empty when it says nothing
 * of the kind.
 */
export function findOrders(
  text: string,
  finishes: readonly NamedFinish[],
  assemblyIsPanel: boolean,
): readonly WorkOrder[] {
  if (!MAY_SAY.test(text)) return [];
  return sentencesOf(text).flatMap(({ start, end }) => {
    const sentence = text.slice(start, end);
    const steps = findSteps(sentence, start, finishes);
    const inTurns = [...sentence.matchAll(CONNECTORS)].flatMap((match) => orderAt(sentence, match, steps) ?? []);
    return assemblyIsPanel ? [...inTurns, ...assemblyOrders(sentence, steps)] : inTurns;
  });
}

/** The order that counts: of a plating before and a paint after, the paint. Null for none, or for a contradiction. */
export function chooseOrder(orders: readonly WorkOrder[]): WorkOrder | null {
  const isOne = new Set(orders.map(({ when }) => when)).size < 2;
  return (isOne ? orders[0] : orders.find(isPaintedLast)) ?? null;
}

const MAY_SAY =
  /before|prior|ahead of|\bpre[- ]|after|following|subsequent|\bpost[- ]|\bonce\b|\bthen\b|followed by|\bvor\b|\bnach\b|avant|apr[èe]s|\bdann\b|danach|\bpuis\b|->|→|assembl|\bassy/i;

const isPaintedLast = ({ when, finish }: WorkOrder) =>
  when === 'before-finish' && (finish?.kind === 'paint' || finish?.kind === 'powder-coat');

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
  const isDeniedOrder =
    isDenied(sentence.slice(0, subject.start), sentence.slice(object.end)) || isDeniedBefore(sentence.slice(0, start));
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
  const finish = one.finish ?? other.finish;
  if (!pressIsFirst) return { when: 'after-finish', finish };
  return { when: 'before-finish', finish: finish ?? one.bath ?? other.bath };
}

/** "Nickel plate complete assembly": what is finished as a whole was pressed before. */
function assemblyOrders(sentence: string, steps: readonly Step[]): readonly WorkOrder[] {
  return steps.flatMap((step): WorkOrder[] => {
    const finish = step.finish ?? step.bath;
    return finish && isFinishedAsAssembly(sentence, step) ? [{ when: 'before-finish', finish }] : [];
  });
}
