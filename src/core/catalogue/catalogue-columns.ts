import { columnUnit } from '../intake/column-unit.ts';
import { foldText } from '../intake/heading-text.ts';
import type { SizeRole } from '../intake/size-spans.ts';
import { threadSystem } from '../intake/thread-words.ts';
import type { LengthUnit } from '../model/list.ts';
import { CATALOGUE_FIELDS, type CatalogueField } from './catalogue-fields.ts';
import { findField } from './catalogue-headings.ts';
import { findForceUnit, findTorqueUnit } from './catalogue-units.ts';

/** One column of a supplier's table. */
export interface CatalogueColumn {
  readonly index: number;
  readonly heading: string;
  readonly field: CatalogueField;
  /** Unit of bare lengths; null: nothing settles it. */
  readonly unit: LengthUnit | null;
  /** What a bare force or torque is multiplied by to give N or N·m; null: the heading does not say. */
  readonly factor: number | null;
  /** Read as well as it goes and without complaint: a description that may or may not tell the kind. */
  readonly lenient: boolean;
}

/** What each column holds, one column a field; columns of no use are left out. A mapping by hand (0-based column) stands above. */
export function findCatalogueColumns(
  headings: readonly string[],
  texts: readonly (readonly string[])[],
  mapping: Readonly<Record<number, CatalogueField>> = {},
): readonly CatalogueColumn[] {
  const claims = headings.flatMap((heading, index) => claim(heading, index, texts[index] ?? [], mapping[index]));
  const ranked = [...claims].sort((a, b) => b.rank - a.rank || a.index - b.index);
  const chosen = ranked.filter((one) => ranked.find(({ field }) => field === one.field) === one);
  return withUnits(
    chosen.sort((a, b) => a.index - b.index),
    texts,
  );
}

interface Claim {
  readonly index: number;
  readonly heading: string;
  readonly field: CatalogueField;
  readonly unit: LengthUnit | null;
  readonly rank: number;
}

function claim(
  heading: string,
  index: number,
  texts: readonly string[],
  chosen: CatalogueField | undefined,
): readonly Claim[] {
  const found = findField(heading);
  const field = chosen ?? found?.role;
  if (!field) return [];
  const isEmpty = texts.every((text) => text.trim() === '');
  const rank = chosen ? 4 : rankOf(field, found?.sure ?? false, heading) - (isEmpty ? 3 : 0);
  return [{ index, heading, field, unit: found?.unit ?? null, rank }];
}

/** "Fastener Matl" goes before "Material", and a sure heading before a doubtful one. */
function rankOf(field: CatalogueField, sure: boolean, heading: string): number {
  const isSheets = field === 'material' && /sheet|panel|base/i.test(heading);
  const isFasteners = field === 'material' && /fast|nut|stud|body|insert/i.test(heading);
  return (sure ? 2 : 1) + (isFasteners ? 1 : 0) - (isSheets ? 1 : 0);
}

/** Columns whose numbers tell their unit by their size. */
const SIZE_ROLES: Partial<Record<CatalogueField, SizeRole>> = {
  lengthMm: 'length',
  sheetMinMm: 'thickness',
  sheetMaxMm: 'thickness',
  shankMm: 'thickness',
  holeMm: 'hole',
  edgeMm: 'edge',
  spacingMm: 'spacing',
  flangeMm: 'hole',
  heightMm: 'length',
};

function withUnits(claims: readonly Claim[], texts: readonly (readonly string[])[]): readonly CatalogueColumn[] {
  const units = claims.map((one) => ownUnit(one, texts[one.index] ?? []));
  const settled = new Set(units.filter((unit) => unit !== null));
  const [only] = settled;
  const shared =
    settled.size === 1 && only
      ? only
      : threadSystem(claims.flatMap(({ field, index }) => (field === 'thread' ? (texts[index] ?? []) : [])));
  return claims.map((one, at) => ({
    index: one.index,
    heading: one.heading,
    field: one.field,
    unit: CATALOGUE_FIELDS[one.field] === 'length' ? (units[at] ?? shared) : null,
    factor: factorOf(one),
    lenient: one.field === 'kind' && findField(one.heading)?.sure === false,
  }));
}

function ownUnit({ field, heading, unit }: Claim, texts: readonly string[]): LengthUnit | null {
  if (unit) return unit;
  const role = SIZE_ROLES[field];
  return role ? columnUnit(heading, texts, role).unit : null;
}

/** Our own headings carry their unit in the name: `forceSteelKn`, `pushOutSteelN`. */
function factorOf({ field, heading }: Claim): number | null {
  const isOwn = foldText(heading).replace(/[\s_-]/g, '') === field.toLowerCase();
  if (CATALOGUE_FIELDS[field] === 'torque') return isOwn ? 1 : findTorqueUnit(heading);
  if (CATALOGUE_FIELDS[field] !== 'force') return null;
  if (isOwn) return field.endsWith('Kn') ? 1000 : 1;
  return findForceUnit(heading);
}
