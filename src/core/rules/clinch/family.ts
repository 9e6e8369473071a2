import type { Judgement } from '../../model/finding.ts';
import { findFamilyAnswer } from '../../reference/families.ts';
import type { FastenerMaterialEntry } from '../../reference/fastener-materials.ts';
import { judgeTogether, SOME_TEXTS } from '../each-candidate.ts';
import type { Rule, Sheet, Subject } from '../rule.ts';
import { NO_SHEET_METAL, quoted } from '../texts.ts';

/** May a fastener of this metal go into that sheet metal at all? */
export const family: Rule = {
  id: 'clinch/family',
  title: 'Metal families',
  summary: "The trade's table of fastener metals and sheet metals allows the pair.",
  reason:
    'A fastener hardly harder than the sheet deforms instead of the sheet. It may seat well under the press and come loose at the customer.',
  reads: ['partNumber', 'material'],
  needs: ['practice-family-table', 'family-table'],
  texts: {
    ...SOME_TEXTS,
    yes: {
      brief: '{fastener} in {sheet}: yes',
      full: '{fastener} in {sheet} is a usual pair; the hardness check still decides.',
    },
    no: {
      brief: '{fastener} in {sheet}',
      full: '{fastener} does not hold in {sheet}: it is not clearly harder than the sheet. It may seat well under the press and come loose later.',
    },
    silent: {
      brief: '{fastener} in {sheet}: computed only',
      full: "The trade's table does not cover {fastener} in {sheet}: the hardness check alone decides.",
    },
    'no-sheet': NO_SHEET_METAL,
    'no-metal': {
      brief: 'Fastener metal unknown',
      full: 'The catalogue gives no metal that is known here for {partNumber}{listed}: the metal of the fastener would settle this.',
    },
  },
  examples: [
    { cells: { material: 'DC01' }, outcome: 'holds', says: 'yes' },
    { cells: { material: '304' }, outcome: 'fails', says: 'no' },
    {
      cells: { material: '430' },
      part: { material: { text: '400', candidates: ['stainless-400-hardened'] } },
      outcome: 'note',
      says: 'silent',
    },
    {
      cells: { material: '304' },
      part: { material: { text: 'stainless', candidates: ['stainless-300', 'stainless-400-hardened'] } },
      outcome: 'unknown',
      says: 'some',
    },
    {
      cells: { material: '430' },
      part: { material: { text: 'stainless', candidates: ['stainless-300', 'stainless-400-hardened'] } },
      outcome: 'unknown',
      says: 'some-may',
    },
    { cells: { material: '' }, outcome: 'unknown', says: 'no-sheet' },
    {
      cells: { material: 'DC01' },
      part: { material: { text: '', candidates: [] } },
      outcome: 'unknown',
      says: 'no-metal',
    },
  ],
  check({ line, fastener, metals, sheets }: Subject): Judgement | null {
    if (!fastener) return null;
    const cites = ['practice-family-table'];
    if (metals.length === 0) {
      const words = { partNumber: fastener.partNumber, listed: quoted(fastener.material.text) };
      return { outcome: 'unknown', says: 'no-metal', words, cites };
    }
    if (sheets.some(({ entry }) => !entry)) {
      return { outcome: 'unknown', says: 'no-sheet', words: { listed: quoted(line.material.text) }, cites };
    }
    return judgeTogether(metals.flatMap((metal) => sheets.map((sheet) => judgePair(metal, sheet, metals.length > 1))));
  },
};

const OUTCOMES = { yes: 'holds', no: 'fails', silent: 'note' } as const;

function judgePair(metal: FastenerMaterialEntry, { entry }: Sheet, several: boolean) {
  const sheet = entry?.name ?? '';
  const allowed = entry ? findFamilyAnswer(metal.fastenerClass, entry.family) : null;
  const says = allowed === null ? 'silent' : allowed ? 'yes' : 'no';
  const judgement: Judgement = {
    outcome: OUTCOMES[says],
    says,
    words: { fastener: metal.name, sheet },
    cites: ['practice-family-table', 'family-table'],
  };
  return { name: several ? `${sheet} with ${metal.name}` : sheet, judgement };
}
