import { rememberText } from '../caching/remember.ts';
import type { LengthUnit } from '../model/list.ts';

const METRIC = /(?<![\p{L}\d])M ?(?:1[.,]6|2[.,]5|3[.,]5|[2-9]|1[0-2468]|2[04])(?![\d.,]*\d)(?!\p{L}(?<![xX]))/giu;
const INCH = new RegExp(
  `(?<![\\p{L}\\d./])#?(?:${[
    '(?:no\\.? ?)?0-80|1-(?:64|72)|2-(?:56|64)|3-(?:48|56)|4-(?:40|48)|5-(?:40|44)|6-(?:32|40)|8-(?:32|36)|10-(?:24|32)|12-(?:24|28)',
    '1/4"?-(?:20|28)|5/16"?-(?:18|24)|3/8"?-(?:16|24)|7/16"?-(?:14|20)|1/2"?-(?:13|20)',
  ].join('|')})(?!\\d)`,
  'giu',
);

/** Thread designations in a text, each with the system it belongs to: "M4" is mm, "8-32" and "1/4-20" are in. */
export function findThreads(text: string): readonly LengthUnit[] {
  const plain = text
    .normalize('NFKC')
    .replace(/[‐-―−]/g, '-')
    .replaceAll('⁄', '/');
  const metric = plain.match(METRIC) ?? [];
  const inch = plain.match(INCH) ?? [];
  return [...metric.map(() => 'mm' as const), ...inch.map(() => 'in' as const)];
}

/** Three of four threads must agree before they settle the unit of a bare number. */
const MAJORITY = 0.75;

/** The system that most threads in the texts belong to; null when there are none or they are mixed. */
export function threadSystem(texts: Iterable<string>): LengthUnit | null {
  const seen = { mm: 0, in: 0 };
  const threadsIn = rememberText(findThreads);
  for (const text of texts) for (const system of threadsIn(text)) seen[system]++;
  const all = seen.mm + seen.in;
  if (all === 0) return null;
  if (seen.mm / all >= MAJORITY) return 'mm';
  return seen.in / all >= MAJORITY ? 'in' : null;
}
