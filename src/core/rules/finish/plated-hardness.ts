import { bakingHoursByHrc } from '../../calc/baking-hours.ts';
import { embrittlementCare } from '../../calc/embrittlement.ts';
import { rockwellCOf, steelToVickers } from '../../calc/vickers-steel.ts';
import type { FinishKind } from '../../model/facts.ts';
import type { Fastener } from '../../model/fastener.ts';
import type { Judgement } from '../../model/finding.ts';
import { showHardness } from '../../units/hardness.ts';
import type { FastenerHardness } from '../clinch/hardness-fastener.ts';
import { FINISH_NAMES } from './finish-names.ts';

/** Which bands apply: those of cadmium are printed; every other plating takes those of zinc, as ISO 4042 makes no difference. */
const PLATINGS: Readonly<Partial<Record<FinishKind, 'zinc' | 'cadmium'>>> = {
  'zinc-electroplate': 'zinc',
  'cadmium-electroplate': 'cadmium',
  'nickel-plate': 'zinc',
  'chromium-plate': 'zinc',
  'tin-plate': 'zinc',
};

/** Is it a finish that charges steel with hydrogen? */
export function isElectroplated(finish: FinishKind): boolean {
  return PLATINGS[finish] !== undefined;
}

/** One hardness that the fastener may have, under its plating. */
export function judgeHardness(
  { metal, given, assumed }: FastenerHardness,
  finish: FinishKind,
  fastener: Fastener,
): Judgement {
  const hardness = assumed ? metal?.hardnessMin : fastener.hardnessMin;
  const vickers = hardness && steelToVickers(hardness);
  if (!vickers) return unknownHardness(finish, fastener);
  const isCased = metal?.id === 'case-hardened-steel';
  const care = embrittlementCare(vickers.hv, PLATINGS[finish] ?? 'zinc', isCased);
  if (!care) return unknownHardness(finish, fastener);
  // A class minimum promises hardness, not softness: below it nothing is known to be harmless.
  const isHardened = metal?.fastenerClass === 'carbon-steel-hardened';
  const isUntold = assumed && isHardened && (care === 'none' || care === 'note');
  const hours = bakingHoursByHrc(rockwellCOf(vickers.hv) ?? Number.NaN);
  return {
    outcome: isUntold ? 'note' : OUTCOME[care],
    says: isUntold ? 'assumed' : care,
    values: { hardnessHv: Math.round(vickers.hv) },
    words: {
      finish: FINISH_NAMES[finish],
      given,
      what: isCased ? 'case-hardened' : 'hardened',
      hours: hours === null ? '' : ` (at least ${hours} h at 190 to 220 °C, ASTM B850)`,
    },
    cites: ['embrittlement-thresholds', ...(care === 'bake' ? ['baking-astm-b850'] : []), ...vickers.tables],
  };
}

const OUTCOME = { none: 'holds', note: 'note', bake: 'marginal', 'do-not-plate': 'fails' } as const;

/** The judgement for a hardness that has no Vickers value. */
export function unknownHardness(finish: FinishKind, { hardnessMin }: Fastener): Judgement {
  const stated = hardnessMin ? ` (${showHardness(hardnessMin)})` : '';
  return {
    outcome: 'unknown',
    says: 'no-hardness',
    words: { finish: FINISH_NAMES[finish], stated },
    cites: ['embrittlement-thresholds'],
  };
}
