import type { Field } from '../model/line.ts';
import type { Rule, RuleCard } from '../rules/rule.ts';

/**
 * What a rule over single rows can look at, as far as one can change without the other: the part (its number as listed, the part on
 * file, parts near it), readings of cells, what the words of the row say of work and service (`facts`), and words about the
 * fastener itself (`words`). Panel, notes as such and row number are no aspect: no rule over single rows reads them.
 */
export const ASPECTS = [
  'part',
  'material',
  'thickness',
  'hole',
  'edge',
  'bend',
  'spacing',
  'facts',
  'words',
  'quantity',
] as const;
export type Aspect = (typeof ASPECTS)[number];

const ASPECTS_OF: Readonly<Record<Field, readonly Aspect[]>> = {
  partNumber: ['part'],
  description: ['facts'],
  quantity: ['quantity'],
  panel: [],
  material: ['material'],
  thickness: ['thickness'],
  hole: ['hole'],
  edge: ['edge'],
  spacing: ['spacing'],
  bend: ['bend'],
  fastenerMaterial: ['words'],
  finish: ['facts'],
  thread: ['words'],
  length: ['words'],
  load: ['facts'],
  note: ['facts'],
};

const OF_WORDS: readonly Aspect[] = ['facts'];

/** What a rule looks at, by the columns that it says it reads. */
export function aspectsOf({ reads, wordsOf = [] }: Pick<RuleCard, 'reads' | 'wordsOf'>): readonly Aspect[] {
  const read = new Set(reads.flatMap((field) => (wordsOf.includes(field) ? OF_WORDS : ASPECTS_OF[field])));
  return ASPECTS.filter((aspect) => read.has(aspect));
}

/** Rules that look at the same: what they say of one row they say of every row that is the same in those aspects. */
export interface RuleGroup {
  readonly aspects: readonly Aspect[];
  readonly rules: readonly Rule[];
}

/** The rules by what they look at. */
export function groupRules(rules: readonly Rule[]): readonly RuleGroup[] {
  const groups = new Map<string, { readonly aspects: readonly Aspect[]; readonly rules: Rule[] }>();
  for (const rule of rules) {
    const aspects = aspectsOf(rule);
    const key = aspects.join();
    const group = groups.get(key);
    if (group) group.rules.push(rule);
    else groups.set(key, { aspects, rules: [rule] });
  }
  return [...groups.values()];
}
