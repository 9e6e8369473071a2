import type { Notice } from '../model/raw.ts';
import { showRows } from '../say/show-rows.ts';
import type { Extended } from './extend-quantity.ts';
import type { Tree } from './tree.ts';

/** Says which rows have no place in the tree, and which have no quantity for the whole product. */
export function noticeTree(sheet: string, { lost, because, circular }: Tree, { spoiled }: Extended): readonly Notice[] {
  const notices: Notice[] = [];
  const add = (rows: readonly number[], text: string) => {
    if (rows.length > 0) notices.push({ sheet, ...(rows.length === 1 && { row: rows[0] as number }), text });
  };
  add(
    circular,
    `${showRows(circular)}: the assemblies above go round in a circle, so this counts as top level. Correct the parents.`,
  );
  add(
    lost,
    `${showRows(lost)}: counted as top level, because such rows ${because}. Correct them, or check the quantities.`,
  );
  add(
    spoiled,
    `${showRows(spoiled)}: no quantity for the whole product, because a quantity it is multiplied with is missing or no whole number.`,
  );
  return notices;
}
