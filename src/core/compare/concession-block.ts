import { describeStanding } from '../concede/describe.ts';
import type { ReportBlock } from '../rollup/report.ts';
import type { Comparison, ConcessionFate } from './comparison.ts';

const HEADINGS = [
  'Row before',
  'Row after',
  'Part number',
  'Check',
  'Finding',
  'Reason',
  'Accepted by',
  'Date',
  'Becomes',
];

/** What becomes of each concession. */
export function concessionBlock({ concessions }: Comparison): ReportBlock {
  const rows = concessions.map(({ given, before, after, ...fate }) => [
    ...[given.row, after?.row ?? null, (after ?? before)?.partNumber ?? '', given.rule, given.says],
    ...[given.reason, given.by, given.date, becomes(fate)],
  ]);
  return { title: 'Concessions', headings: HEADINGS, rows, notes: [] };
}

function becomes({ state, changed }: Pick<ConcessionFate, 'state' | 'changed'>): string {
  if (state === 'carried') return 'carried over';
  return state === 'gone' ? 'gone with its row' : describeStanding({ kind: 'lapsed', changed });
}
