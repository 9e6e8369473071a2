import type { PartConflict } from '../catalogue/find-part.ts';
import type { Notice } from '../model/raw.ts';

const MOST = 8;

/** One sentence for each part that two catalogues describe differently, and one for those that are too many to name. */
export function conflictNotices(conflicts: readonly PartConflict[]): readonly Notice[] {
  const named = conflicts.slice(0, MOST).map(({ partNumber, catalogues: [believed, other], fields }) => ({
    text: `${partNumber} is in “${believed}” and in “${other}” with different data (${fields.join(', ')}): “${believed}” counts, because it ranks higher.`,
  }));
  const more = conflicts.length - named.length;
  return more > 0 ? [...named, { text: `${more} more parts differ between the catalogues.` }] : named;
}
