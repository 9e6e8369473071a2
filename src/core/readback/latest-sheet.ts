import { type OwnSheetKind, ownSheetKind } from '../intake/own-sheets.ts';
import type { RawFile, RawTable } from '../model/raw.ts';

/**
 * The sheet of a kind that the last export of a list has left in a workbook. Each export in place adds its sheets behind the others, its
 * basis last, which names the list's sheet; a basis that names a sheet which is gone may be of any list, since sheets get new names.
 */
export function findLatestSheet({ tables }: RawFile, kind: OwnSheetKind, listSheet: string): RawTable | null {
  const kinds = tables.map(ownSheetKind);
  const names = new Set(tables.map(({ name }) => name));
  const isOfList = (index: number) => {
    const basis = tables[kinds.indexOf('basis', index)];
    const named = basis?.rows.find(({ cells }) => cells[0] === 'Sheet')?.cells[1] ?? '';
    return named === listSheet || !names.has(named);
  };
  return tables.findLast((_, index) => kinds[index] === kind && isOfList(index)) ?? null;
}

/** The cells of each row by the headings of the sheet, so that a column may be moved. Missing ones are ''. */
export function cellsByHeading({ rows }: RawTable): readonly ((heading: string) => string)[] {
  const [header, ...body] = rows;
  const columns = new Map((header?.cells ?? []).map((heading, index) => [heading.trim(), index]));
  return body.map(
    ({ cells }) =>
      (heading) =>
        cells[columns.get(heading) ?? -1]?.trim() ?? '',
  );
}
