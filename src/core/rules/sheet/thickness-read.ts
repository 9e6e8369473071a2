import type { Judgement } from '../../model/finding.ts';
import { findCited } from '../../reference/index.ts';
import type { Rule, Subject } from '../rule.ts';
import { disputedWords, takenWords } from './taken.ts';

/** Is the sheet's thickness known? States what unit was taken and why. */
export const thicknessRead: Rule = {
  id: 'sheet/thickness-read',
  title: 'Thickness read',
  summary: 'The thickness of the sheet is stated and can be read.',
  reason: 'A number without its unit, or a gauge number without its metal, can stand for sheets that differ by half.',
  reads: ['thickness', 'material'],
  needs: ['practice-three-facts', 'practice-one-unit-per-column'],
  texts: {
    read: { brief: '{thicknessMm:unit}', full: 'Thickness read as {thicknessMm:unit}{because}{taken}.' },
    gauge: {
      brief: '{text} is {thicknessMm:unit}',
      full: '“{text}” in this metal is {thicknessMm:unit}{because}{taken}.',
    },
    'gauge-two': {
      brief: '{text} is {thicknessMm:unit} or {otherMm:unit}',
      full: '“{text}” is {thicknessMm:unit} by the {table} and {otherMm:unit} by the {other}: judged at {thicknessMm:unit}.',
    },
    'gauge-many': {
      brief: '{text} depends on the metal',
      full: '“{text}” is {thicknessMm:unit} to {otherMm:unit}, depending on which metal “{material}” is{taken}: each is judged with its own.',
    },
    blank: {
      brief: 'Thickness is missing',
      full: 'The sheet thickness is missing{disputed}: a thickness with its unit, or a gauge with its metal, would settle this.',
    },
    unreadable: {
      brief: 'Thickness “{text}” not readable',
      full: 'The thickness “{text}” cannot be read: a thickness with its unit, or a gauge with its metal, would settle this.',
    },
    'no-unit': {
      brief: '“{text}”: mm or inches?',
      full: 'The thickness “{text}”{taken} could be millimetres or inches, and nothing in its column settles it: is the column in mm or in inches?',
    },
    impossible: {
      brief: 'No sheet is “{text}” {unit} thick',
      full: 'No sheet is “{text}” {unit} thick. {offer}The right thickness would settle this.',
    },
    'no-metal': {
      brief: '“{text}” needs a metal',
      full: 'A gauge number (“{text}”{taken}) means a thickness only together with a metal: the sheet metal, or the thickness in mm or inches, would settle this.',
    },
  },
  examples: [
    { cells: { thickness: '1.5' }, outcome: 'holds', says: 'read' },
    { cells: { thickness: '16 ga', material: 'CRS' }, outcome: 'holds', says: 'gauge' },
    { cells: { thickness: '16 ga', material: '304' }, outcome: 'holds', says: 'gauge-two' },
    { cells: { thickness: '16 ga', material: 'STEEL' }, outcome: 'holds', says: 'gauge-many' },
    { cells: { thickness: '' }, outcome: 'unknown', says: 'blank' },
    { cells: { thickness: 'thick' }, outcome: 'unknown', says: 'unreadable' },
    { cells: { thickness: '0.8' }, unit: 'none', outcome: 'unknown', says: 'no-unit' },
    { cells: { thickness: '60 in' }, outcome: 'unknown', says: 'impossible' },
    { cells: { thickness: '16 ga', material: '' }, outcome: 'unknown', says: 'no-metal' },
  ],
  check(subject: Subject): Judgement {
    const { thickness } = subject.line;
    const words = { text: thickness.text.trim(), taken: takenWords(thickness.takenFrom) };
    const cites = ['practice-three-facts'];
    if (thickness.how === 'blank') {
      const disputed = disputedWords(thickness.disputed);
      return { outcome: 'unknown', says: 'blank', words: { disputed }, cites };
    }
    if (thickness.how === 'unreadable') return { outcome: 'unknown', says: 'unreadable', words, cites };
    if (thickness.how === 'ambiguous-unit') {
      return { outcome: 'unknown', says: 'no-unit', words, cites: ['practice-one-unit-per-column'] };
    }
    if (thickness.how === 'impossible') return impossible(subject);
    return thickness.how === 'length' ? readLength(subject) : readGauge(subject);
  },
};

function impossible({ line }: Subject): Judgement {
  const { text, writtenIn, otherMm } = line.thickness;
  const unit = writtenIn === 'in' ? 'inches' : 'mm';
  const offer = otherMm === null ? '' : `Read the other way it would be ${otherMm.toFixed(2)} mm. `;
  return {
    outcome: 'unknown',
    says: 'impossible',
    words: { text: text.replace(/\s*(mm|in|inch|inches|")\s*$/i, '').trim(), unit, offer },
    cites: ['practice-three-facts'],
  };
}

const BECAUSE = {
  cell: '',
  heading: ', the unit in the heading',
  column: ', the unit judged from the whole column',
  list: ", the unit of the list's threads",
} as const;

function readLength({ line }: Subject): Judgement {
  const { mm, unitFrom, takenFrom } = line.thickness;
  const words = { because: BECAUSE[unitFrom ?? 'cell'], taken: takenWords(takenFrom) };
  return {
    outcome: 'holds',
    says: 'read',
    values: { thicknessMm: mm ?? Number.NaN },
    words,
    cites: ['practice-one-unit-per-column'],
  };
}

function readGauge({ line, sheets }: Subject): Judgement {
  const text = line.thickness.text.trim();
  const taken = takenWords(line.thickness.takenFrom);
  const known = sheets.flatMap(({ thicknessMm }) => (thicknessMm === null ? [] : [thicknessMm]));
  if (known.length < sheets.length)
    return { outcome: 'unknown', says: 'no-metal', words: { text, taken }, cites: ['practice-three-facts'] };
  const thicknessMm = Math.min(...known);
  const thickest = Math.max(...known);
  const cites = [...new Set(sheets.flatMap(({ thicknessTable }) => (thicknessTable ? [thicknessTable] : [])))];
  if (thickest > thicknessMm) {
    const words = { text, taken, material: line.material.text.trim() };
    return { outcome: 'holds', says: 'gauge-many', values: { thicknessMm, otherMm: thickest }, words, cites };
  }
  const other = sheets[0]?.otherThickness;
  if (other && Math.abs(other.mm - thicknessMm) > 0.005) {
    return {
      outcome: 'holds',
      says: 'gauge-two',
      values: { thicknessMm, otherMm: other.mm },
      words: { text, other: other.name, table: cites.map((id) => findCited(id)?.title ?? id).join(', ') },
      cites,
    };
  }
  return { outcome: 'holds', says: 'gauge', values: { thicknessMm }, words: { text, taken, because: '' }, cites };
}
