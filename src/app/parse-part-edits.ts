import { FIELDS } from '../core/catalogue/show-part.ts';
import type { PartCells, PartEdit } from '../core/model/part-edit.ts';
import type { PartsChange } from './history.ts';
import { type Read, readFields, readListOf, readText } from './json-fields.ts';

/** Edits of the parts of a catalogue; cells of fields that are not known are dropped. */
export const readPartEdits: Read<readonly PartEdit[]> = (value, path) => readListOf(readPartEdit)(value, path);

/** A step on the parts of a catalogue. */
export const readParts: Read<PartsChange> = (value, path) => {
  const change = readFields(value, path);
  return {
    ...change,
    catalogue: readText(change.catalogue, `${path}.catalogue`),
    edits: readPartEdits(change.edits, `${path}.edits`),
  };
};

const readPartEdit: Read<PartEdit> = (value, path) => {
  const edit = readFields(value, path);
  return {
    partNumber: readText(edit.partNumber, `${path}.partNumber`),
    cells: edit.cells === null ? null : readCells(edit.cells, `${path}.cells`),
    was: edit.was === null ? null : readCells(edit.was, `${path}.was`),
  };
};

const readCells: Read<PartCells> = (value, path) => {
  const cells = readFields(value, path);
  const known = FIELDS.filter((field) => cells[field] !== undefined);
  return Object.fromEntries(known.map((field) => [field, readText(cells[field], `${path}.${field}`)]));
};
