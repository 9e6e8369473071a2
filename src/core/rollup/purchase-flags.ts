import type { PartIndex } from '../catalogue/find-part.ts';
import type { Fastener } from '../model/fastener.ts';

/** What to look at before a part is ordered: not stocked, stock without a number, a successor. */
export function showFlags({ stocked }: Fastener, successor: string | null, parts: PartIndex): readonly string[] {
  return [...stockFlags(stocked), ...successorFlags(successor, parts)];
}

function stockFlags(stocked: Fastener['stocked']): readonly string[] {
  if (!stocked) return ['Stock not said: none taken off.'];
  if (!stocked.yes) return ['Not stocked.'];
  return stocked.quantity === null ? ['Stocked, without a number: none taken off.'] : [];
}

function successorFlags(successor: string | null, parts: PartIndex): readonly string[] {
  if (successor === null) return [];
  const where = parts.find(successor) ? '' : ' (not on file)';
  return [`Superseded by ${successor}${where}: list that part and check it on these rows before ordering.`];
}
