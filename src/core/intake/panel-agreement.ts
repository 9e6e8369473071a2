import type { Line } from '../model/line.ts';
import type { PanelRow } from '../model/list.ts';
import type { MaterialReading } from '../model/sheet.ts';
import type { ThicknessReading } from '../model/thickness.ts';
import { findAlloy } from '../reference/alloys/index.ts';

/** Whether a row gives a metal. */
export function hasMaterial({ material }: Pick<PanelRow, 'material'>): boolean {
  return material.candidates.length > 0;
}

/** Whether a row gives a thickness, be it one whose unit has to be asked for. */
export function hasThickness({ thickness }: Pick<PanelRow, 'thickness'>): boolean {
  return ['length', 'gauge', 'ounces', 'ambiguous-unit'].includes(thickness.how);
}

/** Whether rows of one panel say different things of it, however slightly: nobody knows then which of them is right. */
export function differ(rows: readonly PanelRow[]): boolean {
  const metals = new Set(rows.filter(hasMaterial).map(({ material }) => [...material.candidates].sort().join(' ')));
  const sizes = rows.filter(hasThickness).map(({ thickness }) => thickness);
  return metals.size > 1 || sizes.some((size) => !isSameSize(size, sizes[0] ?? size));
}

/** Half of the last decimal of an inch size in thousandths. Source: common practice, no source. */
const ROUNDING_MM = 0.0127;

function isSameSize(one: ThicknessReading, other: ThicknessReading): boolean {
  if (one.how !== other.how) return false;
  if (one.how === 'length') return Math.abs((one.mm ?? Number.NaN) - (other.mm ?? Number.NaN)) <= ROUNDING_MM;
  if (one.how === 'ambiguous-unit') return one.text.trim() === other.text.trim();
  return one.number === other.number && one.gaugeSystem === other.gaugeSystem;
}

/** Sizes of one sheet in two unit systems: 1.5 mm is also written .060 in. Source: common practice, no source. */
const TWO_SYSTEMS_MM = 0.03;

/** Whether a row itself says something of the sheet that the panel row rules out: then it is not about that sheet. */
export function contradicts(line: Line, panel: PanelRow): boolean {
  if (hasMaterial(line) && hasMaterial(panel) && !couldBeOne(line.material, panel.material)) return true;
  const [own, given] = [line.thickness, panel.thickness];
  if (own.how === 'length' && given.how === 'length') {
    return !(Math.abs((own.mm ?? Number.NaN) - (given.mm ?? Number.NaN)) <= TWO_SYSTEMS_MM);
  }
  return own.how === 'gauge' && given.how === 'gauge' && own.number !== given.number;
}

/** Vague words leave room for every alloy of their metals. */
function couldBeOne(one: MaterialReading, other: MaterialReading): boolean {
  if (one.candidates.some((id) => other.candidates.includes(id))) return true;
  const isVague = one.candidates.length > 1 || other.candidates.length > 1;
  const families = new Set(one.candidates.map((id) => findAlloy(id)?.family));
  return isVague && other.candidates.some((id) => families.has(findAlloy(id)?.family));
}
