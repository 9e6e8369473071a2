import type { Fastener } from '../../model/fastener.ts';
import type { AlloyEntry } from '../../model/sheet.ts';
import type { Sheet } from '../rule.ts';

/** The installation force in one of the metals that the sheet could be. */
export interface ForceInSheet {
  readonly sheet: Sheet;
  readonly name: string;
  readonly forceKn: number;
  /** Which of the catalogue's values it is, in a phrase. */
  readonly basis: string;
}

/** What the catalogue asks in this sheet, in kN; null where it is silent. */
export function forceIn(sheet: Sheet, { forceAluminiumKn, forceSteelKn }: Fastener): ForceInSheet | null {
  const forceKn = sheet.entry?.family === 'aluminium' ? forceAluminiumKn : forceSteelKn;
  return forceKn === null
    ? null
    : { sheet, name: sheet.entry?.name ?? 'this sheet', forceKn, basis: basisOf(sheet.entry) };
}

function basisOf(entry: AlloyEntry | null): string {
  if (entry === null) return BASIS.unknown;
  if (entry.family === 'aluminium') return BASIS.aluminium;
  return /steel|stainless/.test(entry.family) ? BASIS.steel : BASIS.other;
}

const BASIS = {
  aluminium: ' in aluminium',
  steel: ' in steel',
  unknown: ' (that in steel, as the higher: the sheet metal is not known)',
  other: ' (that in steel, as the higher, for want of one in this metal)',
} as const;
