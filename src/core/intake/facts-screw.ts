import type { WorkFacts } from '../model/facts.ts';
import { parseLength } from '../units/length.ts';
import { parseThreadAndLength } from '../units/thread.ts';
import { believedLength } from './fastener-length.ts';

const THREAD = String.raw`(?:M ?\d{1,2}|#?\d{1,2}-\d{2}|#\d{1,2}|no\. ?\d{1,2}|\d\/\d{1,2}"?-\d{2})`;
const SCREW =
  '(?:(?<!captive |panel |retained |retractable )(?:screws?|bolts?|schrauben?|vis|tornillos?|viti?)(?! (?:holes?|head)))';
const WITH = '(?:fasten(?:s|ed)?|fixed|fixes|secured|bolted|screwed|mates?|mating|used|attached|attaches) (?:with|by)';
const SCREW_FIRST = new RegExp(
  String.raw`(?<![\p{L}])(?:${SCREW}|${WITH})[^;.\d]{0,20}?(?<![\p{L}\d])(?=${THREAD})`,
  'iu',
);
const THREAD_FIRST = new RegExp(
  String.raw`(?<![\p{L}\d.])(?=${THREAD})[^;,]{2,24}? (?:[\p{L}-]+ ){0,2}${SCREW}(?![\p{L}])`,
  'iu',
);
const PROPERTY_CLASS =
  /^[^;,]{0,24}?(?:-|\s|\b(?:class|cl\.?|grade|gr\.?)\s*)((?:4\.6|4\.8|5\.8|6\.8|8\.8|9\.8|10\.9|12\.9)(?![.\d])|A[1245]-(?:50|70|80|100))/i;

/** The screw that goes into the fastener, with its length and property class where written: "screw M4x12-8.8". Null: none named. */
export function findScrew(text: string): WorkFacts['screw'] {
  const match = SCREW_FIRST.exec(text);
  const other = match ? null : THREAD_FIRST.exec(text);
  const rest = match ? text.slice(match.index + match[0].length) : other ? text.slice(other.index) : '';
  if (rest === '') return null;
  const [, propertyClass = null] = PROPERTY_CLASS.exec(rest) ?? [];
  const found = parseThreadAndLength(propertyClass === null ? rest : rest.replace(propertyClass, ''));
  return found && { thread: found.thread.name, lengthMm: believedLength(found), propertyClass };
}

const SIZE = String.raw`(?<size>(?:\d+[.,]?\d*|[.,]\d+|\d+\/\d+) ?(?:mm|in\b\.?|"))`;
const MATING = [
  String.raw`(?:mating|mated|clamped|attached|joined|fastened) (?:part|panel|sheet|plate|cover|bracket|piece|component|board|thickness|stack|thk)s?(?:(?!hole|dia|clearance)[^;,\d⌀ø]){0,24}?${SIZE}`,
  `clamps? (?:a |an |the )?${SIZE}`,
  String.raw`(?:clamp(?:ing|ed)?|grip) (?:length|thickness|stack)(?:[^;,\d]){0,12}?${SIZE}`,
  String.raw`(?:gegenst[üu]ck|klemml[äa]nge|pi[èe]ce (?:assembl[ée]e|serr[ée]e))(?:[^;,\d]){0,12}?${SIZE}`,
].map((pattern) => new RegExp(String.raw`(?<![\p{L}])${pattern}`, 'iu'));

/** What a screw clamps, in mm. */
const POSSIBLE_MATING_MM = { low: 0.2, high: 100 };

/** Thickness in mm of what the screw clamps: "mating part 2 mm", "clamps 1.5 mm cover"; a bare number has no meaning. */
export function findMating(text: string): number | null {
  const size = MATING.flatMap((pattern) => pattern.exec(text)?.groups?.size ?? [])[0];
  const mm = size === undefined ? null : (parseLength(size)?.mm ?? null);
  return mm !== null && mm >= POSSIBLE_MATING_MM.low && mm <= POSSIBLE_MATING_MM.high ? mm : null;
}
