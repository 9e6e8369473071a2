import { tempersByAlloy } from '../reference/aliases/tempers.ts';
import { findAlloy } from '../reference/alloys/index.ts';
import { type MaterialGroup, untempered } from './material-groups.ts';

/** A bare fraction beside stainless ("301 1/4") could be a thickness or a temper: the hard sheet of that alloy counts too. */
export function fractionTempers(
  groups: readonly MaterialGroup[],
  fraction: string | null,
): { readonly ids: readonly string[]; readonly remarks: readonly string[] } {
  const open = fraction === null ? [] : groups.filter(isOpenStainless);
  if (open.length === 0) return { ids: [], remarks: [] };
  const alloys = open.flatMap((group) => (group.kind === 'alloy' ? untempered(group.alloy) : []));
  const ids = alloys.flatMap((id) => tempersByAlloy[findAlloy(id)?.alloy ?? '']?.[`${fraction}H`] ?? []);
  return { ids, remarks: [`“${fraction}” could be a thickness or a temper such as ${fraction} hard`] };
}

function isOpenStainless(group: MaterialGroup): boolean {
  if (group.kind !== 'alloy' || group.tempers.length > 0) return false;
  return untempered(group.alloy).some((id) => findAlloy(id)?.family === 'stainless-austenitic');
}
