import type { Catalogue, Fastener } from '../model/fastener.ts';
import type { LengthUnit } from '../model/list.ts';
import type { PartCells, PartEdit } from '../model/part-edit.ts';
import type { CatalogueField } from './catalogue-fields.ts';
import { readHole } from './catalogue-lengths.ts';
import { partKey } from './part-key.ts';
import { type CellFault, readCells } from './read-cells.ts';
import { showPart } from './show-part.ts';

/** What a user's edit leads to: all edits of the catalogue, or why it cannot be made. */
export type EditOutcome = { readonly edits: readonly PartEdit[] } | { readonly faults: readonly CellFault[] };

/**
 * Sets cells of a part as they were typed, bare lengths in the unit given. Refused, with one sentence for each cell, where a value
 * cannot be read or is impossible. A cell that says again what the file says is no edit.
 */
export function editPart(catalogue: Catalogue, part: Fastener, typed: PartCells, units: LengthUnit): EditOutcome {
  const before = showPart(part);
  const kept = bringsTolerance(typed, units) ? without(before, ['holePlusMm', 'holeMinusMm']) : before;
  const read = readCells({ ...kept, ...typed }, (field) => (field in typed ? units : 'mm'));
  if (read.faults.length > 0) return { faults: read.faults };
  const after = showPart(read.part);
  const edits = catalogue.edits ?? [];
  if (part.origin.row === 0) return { edits: replace(edits, { partNumber: part.partNumber, cells: after, was: null }) };
  const was = { ...changesBetween(after, before), ...part.origin.edited };
  const fields = (Object.keys(was) as CatalogueField[]).filter((field) => (after[field] ?? '') !== was[field]);
  const edit = { partNumber: part.partNumber, cells: pick(after, fields), was: pick(was, fields) };
  return { edits: fields.length > 0 ? replace(edits, edit) : drop(edits, part.partNumber) };
}

/** Adds a part as it was typed, bare lengths in the unit given. */
export function addPart(catalogue: Catalogue, typed: PartCells, units: LengthUnit): EditOutcome {
  const { part, faults } = readCells(typed, () => units);
  const cells = showPart(part);
  const unfit = findUnfit(catalogue, cells);
  if (unfit) return { faults: [{ field: 'partNumber', text: unfit }, ...faults] };
  if (faults.length > 0) return { faults };
  return { edits: replace(catalogue.edits ?? [], { partNumber: part.partNumber, cells, was: null }) };
}

/** Takes a part out of the catalogue. */
export function removePart({ edits = [] }: Catalogue, { partNumber, origin }: Fastener): readonly PartEdit[] {
  return origin.row === 0 ? drop(edits, partNumber) : replace(edits, { partNumber, cells: null, was: {} });
}

/** Gives a part back as the file has it. */
export function revertPart({ edits = [] }: Catalogue, partNumber: string): readonly PartEdit[] {
  return drop(edits, partNumber);
}

/** A number alone would be taken for the title of a group of rows when the saved file is read. */
function findUnfit({ fasteners, edits = [] }: Catalogue, cells: PartCells): string | null {
  const { partNumber = '', ...rest } = cells;
  const key = partKey(partNumber);
  if (key === '') return 'A part needs a part number.';
  if (fasteners.some((part) => partKey(part.partNumber) === key))
    return `“${partNumber}” is in this catalogue already.`;
  const isOut = edits.some((edit) => edit.cells === null && partKey(edit.partNumber) === key);
  if (isOut) return `“${partNumber}” was taken out of this catalogue: put it back instead.`;
  return Object.keys(rest).length === 0 ? 'A part needs more than its number: give its kind at least.' : null;
}

/** "5.60 +0.08/-0" in the cell of the hole stands for the cells of the tolerance too. */
function bringsTolerance(typed: PartCells, unit: LengthUnit): boolean {
  if (typed.holeMm === undefined) return false;
  const column = { index: 0, heading: 'holeMm', field: 'holeMm', unit, factor: null, lenient: false } as const;
  const hole = readHole(typed.holeMm, column);
  return 'value' in hole && hole.value !== null && hole.value.plusMm !== null;
}

/** What the cells said before, for each that says otherwise now. */
function changesBetween(after: PartCells, before: PartCells): PartCells {
  const fields = Object.keys({ ...before, ...after }) as CatalogueField[];
  return pick(
    before,
    fields.filter((field) => (after[field] ?? '') !== (before[field] ?? '')),
  );
}

function pick(cells: PartCells, fields: readonly CatalogueField[]): PartCells {
  return Object.fromEntries(fields.map((field) => [field, cells[field] ?? '']));
}

function without(cells: PartCells, fields: readonly CatalogueField[]): PartCells {
  return Object.fromEntries(Object.entries(cells).filter(([field]) => !fields.includes(field as CatalogueField)));
}

function replace(edits: readonly PartEdit[], edit: PartEdit): readonly PartEdit[] {
  return [...drop(edits, edit.partNumber), edit];
}

function drop(edits: readonly PartEdit[], partNumber: string): readonly PartEdit[] {
  return edits.filter((edit) => partKey(edit.partNumber) !== partKey(partNumber));
}
