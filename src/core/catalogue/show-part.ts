import type { Fastener } from '../model/fastener.ts';
import type { PartCells } from '../model/part-edit.ts';
import type { Hardness } from '../units/hardness.ts';
import { CATALOGUE_FIELDS, type CatalogueField } from './catalogue-fields.ts';

/** Every field in the order of the catalogue table: the headings under which `showPart` is read back. */
export const FIELDS = Object.keys(CATALOGUE_FIELDS) as readonly CatalogueField[];

/** A part as cells under our own headings; read again they give the same part. Blank cells are left out. */
export function showPart(part: Fastener): PartCells {
  const cells = FIELDS.map((field) => [field, showCell(part, field)] as const);
  return Object.fromEntries(cells.filter(([, text]) => text !== ''));
}

/** The cell of one field; '' where the catalogue is silent. */
export function showCell(part: Fastener, field: CatalogueField): string {
  if (field === 'material') return part.material.text;
  if (field === 'hardnessMin' || field === 'sheetHardnessMax') return showHardnessInFull(part[field]);
  if (field === 'stocked') return showStock(part.stocked);
  const value = part[field];
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return typeof value === 'number' ? showNumber(value, field) : value;
}

/** With every digit, other than for people to read: an inexact hardness would judge otherwise after saving. */
function showHardnessInFull(hardness: Hardness | null): string {
  if (!hardness) return '';
  const { scale, value } = hardness;
  if (scale === 'MPa') return `${value} MPa tensile`;
  if (scale === 'HB3000') return `HB ${value} (3000 kgf)`;
  return scale === 'HB500' ? `HB ${value} (500 kgf)` : `${scale} ${value}`;
}

function showStock(stocked: Fastener['stocked']): string {
  if (!stocked) return '';
  if (stocked.quantity !== null) return String(stocked.quantity);
  return stocked.yes ? 'yes' : 'no';
}

/** In newtons three decimals would be read as thousands, so that such a number gets a fourth. */
function showNumber(value: number, field: CatalogueField): string {
  const text = String(value);
  const isForce = CATALOGUE_FIELDS[field] === 'force';
  return isForce && /^[1-9]\d{0,2}\.\d{3}$/.test(text) ? `${text}0` : text;
}
