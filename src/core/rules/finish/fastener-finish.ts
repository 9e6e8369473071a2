import { readFinish } from '../../intake/facts-finish.ts';
import type { FinishKind } from '../../model/facts.ts';
import type { Subject } from '../rule.ts';

/** Every finish that the fastener is said to have, by the catalogue and by the row. None: nobody says, or in no words known here. */
export function fastenerFinishes({ line, fastener }: Subject): readonly FinishKind[] {
  const finishes = [readFinish(fastener?.finish ?? ''), line.facts.fastenerFinish];
  return [...new Set(finishes.flatMap((finish) => finish ?? []))];
}
