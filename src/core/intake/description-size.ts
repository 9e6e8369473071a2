import type { LengthUnit } from '../model/list.ts';
import { mmOf, parseLength } from '../units/length.ts';
import { parseThread, parseThreadAndLength, type Thread, type ThreadAndLength } from '../units/thread.ts';
import { believedLength, POSSIBLE_LENGTH_MM } from './fastener-length.ts';
import { placeLength } from './possible-size.ts';
import { isInSpan, POSSIBLE_SHEET_MM } from './size-spans.ts';
import { isBlankCell, plainCell } from './size-words.ts';

/** The thread of a text with the length behind it; null when it names none, or several ("M4, replaces 8-32"). */
export function findOneThread(text: string): ThreadAndLength | null {
  const first = /\d/.test(text) ? parseThreadAndLength(withAlloysApart(text)) : null;
  if (!first) return null;
  const others = startsOfWords(text).map((start) => parseThread(text.slice(start))?.name ?? first.thread.name);
  return others.every((name) => name === first.thread.name) ? first : null;
}

/** "M4x10 316" is no length of "10 316". */
function withAlloysApart(text: string): string {
  return text.replace(/(?<=x ?[\d.,/]*\d) (?=\d{3,4}(?![\d.,/]))/gi, ', ');
}

/** Where a thread could begin: after a blank, comma or bracket, but not behind the "x" before a length. */
function startsOfWords(text: string): readonly number[] {
  return [...text.matchAll(/(?<=[\s,;()[\]])(?<!\bx\s)(?:M ?\d|#?\d{1,2}-\d{2}|#\d|\d\/\d)/gi)].map(
    ({ index }) => index,
  );
}

/** The length of a length cell in mm, by its own unit, its column's, or else its thread's; null where the unit is in doubt. */
export function readLengthCell(cell: string, unit: LengthUnit | null, thread: Thread | null): number | null {
  const plain = plainCell(cell)
    .replace(/^(?:l(?:ength|g)?\.? ?[=:]? ?)(?=[\d.,])|,? ?(?:lg|long|length)\.?$/gi, '')
    .trim();
  const length = isBlankCell(plain) ? null : parseLength(plain);
  if (!length) return null;
  if (unit === null && length.unit === null && thread) {
    const lengthMm = mmOf(length.value, thread.system === 'metric' ? 'mm' : 'in');
    return believedLength({ thread, lengthMm });
  }
  const placed = placeLength(length, { unit, from: unit && 'column' }, POSSIBLE_LENGTH_MM);
  return placed.how === 'size' ? placed.mm : null;
}

const SIZE = String.raw`(?:\d+ )?\d+\/\d+|\d+(?:[.,]\d+)?|[.,]\d+`;
const LONG = new RegExp(
  String.raw`(?<![\d.,/])(?<behind>(?:${SIZE}) ?(?:mm|in\b\.?|"))[ ,-]*(?:long|lg|lang|lgth|length|l[äa]nge|de long)\b|\b(?:l|lg|length|len|l[äa]nge|longueur)\.? ?[=:]? ?(?<before>(?:${SIZE}) ?(?:mm|in\b\.?|"))`,
  'iu',
);
const PIN =
  /(?<![\d.,/])\d{1,2}(?:[.,]\d+)? ?(?:mm)? ?x ?(?<length>\d{1,3}(?:[.,]\d+)?) ?(?:mm)?(?![\d/]|[.,]\d|\s?(?:in\b|"))/i;

/** The length that a description writes, in mm: behind its thread, before or behind "long", or of a pin "4 x 12". */
export function findLength(text: string, thread: ThreadAndLength | null, isPin: boolean): number | null {
  const behindThread = thread && believedLength(thread);
  if (typeof behindThread === 'number') return behindThread;
  const plain = plainCell(text);
  const { behind, before } = LONG.exec(plain)?.groups ?? {};
  const written = parseLength(behind ?? before ?? '')?.mm ?? (isPin ? pinLength(plain) : null);
  return written !== null && isInSpan(written, POSSIBLE_LENGTH_MM) ? written : null;
}

function pinLength(plain: string): number | null {
  return parseLength(`${PIN.exec(plain)?.groups?.length ?? ''} mm`)?.mm ?? null;
}

const SHEET = String.raw`(?:sheet|sht|panel|pnl|material|mat['’]?l|blech(?:dicke)?|t[ôo]le)(?:\.? ?(?:thickness|thk|dicke))?\.?`;
const LEAST = String.raw`(?:min(?:imum|imal|\.)?|mind\.|at least)`;
const MIN_SHEET = new RegExp(
  String.raw`(?<![\p{L}])(?:${LEAST} ?${SHEET}|${SHEET} ?${LEAST}) ?[=:]? ?(?<named>(?:${SIZE}) ?(?:mm|in\b\.?|")?)|${SHEET} ?[=:]? ?(?<middle>(?:${SIZE}) ?(?:mm|in\b\.?|")?) ${LEAST}(?![\p{L}])`,
  'iu',
);

/** The least sheet that a description asks for, in mm: "MIN SHT 1.0", "sheet .040 min"; null where the unit is in doubt. */
export function findSheetMin(text: string): number | null {
  const { named, middle } = MIN_SHEET.exec(plainCell(text))?.groups ?? {};
  const length = parseLength((named ?? middle ?? '').trim());
  const placed = length && placeLength(length, { unit: null, from: null }, POSSIBLE_SHEET_MM);
  return placed?.how === 'size' ? placed.mm : null;
}
