import { isAtLeast } from '../../calc/closeness.ts';
import type { Fastener } from '../../model/fastener.ts';
import type { Judgement } from '../../model/finding.ts';
import { judgeTogether } from '../each-candidate.ts';
import type { Rule, Sheet, Subject } from '../rule.ts';
import { quoted } from '../texts.ts';
import { unreadLength } from '../unread-length.ts';
import { type BendBands, bendBands } from './bend-bands.ts';
import { BEND_EXAMPLES, BEND_TEXTS } from './bend-texts.ts';

const CITES = ['bend-clearance', 'practice-bend-room'];

/** Is the hole clear of a bend? Asked only where the list gives the distance; sources disagree, so bands are told, not one number. */
export const bend: Rule = {
  id: 'clinch/bend',
  title: 'Bend',
  summary: 'The hole and the flange of the part are clear of the nearest bend.',
  reason:
    'Near a bend the hole is drawn oval and the sheet is no longer flat: the flange cannot seat and the groove does not fill.',
  formula:
    'clear = distance to the outside face - hole / 2 - (inside radius + t), in sheet thicknesses t from the bend tangent.',
  reads: ['partNumber', 'bend', 'hole', 'thickness', 'material'],
  needs: CITES,
  texts: BEND_TEXTS,
  examples: BEND_EXAMPLES,
  check({ line, fastener, sheets, shop }: Subject): Judgement | null {
    const { how, mm: bendMm } = line.bend;
    if (!fastener || how === 'blank') return null;
    if (how !== 'size' || bendMm === null) return unreadLength(line.bend, CITES);
    const holeMm = (line.hole.how === 'size' ? line.hole.mm : null) ?? fastener.holeMm;
    if (holeMm === null)
      return { outcome: 'unknown', says: 'no-hole', words: { partNumber: fastener.partNumber }, cites: CITES };
    if (sheets.some(({ thicknessMm }) => thicknessMm === null)) {
      return { outcome: 'unknown', says: 'no-thickness', words: { listed: quoted(line.thickness.text) }, cites: CITES };
    }
    const judged = thickestFirst(sheets).map(({ entry, thicknessMm }) => {
      const bands = bendBands(holeMm, thicknessMm ?? Number.NaN, fastener, shop.bendMultiplier);
      return {
        name: entry?.name ?? 'this sheet',
        judgement: judgeBend(bendMm, thicknessMm ?? Number.NaN, bands, fastener),
      };
    });
    return judgeTogether(judged);
  },
};

/** The thicker the sheet, the farther the tangent: of equal outcomes the thickest speaks. */
function thickestFirst(sheets: readonly Sheet[]): readonly Sheet[] {
  return [...sheets].sort((a, b) => (b.thicknessMm ?? 0) - (a.thicknessMm ?? 0));
}

function judgeBend(
  bendMm: number,
  thicknessMm: number,
  bands: BendBands,
  { partNumber, flangeMm }: Fastener,
): Judgement {
  const { tangentMm, holeClearMm, flangeClearMm, leastMm, mostMm } = bands;
  const flangeIsClear = flangeClearMm !== null && isAtLeast(bendMm, flangeClearMm);
  const bendMinMm = Math.max(holeClearMm, flangeMm === null ? 0 : (flangeClearMm ?? 0));
  const values = { bendMm, bendMinMm, thicknessMm, bendLeastMm: leastMm, bendMostMm: mostMm };
  const words = {
    partNumber,
    room: flangeMm === null ? 'the edge distance, as no flange is on file,' : 'half the flange',
  };
  const judged = { values, words, cites: CITES };
  if (!isAtLeast(bendMm, tangentMm)) {
    return { ...judged, outcome: 'fails', says: 'inside', values: { ...values, insideMm: tangentMm - bendMm } };
  }
  if (!isAtLeast(bendMm, holeClearMm)) return { ...judged, outcome: 'marginal', says: 'near' };
  if (!flangeIsClear && flangeMm === null) return { ...judged, outcome: 'unknown', says: 'no-flange' };
  if (!flangeIsClear) return { ...judged, outcome: 'marginal', says: 'flange' };
  return { ...judged, outcome: 'holds', says: isAtLeast(bendMm, mostMm) ? 'clear' : 'between' };
}
