import { parseQuantity } from '../intake/quantity.ts';
import type { FastenerKind, FastenerMaterial } from '../model/fastener.ts';
import { type BrinellDefault, type Hardness, parseHardnessMax, parseHardnessMin } from '../units/hardness.ts';
import { parseNumber } from '../units/length.ts';
import { parseThread } from '../units/thread.ts';
import type { CatalogueColumn } from './catalogue-columns.ts';
import { parseKind } from './catalogue-kind.ts';
import { findForceUnit, findTorqueUnit } from './catalogue-units.ts';

/** What a cell gave: a value, nothing (blank), or a problem in half a sentence that ends one beginning with the cell's text. */
export type CellResult<T> = { readonly value: T | null } | { readonly problem: string };

const BLANK = /^(?:[-‐-―−]*|n\/?a|none|tbd|\?)$/i;

/** Whether a cell says nothing. */
export function isBlank(text: string): boolean {
  return BLANK.test(text.trim());
}

/** A kind of fastener. A description that tells none is no problem. */
export function readKind(text: string, { lenient }: CatalogueColumn): CellResult<FastenerKind> {
  const value = parseKind(text);
  if (value || lenient || isBlank(text)) return { value };
  const isStandoff = /stand ?-?off|spacer/i.test(text);
  return {
    problem: isStandoff
      ? 'does not say whether the standoff is through or blind'
      : 'is no kind of press-in fastener known here',
  };
}

/** A thread in its short form. A pin has none, so a blank is no problem. */
export function readThread(text: string): CellResult<string> {
  if (isBlank(text)) return { value: null };
  const thread = parseThread(text);
  return thread ? { value: thread.name } : { problem: 'is no thread known here' };
}

/** A hardness: the lower end of what a fastener has, the upper end of what a sheet may have. A bare number takes the heading's scale. */
export function readHardness(
  text: string,
  column: CatalogueColumn,
  material: FastenerMaterial | null,
): CellResult<Hardness> {
  if (isBlank(text)) return { value: null };
  const [scale] = /HR[BC]|HV|HB/.exec(column.heading.toUpperCase()) ?? [];
  const full = scale && !/\p{L}{2}/u.test(text.replace(/min|max/gi, '')) ? `${scale} ${text}` : text;
  const isForSheet = column.field === 'sheetHardnessMax';
  const value = isForSheet ? parseHardnessMax(full) : parseHardnessMin(full, brinellOf(material));
  if (value) return { value };
  return {
    problem: isForSheet ? 'gives no upper limit of hardness with its scale' : 'gives no least hardness with its scale',
  };
}

/** Aluminium and copper alloys are tested with 500 kgf. */
function brinellOf(material: FastenerMaterial | null): BrinellDefault {
  const candidates = material?.candidates ?? [];
  const isSoft = candidates.length > 0 && candidates.every((id) => /^(?:alumin|brass|bronze)/.test(id));
  return isSoft ? 'HB500' : 'HB3000';
}

/** A force in newtons or a torque in newton metres, by the unit in the cell or the heading. */
export function readLoad(text: string, column: CatalogueColumn, isTorque: boolean): CellResult<number> {
  if (isBlank(text)) return { value: null };
  const own = isTorque ? findTorqueUnit(text) : findForceUnit(text);
  const factor = own ?? column.factor;
  const digits = text.replace(/[\p{L}·⋅•.*/ -]+$/u, '').trim();
  const number = parseNumber(factor !== null && factor < 1000 && !isTorque ? withoutThousands(digits) : digits);
  if (number === null) return { problem: 'cannot be read as a number' };
  if (number < 0) return { problem: 'is negative' };
  if (factor === null)
    return { problem: `has no unit: write ${isTorque ? 'N·m or in-lb' : 'kN, N or lbf'} into the heading` };
  return { value: Number((number * factor).toPrecision(9)) };
}

/** Nobody states newtons or pounds to a thousandth: in "1,200" and "1.200" the sign parts thousands. */
function withoutThousands(digits: string): string {
  return /^[1-9]\d{0,2}[.,]\d{3}$/.test(digits) ? digits.replace(/[.,]/, '') : digits;
}

/** Yes or no. */
export function readYesNo(text: string): CellResult<boolean> {
  const plain = text.trim().toLowerCase();
  if (/^(?:y|yes|true|x|✓|ja|oui|s[ií]|flush)$/.test(plain)) return { value: true };
  if (/^(?:n|no|false|nein|non|not flush)$/.test(plain)) return { value: false };
  return isBlank(text) ? { value: null } : { problem: 'is neither yes nor no' };
}

/** Stocked or not, with a quantity where the cell gives one. */
export function readStock(text: string): CellResult<{ yes: boolean; quantity: number | null }> {
  const answer = readYesNo(text);
  if ('value' in answer) return { value: answer.value === null ? null : { yes: answer.value, quantity: null } };
  if (/^(?:in )?stock(?:ed)?$|^available$|^standard$/i.test(text.trim()))
    return { value: { yes: true, quantity: null } };
  if (/^(?:non|not|out)\b.*stock|^(?:special|made to order|mto|discontinued|obsolete|on request)/i.test(text.trim())) {
    return { value: { yes: false, quantity: null } };
  }
  const count = readCount(text);
  if ('problem' in count || count.value === null) return { problem: 'is neither yes, no nor a quantity' };
  return { value: { yes: count.value > 0, quantity: count.value } };
}

/** A whole number of pieces. */
export function readCount(text: string): CellResult<number> {
  if (isBlank(text)) return { value: null };
  if (/^[-‐-―−]\s*\d/.test(text.trim())) return { problem: 'is negative' };
  const { how, value } = parseQuantity(text.replace(/^(?:pack|box|bag) of /i, ''));
  return how === 'whole' || how === 'zero' ? { value } : { problem: 'is no whole number' };
}

/** A price with the currency that stands beside it, if any. */
export function readPrice(text: string): CellResult<{ price: number; currency: string | null }> {
  if (isBlank(text)) return { value: null };
  const sign = /[$€£¥]|[A-Z]{3}/.exec(text)?.[0] ?? null;
  const price = parseNumber(text.replace(/[$€£¥]|[A-Z]{3}|\/.*$/g, '').trim());
  if (price === null) return { problem: 'cannot be read as a price' };
  if (price < 0) return { problem: 'is negative' };
  return { value: { price, currency: sign === null ? null : (CURRENCIES[sign] ?? sign) } };
}

const CURRENCIES: Readonly<Record<string, string>> = { $: 'USD', '€': 'EUR', '£': 'GBP', '¥': 'JPY' };

/** Days: "10", "10 days", "3-4 weeks" (the longer, seven days each). */
export function readDays(text: string, { heading }: CatalogueColumn): CellResult<number> {
  if (isBlank(text)) return { value: null };
  if (/^(?:in )?stock$|^ex stock$/i.test(text.trim())) return { value: 0 };
  const match = /^(?:\d+\s*[-–]\s*)?(\d+(?:[.,]\d+)?)\s*(d|days?|working days|w|wks?|weeks?|wochen?|tage?)?\.?$/i.exec(
    text.trim(),
  );
  const number = parseNumber(match?.[1] ?? '');
  if (number === null)
    return { problem: /^[-–−]\s*\d/.test(text.trim()) ? 'is negative' : 'cannot be read as a number of days' };
  const isWeeks = /^w/i.test(match?.[2] ?? '') || (!match?.[2] && /week|wks?|woche/i.test(heading));
  return { value: number * (isWeeks ? 7 : 1) };
}
