import type { Line } from '../model/line.ts';
import { firstAlike } from './read-line.ts';
import { OPEN_WORDS, PRESS_IN_WORDS } from './row-words.ts';
import { isLooseHardware } from './rows.ts';
import { findThreads } from './thread-words.ts';
import { nameKey } from './tree-row.ts';

/** What a row that is set aside is when it is cut from sheet. */
const SHEET_PARTS: ReadonlySet<string> = new Set([
  ...['panel', 'sheet', 'plate', 'cover', 'door', 'bracket', 'enclosure', 'shelf'],
]);

/** Whether a row is set aside as a part that is cut from sheet. */
export function isSheetPart({ seemsToBe }: Line): boolean {
  return seemsToBe !== null && SHEET_PARTS.has(seemsToBe);
}

/** Whether a row could be the panel that other rows name by its part number: a sheet part, or nothing that is known. */
export function couldBeSheetPart(line: Line): boolean {
  if (isSheetPart(line)) return true;
  return line.seemsToBe === null && !isFastenerRow(line);
}

/** Words of a row that tell what it is. */
type FastenerWords = Pick<Line, 'description' | 'partNumber' | 'seemsToBe'>;

/** Whether the words of a row say that it is a fastener, pressed in or loose. */
export function isFastenerRow(row: FastenerWords): boolean {
  const line = firstAlike(row);
  const before = fastenerRows.get(line);
  if (before !== undefined) return before;
  const { description, partNumber, seemsToBe } = line;
  const is =
    seemsToBe === null ? namesFastening(`${description} ; ${plainPart(partNumber)}`) : isLooseHardware(seemsToBe);
  fastenerRows.set(line, is);
  return is;
}

/** A line never changes, and every edit asks again. */
const fastenerRows = new WeakMap<FastenerWords, boolean>();

function plainPart(partNumber: string): string {
  return partNumber.replace(/[-_./]+/g, ' ');
}

/** Whether a text names press-in fasteners, things that could be some, or a thread. */
export function namesFastening(text: string): boolean {
  return PRESS_IN_WORDS.test(text) || OPEN_WORDS.test(text) || findThreads(text).length > 0;
}

const LEADING_WORD =
  /^(?:panel|pnl|sheet|plate|cover|cvr|door|bracket|brkt|part|assembly|assy|unit|section)[\s:#.-]+(?=\S*\d|\S{1,3}$)/i;

/** The names by which a part number calls a sheet part: as it is, and without a word in front ("PANEL RC-03" is RC-03). */
export function partNames(partNumber: string): readonly string[] {
  const names = [partNumber, partNumber.trim().replace(LEADING_WORD, '')].map(nameKey).filter(Boolean);
  return [...new Set(names)];
}
