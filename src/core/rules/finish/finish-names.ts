import type { FinishKind } from '../../model/facts.ts';

/** A finish inside a sentence. */
export const FINISH_NAMES: Readonly<Record<FinishKind, string>> = {
  'zinc-electroplate': 'zinc plating',
  'cadmium-electroplate': 'cadmium plating',
  'zinc-flake': 'zinc flake coating',
  'hot-dip-zinc': 'hot-dip galvanizing',
  'nickel-plate': 'nickel plating',
  'tin-plate': 'tin plating',
  'chromium-plate': 'chromium plating',
  plating: 'plating',
  passivated: 'passivation',
  anodised: 'anodising',
  'hard-anodised': 'hard anodising',
  'chem-film': 'chemical conversion film',
  'powder-coat': 'powder coat',
  paint: 'paint',
  phosphate: 'phosphating',
  'black-oxide': 'black oxide',
  plain: 'no finish',
};
