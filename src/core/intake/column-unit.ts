import { rememberText } from '../caching/remember.ts';
import type { LengthUnit } from '../model/list.ts';
import { parseLength } from '../units/length.ts';
import { isInSpan, type SizeRole, WRITTEN_SPANS } from './size-spans.ts';

/** The unit of bare numbers in one column. */
export interface ColumnUnit {
  readonly unit: LengthUnit | null;
  /**
   * Null: nothing settles it, and the user is asked once for the whole column. `heading` without a unit: the heading names
   * something that is neither mm nor inches (gauge numbers, centimetres), so bare numbers are not lengths in either.
   */
  readonly from: 'heading' | 'column' | null;
}

/**
 * Decides the unit of a column's bare numbers: by its heading (`Thk (mm)`, `[in]`, `Thk in.`), else judged from all its cells, one
 * column being written in one unit: `.060` and `.125` are inches, `1.5` and `2` millimetres as thicknesses. `0.8` and `1` settle nothing.
 */
export function columnUnit(heading: string, texts: readonly string[], role: SizeRole): ColumnUnit {
  const words = headingWords(heading);
  const inMm = MM_HEADING.test(words);
  const inInches = INCH_HEADING.test(words);
  if (inMm !== inInches) return { unit: inMm ? 'mm' : 'in', from: 'heading' };
  if (CM_HEADING.test(words) || (role === 'thickness' && isGaugeColumn(words, texts)))
    return { unit: null, from: 'heading' };
  const unit = unitOfCells(texts, role);
  return { unit, from: unit === null ? null : 'column' };
}

const MM_HEADING = /(?<![a-z])mm(?![a-z])|millim|毫米|ミリ|(?<!\p{L})мм(?!\p{L})/u;
// "in" is a word of English too: it counts alone in brackets, at the end, before brackets, or with a point.
const INCH_HEADING =
  /["”″]|(?<![a-z])(?:inch|inches|zoll|pouces?|pulgadas?|polegadas?|pollici|mils?|thou)(?![a-z])|[([]\s*in\.?\s*[)\],;]|(?<![a-z])in(?:\.?\s*$|\.(?=\s)|\s*[([])|英寸|インチ/;
const CM_HEADING = /(?<![a-z])cm(?![a-z])|centim/;
const GAUGE_HEADING = /(?<![a-z])(?:ga|gage|gauge)(?![a-z])/;

// Splits thicknessIn and THK_IN into words.
function headingWords(heading: string): string {
  return heading
    .replace(/([a-z])([A-Z])/g, '$1 $2')
    .replaceAll('_', ' ')
    .toLowerCase()
    .trim();
}

// "Gauge" is also said for thickness itself: only whole numbers that no sheet is likely to have in mm are taken for gauges.
function isGaugeColumn(words: string, texts: readonly string[]): boolean {
  const numbers = bareNumbers(texts).map(({ value }) => value);
  return (
    GAUGE_HEADING.test(words) && numbers.length > 0 && numbers.every((n) => Number.isInteger(n) && isInSpan(n, [7, 38]))
  );
}

function unitOfCells(texts: readonly string[], role: SizeRole): LengthUnit | null {
  const bare = bareNumbers(texts);
  const bySize = bare.filter(({ fraction }) => !fraction).map(({ value }) => unitBySize(value, role));
  const decided = majority(bySize);
  return decided === undefined ? (majority([...bare.map(unitByStyle), ...writtenUnits(texts)]) ?? null) : decided;
}

function unitBySize(value: number, role: SizeRole): LengthUnit | null {
  const spans = WRITTEN_SPANS[role];
  const fitsMm = isInSpan(value, spans.mm);
  if (fitsMm === isInSpan(value, spans.in)) return null;
  return fitsMm ? 'mm' : 'in';
}

// Drawings in inches drop the leading zero and carry three decimals; a decimal comma is metric country.
function unitByStyle({ text, value, fraction }: BareNumber): LengthUnit | null {
  if (fraction || text.startsWith('.') || (value < 0.5 && /[.,]\d{3,}$/.test(text))) return 'in';
  return text.includes(',') ? 'mm' : null;
}

/** Undefined: no evidence. Null: the evidence contradicts itself, fewer than four to one. */
function majority(units: readonly (LengthUnit | null)[]): LengthUnit | null | undefined {
  const mm = units.filter((unit) => unit === 'mm').length;
  const inches = units.filter((unit) => unit === 'in').length;
  if (mm === 0 && inches === 0) return undefined;
  if (mm >= 4 * inches) return 'mm';
  return inches >= 4 * mm ? 'in' : null;
}

interface BareNumber {
  readonly text: string;
  readonly value: number;
  readonly fraction: boolean;
}

function bareNumbers(texts: readonly string[]): BareNumber[] {
  const read = rememberText((cell): BareNumber[] => {
    const text = nominalText(cell);
    const length = parseLength(text);
    return length?.unit === null && length.value > 0 ? [{ text, value: length.value, fraction: length.fraction }] : [];
  });
  return texts.flatMap(read);
}

function writtenUnits(texts: readonly string[]): LengthUnit[] {
  const read = rememberText((cell): LengthUnit[] => {
    const unit = parseLength(nominalText(cell))?.unit;
    return unit === 'mm' || unit === 'in' ? [unit] : [];
  });
  return texts.flatMap(read);
}

// The number without its tolerance and without a sign or label in front.
function nominalText(cell: string): string {
  const [nominal = ''] = cell.split(/±|\+/);
  return nominal.trim().replace(/^(?:[ØøΦφ⌀]|(?:dia|thk)(?:\.(?!\d))?|[ts]\s*=)\s*/i, '');
}
