import { LENGTH_CLOSENESS_MM } from '../calc/closeness.ts';
import type { AuditedLine } from '../model/audited.ts';
import type { LengthUnit } from '../model/list.ts';
import { describeSheet } from '../say/describe.ts';
import type { SheetChange } from './comparison.ts';
import type { Row } from './rows.ts';

/** Rows that name no sheet themselves and have another one from their panel than before. */
export function changedSheets(pairs: readonly (readonly [Row, Row])[], units: LengthUnit): readonly SheetChange[] {
  return pairs.flatMap(([before, after]) => {
    const [was, is] = [before.audited, after.audited];
    if (!was || !is || !takesSheet(was) || !takesSheet(is) || isSameSheet(was, is)) return [];
    const sheets = { sheetBefore: describeSheet(was, units), sheetAfter: describeSheet(is, units) };
    return [{ before: before.name, after: after.name, ...sheets }];
  });
}

function takesSheet({ line }: AuditedLine): boolean {
  return line.material.takenFrom !== undefined || line.thickness.takenFrom !== undefined;
}

function isSameSheet(one: AuditedLine, other: AuditedLine): boolean {
  const metal = ({ line: { material } }: AuditedLine) => material.candidates.join('\n') || material.text.trim();
  const [was, is] = [one.sheet?.thicknessMm ?? null, other.sheet?.thicknessMm ?? null];
  const isSameThickness = was === null || is === null ? was === is : Math.abs(was - is) <= LENGTH_CLOSENESS_MM;
  return isSameThickness && metal(one) === metal(other);
}
