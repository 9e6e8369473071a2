import { isAtLeast, isAtMost } from '../../calc/closeness.ts';
import type { HoleReading } from '../../model/hole.ts';
import type { LengthUnit } from '../../model/list.ts';
import { iso9013Class1 } from '../../reference/holes/iso9013.ts';
import type { HoleBand } from '../hole-band.ts';

/** Do holes between two sizes in mm keep within the band? False for what is no number. */
export function staysIn({ holeLowMm, holeHighMm }: HoleBand, smallestMm: number, largestMm: number): boolean {
  return isAtLeast(smallestMm, holeLowMm) && isAtMost(largestMm, holeHighMm);
}

/** The part's hole as a drawing calls it out: "5.60 +0.08/-0 mm", "0.2205 +0.0031/-0 in". */
export function showCallOut(holeMm: number, { holeLowMm, holeHighMm }: HoleBand, units: LengthUnit): string {
  const show = (mm: number) => (units === 'mm' ? mm.toFixed(2) : (mm / 25.4).toFixed(4));
  const deviation = (mm: number) => (mm === 0 ? '0' : show(mm));
  return `${show(holeMm)} +${deviation(holeHighMm - holeMm)}/-${deviation(holeMm - holeLowMm)} ${units}`;
}

/** A hole written in inches, as a fraction or by drill size is called out in inches, any other in the shop's unit. */
export function callOutUnits({ writtenIn }: HoleReading, shopUnits: LengthUnit): LengthUnit {
  return writtenIn === null || writtenIn === 'mm' ? shopUnits : 'in';
}

/** Least and most in mm, plus or minus, to which thermal cutting of class 1 keeps a hole of this size, over the sheets of the table. */
export function laserTolerance(holeMm: number): { readonly leastMm: number; readonly mostMm: number } {
  const inSheets = iso9013Class1.rows.map(({ nominalTo3Mm, nominalTo10Mm, nominalTo35Mm }) =>
    holeMm <= 3 ? nominalTo3Mm : holeMm <= 10 ? nominalTo10Mm : nominalTo35Mm,
  );
  return { leastMm: Math.min(...inSheets), mostMm: Math.max(...inSheets) };
}
