import type { Hardness } from '../../units/hardness.ts';
import type { Example } from '../rule.ts';

const hrc = (value: number): Hardness => ({ scale: 'HRC', value });
const hrb = (value: number): Hardness => ({ scale: 'HRB', value });
const AL = { text: '6061-T6', candidates: ['6061-t6'] };
const S4 = { text: 'hardened 400 series', candidates: ['stainless-400-hardened'] };

/** One example for everything that the hardness check can say. */
export const hardnessExamples: readonly Example[] = [
  { cells: { material: 'DC01' }, outcome: 'holds', says: 'holds' },
  { cells: { material: '5052-H32' }, outcome: 'holds', says: 'holds-soft' },
  {
    cells: { material: '5052-H32' },
    part: { hardnessMin: hrb(40), material: AL },
    outcome: 'marginal',
    says: 'marginal-soft',
  },
  { cells: { material: '5052-H32' }, part: { sheetHardnessMax: hrb(80) }, outcome: 'holds', says: 'limit-holds-soft' },
  {
    cells: { material: '5052-H32' },
    part: { sheetHardnessMax: hrb(30) },
    outcome: 'marginal',
    says: 'limit-marginal-soft',
  },
  { cells: { material: '304' }, part: { hardnessMin: hrc(38), material: S4 }, outcome: 'holds', says: 'holds' },
  { cells: { material: 'S420MC' }, part: { hardnessMin: hrc(26) }, outcome: 'marginal', says: 'marginal' },
  { cells: { material: '7075-T6' }, part: { hardnessMin: hrc(26) }, outcome: 'fails', says: 'fails' },
  { cells: { material: '301 1/2H' }, part: { hardnessMin: hrb(95) }, outcome: 'fails', says: 'softer' },
  { cells: { material: '7075-T6' }, part: { hardnessMin: null }, outcome: 'marginal', says: 'assumed' },
  { cells: { material: 'C110 H04' }, outcome: 'holds', says: 'holds-typical' },
  { cells: { material: 'S320GD' }, outcome: 'marginal', says: 'marginal-typical' },
  { cells: { material: 'C260 H04' }, part: { hardnessMin: hrb(95) }, outcome: 'fails', says: 'fails-typical' },
  { cells: { material: 'SUS301-CSP 1/2H' }, part: { hardnessMin: hrb(95) }, outcome: 'fails', says: 'softer-typical' },
  {
    cells: { material: 'C260 H04' },
    part: { hardnessMin: null, material: { text: '300 series', candidates: ['stainless-300'] } },
    outcome: 'marginal',
    says: 'assumed-typical',
  },
  {
    cells: { material: 'C110 H02' },
    part: { sheetHardnessMax: hrb(80) },
    outcome: 'holds',
    says: 'limit-holds-typical',
  },
  {
    cells: { material: 'S320GD' },
    part: { sheetHardnessMax: hrb(80) },
    outcome: 'marginal',
    says: 'limit-marginal-typical',
  },
  {
    cells: { material: 'C260 H04' },
    part: { sheetHardnessMax: hrb(80) },
    outcome: 'fails',
    says: 'limit-fails-typical',
  },
  { cells: { material: 'DC01' }, part: { sheetHardnessMax: hrb(80) }, outcome: 'holds', says: 'limit-holds' },
  {
    cells: { material: '430' },
    part: { sheetHardnessMax: hrb(85), material: S4 },
    outcome: 'marginal',
    says: 'limit-marginal',
  },
  { cells: { material: '7075-T6' }, part: { sheetHardnessMax: hrb(80) }, outcome: 'fails', says: 'limit-fails' },
  { cells: { material: 'ALUM' }, part: { hardnessMin: hrc(26) }, outcome: 'unknown', says: 'some' },
  { cells: { material: 'HSLA' }, part: { hardnessMin: hrb(100) }, outcome: 'unknown', says: 'some-may' },
  { cells: { material: '304' }, outcome: 'marginal', says: 'forbidden' },
  {
    cells: { material: 'SPHC' },
    part: { hardnessMin: hrb(80), material: AL },
    outcome: 'marginal',
    says: 'forbidden-typical',
  },
  { cells: { material: '304' }, part: { sheetHardnessMax: hrb(92) }, outcome: 'marginal', says: 'limit-forbidden' },
  {
    cells: { material: 'SPHC' },
    part: { sheetHardnessMax: hrb(92), material: AL },
    outcome: 'marginal',
    says: 'limit-forbidden-typical',
  },
  { cells: { material: 'DC01' }, part: { hardnessMin: hrc(75) }, outcome: 'unknown', says: 'off-scale' },
  { cells: { material: '' }, outcome: 'unknown', says: 'no-sheet' },
  {
    cells: { material: 'Ti Gr2' },
    part: { sheetHardnessMax: { scale: 'HV', value: 150 } },
    outcome: 'unknown',
    says: 'off-scale',
  },
  {
    cells: { material: 'DC01' },
    part: { hardnessMin: null, material: { text: 'brass', candidates: ['brass'] } },
    outcome: 'unknown',
    says: 'no-fastener',
  },
];
