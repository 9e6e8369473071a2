import { rankParts } from '../core/catalogue/find-part.ts';
import { partKey } from '../core/catalogue/part-key.ts';
import { type Catalogue, FASTENER_KINDS, type Fastener } from '../core/model/fastener.ts';

/** A part of a loaded catalogue. */
export interface ListedPart {
  readonly part: Fastener;
  /** Position of its catalogue in the order of rank. */
  readonly position: number;
  /** Name of the higher-ranked catalogue that the same part is taken from; null: this one counts. */
  readonly takenFrom: string | null;
}

/** What is sought; '' leaves a choice open. */
export interface PartQuery {
  /** Words, each of which has to stand in part number, kind, thread, material, finish, supplier or note. */
  readonly text: string;
  readonly kind: string;
  readonly thread: string;
  readonly stock: '' | 'stocked' | 'not stocked' | 'not said';
  readonly isEdited: boolean;
}

export const ANY_PART: PartQuery = { text: '', kind: '', thread: '', stock: '', isEdited: false };

/** Every part of every catalogue, catalogue by catalogue in their order of rank. */
export function listParts(catalogues: readonly Catalogue[]): readonly ListedPart[] {
  const { byKey } = rankParts(catalogues);
  return catalogues.flatMap(({ fasteners }, position) =>
    fasteners.map((part) => {
      const first = byKey.get(partKey(part.partNumber));
      return { part, position, takenFrom: first && first !== part ? first.origin.catalogue : null };
    }),
  );
}

/** Parts that answer to all of a query, in the order in which they were. */
export function findParts(parts: readonly ListedPart[], query: PartQuery): readonly ListedPart[] {
  const words = fold(query.text).split(/\s+/).filter(Boolean);
  return parts.filter(({ part }) => passes(part, query) && hasWords(part, words));
}

/** Kinds and threads that there are to choose from, as a person would look for them. */
export function choicesOf(parts: readonly ListedPart[]): {
  readonly kinds: readonly string[];
  readonly threads: readonly string[];
} {
  const kinds = new Set(parts.map(({ part }) => part.kind));
  const threads = new Set(parts.flatMap(({ part }) => part.thread ?? []));
  return {
    kinds: FASTENER_KINDS.filter((kind) => kinds.has(kind)),
    threads: [...threads].sort((a, b) => a.localeCompare(b, 'en', { numeric: true })),
  };
}

/** Stock in the words of the query. */
export function stockOf({ stocked }: Fastener): Exclude<PartQuery['stock'], ''> {
  if (!stocked) return 'not said';
  return stocked.yes ? 'stocked' : 'not stocked';
}

export function isEdited({ origin }: Fastener): boolean {
  return origin.edited !== undefined;
}

function passes(part: Fastener, { kind, thread, stock, isEdited: wantsEdited }: PartQuery): boolean {
  if (kind !== '' && part.kind !== kind) return false;
  if (thread !== '' && part.thread !== thread) return false;
  return (stock === '' || stockOf(part) === stock) && (!wantsEdited || isEdited(part));
}

function hasWords(part: Fastener, words: readonly string[]): boolean {
  if (words.length === 0) return true;
  const { partNumber, kind, thread, material, finish, supplier, note } = part;
  const all = fold(
    [partNumber, kind, thread, material.text, finish, supplier, note].map((text) => text ?? '').join(' '),
  );
  return words.every((word) => all.includes(word));
}

function fold(text: string): string {
  return text
    .normalize('NFKC')
    .toLowerCase()
    .replace(/[‐-―−]/g, '-');
}
