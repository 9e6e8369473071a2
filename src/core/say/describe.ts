import type { AuditedLine, Requirement } from '../model/audited.ts';
import type { Values } from '../model/finding.ts';
import type { LengthUnit } from '../model/list.ts';
import { findCited } from '../reference/index.ts';
import { showValue, unitOf } from './show-value.ts';
import { nameOfValue } from './value-names.ts';

/** What decides a row in one grid cell; nothing for a row that holds. */
export function describeDecision({ decidedBy }: AuditedLine): string {
  return decidedBy?.brief ?? '';
}

/** The sheet as understood: "304 annealed, 1.50". */
export function describeSheet({ sheet }: AuditedLine, units: LengthUnit): string {
  if (!sheet) return '';
  const thickness = sheet.thicknessMm === null ? '' : showValue('thicknessMm', sheet.thicknessMm, units);
  return [sheet.name, thickness].filter(Boolean).join(', ');
}

/** The mounting hole that the catalogue asks for: "5.60 +0.08/-0". */
export function describeHole(requires: Requirement | null, units: LengthUnit): string {
  if (!requires || requires.holeMm === null) return '';
  const show = (mm: number) => (mm === 0 ? '0' : showValue('holeMm', mm, units));
  const { holeMm, holePlusMm, holeMinusMm } = requires;
  if (holePlusMm === null || holeMinusMm === null) return show(holeMm);
  return `${show(holeMm)} +${show(holePlusMm)}/-${show(holeMinusMm)}`;
}

/** Hardness margin in Rockwell B points: the worst, or the typical where no maximum is published; "> 67" below the scale's foot. */
export function describeMargin(line: AuditedLine): string {
  const finding = line.findings.find(({ rule }) => rule === 'clinch/hardness');
  const margin = finding?.values.marginWorst ?? finding?.values.marginTypical;
  if (!finding || margin === undefined) return '';
  return `${finding.words.more ? '> ' : ''}${Math.round(margin)}`;
}

/** Parts that would hold instead, the first `most` of them, in one line. */
export function describeRemedies({ remedies }: AuditedLine, most = Number.POSITIVE_INFINITY): string {
  return remedies
    .slice(0, most)
    .map(({ partNumber, change, stocked }) => `${partNumber} (${change}${stocked === false ? ', not stocked' : ''})`)
    .join('; ');
}

/** Numbers of a finding by name, with their units: "sheet 0.80 mm; minimum sheet 1.00 mm". */
export function describeNumbers(values: Values, units: LengthUnit): string {
  return Object.entries(values)
    .map(([key, value]) => `${nameOfValue(key)} ${showValue(key, value, units)}${unitOf(key, units)}`)
    .join('; ');
}

/** The documents and practices behind a finding. */
export function describeSources(cites: readonly string[]): string {
  return cites
    .flatMap((id) => {
      const cited = findCited(id);
      const source = cited?.sources[0];
      return cited && source ? `${cited.title}: ${source.document}, ${source.place} (${source.mark})` : id;
    })
    .join('; ');
}
