import { isAtLeast, isAtMost } from '../../calc/closeness.ts';
import { closedHoleMm } from '../../calc/coating-closing.ts';
import type { Judgement, Values, Words } from '../../model/finding.ts';
import type { HoleReading } from '../../model/hole.ts';
import type { LengthUnit } from '../../model/list.ts';
import type { Outcome } from '../../model/outcome.ts';
import { showValue } from '../../say/show-value.ts';
import { type HoleBand, holeBandOf } from '../hole-band.ts';
import type { Rule, Subject } from '../rule.ts';
import { type Build, buildOf, THIN_FILMS } from './finish-build.ts';
import { FINISH_NAMES } from './finish-names.ts';
import { holeClosingTexts } from './hole-closing-texts.ts';
import { isMillCoated } from './mill-coated.ts';

/** Does a coating that is put on before pressing leave the hole large enough? */
export const holeClosing: Rule = {
  id: 'finish/hole-closing',
  title: 'Coated hole',
  summary: 'A hole that is coated before pressing is still within the band of the part.',
  reason: 'A coating closes the hole by twice its build: 80 µm of powder by 0.16 mm, twice the usual band.',
  formula: 'hole left = hole - 2 x build per side.',
  reads: ['partNumber', 'material', 'hole', 'finish', 'note', 'description', 'load'],
  needs: ['finish-build-up', 'practice-hole-band', 'practice-thin-films'],
  texts: holeClosingTexts,
  examples: [
    { cells: { finish: 'sheet: powder coat, press after coating, hole masked' }, outcome: 'holds', says: 'masked' },
    {
      cells: { finish: 'sheet: chem film, press after chem film', material: '5052-H32' },
      outcome: 'holds',
      says: 'thin',
    },
    {
      cells: { finish: 'sheet: powder coat 80 um, press after coating', hole: '5.8 +0.03/-0' },
      outcome: 'holds',
      says: 'inside',
    },
    { cells: { finish: 'sheet: powder coat 80 um, press after coating' }, outcome: 'fails', says: 'closed' },
    { cells: { finish: 'sheet: powder coat 80 um, press after coating', hole: '6' }, outcome: 'fails', says: 'open' },
    {
      cells: { finish: 'sheet: powder coat 80 um, press after coating', hole: '5.8 +0.1/-0' },
      outcome: 'marginal',
      says: 'may-stay-open',
    },
    {
      cells: { finish: 'sheet: powder coat, press after coating', hole: '5.7' },
      outcome: 'marginal',
      says: 'may-close',
    },
    { cells: { finish: 'sheet: powder coat 80 um, press after coating', hole: '' }, outcome: 'note', says: 'call-out' },
    { cells: { finish: 'sheet: paint, press after painting' }, outcome: 'unknown', says: 'no-build' },
    {
      cells: { finish: 'sheet: powder coat 80 um, press after coating' },
      part: { holeMm: null },
      outcome: 'unknown',
      says: 'no-hole',
    },
  ],
  check(subject: Subject): Judgement | null {
    const { line, fastener, shop } = subject;
    const { sheetFinish, pressedWhen, holeMasked } = line.facts;
    if (!fastener || !sheetFinish || sheetFinish === 'plain' || pressedWhen !== 'after-finish') return null;
    if (isMillCoated(subject)) return null;
    const words = { finish: FINISH_NAMES[sheetFinish], partNumber: fastener.partNumber, unit: shop.units };
    const cites = ['finish-build-up', 'practice-hole-band'];
    if (holeMasked) return { outcome: 'holds', says: 'masked', words };
    if (THIN_FILMS.has(sheetFinish)) return { outcome: 'holds', says: 'thin', words, cites: ['practice-thin-films'] };
    const band = holeBandOf(fastener);
    if (!band) return { outcome: 'unknown', says: 'no-hole', words, cites };
    const build = buildOf(line.facts);
    const { how } = line.hole;
    if (how === 'blank') {
      const make = build && holeToMake(build, band, shop.units);
      return {
        outcome: shop.silence,
        says: 'call-out',
        values: { ...band },
        words: { ...words, make: make ? `, or ${make}` : '' },
        cites,
      };
    }
    if (how !== 'size') return null;
    if (!build) return { outcome: 'unknown', says: 'no-build', words, cites };
    return { ...judgeClosing(line.hole, build, band, words, shop.units), cites };
  },
};

/** Outside by its nominal under any build fails; outside at an end of its tolerance or of the build is marginal. A hole that closes altogether counts as 0. */
function judgeClosing(hole: HoleReading, build: Build, band: HoleBand, words: Words, units: LengthUnit): Judgement {
  const holeMm = hole.mm ?? Number.NaN;
  const [low, high] = [hole.lowMm ?? holeMm, hole.highMm ?? holeMm];
  const left = (before: number, um: number) => closedHoleMm(before, um) ?? 0;
  const smallest = left(low, build.mostUm);
  const values: Values = { holeMm, closedHoleMm: smallest, ...band };
  const said: Words = {
    ...words,
    build: build.leastUm === build.mostUm ? `${build.mostUm} µm` : `${build.leastUm} to ${build.mostUm} µm`,
    smallest: low < holeMm ? ` (${showValue('holeMm', low, units)} at its smallest)` : '',
    closed: showRange(smallest, left(low, build.leastUm), units),
    open: showRange(left(high, build.mostUm), left(high, build.leastUm), units),
    make: holeToMake(build, band, units) ?? 'press first',
  };
  const judged = (outcome: Outcome, says: string): Judgement => ({ outcome, says, values, words: said });
  if (!isAtLeast(left(holeMm, build.leastUm), band.holeLowMm)) return judged('fails', 'closed');
  if (!isAtMost(left(holeMm, build.mostUm), band.holeHighMm)) return judged('fails', 'open');
  if (!isAtLeast(smallest, band.holeLowMm)) return judged('marginal', 'may-close');
  if (!isAtMost(left(high, build.leastUm), band.holeHighMm)) return judged('marginal', 'may-stay-open');
  return judged('holds', 'inside');
}

/** The hole to cut so that it ends within the band under any build; null where the builds differ by more than the band is wide. */
function holeToMake({ leastUm, mostUm }: Build, { holeLowMm, holeHighMm }: HoleBand, units: LengthUnit): string | null {
  const low = holeLowMm + (2 * mostUm) / 1000;
  const high = holeHighMm + (2 * leastUm) / 1000;
  return isAtMost(low, high) ? `make it ${showRange(low, high, units)} ${units} before coating` : null;
}

function showRange(low: number, high: number, units: LengthUnit): string {
  const [from, to] = [low, high].map((mm) => showValue('holeMm', mm, units));
  return from === to ? `${from}` : `${from} to ${to}`;
}
