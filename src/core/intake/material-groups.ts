import type { SheetFamily } from '../model/sheet.ts';
import type { Designation } from '../reference/aliases/designation.ts';
import { type MetalWord, metalWords, PLAIN_STEEL_ALLOYS } from '../reference/aliases/metal-words.ts';
import { tempersByAlloy } from '../reference/aliases/tempers.ts';
import { alloyTables, findAlloy } from '../reference/alloys/index.ts';
import type { MaterialToken } from './material-tokens.ts';

/** One alloy or metal of a cell with the tempers that are written for it. */
export type MaterialGroup = { readonly tempers: readonly string[] } & (
  | { readonly kind: 'alloy'; readonly alloy: Designation }
  | { readonly kind: 'metal'; readonly metal: MetalWord }
);

/** Entry ids of a group, or the temper in which the alloy is not listed. */
export type GroupEntries = { readonly ids: readonly string[] } | { readonly unlistedTemper: string };

const idsByAlloy: ReadonlyMap<string, readonly string[]> = groupIds();

/** The alloys and metals of a cell. A temper belongs to the alloys before it back to the temper before; one that stands first belongs to all. */
export function materialGroups(tokens: readonly MaterialToken[]): readonly MaterialGroup[] {
  const found: { token: MaterialToken; tempers: string[] }[] = [];
  const first: string[] = [];
  let open: { tempers: string[] }[] = [];
  let closed = false;
  for (const token of tokens) {
    if (token.kind === 'temper') {
      if (open.length === 0) first.push(token.code);
      for (const group of open) group.tempers.push(token.code);
      closed = true;
    }
    if (token.kind !== 'alloy' && token.kind !== 'metal') continue;
    const group = { token, tempers: [] };
    found.push(group);
    open = closed ? [group] : [...open, group];
    closed = false;
  }
  return settled(found.flatMap(({ token, tempers }) => asGroup(token, [...first, ...tempers])));
}

function asGroup(token: MaterialToken, tempers: readonly string[]): MaterialGroup[] {
  if (token.kind === 'alloy') return [{ kind: 'alloy', alloy: token.alloy, tempers }];
  return token.kind === 'metal' ? [{ kind: 'metal', metal: token.metal, tempers }] : [];
}

/** Without what a narrower word beside it has settled: STEEL beside STAINLESS, STAINLESS beside 304. The tempers move along. */
function settled(groups: readonly MaterialGroup[]): readonly MaterialGroup[] {
  const alone = groups.filter((group) => group.kind === 'metal' || !group.alloy.needsMetal || isNamed(group, groups));
  const kept = alone.filter((group) => !alone.some((other) => other !== group && isSettledBy(group, other, alone)));
  const dropped = alone.filter((group) => !kept.includes(group)).flatMap(({ tempers }) => tempers);
  return kept.map((group) => (group.tempers.length > 0 ? group : { ...group, tempers: [...new Set(dropped)] }));
}

function isNamed(group: MaterialGroup, groups: readonly MaterialGroup[]): boolean {
  const families = familiesOf(group);
  return groups.some((other) => other !== group && other.kind === 'metal' && covers(familiesOf(other), families));
}

function isSettledBy(group: MaterialGroup, other: MaterialGroup, all: readonly MaterialGroup[]): boolean {
  if (isRolledWord(group) && saysMore(other)) return true;
  if (isRolledWord(other) && saysMore(group)) return false;
  if (group.kind === 'alloy') return other.kind === 'metal' && isGalvanizing(other) && isPlainSteel(group);
  if (isGalvanizing(group) && other.kind === 'alloy' && familiesOf(other).includes('carbon-steel')) {
    return !isPlainSteel(other);
  }
  if (!covers(familiesOf(group), familiesOf(other))) return false;
  const wider = familiesOf(group).length > familiesOf(other).length;
  return other.kind === 'alloy' || wider || (group.metal === other.metal && all.indexOf(other) < all.indexOf(group));
}

const isRolledWord = (group: MaterialGroup): boolean => group.kind === 'alloy' && group.alloy.rolled === true;

/** A named alloy or another metal, SS included: beside it "cold rolled" is not the plain steel of that name. */
function saysMore(group: MaterialGroup): boolean {
  if (group.kind === 'alloy') return !isRolledWord(group);
  return !familiesOf(group).includes('carbon-steel') || group.metal.words.includes('SS');
}

const isGalvanizing = (group: MaterialGroup): boolean =>
  familiesOf(group).every((family) => family === 'galvanized-steel');

function isPlainSteel(group: MaterialGroup): boolean {
  if (group.kind === 'metal') return familiesOf(group).includes('carbon-steel');
  return untempered(group.alloy).every((id) => PLAIN_STEEL_ALLOYS.includes(findAlloy(id)?.alloy ?? ''));
}

function familiesOf(group: MaterialGroup): readonly SheetFamily[] {
  if (group.kind === 'metal') return group.metal.families;
  return [...new Set(untempered(group.alloy).flatMap((id) => findAlloy(id)?.family ?? []))];
}

function covers(wide: readonly SheetFamily[], narrow: readonly SheetFamily[]): boolean {
  return narrow.every((family) => wide.includes(family));
}

/** Entry ids of a name without temper. */
export function untempered({ entries, alloy }: Designation): readonly string[] {
  return entries ?? idsByAlloy.get(alloy ?? '') ?? [];
}

/** Entry ids of a group in its tempers, or in the condition in which it is sold. */
export function groupEntries(group: MaterialGroup): GroupEntries {
  const ids = group.kind === 'alloy' ? untempered(group.alloy) : group.metal.candidates;
  if (group.tempers.length === 0 || (group.kind === 'alloy' && group.alloy.withTemper)) return { ids };
  const alloys = group.kind === 'alloy' ? alloysOf(ids) : alloysOfFamilies(group.metal.families);
  const found: string[] = [];
  for (const code of group.tempers) {
    const inTemper = alloys.flatMap((alloy) => tempersByAlloy[alloy]?.[code] ?? []);
    if (inTemper.length === 0 && !isAsSold(code, ids)) return { unlistedTemper: code };
    found.push(...(inTemper.length === 0 ? ids : inTemper));
  }
  return { ids: [...new Set(found)] };
}

/** Annealed and skin-passed steel is the sheet that is sold, or softer. */
function isAsSold(code: string, ids: readonly string[]): boolean {
  const steel = ids.every((id) => /steel|stainless/.test(findAlloy(id)?.family ?? ''));
  return steel && (code === 'O' || code === 'SKIN');
}

function alloysOf(ids: readonly string[]): readonly string[] {
  return [...new Set(ids.flatMap((id) => findAlloy(id)?.alloy ?? []))];
}

function alloysOfFamilies(families: readonly SheetFamily[]): readonly string[] {
  const rows = alloyTables.flatMap((table) => table.rows).filter(({ family }) => families.includes(family));
  return [...new Set(rows.map(({ alloy }) => alloy))];
}

function groupIds(): ReadonlyMap<string, readonly string[]> {
  const groups = new Map<string, string[]>();
  for (const { id, alloy } of alloyTables.flatMap(({ rows }) => rows))
    groups.set(alloy, [...(groups.get(alloy) ?? []), id]);
  return groups;
}

/** What a coating designation means where no sheet is named, or only plain steel: "G90", "CS G90". */
export const GALVANIZED_WORD: MetalWord = findGalvanizedWord();

function findGalvanizedWord(): MetalWord {
  const word = metalWords.find(({ words }) => words.includes('GALV'));
  if (!word) throw new Error('The metal words lack GALV');
  return word;
}
