import type { Fastener } from '../model/fastener.ts';

/** What a column of a supplier's table can hold. */
export type CatalogueField = Exclude<keyof Fastener, 'origin'>;

/** How the cells of a field are read. */
export type FieldSort =
  | 'text'
  | 'kind'
  | 'thread'
  | 'material'
  | 'hardness'
  | 'length'
  | 'force'
  | 'torque'
  | 'yes-no'
  | 'stock'
  | 'count'
  | 'price'
  | 'days';

/** Every field in the order of the catalogue table, with the way its cells are read. The names are headings that always work. */
export const CATALOGUE_FIELDS: Readonly<Record<CatalogueField, FieldSort>> = {
  partNumber: 'text',
  kind: 'kind',
  thread: 'thread',
  lengthMm: 'length',
  material: 'material',
  hardnessMin: 'hardness',
  finish: 'text',
  sheetMinMm: 'length',
  sheetMaxMm: 'length',
  shankMm: 'length',
  flush: 'yes-no',
  holeMm: 'length',
  holePlusMm: 'length',
  holeMinusMm: 'length',
  edgeMm: 'length',
  spacingMm: 'length',
  sheetHardnessMax: 'hardness',
  flangeMm: 'length',
  heightMm: 'length',
  forceSteelKn: 'force',
  forceAluminiumKn: 'force',
  pushOutSteelN: 'force',
  pushOutAluminiumN: 'force',
  torqueOutSteelNm: 'torque',
  torqueOutAluminiumNm: 'torque',
  stocked: 'stock',
  packSize: 'count',
  moq: 'count',
  unitPrice: 'price',
  currency: 'text',
  leadDays: 'days',
  supersededBy: 'text',
  supplier: 'text',
  source: 'text',
  sourceDate: 'text',
  note: 'text',
};
