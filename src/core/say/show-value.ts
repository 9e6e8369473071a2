import type { LengthUnit } from '../model/list.ts';

const MM_PER_INCH = 25.4;

/** A number as text by the unit in its key: lengths in the unit asked for, volts and newton metres to two decimals, other numbers to one at most. */
export function showValue(key: string, value: number, units: LengthUnit): string {
  if (!Number.isFinite(value)) throw new Error(`${key} is not a number`);
  if (key.endsWith('V') || key.endsWith('Nm')) return value.toFixed(2);
  if (!key.endsWith('Mm')) return trimmed(value, 1);
  return units === 'mm' ? value.toFixed(2) : (value / MM_PER_INCH).toFixed(4);
}

/** The unit that goes with a key, with the space before it: " mm", " in", " kN" or nothing. */
export function unitOf(key: string, units: LengthUnit): string {
  if (key.endsWith('Mm')) return ` ${units}`;
  const unit = [
    ['Kn', 'kN'],
    ['Nm', 'N m'],
    ['N', 'N'],
    ['V', 'V'],
    ['Days', 'days'],
  ].find(([suffix]) => key.endsWith(suffix ?? ''));
  return unit ? ` ${unit[1]}` : '';
}

function trimmed(value: number, decimals: number): string {
  return String(Number(value.toFixed(decimals)));
}
