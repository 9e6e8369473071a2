import { CATALOGUE_FIELDS, type CatalogueField } from '../../core/catalogue/catalogue-fields.ts';
import { showCell } from '../../core/catalogue/show-part.ts';
import type { Fastener } from '../../core/model/fastener.ts';
import type { LengthUnit } from '../../core/model/list.ts';
import { showValue, unitOf } from '../../core/say/show-value.ts';
import { showHardness } from '../../core/units/hardness.ts';
import { showLength } from '../../core/units/length.ts';

/** A field of a part for reading, with its unit; '' where the catalogue is silent. */
export function showField(part: Fastener, field: CatalogueField, units: LengthUnit): string {
  const value = part[field];
  if (field === 'hardnessMin' || field === 'sheetHardnessMax') return part[field] ? showHardness(part[field]) : '';
  if (field === 'stocked' && part.stocked)
    return part.stocked.quantity === null ? showCell(part, field) : `${part.stocked.quantity} pieces`;
  if (typeof value !== 'number' || field === 'unitPrice') return showCell(part, field);
  return `${showValue(field, value, units)}${unitOf(field, units)}`;
}

/** A cell of the file, which is under our own heading, for reading. */
export function showFileCell(text: string, field: CatalogueField, units: LengthUnit): string {
  if (text === '') return 'nothing';
  const value = Number(text);
  const isSize = CATALOGUE_FIELDS[field] === 'length' && Number.isFinite(value);
  return isSize ? `${showValue(field, value, units)}${unitOf(field, units)}` : `${text}${unitOf(field, units)}`;
}

/** A field as it is offered for editing: lengths in the unit of the screen, without it. */
export function typedField(part: Fastener, field: CatalogueField, units: LengthUnit): string {
  const value = part[field];
  if (units === 'mm' || CATALOGUE_FIELDS[field] !== 'length' || typeof value !== 'number') return showCell(part, field);
  return showLength(value, 'in');
}

/** The unit that a bare number in a field is taken in: "mm", "kN"; '' for none. */
export function unitFor(field: CatalogueField, units: LengthUnit): string {
  return unitOf(field, units).trim().replace('N m', 'N·m');
}
