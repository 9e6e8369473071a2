import type { LengthUnit, Role } from '../core/model/list.ts';

/** What each column meaning is called on screen. */
export const ROLE_NAMES: Readonly<Record<Role, string>> = {
  partNumber: 'part number',
  description: 'description',
  quantity: 'quantity',
  panel: 'panel',
  material: 'sheet metal',
  fastenerMaterial: 'fastener metal',
  thickness: 'sheet thickness',
  hole: 'hole',
  edge: 'edge distance',
  spacing: 'spacing',
  bend: 'distance to bend',
  finish: 'finish',
  thread: 'thread',
  length: 'length',
  note: 'note',
  level: 'level',
  index: 'item',
  parent: 'parent',
  supplier: 'supplier',
  price: 'price',
  unit: 'unit of count',
  stock: 'stock',
  load: 'load',
  other: 'not used',
};

export const UNIT_NAMES: Readonly<Record<LengthUnit, string>> = { mm: 'millimetres', in: 'inches' };

/** The meaning of a column as shown under its heading; nothing for columns that are not used. */
export function roleName(role: Role): string {
  return role === 'other' ? '' : ROLE_NAMES[role];
}
