import { isAtLeast } from '../../calc/closeness.ts';
import type { Fastener } from '../../model/fastener.ts';
import type { Judgement, Text } from '../../model/finding.ts';
import { judgeTogether } from '../each-candidate.ts';
import type { Rule, Sheet, Subject } from '../rule.ts';
import { NO_SHEET_METAL, quoted } from '../texts.ts';
import { type ForceInSheet, forceIn } from './force-in-sheet.ts';

/** Share of the press above which there is little to spare. Source: common practice, no source. */
const LITTLE_TO_SPARE = 0.8;
const CITES = ['practice-press-force'];

const ENOUGH_IN_SOME: Text = {
  brief: 'Press enough in {holding}, not in {failing}',
  full: 'The press is strong enough in {holding}, not in {failing}: which is it?',
};

/** Does the press of the shop give the installation force? Without a press in the settings the force is only stated. */
export const force: Rule = {
  id: 'press/force',
  title: 'Press force',
  summary: "The installation force is within the capacity of the shop's press.",
  reason:
    'A part that is not pressed home does not fill its groove; too much force on too thin a sheet warps the panel.',
  formula: 'installation force <= press capacity; above 80 % of it is noted.',
  reads: ['partNumber', 'material', 'thickness'],
  needs: CITES,
  texts: {
    force: { brief: 'Press force {forceKn:unit}', full: 'Installation force {forceKn:unit}{basis}.{warp}' },
    holds: {
      brief: 'Force {forceKn} of {pressKn:unit}',
      full: 'Installation force {forceKn:unit}{basis}; the press gives {pressKn:unit}.{warp}',
    },
    near: {
      brief: 'Force {forceKn} of {pressKn:unit}',
      full: 'Installation force {forceKn:unit}{basis}; the press gives {pressKn:unit}: more than 80 % of it is needed.{warp}',
    },
    over: {
      brief: 'Needs {forceKn}, press gives {pressKn:unit}',
      full: 'Installation force {forceKn:unit}{basis}; the press gives {pressKn:unit}: {shortKn:unit} short in this shop. A stronger press, or a part that asks for less force, would cure it.',
    },
    some: ENOUGH_IN_SOME,
    'some-may': ENOUGH_IN_SOME,
    silent: {
      brief: 'No press force in the catalogue',
      full: 'The catalogue gives no installation force for {partNumber} in this sheet: its force would settle whether the press gives it.',
    },
    'no-metal': NO_SHEET_METAL,
  },
  examples: [
    { cells: {}, outcome: 'note', says: 'force' },
    { cells: { material: '5052-H32' }, outcome: 'note', says: 'force' },
    { cells: { thickness: '0.8' }, outcome: 'note', says: 'force' },
    { cells: {}, shop: { pressKn: 30 }, outcome: 'holds', says: 'holds' },
    { cells: {}, shop: { pressKn: 14 }, outcome: 'note', says: 'near' },
    { cells: {}, shop: { pressKn: 10 }, outcome: 'fails', says: 'over' },
    { cells: { material: 'CRS or 5052' }, shop: { pressKn: 10 }, outcome: 'unknown', says: 'some' },
    { cells: { material: 'CRS or 5052' }, shop: { pressKn: 8 }, outcome: 'unknown', says: 'some-may' },
    { cells: {}, part: { forceSteelKn: null }, shop: { pressKn: 30 }, outcome: 'unknown', says: 'silent' },
    { cells: { material: '' }, shop: { pressKn: 30 }, outcome: 'unknown', says: 'no-metal' },
  ],
  check({ line, fastener, sheets, shop: { pressKn } }: Subject): Judgement | null {
    if (!fastener) return null;
    const known = sheets.flatMap((sheet) => forceIn(sheet, fastener) ?? []).sort((a, b) => b.forceKn - a.forceKn);
    const [greatest] = known;
    if (pressKn === null) return greatest ? stateForce(greatest, fastener) : null;
    if (sheets.some(({ entry }) => entry === null)) {
      return { outcome: 'unknown', says: 'no-metal', words: { listed: quoted(line.material.text) }, cites: CITES };
    }
    const judged = known.map((one) => ({ name: one.name, judgement: compare(one, fastener, pressKn) }));
    const [worst] = judged;
    if (!worst || known.length < sheets.length) {
      return { outcome: 'unknown', says: 'silent', words: { partNumber: fastener.partNumber }, cites: CITES };
    }
    return worst.judgement.outcome === 'fails' ? judgeTogether(judged) : worst.judgement;
  },
};

function stateForce({ sheet, forceKn, basis }: ForceInSheet, part: Fastener): Judgement {
  return {
    outcome: 'note',
    says: 'force',
    values: { forceKn },
    words: { basis, warp: warpOf(sheet, part) },
    cites: CITES,
  };
}

function compare(one: ForceInSheet, part: Fastener, pressKn: number): Judgement {
  const { forceKn, basis, sheet } = one;
  const values = { forceKn, pressKn };
  const judged = { values, words: { basis, warp: warpOf(sheet, part) }, cites: CITES };
  if (!(forceKn <= pressKn))
    return { ...judged, outcome: 'fails', says: 'over', values: { ...values, shortKn: forceKn - pressKn } };
  return forceKn / pressKn > LITTLE_TO_SPARE + 1e-9
    ? { ...judged, outcome: 'note', says: 'near' }
    : { ...judged, outcome: 'holds', says: 'holds' };
}

function warpOf({ thicknessMm }: Sheet, { sheetMinMm }: Fastener): string {
  const isThin = thicknessMm !== null && sheetMinMm !== null && !isAtLeast(thicknessMm, sheetMinMm);
  return isThin ? MAY_WARP : '';
}

const MAY_WARP = " The sheet is under the part's minimum: the panel may warp under that force.";
