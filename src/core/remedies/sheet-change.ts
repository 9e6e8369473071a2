import { isAtLeast } from '../calc/closeness.ts';
import { type StockThickness, stockThicknesses } from '../calc/stock-thickness.ts';
import { holdsThroughout } from '../engine/audit-line.ts';
import { subjectFor } from '../engine/prepare.ts';
import type { Fastener } from '../model/fastener.ts';
import type { AlloyEntry, MaterialReading } from '../model/sheet.ts';
import type { ThicknessReading } from '../model/thickness.ts';
import { findAlloy } from '../reference/alloys/index.ts';
import { rules } from '../rules/index.ts';
import type { Subject } from '../rules/rule.ts';
import { EVERYDAY_SHEETS } from './everyday-sheets.ts';

/** Another sheet in which the listed part would hold. */
export interface SheetChange {
  readonly kind: 'thickness' | 'metal' | 'both';
  /** "sheet 1.00 mm", "same nut in 5052-H32 or cold-rolled CS". */
  readonly words: string;
}

const MOST_METALS = 3;

/**
 * Sheets in which the listed part passes every check of its row, the smallest change first: another thickness of the same metal,
 * other metals of the same thickness, and only where neither does, both. None while the sheet itself is not known.
 */
export function sheetsThatHold(subject: Subject): readonly SheetChange[] {
  const { fastener, line, sheets } = subject;
  const isKnown = line.material.candidates.length > 0 && sheets.every(({ thicknessMm }) => thicknessMm !== null);
  if (!fastener || !isKnown) return [];
  const single = [changeThickness(subject, fastener), changeMetal(subject, fastener)].flatMap((change) => change ?? []);
  if (single.length > 0) return single;
  const both = changeBoth(subject, fastener);
  return both ? [both] : [];
}

function changeThickness(subject: Subject, fastener: Fastener): SheetChange | null {
  const { material } = subject.line;
  const step = stepsFrom(subject).find((one) => holdsIn(subject, fastener, material, thicknessOf(one)));
  return step ? { kind: 'thickness', words: `sheet ${step.name}` } : null;
}

function changeMetal(subject: Subject, fastener: Fastener): SheetChange | null {
  const { thickness } = subject.line;
  const names = everydayMetals(subject)
    .filter((entry) => holdsIn(subject, fastener, materialOf(entry), thickness))
    .map(plainName);
  if (names.length === 0) return null;
  return { kind: 'metal', words: `same ${nounOf(fastener)} in ${names.slice(0, MOST_METALS).join(' or ')}` };
}

function changeBoth(subject: Subject, fastener: Fastener): SheetChange | null {
  for (const step of stepsFrom(subject)) {
    const entry = everydayMetals(subject).find((one) =>
      holdsIn(subject, fastener, materialOf(one), { ...thicknessOf(step), how: 'length', mm: step.mm, number: null }),
    );
    if (entry)
      return { kind: 'both', words: `same ${nounOf(fastener)} in ${plainName(entry)}, ${step.mm.toFixed(2)} mm` };
  }
  return null;
}

function holdsIn(
  { line, shop }: Subject,
  fastener: Fastener,
  material: MaterialReading,
  thickness: ThicknessReading,
): boolean {
  return holdsThroughout(subjectFor({ ...line, material, thickness }, fastener, shop), rules);
}

/** Stock thicknesses other than the present one, the nearest first. */
function stepsFrom({ line, sheets }: Subject): readonly StockThickness[] {
  const present = sheets[0]?.thicknessMm ?? Number.NaN;
  const isPresent = (mm: number) => isAtLeast(mm, present) && isAtLeast(present, mm);
  return stockThicknesses(line.material.family, line.thickness.writtenIn)
    .filter(({ mm }) => !isPresent(mm))
    .sort((a, b) => Math.abs(a.mm - present) - Math.abs(b.mm - present));
}

/** Metals other than those that the row may mean; those of its own family first. */
function everydayMetals({ line: { material } }: Subject): readonly AlloyEntry[] {
  const others = EVERYDAY_SHEETS.filter((id) => !material.candidates.includes(id)).flatMap((id) => findAlloy(id) ?? []);
  const isOwn = ({ family }: AlloyEntry) => family === material.family;
  return [...others.filter(isOwn), ...others.filter((entry) => !isOwn(entry))];
}

function materialOf({ id, name, family }: AlloyEntry): MaterialReading {
  return { text: name, candidates: [id], how: 'named', family, remarks: [] };
}

function thicknessOf({ mm, name, gauge }: StockThickness): ThicknessReading {
  const size =
    gauge === null
      ? ({ how: 'length', mm, writtenIn: 'mm' } as const)
      : ({ how: 'gauge', mm: null, writtenIn: 'gauge' } as const);
  return { text: name, ...size, number: gauge, gaugeSystem: null, unitFrom: 'cell', otherMm: null, toleranceMm: null };
}

/** Without the standard: "cold-rolled CS". */
function plainName({ name }: AlloyEntry): string {
  return name.replace(/ \([^)]*\)$/, '');
}

function nounOf({ kind }: Fastener): string {
  return kind?.split(' ').at(-1) ?? 'part';
}
