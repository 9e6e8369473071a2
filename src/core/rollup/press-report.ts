import type { AuditedList } from '../model/audited.ts';
import { SAFETY_WORDS } from '../say/safety.ts';
import { distinct } from './group-by.ts';
import { listRows } from './name-rows.ts';
import type { PressPanel, PressSheet } from './press.ts';
import { ORDER_SET, PRACTICE_MARK, SAMPLE_WORDS, SUGGESTED_ORDER } from './press-practice.ts';
import type { PressStep } from './press-step.ts';
import { headingOf } from './questions.ts';
import { footOf, type Report, type ReportBlock } from './report.ts';

const HEADINGS = [
  'Panel',
  'Order',
  'Verdict',
  'Part number',
  'Kind',
  'Thread',
  'Rows',
  'Sheet',
  'Hole at the press',
  'Press from',
  'Force (kN)',
  'Force is',
  'Pieces as listed',
  'Lot',
  'Push-out sample',
  'Rated push-out (N)',
  'Settle first',
];

const NOT_YET_HEADINGS = ['Panel', 'Row', 'Verdict', 'Part number', 'Reason'];

/** The press sheet as tables: one a panel, what goes for every panel, and the rows that are not to be pressed yet. */
export function pressReport(list: AuditedList, { panels }: PressSheet): Report {
  const blocks = panels
    .filter(({ steps }) => steps.length > 0)
    .map(
      (panel): ReportBlock => ({
        title: headingOf(panel.panel),
        headings: HEADINGS,
        rows: panel.steps.map((step) => stepRow(step, panel)),
        notes: panelNotes(panel),
      }),
    );
  const general: ReportBlock = { title: 'Every panel', headings: HEADINGS, rows: [], notes: generalNotes(panels) };
  return { blocks: [...blocks, general, ...notYetBlock(panels)], foot: footOf(list, SAFETY_WORDS) };
}

function stepRow(step: PressStep, { panel }: PressPanel): ReportBlock['rows'][number] {
  return [
    panel,
    step.order,
    step.verdict,
    step.partNumber,
    step.kind,
    step.thread,
    listRows(step.rows),
    step.sheet,
    step.hole ?? 'not in the catalogue',
    step.side,
    step.forceKn ?? 'not in the catalogue',
    step.forceBasis,
    step.pieces,
    step.lot,
    step.pushOutSample,
    step.ratedPushOutN,
    step.settle,
  ];
}

/** Punch and anvil for each kind in a panel, once. */
export function fixtureNotes(steps: readonly PressStep[]): readonly string[] {
  return distinct(
    steps.map(({ kind, fixture }) =>
      fixture ? `Punch and anvil for ${kind} (${PRACTICE_MARK}; the part's own data go first): ${fixture}.` : '',
    ),
  );
}

function panelNotes({ steps, warnings, isOrderSet }: PressPanel): readonly string[] {
  const order = isOrderSet ? [ORDER_SET] : [];
  return [...order, ...fixtureNotes(steps), ...warnings.map((warning) => `Look-alikes: ${warning}`)];
}

function generalNotes(panels: readonly PressPanel[]): readonly string[] {
  const checks = distinct(panels.flatMap(({ firstPiece }) => firstPiece));
  if (checks.length === 0) return ['No row is to be pressed yet.'];
  return [SUGGESTED_ORDER, ...checks.map((check) => `First piece (${PRACTICE_MARK}): ${check}`), SAMPLE_WORDS];
}

function notYetBlock(panels: readonly PressPanel[]): readonly ReportBlock[] {
  const rows = panels.flatMap(({ panel, notYet }) =>
    notYet.map(({ row, verdict, partNumber, reason }) => [panel, row, verdict, partNumber, reason]),
  );
  return rows.length === 0 ? [] : [{ title: 'Not to be pressed yet', headings: NOT_YET_HEADINGS, rows, notes: [] }];
}
