import { FIELD_NAMES } from '../catalogue/field-words.ts';
import { FIELDS } from '../catalogue/show-part.ts';
import type { FastenerSummary, Requirement, SheetSummary } from '../model/audited.ts';
import type { Fastener } from '../model/fastener.ts';
import type { Sheet, Subject } from '../rules/rule.ts';

/** The fastener of a row in short; null when it is not on file. */
export function summariseFastener({ line, fastener, metals }: Subject): FastenerSummary | null {
  if (!fastener) return null;
  return {
    partNumber: fastener.partNumber,
    listedAs: line.partNumber,
    kind: fastener.kind,
    thread: fastener.thread,
    material: metals.map(({ name }) => name).join(' or ') || null,
    ...(fastener.origin.edited && { edited: namesOfEdits(fastener) }),
  };
}

function namesOfEdits({ origin: { row, edited = {} } }: Fastener): string {
  const fields = FIELDS.filter((field) => edited[field] !== undefined);
  return row === 0 ? 'added' : fields.map((field) => FIELD_NAMES[field].toLowerCase()).join(', ');
}

/** The sheet of a row in short: what its candidates share; null when nothing is known of it. */
export function summariseSheet({ line, sheets }: Subject): SheetSummary | null {
  const entries = sheets.flatMap(({ entry }) => entry ?? []);
  const thicknessMm = least(sheets, 'thicknessMm');
  if (entries.length === 0 && thicknessMm === null) return null;
  return {
    listedAs: [line.material.text, line.thickness.text]
      .map((text) => text.trim())
      .filter(Boolean)
      .join(', '),
    name: nameOf(entries.map(({ name }) => name)),
    alloy: shared(entries.map(({ alloy }) => alloy)),
    temper: shared(entries.map(({ temper }) => temper)),
    family: shared(entries.map(({ family }) => family)) ?? line.material.family,
    thicknessMm,
    thinnestMm: least(sheets, 'thinnestMm'),
  };
}

/** What the catalogue asks of sheet and hole; null when the part is not on file. */
export function summariseRequirement({ fastener }: Subject): Requirement | null {
  if (!fastener) return null;
  const { sheetMinMm, holeMm, holePlusMm, holeMinusMm, edgeMm } = fastener;
  return { sheetMinMm, holeMm, holePlusMm, holeMinusMm, edgeMm };
}

function shared<T>(values: readonly T[]): T | null {
  const [first] = values;
  return first !== undefined && values.every((value) => value === first) ? first : null;
}

function nameOf(names: readonly string[]): string {
  if (names.length < 2) return names[0] ?? '';
  return `${names[0]} or ${names.length - 1} other${names.length > 2 ? 's' : ''}`;
}

function least(sheets: readonly Sheet[], key: 'thicknessMm' | 'thinnestMm'): number | null {
  const known = sheets.flatMap((sheet) => sheet[key] ?? []);
  return known.length === sheets.length ? Math.min(...known) : null;
}
