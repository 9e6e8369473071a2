import { rememberSome } from '../caching/remember.ts';
import type { FinishKind } from '../model/facts.ts';
import { isDeniedBefore } from './facts-negation.ts';
import { FINISH_WORDS, PLAIN } from './finish-words.ts';

/** A finish named in a text. */
export interface NamedFinish {
  readonly kind: FinishKind;
  readonly start: number;
  readonly end: number;
}

/** Every finish that a text names, in the order of the text; those that it denies ("unpainted", "no plating") are left out. */
export const findFinishes: (text: string) => readonly NamedFinish[] = rememberSome(readFinishWords);

function readFinishWords(text: string): readonly NamedFinish[] {
  if (!/\p{L}/u.test(text)) return [];
  let rest = text;
  const found = FINISH_WORDS.flatMap(({ kind, pattern }) => {
    const matches = [...rest.matchAll(pattern)];
    // As many blanks, so that places in the text stay what they are.
    if (matches.length > 0) rest = rest.replace(pattern, (all) => ' '.repeat(all.length));
    return matches.flatMap(({ index, 0: all }) => (kind ? [{ kind, start: index, end: index + all.length }] : []));
  });
  return found.filter((finish) => !isWithout(text, finish)).sort((a, b) => a.start - b.start);
}

/** The one finish of a text that is about nothing else: a finish cell, a catalogue's word. Null: none or several. */
export function readFinish(text: string): FinishKind | null {
  const found = findFinishes(text);
  return found.length === 0 && PLAIN.test(text.trim()) ? 'plain' : oneFinish(found.map(({ kind }) => kind));
}

/** What stands for several finishes: the outermost that counts for holding; null where that is not clear. */
export function oneFinish(kinds: readonly FinishKind[]): FinishKind | null {
  const [first, ...more] = [...new Set(kinds)].filter((kind, _, all) => !isPartOf(kind, all));
  return more.length === 0 ? (first ?? null) : null;
}

/** Treatments that belong to another finish beside them. */
const PART_OF: Readonly<Partial<Record<FinishKind, readonly FinishKind[]>>> = {
  passivated: ['zinc-electroplate', 'zinc-flake', 'cadmium-electroplate', 'hot-dip-zinc'],
  'chromium-plate': ['zinc-electroplate', 'cadmium-electroplate'],
  'chem-film': ['zinc-electroplate', 'cadmium-electroplate', 'powder-coat', 'paint'],
  phosphate: ['powder-coat', 'paint'],
  anodised: ['hard-anodised'],
  paint: ['powder-coat'],
  plating: ['zinc-electroplate', 'cadmium-electroplate', 'nickel-plate', 'tin-plate', 'chromium-plate'],
};

/** A plating called by no metal is the one that another text names. */
export function namePlating(kind: FinishKind, others: readonly FinishKind[]): FinishKind {
  return kind === 'plating' ? (oneFinish(others.filter((other) => isPartOf(kind, [other]))) ?? kind) : kind;
}

function isPartOf(kind: FinishKind, all: readonly FinishKind[]): boolean {
  return PART_OF[kind]?.some((whole) => all.includes(whole)) ?? false;
}

function isWithout(text: string, { start, end }: NamedFinish): boolean {
  const isFree = /^[- ](?:free|less|remov(?:ed|er|al)|not (?:allowed|permitted|required))\b/i.test(text.slice(end));
  return isFree || isDeniedBefore(text.slice(0, start));
}
