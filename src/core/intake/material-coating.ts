import { PLAIN_STEEL_ALLOYS } from '../reference/aliases/metal-words.ts';
import { findAlloy } from '../reference/alloys/index.ts';
import { GALVANIZED_WORD, type MaterialGroup, untempered } from './material-groups.ts';
import type { CoatingKind, MaterialToken } from './material-tokens.ts';

type Coating = Extract<MaterialToken, { kind: 'coating' }>;

/** The groups under their coating, or null where no hardness is held for such sheet. */
export function coatedGroups(
  groups: readonly MaterialGroup[],
  coatings: readonly Coating[],
): readonly MaterialGroup[] | null {
  const [coating] = coatings;
  if (!coating) return groups;
  if (groups.length === 0)
    return coating.weightAlone || coating.coating === 'other' ? null : [sheetUnder(coating.coating, groups)];
  if (!groups.every((group) => takesCoating(group, coating.coating)))
    return coating.coating === 'other' ? refuse(groups) : groups;
  return coating.coating === 'other' ? null : [sheetUnder(coating.coating, groups)];
}

/** Zinc with aluminium or magnesium is ordinary on grades that are sold coated only. */
function refuse(groups: readonly MaterialGroup[]): readonly MaterialGroup[] | null {
  return groups.every((group) => familiesOf(group).includes('galvanized-steel')) ? groups : null;
}

/** Plain steel, and words for steel or galvanized sheet, become what the coating says; a named coated or structural grade stays. */
function takesCoating(group: MaterialGroup, coating: CoatingKind): boolean {
  if (group.kind === 'metal') return familiesOf(group).some((family) => /^(carbon|galvanized)-steel$/.test(family));
  const alloys = untempered(group.alloy).map((id) => findAlloy(id)?.alloy ?? '');
  const plain = [...PLAIN_STEEL_ALLOYS, ...(coating === 'zinc-iron' ? ['gi'] : [])];
  return alloys.every((alloy) => plain.includes(alloy));
}

function familiesOf(group: MaterialGroup): readonly string[] {
  return group.kind === 'metal'
    ? group.metal.families
    : untempered(group.alloy).map((id) => findAlloy(id)?.family ?? '');
}

function sheetUnder(coating: Exclude<CoatingKind, 'other'>, groups: readonly MaterialGroup[]): MaterialGroup {
  if (coating === 'zinc') return { kind: 'metal', metal: GALVANIZED_WORD, tempers: [] };
  if (coating === 'zinc-iron') return asAlloy(['ga-cs']);
  const bases = groups.flatMap((group) => (group.kind === 'alloy' ? untempered(group.alloy) : []));
  const european = bases.map((id) => findAlloy(id)?.alloy ?? '').filter((alloy) => /^dc0/.test(alloy));
  if (european.length === 0) return asAlloy(['secc', 'dc01ze']);
  return asAlloy(['dc01ze'], european.includes('dc01') ? undefined : DRAWING);
}

const DRAWING = 'Drawing quality is softer: judged as DC01+ZE';

function asAlloy(entries: readonly string[], remark?: string): MaterialGroup {
  const alloy = { entries, words: [], mark: 'memory' as const, ...(remark === undefined ? {} : { remark }) };
  return { kind: 'alloy', alloy, tempers: [] };
}
