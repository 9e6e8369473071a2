import type { Fastener } from '../model/fastener.ts';
import type { RawRow } from '../model/raw.ts';
import { shorten } from '../say/shorten.ts';
import {
  type CellResult,
  isBlank,
  readCount,
  readDays,
  readHardness,
  readKind,
  readLoad,
  readPrice,
  readStock,
  readThread,
  readYesNo,
} from './catalogue-cells.ts';
import type { CatalogueColumn } from './catalogue-columns.ts';
import { CATALOGUE_FIELDS, type CatalogueField } from './catalogue-fields.ts';
import { readHole, readLength } from './catalogue-lengths.ts';
import { parseFastenerMaterial } from './fastener-material.ts';

/** Something in a supplier's table that cannot be used. */
export interface CatalogueProblem {
  readonly row: number;
  /** Heading of the column. */
  readonly column: string;
  readonly text: string;
}

/** The fields of one row while they are collected. */
type Draft = { -readonly [Key in keyof Fastener]: Fastener[Key] };

/** The apostrophe that a CSV for spreadsheets has before what begins like a formula. */
const MARK = /(^\s*|[\r\n;\t])'(?=[\s\p{Cf}"]*[=+\-@＝＋－＠﹦﹢﹣﹫])/gu;

/** Characters of a cell that a sentence repeats. */
const LONGEST_QUOTE = 80;

/** One line, without that apostrophe: sentences quote what a cell says. */
function tidy(text: string): string {
  return text
    .replace(MARK, '$1')
    .replace(/\s*[\r\n]+\s*/g, ' ')
    .trim();
}

/** Reads one row of a supplier's table. What cannot be read stays null and is reported; the rest of the row counts. */
export function readRow(
  row: RawRow,
  columns: readonly CatalogueColumn[],
  catalogue: string,
): { fastener: Fastener; problems: readonly CatalogueProblem[] } {
  const draft = emptyDraft(row.number, catalogue);
  const problems: CatalogueProblem[] = [];
  for (const column of byReadingOrder(columns)) {
    const text = tidy(row.cells[column.index] ?? '');
    const problem = spoiledBy(row, column) ?? readField(draft, column, text);
    if (problem)
      problems.push({
        row: row.number,
        column: column.heading,
        text: `“${shorten(text, LONGEST_QUOTE)}” ${problem}; the cell was left out.`,
      });
  }
  return { fastener: draft, problems };
}

/** The material is read first: it tells what a Brinell number means. A hole's own tolerance gives way to columns of tolerances. */
function byReadingOrder(columns: readonly CatalogueColumn[]): readonly CatalogueColumn[] {
  const early: readonly CatalogueField[] = ['material', 'holeMm', 'currency'];
  const place = ({ field }: CatalogueColumn) => (early.includes(field) ? 0 : 1);
  return [...columns].sort((a, b) => place(a) - place(b));
}

const SPOILED: Readonly<Record<string, string>> = {
  date: 'is a date in the file',
  error: 'is a spreadsheet error',
  'not-calculated': 'is a formula that was never calculated',
};

function spoiledBy(row: RawRow, { index, field }: CatalogueColumn): string | null {
  return field === 'sourceDate' ? null : (SPOILED[row.flags?.[index] ?? ''] ?? null);
}

/** Puts a cell into the draft; gives back what is wrong with it, if anything. */
function readField(draft: Draft, column: CatalogueColumn, text: string): string | null {
  const { field } = column;
  if (field === 'material') return take(readMaterial(text), (value) => (draft.material = value));
  if (field === 'holeMm')
    return take(readHole(text, column), ({ mm, plusMm, minusMm }) =>
      Object.assign(draft, { holeMm: mm, holePlusMm: plusMm, holeMinusMm: minusMm }),
    );
  if (field === 'unitPrice') {
    return take(readPrice(text), ({ price, currency }) =>
      Object.assign(draft, { unitPrice: price, currency: draft.currency ?? currency }),
    );
  }
  const isKn = field === 'forceSteelKn' || field === 'forceAluminiumKn';
  return take(readPlain(text, column, draft), (value) =>
    Object.assign(draft, { [field]: isKn ? Number((Number(value) / 1000).toPrecision(9)) : value }),
  );
}

function take<T>(result: CellResult<T>, use: (value: T) => unknown): string | null {
  if ('problem' in result) return result.problem;
  if (result.value !== null) use(result.value);
  return null;
}

function readPlain(text: string, column: CatalogueColumn, { material }: Draft): CellResult<unknown> {
  switch (CATALOGUE_FIELDS[column.field]) {
    case 'kind':
      return readKind(text, column);
    case 'thread':
      return readThread(text);
    case 'hardness':
      return readHardness(text, column, material);
    case 'length':
      return readLength(text, column);
    case 'force':
      return readLoad(text, column, false);
    case 'torque':
      return readLoad(text, column, true);
    case 'yes-no':
      return readYesNo(text);
    case 'stock':
      return readStock(text);
    case 'count':
      return readCount(text);
    case 'days':
      return readDays(text, column);
    default:
      return { value: isBlank(text) ? null : text };
  }
}

/** The words are kept even where they name nothing known, so that a finding can quote them. */
function readMaterial(text: string): CellResult<Fastener['material']> {
  return { value: parseFastenerMaterial(isBlank(text) ? '' : text) };
}

function emptyDraft(row: number, catalogue: string): Draft {
  const nothing = Object.fromEntries(Object.keys(CATALOGUE_FIELDS).map((field) => [field, null]));
  return {
    ...(nothing as unknown as Draft),
    partNumber: '',
    material: { text: '', candidates: [] },
    origin: { catalogue, row },
  };
}
