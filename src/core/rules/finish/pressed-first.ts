import type { FinishKind } from '../../model/facts.ts';
import type { FastenerClass } from '../../model/fastener.ts';
import type { Judgement } from '../../model/finding.ts';
import type { FastenerMaterialEntry } from '../../reference/fastener-materials.ts';
import { judgeTogether } from '../each-candidate.ts';
import type { Subject } from '../rule.ts';
import { FINISH_NAMES } from './finish-names.ts';

/** Finishes put on in a bath, with acid before or in it. */
export const BATHS: ReadonlySet<FinishKind> = new Set([
  'zinc-electroplate',
  'cadmium-electroplate',
  'nickel-plate',
  'tin-plate',
  'chromium-plate',
  'plating',
  'hot-dip-zinc',
  'phosphate',
  'black-oxide',
]);

const STAINLESS: ReadonlySet<FastenerClass | null> = new Set([
  'stainless-300',
  'stainless-400-hardened',
  'stainless-ph',
]);

/** A sheet that gets its finish with the fastener already in it, for every metal that the fastener could be. */
export function judgePressedFirst(finish: FinishKind, subject: Subject): Judgement {
  const words = { finish: FINISH_NAMES[finish] };
  const cites = ['order-of-work'];
  if (['powder-coat', 'paint', 'zinc-flake'].includes(finish))
    return { outcome: 'holds', says: 'mask-threads', words, cites };
  if (isAnodising(finish) && !mayBeAnodised(subject)) {
    return {
      outcome: 'unknown',
      says: 'not-anodised',
      words: { ...words, sheet: subject.line.material.text.trim() },
      cites,
    };
  }
  if (subject.metals.length === 0) {
    return {
      outcome: 'unknown',
      says: 'no-metal',
      words: { ...words, partNumber: subject.fastener?.partNumber ?? '' },
      cites,
    };
  }
  return judgeTogether(
    subject.metals.map((metal) => {
      const judgement = judgeMetal(finish, metal);
      return {
        name: metal.name,
        judgement: { ...judgement, words: { ...words, fastener: metal.name }, cites: judgement.cites ?? cites },
      };
    }),
  );
}

function isAnodising(finish: FinishKind): boolean {
  return finish === 'anodised' || finish === 'hard-anodised';
}

/** Steel and copper are not anodised: either metal or finish is listed wrongly. */
function mayBeAnodised({ sheets }: Subject): boolean {
  return sheets.some(({ entry }) => entry === null || entry.family === 'aluminium' || entry.family === 'titanium');
}

function judgeMetal(finish: FinishKind, { family, fastenerClass }: FastenerMaterialEntry): Judgement {
  const isAluminium = family === 'aluminium';
  if (isAnodising(finish)) {
    const cites = ['practice-anodising-assemblies', 'order-of-work'];
    return isAluminium
      ? { outcome: 'holds', says: 'anodised-along', cites }
      : { outcome: 'fails', says: 'attack', cites };
  }
  if (finish === 'chem-film') {
    return isAluminium ? { outcome: 'holds', says: 'filmed-along' } : { outcome: 'marginal', says: 'chem-film' };
  }
  if (finish === 'passivated' && STAINLESS.has(fastenerClass)) return { outcome: 'holds', says: 'filmed-along' };
  const isHardened = BATHS.has(finish) && fastenerClass === 'carbon-steel-hardened';
  return isHardened ? { outcome: 'fails', says: 'traps-acid' } : { outcome: 'marginal', says: 'bath' };
}
