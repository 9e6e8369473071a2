import type { Judgement } from '../../model/finding.ts';
import type { Rule, Subject } from '../rule.ts';
import { quoted } from '../texts.ts';
import { disputedWords, takenWords } from './taken.ts';

/** Is it known which metal the sheet is? Vague words are no fault here: the clinch checks judge every metal they could mean. */
export const material: Rule = {
  id: 'sheet/material',
  title: 'Sheet metal',
  summary: 'The sheet is a metal whose hardness is known.',
  reason: 'Whether the sheet flows into the groove depends on its hardness, and that on alloy and temper.',
  reads: ['material'],
  needs: ['practice-three-facts'],
  texts: {
    named: { brief: '{sheet}', full: 'Sheet understood as {sheet}{taken}. {remarks}' },
    assumed: {
      brief: '{sheet}, assumed',
      full: 'Sheet taken as {sheet}, the condition in which it is sold{taken}. {remarks}',
    },
    vague: {
      brief: '“{text}” could be {count} metals',
      full: '“{text}” could be {count} metals and tempers; the row is judged against each of them: {sheets}{taken}. {remarks}',
    },
    blank: {
      brief: 'Sheet metal missing',
      full: 'The sheet metal is missing{disputed}: its alloy and temper, such as 5052-H32 or DC01, would settle this.',
    },
    'not-a-metal': {
      brief: '“{text}” is no sheet metal',
      full: '“{text}” does not name a sheet metal: the alloy and temper of the sheet would settle this.',
    },
    unreadable: {
      brief: 'Sheet metal “{text}” not known',
      full: 'The sheet metal “{text}” is not known here: the alloy and temper by an AISI, ASTM, EN, JIS or GB name would settle this.',
    },
  },
  examples: [
    { cells: { material: '5052-H32' }, outcome: 'holds', says: 'named' },
    { cells: { material: '304' }, outcome: 'holds', says: 'assumed' },
    { cells: { material: 'ALUM' }, outcome: 'note', says: 'vague' },
    { cells: { material: '' }, outcome: 'unknown', says: 'blank' },
    { cells: { material: 'red' }, outcome: 'unknown', says: 'not-a-metal' },
    { cells: { material: 'zorbium 9' }, outcome: 'unknown', says: 'unreadable' },
  ],
  check({ line, sheets }: Subject): Judgement {
    const { how, text, remarks, takenFrom, disputed } = line.material;
    const names = sheets.flatMap(({ entry }) => (entry ? [entry.name] : []));
    const said = remarks.map(sentence).join(' ');
    const words = { text: text.trim(), remarks: said, listed: quoted(text), taken: takenWords(takenFrom) };
    const cites = ['practice-three-facts'];
    if (how === 'blank') {
      return { outcome: 'unknown', says: 'blank', words: { disputed: disputedWords(disputed) }, cites };
    }
    if (how === 'not-a-material') return { outcome: 'unknown', says: 'not-a-metal', words, cites };
    if (names.length === 0) return { outcome: 'unknown', says: 'unreadable', words, cites };
    if (how === 'vague') {
      return {
        outcome: 'note',
        says: 'vague',
        words: { ...words, count: String(names.length), sheets: names.join(', ') },
      };
    }
    return {
      outcome: 'holds',
      says: how === 'named' ? 'named' : 'assumed',
      words: { ...words, sheet: names.join(', ') },
    };
  },
};

function sentence(remark: string): string {
  const text = remark.trim();
  return text === '' || /[.!?]$/.test(text) ? text : `${text}.`;
}
