import { partKey } from '../../catalogue/part-key.ts';
import type { Judgement, Words } from '../../model/finding.ts';
import type { ListRule, Subject } from '../rule.ts';
import { describedOtherwise, plainWords } from './descriptions.ts';
import { groupBy, groupByLength, nameRows, panelKey } from './group.ts';

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
      brief: 'Described otherwise in {otherRows}',
      full: 'The same part number is described otherwise elsewhere, {others}: is it one part?',
    },
    both: {
      brief: 'Same as {rows}, described otherwise in {otherRows}',
      full: 'The same part in the same sheet and hole{where} also stands in {rows}, and the same part number is described otherwise, {others}: is it one part, and is it meant more than once?',
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
  checkList(subjects: readonly Subject[]): ReadonlyMap<Subject, Judgement> {
    const parts = groupBy(subjects, partOf).filter((rows) => rows.length > 1);
    return new Map(parts.flatMap(judgePart));
  },
};

/** What a row asks for, by the catalogue's number where it is on file. */
function partOf({ line, fastener }: Subject): string | null {
  return partKey(fastener?.partNumber ?? line.partNumber) || null;
}

function judgePart(rows: readonly Subject[]): (readonly [Subject, Judgement])[] {
  const twins = new Map(twinsAmong(rows).flatMap((group) => group.map((subject) => [subject, group] as const)));
  const others = describedOtherwise(rows);
  const judgements = new Map<string, Judgement>();
  return rows.flatMap((subject) => {
    const group = twins.get(subject);
    const named = group && nameRows(group, subject);
    const otherwise = others.get(subject);
    if (!named && !otherwise) return [];
    const key = [named, whereOf(subject), otherwise?.others].join('\n');
    const judgement =
      judgements.get(key) ?? judge(named ? { rows: named, where: whereOf(subject) } : undefined, otherwise);
    judgements.set(key, judgement);
    return [[subject, judgement] as const];
  });
}

function judge(twice: Words | undefined, otherwise: Words | undefined): Judgement {
  const says = twice && otherwise ? 'both' : twice ? 'twice' : 'descriptions';
  return { outcome: 'note', says, words: { ...twice, ...otherwise } };
}

function whereOf({ line }: Subject): string {
  return line.panel.trim() === '' ? '' : ` of panel ${line.panel.trim()}`;
}

/** Rows of one part that agree in panel, metal, thickness and hole, as understood. */
function twinsAmong(rows: readonly Subject[]): readonly (readonly Subject[])[] {
  return groupBy(rows, unmeasuredFacts)
    .flatMap((group) => groupByLength(group, (subject) => thicknessMm(subject) ?? 0))
    .flatMap(({ rows: group }) => groupByLength(group, ({ line }) => line.hole.mm ?? 0))
    .flatMap(({ rows: group }) => (group.length > 1 ? [group] : []));
}

/** A size that was not understood counts as it is written. */
function unmeasuredFacts(subject: Subject): string {
  const { material, thickness, hole } = subject.line;
  const metal = material.candidates.join(' ') || plainWords(material.text);
  const sizes = [thicknessMm(subject) ?? plainWords(thickness.text), hole.mm ?? plainWords(hole.text)];
  return [panelKey(subject), metal, ...sizes.map((size) => (typeof size === 'number' ? 'known' : size))].join('|');
}

function thicknessMm({ sheets }: Subject): number | null {
  return sheets[0]?.thicknessMm ?? null;
}
