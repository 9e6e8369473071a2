import type { Fastener } from '../../model/fastener.ts';
import type { Judgement } from '../../model/finding.ts';
import { parseThread } from '../../units/thread.ts';
import { Judgements } from '../judgements.ts';
import type { ListRule, Subject } from '../rule.ts';
import { groupBy, groupByPanel, nameRows, panelKey, partsAmong } from './group.ts';

/** Threads that look alike and start into one another, and do not hold. Source: common practice, no source. */
const ALIKE: Readonly<Record<string, string>> = {
  M3: '4-40',
  M4: '8-32',
  M5: '10-32',
  '4-40': 'M3',
  '8-32': 'M4',
  '10-32': 'M5',
};

/** Are there threads on one panel that are easily taken for each other? */
export const lookalikeThread: ListRule = {
  id: 'list/lookalike-thread',
  title: 'Look-alike threads',
  summary: 'No panel has both M3 and 4-40, both M4 and 8-32, or both M5 and 10-32.',
  reason:
    'These pairs look the same and start into each other: parts get swapped at the press, and the wrong screw strips the thread.',
  reads: ['partNumber', 'panel'],
  needs: ['practice-look-alike-threads'],
  texts: {
    alike: {
      brief: '{thread} beside {other} in {rows}',
      full: '{thread} is easily taken for the {other} in {rows} on panel {panel}: keep the parts apart at the press, mark the places, or use one thread.',
    },
  },
  examples: [
    {
      rows: [{}, { partNumber: 'EXAMPLE-NUT-8-32' }, { partNumber: 'EXAMPLE-NUT-M3' }],
      parts: { 'EXAMPLE-NUT-8-32': { thread: '8-32' }, 'EXAMPLE-NUT-M3': { thread: 'M3' } },
      expect: [['note', 'alike'], ['note', 'alike'], null],
    },
    {
      rows: [
        { partNumber: 'EXAMPLE-NUT-M5' },
        { partNumber: 'EXAMPLE-NUT-10-32' },
        { partNumber: 'EXAMPLE-NUT-10-24' },
      ],
      parts: {
        'EXAMPLE-NUT-M5': { thread: 'M5' },
        'EXAMPLE-NUT-10-32': { thread: '10-32' },
        'EXAMPLE-NUT-10-24': { thread: '10-24' },
      },
      expect: [['note', 'alike'], ['note', 'alike'], null],
    },
    {
      rows: [{ partNumber: 'EXAMPLE-NUT-M3' }, { partNumber: 'EXAMPLE-NUT-4-40' }],
      parts: { 'EXAMPLE-NUT-M3': { thread: 'M3' }, 'EXAMPLE-NUT-4-40': { thread: '4-40' } },
      expect: [
        ['note', 'alike'],
        ['note', 'alike'],
      ],
    },
    {
      rows: [{}, { panel: 'P2', partNumber: 'EXAMPLE-NUT-8-32' }, { panel: '', partNumber: 'EXAMPLE-NUT-8-32' }],
      parts: { 'EXAMPLE-NUT-8-32': { thread: '8-32' } },
      expect: [null, null, null],
    },
  ],
  groupOf: panelKey,
  checkList(subjects: readonly Subject[]): Judgements {
    const judgements = new Judgements(subjects);
    if (subjects.length < 2) return judgements;
    const threadOf = createThreadReader();
    for (const rows of groupByPanel(subjects).values()) judgePanel(rows, threadOf, judgements);
    return judgements;
  },
};

type ThreadReader = (part: Fastener | null) => string | null;

function judgePanel(rows: readonly Subject[], threadOf: ThreadReader, judgements: Judgements): void {
  const threads = new Set(partsAmong(rows).map(threadOf));
  if (![...threads].some((thread) => threads.has(ALIKE[thread ?? ''] ?? ''))) return;
  const groups = groupBy(rows, ({ fastener }) => threadOf(fastener));
  const byThread = new Map(groups.map((group) => [threadOf(group[0]?.fastener ?? null), group]));
  for (const [thread, group] of byThread) {
    const other = ALIKE[thread ?? ''];
    const beside = other && byThread.get(other);
    if (!thread || !beside) continue;
    const words = { thread, other, rows: nameRows(beside), panel: group[0]?.line.panel.trim() ?? '' };
    const judgement: Judgement = { outcome: 'note', says: 'alike', words, cites: ['practice-look-alike-threads'] };
    for (const subject of group) judgements.set(subject, judgement);
  }
}

/** The thread that the catalogue gives, under its one name; each spelling is read once. */
function createThreadReader(): ThreadReader {
  const names = new Map<string, string | null>();
  return (fastener) => {
    const text = fastener?.thread ?? '';
    const name = names.get(text) ?? parseThread(text)?.name ?? null;
    names.set(text, name);
    return name;
  };
}
