import type { Fastener } from '../model/fastener.ts';
import type { LengthUnit } from '../model/list.ts';
import type { PartCells } from '../model/part-edit.ts';
import type { CatalogueColumn } from './catalogue-columns.ts';
import { CATALOGUE_FIELDS, type CatalogueField } from './catalogue-fields.ts';
import { readRow } from './catalogue-row.ts';
import { findContradictions } from './check-fastener.ts';
import { FIELDS } from './show-part.ts';

/** What is wrong with a cell of a part, in one sentence. */
export interface CellFault {
  readonly field: CatalogueField;
  readonly text: string;
}

/**
 * Reads texts as a row of a catalogue under our own headings, with the checks of an import. Bare lengths are in the unit of their
 * field. A cell that cannot be read, or that contradicts another, is a fault and stays blank.
 */
export function readCells(
  cells: PartCells,
  unitOf: (field: CatalogueField) => LengthUnit = () => 'mm',
): { readonly part: Fastener; readonly faults: readonly CellFault[] } {
  const columns = FIELDS.map((field, index) => columnOf(field, index, unitOf(field)));
  const row = { number: 0, cells: FIELDS.map((field) => cells[field] ?? '') };
  const { fastener, problems } = readRow(row, columns, '');
  const contradictions = findContradictions(fastener);
  const cleared = contradictions.flatMap(({ field, alsoClear }) => [field, ...alsoClear]);
  const unread = problems.map(({ column, text }) => ({ field: column as CatalogueField, text: withoutEnd(text) }));
  return {
    part: { ...fastener, ...Object.fromEntries(cleared.map((field) => [field, null])) },
    faults: [...unread, ...contradictions.map(({ field, text }) => ({ field, text: withoutEnd(text) }))],
  };
}

/** On import the cell is left out; here nothing is taken over. */
function withoutEnd(text: string): string {
  return text.replace(/; [^;]+ left out\.$/, '.');
}

function columnOf(field: CatalogueField, index: number, unit: LengthUnit): CatalogueColumn {
  const sort = CATALOGUE_FIELDS[field];
  const perForce = field.endsWith('Kn') ? 1000 : 1;
  const factor = { force: perForce, torque: 1 }[sort as string] ?? null;
  return { index, heading: field, field, unit: sort === 'length' ? unit : null, factor, lenient: false };
}
