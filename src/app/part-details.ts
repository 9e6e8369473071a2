import { FIELD_NAMES } from '../core/catalogue/field-words.ts';
import { partKey } from '../core/catalogue/part-key.ts';
import { FIELDS } from '../core/catalogue/show-part.ts';
import type { ChangeDetail } from '../core/model/change-record.ts';
import type { PartEdit } from '../core/model/part-edit.ts';
import type { PartsChange } from './history.ts';

/** What a step did to the parts of a catalogue, cell by cell. */
export function partDetails(before: PartsChange, after: PartsChange): readonly ChangeDetail[] {
  const [was, is] = [byPart(before.edits), byPart(after.edits)];
  const keys = [...new Set([...was.keys(), ...is.keys()])];
  return keys.flatMap((key) => detailsOfPart(was.get(key), is.get(key)));
}

function byPart(edits: readonly PartEdit[]): ReadonlyMap<string, PartEdit> {
  return new Map(edits.map((edit) => [partKey(edit.partNumber), edit]));
}

function detailsOfPart(was: PartEdit | undefined, is: PartEdit | undefined): readonly ChangeDetail[] {
  const partNumber = (is ?? was)?.partNumber ?? '';
  const detail = (where: string, before: string, after: string) => ({ row: null, where, before, after });
  const [before, after] = [presence(was, is), presence(is, was)];
  if (before !== after) return [detail(partNumber, before, after)];
  const fields = FIELDS.filter((field) => cellOf(was, is, field) !== cellOf(is, was, field));
  return fields.map((field) =>
    detail(`${partNumber}, ${FIELD_NAMES[field].toLowerCase()}`, cellOf(was, is, field), cellOf(is, was, field)),
  );
}

/** A part that no edit speaks of is as its file has it; one that the other edit adds is not there. */
function presence(edit: PartEdit | undefined, other: PartEdit | undefined): string {
  if (!edit && other?.was === null) return 'not in the catalogue';
  if (edit?.cells === null) return 'taken out';
  return edit?.was === null ? 'added' : 'in the catalogue';
}

/** What a cell says with an edit: as set, else as the file has it, which the other edit may know. */
function cellOf(edit: PartEdit | undefined, other: PartEdit | undefined, field: (typeof FIELDS)[number]): string {
  return edit?.cells?.[field] ?? edit?.was?.[field] ?? other?.was?.[field] ?? '';
}
