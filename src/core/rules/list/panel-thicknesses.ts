import { isAtLeast } from '../../calc/closeness.ts';
import type { Values, Words } from '../../model/finding.ts';
import type { Subject } from '../rule.ts';
import { nameRows } from './group.ts';

/** Gauges and inch sheets are written to three decimals of an inch: half of the last one. Source: common practice, no source. */
const INCH_ROUNDING_MM = 0.0127;

/** What one row says of the thickness: from the thinnest to the thickest that its words can mean. */
interface Stated {
  readonly subject: Subject;
  readonly mm: number;
  readonly lowMm: number;
  readonly highMm: number;
}

/** The thinnest and the thickest statement among the rows of a panel where they cannot both be true; null where they can. */
export function findThicknessConflict(
  rows: readonly Subject[],
): { readonly values: Values; readonly words: Words } | null {
  const stated = rows.flatMap((subject) => statedBy(subject) ?? []);
  const [first] = stated;
  if (!first) return null;
  const thinner = stated.reduce((least, next) => (next.highMm < least.highMm ? next : least), first);
  const thicker = stated.reduce((most, next) => (next.lowMm > most.lowMm ? next : most), first);
  if (agree(thinner, thicker)) return null;
  const beside = (one: Stated, other: Stated) =>
    stated.filter((row) => agree(row, one) && !agree(row, other)).map(({ subject }) => subject);
  return {
    values: { thinnerMm: thinner.mm, thickerMm: thicker.mm },
    words: { thinnerRows: nameRows(beside(thinner, thicker)), thickerRows: nameRows(beside(thicker, thinner)) },
  };
}

function agree(one: Stated, other: Stated): boolean {
  return isAtLeast(one.highMm, other.lowMm) && isAtLeast(other.highMm, one.lowMm);
}

/** A gauge number counts with every table and every metal that it could belong to. Null: the row gives no usable thickness. */
function statedBy(subject: Subject): Stated | null {
  const known = subject.sheets.flatMap(({ thicknessMm, otherThickness }) =>
    thicknessMm === null ? [] : [thicknessMm, ...(otherThickness ? [otherThickness.mm] : [])],
  );
  const [mm] = known;
  if (mm === undefined) return null;
  const rounding = subject.line.thickness.writtenIn === 'mm' ? 0 : INCH_ROUNDING_MM;
  return { subject, mm, lowMm: Math.min(...known) - rounding, highMm: Math.max(...known) + rounding };
}
