import { Pairs } from '../../caching/pairs.ts';
import type { Judgement, Words } from '../../model/finding.ts';
import { Judgements } from '../judgements.ts';
import type { ListRule, Subject } from '../rule.ts';
import { describedOtherwise, plainWords } from './descriptions.ts';
import { NAMED_ROWS, nameRows } from './group.ts';
import { type Alike, alikeByPart, partOf, twinsAmong } from './twins.ts';

/** Is a row listed twice, or one part under two descriptions? */
export const duplicate: ListRule = {
  id: 'list/duplicate',
  title: 'Listed twice',
  summary: 'No part is listed twice in the same sheet of the same panel, and every part has one description.',
  reason: 'A row copied by mistake is bought and pressed twice; a part with two descriptions may be two parts.',
  reads: ['partNumber', 'description', 'panel', 'material', 'thickness', 'hole'],
  needs: [],
  texts: {
    twice: {
      brief: 'Same as {rows}',
      full: 'The same part in the same sheet and hole{where} also stands in {rows}: is it meant more than once?',
    },
    descriptions: {
      brief: 'Described differently in {otherRows}',
      full: 'The same part number is described differently elsewhere, {others}: is it one part?',
    },
    both: {
      brief: 'Same as {rows}, described differently in {otherRows}',
      full: 'The same part in the same sheet and hole{where} also stands in {rows}, and the same part number is described differently, {others}: is it one part, and is it meant more than once?',
    },
  },
  examples: [
    {
      rows: [{ thickness: '1.5' }, { thickness: '1.50 mm' }, { thickness: '2' }],
      expect: [['note', 'twice'], ['note', 'twice'], null],
    },
    { rows: [{ panel: 'P1' }, { panel: 'P2' }], expect: [null, null] },
    { rows: [{ hole: '5.6' }, { hole: '5.5' }], expect: [null, null] },
    { rows: [{ partNumber: '' }, { partNumber: '' }], expect: [null, null] },
    {
      rows: [
        { description: 'Clinch nut M4' },
        { panel: 'P2', description: 'Clinch nut M5' },
        { panel: 'P3', description: '' },
      ],
      expect: [['note', 'descriptions'], ['note', 'descriptions'], null],
    },
    { rows: [{ description: 'Clinch nut, M4' }, { panel: 'P2', description: 'NUT M4 CLINCH' }], expect: [null, null] },
    {
      rows: [{ description: 'Clinch nut M4' }, { description: 'Clinch nut M5' }],
      expect: [
        ['note', 'both'],
        ['note', 'both'],
      ],
    },
  ],
  groupOf: (subject) => partOf(subject) || null,
  checkList(subjects: readonly Subject[]): Judgements {
    const judgements = new Judgements(subjects);
    if (subjects.length < 2) return judgements;
    for (const part of alikeByPart(subjects)) judgePart(part, judgements);
    return judgements;
  },
};

function judgePart(groups: readonly Alike[], judgements: Judgements): void {
  const words = new Set(groups.map(([{ line }]) => plainWords(line.description)));
  const others = words.size > 1 ? describedOtherwise(groups.flat()) : new Map<Subject, Words>();
  for (const rows of twinsAmong(groups)) judgeTwins(rows, others, judgements);
  const alone = new Map<Words, Judgement>();
  for (const [subject, otherwise] of others) {
    if (judgements.get(subject)) continue;
    const judgement = alone.get(otherwise) ?? judge(undefined, otherwise);
    alone.set(otherwise, judgement);
    judgements.set(subject, judgement);
  }
}

/** Each of the first rows is told of the other ones; all behind them are told of the same. */
function judgeTwins(group: readonly Subject[], others: ReadonlyMap<Subject, Words>, judgements: Judgements): void {
  const known = new Pairs<Words | undefined, string, Judgement[]>();
  for (const [at, subject] of group.entries()) {
    const otherwise = others.get(subject);
    const told = known.get(otherwise, subject.line.panel, () => []);
    const place = Math.min(at, NAMED_ROWS);
    told[place] ??= judge({ rows: nameRows(group, subject), where: whereOf(subject) }, otherwise);
    judgements.set(subject, told[place]);
  }
}

function judge(twice: Words | undefined, otherwise: Words | undefined): Judgement {
  const says = twice && otherwise ? 'both' : twice ? 'twice' : 'descriptions';
  return { outcome: 'note', says, words: { ...twice, ...otherwise } };
}

function whereOf({ line }: Subject): string {
  return line.panel.trim() === '' ? '' : ` of panel ${line.panel.trim()}`;
}
