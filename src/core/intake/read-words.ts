import { rememberTexts } from '../caching/remember.ts';
import type { DescribedFastener, WorkFacts } from '../model/facts.ts';
import type { CellFlags } from '../model/list.ts';
import type { MaterialReading } from '../model/sheet.ts';
import { describe } from './description.ts';
import { readFacts } from './facts.ts';
import type { Places } from './pick-cells.ts';

/** Readers for the words of a row: equal words give the same object. */
export interface WordReaders {
  readonly factsOf: (cells: readonly string[], flags: CellFlags, material: MaterialReading) => WorkFacts;
  readonly describedOf: (cells: readonly string[], flags: CellFlags) => DescribedFastener;
}

/** Readers for the rows of one list; they keep what they have read for as long as they live. */
export function createWordReaders(at: Places): WordReaders {
  const loadHeading = at.load.column?.heading ?? '';
  const lengthUnit = at.length.column?.unit ?? null;
  const facts = rememberTexts(
    (finish: string, note: string, description: string, hole: string, load: string, sheetFinish: string) =>
      readFacts({ finish, note, description, hole, load, sheetFinish, loadHeading }),
  );
  const described = rememberTexts(
    (description: string, thread: string, length: string, finish: string, fastenerMaterial: string) =>
      describe({ description, thread, length, finish, fastenerMaterial, lengthUnit }),
  );
  return {
    factsOf: (cells, flags, material) =>
      facts(
        at.finish.text(cells),
        at.note.text(cells),
        at.description.text(cells),
        wordsOf(at.hole.text(cells)),
        at.load.isSpoiled(flags) ? '' : at.load.text(cells),
        material.finish ?? '',
      ),
    describedOf: (cells, flags) =>
      described(
        at.description.text(cells),
        at.thread.isSpoiled(flags) ? '' : at.thread.text(cells),
        at.length.isSpoiled(flags) ? '' : at.length.text(cells),
        at.finish.text(cells),
        at.fastenerMaterial.text(cells),
      ),
  };
}

/** A bare size says nothing of the work, and sizes differ from row to row. */
function wordsOf(hole: string): string {
  return /^[\d.,]*$/.test(hole) ? '' : hole;
}
