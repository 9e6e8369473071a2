import { parseFastenerMaterial } from '../catalogue/fastener-material.ts';
import { type DescribedFastener, type FinishKind, NOT_DESCRIBED } from '../model/facts.ts';
import type { FastenerKind } from '../model/fastener.ts';
import type { LengthUnit } from '../model/list.ts';
import { parseThreadAndLength } from '../units/thread.ts';
import { findKinds } from './description-kind.ts';
import { findMaterials } from './description-material.ts';
import { findLength, findOneThread, findSheetMin, readLengthCell } from './description-size.ts';
import { oneFinish } from './facts-finish.ts';
import { readFinishes } from './facts-owner.ts';
import { plainCell } from './size-words.ts';

/** Cells that describe the fastener, as listed. The part number is none: its scheme is its maker's, and is not read. */
export interface DescriptionCells {
  readonly description: string;
  readonly thread: string;
  readonly length: string;
  readonly finish: string;
  readonly fastenerMaterial: string;
  /** Unit of the length column; null or left out while nothing settles it. */
  readonly lengthUnit?: LengthUnit | null;
}

/**
 * What a row says the fastener is, for comparing with the catalogued part. A cell of its own is stronger than the description. Only what
 * is written: what could be two things is null, a vague material all that it could be.
 */
export function describe(cells: DescriptionCells): DescribedFastener {
  const { description, fastenerMaterial } = cells;
  if (!/[\p{L}\d]/u.test(description + cells.thread + cells.length + cells.finish + fastenerMaterial))
    return NOT_DESCRIBED;
  const kinds = findKinds(description);
  const inCell = parseThreadAndLength(cells.thread);
  const inText = findOneThread(description);
  const thread = inCell ?? inText;
  const own = parseFastenerMaterial(fastenerMaterial).candidates;
  return {
    kind: kinds.length === 1 ? (kinds[0] ?? null) : null,
    thread: thread?.thread.name ?? null,
    lengthMm: hasNoLength(kinds)
      ? null
      : (readLengthCell(cells.length, cells.lengthUnit ?? null, thread?.thread ?? null) ??
        findLength(cells.thread, inCell, false) ??
        findLength(description, inText, kinds.includes('clinch pin'))),
    materials: own.length > 0 ? own : findMaterials(plainCell(description)),
    finish: ownFinish(cells.finish, 'finish') ?? ownFinish(description, 'description'),
    sheetMinMm: findSheetMin(description),
  };
}

/** What stands behind a nut's thread is the length of its screw. */
function hasNoLength(kinds: readonly FastenerKind[]): boolean {
  return kinds.length > 0 && kinds.every((kind) => kind === 'clinch nut' || kind === 'floating nut');
}

function ownFinish(text: string, cell: 'finish' | 'description'): FinishKind | null {
  return oneFinish(readFinishes(plainCell(text), cell).fastener);
}
