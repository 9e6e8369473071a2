import type { FinishKind } from '../../model/facts.ts';
import type { Judgement } from '../../model/finding.ts';
import { VERDICTS } from '../../model/outcome.ts';
import type { Rule, Subject } from '../rule.ts';
import { FINISH_NAMES } from './finish-names.ts';
import { isMillCoated } from './mill-coated.ts';
import { orderTexts } from './order-texts.ts';
import { BATHS, judgePressedFirst } from './pressed-first.ts';

/** Do pressing and finishing come in an order that works, and from the right side? */
export const order: Rule = {
  id: 'finish/order',
  title: 'Order of work',
  summary:
    'Sheet finished first and then pressed, or coated afterwards with the threads masked; pressed from the punch side.',
  reason:
    'Baths attack foreign metals and leave acid in the joint; coating in threads stops screws; pressing on a painted face breaks the paint.',
  reads: ['partNumber', 'material', 'finish', 'note', 'description', 'hole', 'load'],
  wordsOf: ['hole'],
  needs: ['order-of-work', 'practice-press-side', 'practice-anodising-assemblies'],
  texts: orderTexts,
  examples: [
    {
      cells: { finish: 'sheet: anodize, press after anodizing', material: '5052-H32' },
      outcome: 'holds',
      says: 'after-anodising',
    },
    { cells: { finish: 'sheet: powder coat 80 um, press after coating' }, outcome: 'holds', says: 'after' },
    { cells: { finish: 'sheet: powder coat after insertion' }, outcome: 'holds', says: 'mask-threads' },
    { cells: { finish: 'sheet: anodize after insertion', material: '5052-H32' }, outcome: 'fails', says: 'attack' },
    {
      cells: { finish: 'sheet: anodize after insertion', material: '5052-H32' },
      part: { material: { text: '2024-T4', candidates: ['aluminium-2024-t4'] } },
      outcome: 'holds',
      says: 'anodised-along',
    },
    { cells: { finish: 'sheet: anodize after insertion', material: 'DC01' }, outcome: 'unknown', says: 'not-anodised' },
    { cells: { finish: 'sheet: zinc plate after insertion' }, outcome: 'fails', says: 'traps-acid' },
    {
      cells: { finish: 'sheet: zinc plate after insertion' },
      part: { material: { text: '300', candidates: ['stainless-300'] } },
      outcome: 'marginal',
      says: 'bath',
    },
    {
      cells: { finish: 'sheet: zinc plate after insertion' },
      part: { material: { text: 'steel', candidates: ['carbon-steel-hardened', 'iso-898-1-4-8'] } },
      outcome: 'unknown',
      says: 'some-may',
    },
    {
      cells: { finish: 'sheet: anodize after insertion', material: '5052-H32' },
      part: { material: { text: '2024-T4 or steel', candidates: ['aluminium-2024-t4', 'carbon-steel-hardened'] } },
      outcome: 'unknown',
      says: 'some',
    },
    {
      cells: { finish: 'sheet: zinc plate after insertion' },
      part: { material: { text: '', candidates: [] } },
      outcome: 'unknown',
      says: 'no-metal',
    },
    {
      cells: { finish: 'sheet: chem film after insertion', material: '5052-H32' },
      outcome: 'marginal',
      says: 'chem-film',
    },
    {
      cells: { finish: 'sheet: chem film after insertion', material: '5052-H32' },
      part: { material: { text: '2024-T4', candidates: ['aluminium-2024-t4'] } },
      outcome: 'holds',
      says: 'filmed-along',
    },
    { cells: { note: 'press from the painted face' }, outcome: 'fails', says: 'painted-face' },
    { cells: { note: 'press from the burr side' }, outcome: 'marginal', says: 'burr-side' },
    { cells: { finish: 'sheet: powder coat' }, outcome: 'note', says: 'say-order' },
    { cells: { finish: 'sheet: powder coat' }, shop: { silence: 'unknown' }, outcome: 'unknown', says: 'say-order' },
    { cells: { note: 'plate after assembly' }, outcome: 'fails', says: 'traps-acid' },
    { cells: { note: 'finish after insertion' }, outcome: 'unknown', says: 'unnamed' },
    { cells: {}, shop: { silence: 'unknown' }, outcome: 'unknown', says: 'silent' },
  ],
  check(subject: Subject): Judgement | null {
    if (!subject.fastener) return null;
    const judgements = [judgeSide(subject), judgeOrder(subject)].flatMap((judgement) => judgement ?? []);
    const worst = VERDICTS.find((verdict) => judgements.some(({ outcome }) => outcome === verdict));
    return judgements.find(({ outcome }) => outcome === worst) ?? judgements[0] ?? null;
  },
};

function judgeSide({ line }: Subject): Judgement | null {
  const side = line.facts.wrongSide;
  if (side === null) return null;
  const cites = ['practice-press-side'];
  const words = { side: side.trim() };
  if (/\bburr|\bdie (?:side|face|surface)|grat ?seite|bavure/i.test(side))
    return { outcome: 'marginal', says: 'burr-side', words, cites };
  return { outcome: 'fails', says: 'painted-face', words, cites };
}

function judgeOrder(subject: Subject): Judgement | null {
  const { sheetFinish: finish, pressedWhen, finishUnnamed } = subject.line.facts;
  const { silence } = subject.shop;
  const cites = ['order-of-work'];
  if (finishUnnamed) return { outcome: 'unknown', says: 'unnamed', cites };
  if (finish === null) return silence === 'unknown' ? { outcome: 'unknown', says: 'silent', cites } : null;
  if (finish === 'plain' || (pressedWhen !== 'before-finish' && isMillCoated(subject))) return null;
  const words = { finish: FINISH_NAMES[finish], order: workingOrder(finish) };
  if (pressedWhen === null) return { outcome: silence, says: 'say-order', words, cites };
  if (pressedWhen === 'before-finish') return judgePressedFirst(finish, subject);
  const isAnodised = finish === 'anodised' || finish === 'hard-anodised';
  return { outcome: 'holds', says: isAnodised ? 'after-anodising' : 'after', words, cites };
}

function workingOrder(finish: FinishKind): string {
  const isBath = BATHS.has(finish) || ['anodised', 'hard-anodised', 'chem-film', 'passivated'].includes(finish);
  return isBath
    ? 'finish the sheet first, then press'
    : 'press first and mask the threads, or mask hole and seat, coat, then press';
}
