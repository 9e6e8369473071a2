import type { CellFlag } from '../../core/model/raw.ts';
import { showDate, tidyIsoDate } from './date-text.ts';
import { GENERAL, type NumberFormat } from './number-format.ts';
import { isPlainNumber, showNumber } from './number-text.ts';
import { isOn } from './scan.ts';
import { unescapeText } from './shared-strings.ts';

/** A cell as stored. */
export interface StoredCell {
  /** Kind of value: `s`, `str`, `inlineStr`, `b`, `e`, `d`, `n` or nothing. */
  readonly type: string | undefined;
  /** Index of its style. */
  readonly style: number;
  readonly hasFormula: boolean;
  /** The stored value; nothing when the cell holds none. */
  readonly value: string | undefined;
  /** Text written in the cell itself. */
  readonly inline: string | undefined;
}

/** What a cell needs from the rest of its workbook. */
export interface CellContext {
  readonly strings: readonly string[];
  readonly formats: readonly NumberFormat[];
  readonly has1904Dates: boolean;
  /** The workbook asks to be calculated on opening: a formula result of 0 may be a placeholder. */
  readonly isUncalculated: boolean;
}

export interface CellText {
  readonly text: string;
  readonly flag?: CellFlag;
}

/** Text of a cell with nothing but a value, of one of the kinds that most cells are; nothing for all others. */
export function plainText(
  type: string | undefined,
  style: number,
  value: string,
  context: CellContext,
): string | undefined {
  if (!isDigit(value)) return undefined;
  if (type === 's') return context.strings[Number(value)];
  if (type !== undefined || (context.formats[style] ?? GENERAL).kind !== 'general') return undefined;
  return isPlainNumber(value) ? value : undefined;
}

/** Text of a cell as the user saw it, with a flag where the text alone would mislead. */
export function cellText(cell: StoredCell, context: CellContext): CellText {
  const value = cell.value ?? '';
  if (cell.inline !== undefined) return { text: cell.inline };
  if (cell.type === 'str' || cell.type === 'inlineStr') return { text: unescapeText(value) };

  const stored = value.trim();
  if (cell.hasFormula && isPlaceholder(stored, cell.type, context)) return { text: '', flag: 'not-calculated' };
  if (stored === '') return { text: '' };
  if (cell.type === 's') return sharedText(stored, context.strings);
  if (cell.type === 'b') return { text: isOn(stored) ? 'TRUE' : 'FALSE' };
  if (cell.type === 'e') return { text: stored, flag: 'error' };
  if (cell.type === 'd') return { text: tidyIsoDate(stored), flag: 'date' };
  return numberText(stored, context.formats[cell.style] ?? GENERAL, context);
}

/** A result of nothing was never calculated, nor perhaps a 0 in a workbook that still asks to be calculated. */
function isPlaceholder(stored: string, type: string | undefined, context: CellContext): boolean {
  return stored === '' || (stored === '0' && context.isUncalculated && (type === undefined || type === 'n'));
}

/** An index that the text table does not hold is an error of the file: better to say so than to show nothing. */
function sharedText(index: string, strings: readonly string[]): CellText {
  const text = strings[Number(index)];
  return text === undefined ? { text: '', flag: 'error' } : { text };
}

function numberText(stored: string, format: NumberFormat, context: CellContext): CellText {
  const value = Number(stored);
  if (!Number.isFinite(value)) return { text: stored };
  if (format.kind !== 'date') return { text: showNumber(value, format) };
  const date = showDate(value, context.has1904Dates, format.isElapsed);
  return { text: date ?? showNumber(value, GENERAL), flag: 'date' };
}

function isDigit(text: string): boolean {
  const code = text.charCodeAt(0);
  return code >= 48 && code <= 57;
}
