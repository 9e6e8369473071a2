import type { CatalogueField } from '../catalogue/catalogue-fields.ts';
import type { Fastener } from '../model/fastener.ts';
import type { LengthUnit } from '../model/list.ts';
import { findFastenerMaterial } from '../reference/fastener-materials.ts';
import { showValue, unitOf } from '../say/show-value.ts';
import { showHardness } from '../units/hardness.ts';
import { holeBandOf } from './hole-band.ts';

/** What the checks take for granted where the catalogue is silent, in a phrase; null where they take nothing. */
export function takenForGranted(part: Fastener, field: CatalogueField, units: LengthUnit): string | null {
  const band = holeBandOf(part);
  const holeMm = part.holeMm ?? Number.NaN;
  if (field === 'hardnessMin' && !part.hardnessMin) return classMinimum(part);
  if (field === 'holePlusMm' && part.holePlusMm === null && band)
    return `${length(band.holeHighMm - holeMm, units)} assumed, the usual band`;
  if (field === 'holeMinusMm' && part.holeMinusMm === null && band)
    return `${length(holeMm - band.holeLowMm, units)} assumed, the usual band`;
  if (field === 'spacingMm' && part.spacingMm === null && part.edgeMm !== null)
    return `${length(part.edgeMm, units)} assumed, the edge distance`;
  return null;
}

/** The least hardness of what the material may be, by its standards. */
function classMinimum({ material }: Fastener): string | null {
  const known = material.candidates.flatMap((id) => {
    const entry = findFastenerMaterial(id);
    return entry?.hardnessMin ? `${showHardness(entry.hardnessMin)} for ${entry.name}` : [];
  });
  return known.length > 0 ? `assumed by class: ${known.join(', ')}` : null;
}

function length(mm: number, units: LengthUnit): string {
  return `${showValue('lengthMm', mm, units)}${unitOf('lengthMm', units)}`;
}
