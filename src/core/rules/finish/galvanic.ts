import type { Environment } from '../../model/facts.ts';
import type { Judgement } from '../../model/finding.ts';
import type { CandidateJudgement } from '../each-candidate.ts';
import type { Rule, Subject } from '../rule.ts';
import { fastenerFinishes } from './fastener-finish.ts';
import { type FastenerSurface, judgeSurfaces } from './galvanic-judgement.ts';
import { judgeNoting } from './judge-noting.ts';
import { fastenerSurface, sheetSurface } from './surface.ts';

/** Do fastener and sheet make a corroding pair where the panel lives? A screen of risk, never a rate. */
export const galvanic: Rule = {
  id: 'finish/galvanic',
  title: 'Galvanic pair',
  summary: 'Anodic index of fastener and sheet, platings where plated, are within the limit of the environment.',
  reason:
    'Of two metals that touch in the wet the less noble one corrodes: slowly where it is the large sheet, fast where it is the small fastener.',
  formula:
    'difference = |anodic index of fastener surface - anodic index of sheet surface|; the higher index is the anode.',
  reads: ['partNumber', 'material', 'finish', 'note', 'description', 'hole', 'load'],
  wordsOf: ['hole'],
  needs: ['anodic-index', 'anodic-limits', 'galvanic-rules', 'galvanic-disagreements'],
  texts: {
    within: {
      brief: '{difference}, limit {limit}',
      full: '{fastener} in {sheet}: {difference} apart, limit {limit} {where}. {anode} A screen of risk only. {assumed}{apart}',
    },
    over: {
      brief: '{difference} apart, limit {limit}: {anodeBrief}',
      full: '{fastener} in {sheet}: {difference} apart, limit {limit} {where}. {anode} Keep water out of the joint, or choose a nearer pair of surfaces. A screen of risk only. {assumed}{apart}',
    },
  },
  examples: [
    { cells: { material: 'GALV' }, part: { finish: 'zinc plated' }, outcome: 'holds', says: 'within' },
    { cells: { material: 'DC01' }, outcome: 'note', says: 'within' },
    { cells: { material: '5052-H32' }, part: { finish: 'zinc plated' }, outcome: 'note', says: 'over' },
    {
      cells: { material: '5052-H32' },
      part: { finish: 'zinc plated' },
      shop: { environment: 'outdoor' },
      outcome: 'marginal',
      says: 'over',
    },
    {
      cells: { material: '5052-H32' },
      part: { material: { text: '300', candidates: ['stainless-300'] } },
      shop: { environment: 'outdoor' },
      outcome: 'note',
      says: 'over',
    },
  ],
  check(subject: Subject): Judgement | null {
    const { line, fastener, metals, sheets, shop } = subject;
    if (!fastener || sheets.some(({ entry }) => entry === null)) return null;
    const environment = line.facts.environment ?? shop.environment;
    const stated = fastenerFinishes(subject);
    const finishes = stated.length > 0 ? stated : [null];
    const candidates = metals.flatMap((metal) => {
      const isAssumed = stated.length === 0 && metal.family === 'carbon-steel';
      const surfaces = finishes.flatMap((finish) => fastenerSurface(metal, finish) ?? []);
      return surfaces.flatMap((surface) => judgeSheets({ ...surface, isAssumed }, environment, subject));
    });
    return candidates.length === 0 ? null : judgeNoting(candidates, 'spareV');
  },
};

/** One surface of the fastener against every metal that the sheet could be. */
function judgeSheets(
  surface: FastenerSurface,
  environment: Environment,
  { line, sheets }: Subject,
): readonly CandidateJudgement[] {
  const others = sheets.flatMap(({ entry }) => (entry && sheetSurface(entry, line.facts.sheetFinish)) ?? []);
  return others.flatMap((other) => {
    const judgement = judgeSurfaces(surface, other, environment);
    return judgement ? [{ name: `${surface.name} in ${other.name}`, judgement }] : [];
  });
}
