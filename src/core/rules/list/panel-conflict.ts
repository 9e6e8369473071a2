import { Pairs } from '../../caching/pairs.ts';
import type { Judgement } from '../../model/finding.ts';
import type { Line } from '../../model/line.ts';
import { Judgements } from '../judgements.ts';
import type { ListRule, Subject } from '../rule.ts';
import { groupByPanel, panelKey } from './group.ts';
import { findMetalConflict } from './panel-metals.ts';
import { findThicknessConflict } from './panel-thicknesses.ts';

const CITES = ['practice-one-panel-one-sheet'];

/** Do all rows of a panel speak of one sheet? */
export const panelConflict: ListRule = {
  id: 'list/panel-conflict',
  title: 'One panel, one sheet',
  summary: 'All rows of a panel give the same metal and the same thickness.',
  reason:
    'A panel is cut from one sheet. Where its rows disagree, some of them are judged against a sheet that is not there.',
  reads: ['panel', 'material', 'thickness'],
  needs: CITES,
  texts: {
    thickness: {
      brief: 'Panel {panel}: {thinnerMm} or {thickerMm:unit}?',
      full: 'Panel {panel} is {thinnerMm:unit} thick in {thinnerRows}, but {thickerMm:unit} in {thickerRows}: which is right?',
    },
    material: {
      brief: 'Panel {panel}: {metal} or {otherMetal}?',
      full: 'Panel {panel} is listed as “{metal}” in {metalRows}, but as “{otherMetal}” in {otherMetalRows}: which is right?',
    },
    both: {
      brief: 'Panel {panel}: {metal}, {otherMetal}? {thinnerMm}, {thickerMm:unit}?',
      full: 'Panel {panel} is listed as “{metal}” in {metalRows}, but as “{otherMetal}” in {otherMetalRows}, and is {thinnerMm:unit} thick in {thinnerRows}, but {thickerMm:unit} in {thickerRows}: which is right?',
    },
  },
  examples: [
    {
      rows: [{ thickness: '1.5' }, { thickness: '2' }, { thickness: '' }, { panel: 'P2' }],
      expect: [['unknown', 'thickness'], ['unknown', 'thickness'], ['unknown', 'thickness'], null],
    },
    { rows: [{ thickness: '1.524' }, { thickness: '0.060 in' }], expect: [null, null] },
    {
      rows: [
        { material: 'CRS', thickness: '16 ga' },
        { material: 'CRS', thickness: '.060 in' },
      ],
      expect: [null, null],
    },
    { rows: [{ thickness: '1.5' }, { thickness: '' }, { thickness: 'see drawing' }], expect: [null, null, null] },
    {
      rows: [{ material: '5052-H32' }, { material: '304' }],
      expect: [
        ['unknown', 'material'],
        ['unknown', 'material'],
      ],
    },
    {
      rows: [{ material: '5052-H32' }, { material: '6061-T6' }],
      expect: [
        ['unknown', 'material'],
        ['unknown', 'material'],
      ],
    },
    {
      rows: [{ material: '304' }, { material: '1.4301' }, { material: 'stainless' }, { material: '' }],
      expect: [null, null, null, null],
    },
    { rows: [{ material: '5052-H32' }, { material: '5052' }, { material: 'ALUM' }], expect: [null, null, null] },
    {
      rows: [
        { panel: '', thickness: '1.5' },
        { panel: '', thickness: '2' },
      ],
      expect: [null, null],
    },
    {
      rows: [
        { material: 'GALV', thickness: '1.2' },
        { material: '5052-H32', thickness: '1.6' },
      ],
      expect: [
        ['unknown', 'both'],
        ['unknown', 'both'],
      ],
    },
  ],
  groupOf: panelKey,
  checkList(subjects: readonly Subject[]): Judgements {
    const judgements = new Judgements(subjects);
    for (const rows of groupByPanel(subjects).values()) {
      const judgement = rows.length > 1 && judgePanel(sayingDifferent(rows)) && judgePanel(rows);
      if (judgement) for (const subject of rows) judgements.set(subject, judgement);
    }
    return judgements;
  },
};

/** The first row of each sheet as read, for a look whether there is any conflict: most panels have one sheet in all their rows. */
function sayingDifferent(rows: readonly Subject[]): readonly Subject[] {
  const seen = new Pairs<Line['material'], Line['thickness'], Subject>();
  let last: Line | undefined;
  return rows.filter((subject) => {
    const { line } = subject;
    if (line.material === last?.material && line.thickness === last.thickness) return false;
    last = line;
    return seen.get(line.material, line.thickness, () => subject) === subject;
  });
}

/** The same for every row of the panel, as nobody knows which row is right. */
function judgePanel(rows: readonly Subject[]): Judgement | null {
  const metals = findMetalConflict(rows);
  const thicknesses = findThicknessConflict(rows);
  if (!metals && !thicknesses) return null;
  return {
    outcome: 'unknown',
    says: metals && thicknesses ? 'both' : metals ? 'material' : 'thickness',
    values: { ...thicknesses?.values },
    words: { panel: rows[0]?.line.panel.trim() ?? '', ...metals, ...thicknesses?.words },
    cites: CITES,
  };
}
