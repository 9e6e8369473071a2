import { isAtLeast, isAtMost } from '../../calc/closeness.ts';
import type { Fastener } from '../../model/fastener.ts';
import type { Judgement } from '../../model/finding.ts';
import type { Line } from '../../model/line.ts';
import type { ShopSettings } from '../../model/shop.ts';
import { isCoatedFirst } from '../finish/finish-build.ts';
import { isMillCoated } from '../finish/mill-coated.ts';
import { type HoleBand, holeBandOf } from '../hole-band.ts';
import type { Rule, Subject } from '../rule.ts';
import { LENGTH_NOT_READ_EXAMPLES, unreadLength } from '../unread-length.ts';
import { callOutUnits, laserTolerance, showCallOut, staysIn } from './hole-band.ts';
import { holeTexts } from './hole-texts.ts';

/** Does the hole keep within the band of the part? */
export const hole: Rule = {
  id: 'clinch/hole',
  title: 'Hole',
  summary: "The hole is within the part's own band.",
  reason: 'A hole too large leaves the groove unfilled; one too small shaves the shank or buckles the sheet.',
  formula: 'hole - minus <= listed hole <= hole + plus, with the tolerance of the catalogue, else +0.08/-0 mm.',
  reads: ['partNumber', 'hole', 'description', 'note', 'finish', 'material'],
  needs: ['practice-hole-band', 'practice-laser-hole', 'iso-9013-class-1'],
  texts: holeTexts,
  examples: [
    { cells: { hole: '5.6 +0.08/-0' }, outcome: 'holds', says: 'within' },
    { cells: { hole: '5.6' }, outcome: 'holds', says: 'by-nominal' },
    { cells: { hole: '5.6' }, shop: { holeProcess: 'laser' }, outcome: 'holds', says: 'by-nominal-laser' },
    { cells: { hole: '5.64' }, shop: { generalHoleToleranceMm: 0.04 }, outcome: 'holds', says: 'within-general' },
    { cells: { hole: '5.6' }, shop: { generalHoleToleranceMm: 0.1 }, outcome: 'marginal', says: 'leaves-general' },
    { cells: { hole: '5.75' }, outcome: 'fails', says: 'over' },
    { cells: { hole: '5.5' }, outcome: 'fails', says: 'under' },
    { cells: { hole: '5.6 ±0.1' }, outcome: 'marginal', says: 'leaves' },
    {
      cells: { hole: '5.8', finish: 'sheet: powder coat 80 um, press after coating' },
      outcome: 'note',
      says: 'before-coating',
    },
    { cells: { hole: '' }, outcome: 'note', says: 'call-out' },
    { cells: { hole: '' }, shop: { silence: 'unknown' }, outcome: 'unknown', says: 'call-out' },
    { cells: { hole: '5.6' }, part: { holeMm: null }, outcome: 'unknown', says: 'no-hole' },
    ...LENGTH_NOT_READ_EXAMPLES('hole', '5.6 in'),
  ],
  check(subject: Subject): Judgement | null {
    const { line, fastener, shop } = subject;
    if (!fastener) return null;
    const { partNumber, holeMm } = fastener;
    const band = holeBandOf(fastener);
    const cites = ['practice-hole-band'];
    if (holeMm === null || band === null) return { outcome: 'unknown', says: 'no-hole', words: { partNumber }, cites };
    const words = {
      callOut: showCallOut(holeMm, band, callOutUnits(line.hole, shop.units)),
      usual: usualBand(fastener),
    };
    const { mm, how } = line.hole;
    if (how === 'blank') return { outcome: shop.silence, says: 'call-out', values: { ...band }, words, cites };
    if (how !== 'size' || mm === null) return unreadLength(line.hole, cites);
    if (isAboveBand(mm, band) && isCoatedFirst(line.facts) && !isMillCoated(subject)) {
      return { outcome: 'note', says: 'before-coating', values: { holeMm: mm, ...band }, cites };
    }
    return { words, cites, ...(judgeNominal(mm, band) ?? judgeTolerance(line, mm, band, shop)) };
  },
};

/** Said where the band is the trade's, because the catalogue gives none. */
function usualBand({ holePlusMm, holeMinusMm }: Fastener): string {
  return holePlusMm === null || holeMinusMm === null ? ' (the usual band: the catalogue gives no tolerance)' : '';
}

function isAboveBand(holeMm: number, { holeHighMm }: HoleBand): boolean {
  return !isAtMost(holeMm, holeHighMm);
}

/** What a nominal outside the band decides, whatever the tolerance. */
function judgeNominal(holeMm: number, band: HoleBand): Judgement | null {
  const { holeLowMm, holeHighMm } = band;
  const values = { holeMm, ...band };
  if (isAboveBand(holeMm, band))
    return { outcome: 'fails', says: 'over', values: { ...values, offMm: holeMm - holeHighMm } };
  if (!isAtLeast(holeMm, holeLowMm))
    return { outcome: 'fails', says: 'under', values: { ...values, offMm: holeLowMm - holeMm } };
  return null;
}

/** The hole's own tolerance counts, else the shop's general one, else nothing is known beyond the nominal. */
function judgeTolerance(
  { hole: { lowMm, highMm }, facts }: Line,
  holeMm: number,
  band: HoleBand,
  shop: ShopSettings,
): Judgement {
  const values = { holeMm, ...band };
  if (lowMm !== null && highMm !== null) {
    if (staysIn(band, lowMm, highMm)) return { outcome: 'holds', says: 'within', values };
    return { outcome: 'marginal', says: 'leaves', values: { ...values, smallestMm: lowMm, largestMm: highMm } };
  }
  const generalMm = shop.generalHoleToleranceMm;
  if (generalMm !== null) return judgeGeneral(holeMm, generalMm, band);
  const { leastMm, mostMm } = laserTolerance(holeMm);
  const isLaser = (facts.holeProcess ?? shop.holeProcess) === 'laser';
  if (!isLaser || staysIn(band, holeMm - leastMm, holeMm + leastMm))
    return { outcome: 'holds', says: 'by-nominal', values };
  const cites = ['practice-hole-band', 'practice-laser-hole', 'iso-9013-class-1'];
  return {
    outcome: 'holds',
    says: 'by-nominal-laser',
    values: { ...values, laserLeastMm: leastMm, laserMostMm: mostMm },
    cites,
  };
}

function judgeGeneral(holeMm: number, generalMm: number, band: HoleBand): Judgement {
  const [smallestMm, largestMm] = [holeMm - generalMm, holeMm + generalMm];
  const values = { holeMm, ...band, generalMm };
  if (staysIn(band, smallestMm, largestMm)) return { outcome: 'holds', says: 'within-general', values };
  return { outcome: 'marginal', says: 'leaves-general', values: { ...values, smallestMm, largestMm } };
}
