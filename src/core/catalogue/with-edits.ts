import type { Catalogue, Fastener } from '../model/fastener.ts';
import type { PartCells, PartEdit } from '../model/part-edit.ts';
import { isInvented } from './import.ts';
import { partKey } from './part-key.ts';
import { readCells } from './read-cells.ts';
import { showPart } from './show-part.ts';

const DEMO_NOTE = 'demo: not for production';

type Problem = Catalogue['problems'][number];

/**
 * The catalogue with a user's edits. Its name and the origin of each such part say so; invented data stay marked as invented. A
 * cell that cannot be read is left blank and reported, as on import.
 */
export function withEdits(catalogue: Catalogue, edits: readonly PartEdit[]): Catalogue {
  if (edits.length === 0) return catalogue;
  const rest = new Map(edits.map((edit) => [partKey(edit.partNumber), edit]));
  const problems: Problem[] = [...catalogue.problems];
  const onFile = catalogue.fasteners.flatMap((part) => {
    const edit = rest.get(partKey(part.partNumber));
    rest.delete(partKey(part.partNumber));
    return edit ? makePart(catalogue, part, edit, problems) : part;
  });
  const added = [...rest.values()].flatMap((edit) => makePart(catalogue, null, edit, problems));
  const name = `${catalogue.name} (${edits.length === 1 ? '1 part' : `${edits.length} parts`} edited)`;
  return { ...catalogue, name, fasteners: [...onFile, ...added], problems, edits };
}

/** None where it was taken out. */
function makePart(
  { name, demo }: Catalogue,
  onFile: Fastener | null,
  { partNumber, cells, was }: PartEdit,
  problems: Problem[],
): readonly Fastener[] {
  if (cells === null) return [];
  const texts = { ...(onFile && showPart(onFile)), ...cells, partNumber: onFile?.partNumber ?? partNumber };
  const { part, faults } = readCells(demo ? withDemoNote(texts) : texts);
  const row = onFile?.origin.row ?? 0;
  problems.push(...faults.map(({ field, text }) => ({ row, column: field, text })));
  return [{ ...part, origin: { catalogue: `${name} (edited)`, row, edited: was ?? {} } }];
}

/** Invented data say in every row that they are, also when the file goes under another name. */
function withDemoNote(cells: PartCells): PartCells {
  const { note = '' } = cells;
  if (isInvented(note)) return cells;
  return { ...cells, note: note === '' ? DEMO_NOTE : `${DEMO_NOTE}; ${note}` };
}
