import type { PartIndex } from '../catalogue/find-part.ts';
import { partKey } from '../catalogue/part-key.ts';
import type { AuditedLine, AuditedList } from '../model/audited.ts';
import type { Verdict } from '../model/outcome.ts';
import type { ShopSettings } from '../model/shop.ts';
import { panelKey } from '../rules/list/group.ts';
import { describeSheet } from '../say/describe.ts';
import { groupBy } from './group-by.ts';
import { capital, nameEveryRow } from './name-rows.ts';
import { FIRST_PIECE } from './press-practice.ts';
import { forceOf, type PressStep, toStep } from './press-step.ts';

/** A row that is not to be pressed as it stands. */
export interface NotYet {
  readonly row: number;
  readonly partNumber: string;
  readonly verdict: Verdict;
  readonly reason: string;
}

/** What to press into one panel. */
export interface PressPanel {
  /** As first written; '' for rows that name no panel. */
  readonly panel: string;
  readonly steps: readonly PressStep[];
  /** What to look at on the first piece, a sentence each. */
  readonly firstPiece: readonly string[];
  /** Parts and holes that are easily taken for each other, a sentence each. */
  readonly warnings: readonly string[];
  readonly notYet: readonly NotYet[];
  /** The user has set the order of the steps; left out: it is the suggested one. */
  readonly isOrderSet?: true;
}

/** What to press, panel by panel in the order of the list. */
export interface PressSheet {
  readonly builds: number;
  readonly panels: readonly PressPanel[];
}

/** The press sheet of an audited list: rows that hold, and marginal ones marked so; every other row is named as not to be pressed. */
export function rollUpPress({ lines, shop }: AuditedList, parts: PartIndex): PressSheet {
  const panels = groupBy(lines, (line) => panelKey(line) ?? '').map((rows) => toPanel(rows, shop, parts));
  return { builds: shop.buildQuantity, panels };
}

function toPanel(lines: readonly [AuditedLine, ...AuditedLine[]], shop: ShopSettings, parts: PartIndex): PressPanel {
  const pressed = lines.filter((line) => isPressed(line, parts));
  const steps = inOrder(pressed, shop, parts);
  return {
    panel: lines[0].line.panel.trim(),
    steps,
    firstPiece: firstPieceOf(steps),
    warnings: warningsOf(pressed),
    notYet: lines
      .filter((line) => !isPressed(line, parts))
      .map(({ row, line, verdict, decidedBy }) => ({
        row,
        partNumber: line.partNumber.trim(),
        verdict,
        reason: decidedBy?.brief ?? 'Not on file in these catalogues',
      })),
  };
}

function isPressed({ verdict, line }: AuditedLine, parts: PartIndex): boolean {
  return (verdict === 'holds' || verdict === 'marginal') && parts.find(line.partNumber) !== null;
}

/** Largest force last, so that what is already in does not stand in the way of the heaviest stroke; a force not given comes after all. */
function inOrder(lines: readonly AuditedLine[], shop: ShopSettings, parts: PartIndex): readonly PressStep[] {
  const alike = (line: AuditedLine) =>
    JSON.stringify([
      partKey(line.line.partNumber),
      describeSheet(line, shop.units),
      forceOf(line),
      line.verdict,
      line.decidedBy?.brief,
    ]);
  const force = ({ forceKn }: Pick<PressStep, 'forceKn'>) => forceKn ?? Number.MAX_VALUE;
  return groupBy(lines, alike)
    .flatMap((rows) => {
      const part = parts.find(rows[0].line.partNumber);
      return part ? [toStep(rows, part, shop)] : [];
    })
    .sort((a, b) => force(a) - force(b) || (a.rows[0] ?? 0) - (b.rows[0] ?? 0))
    .map((step, index) => ({ order: index + 1, ...step }));
}

function firstPieceOf(steps: readonly PressStep[]): readonly string[] {
  if (steps.length === 0) return [];
  const hasThread = steps.some(({ thread }) => thread !== null);
  const { seat, sheet, thread } = FIRST_PIECE;
  return hasThread ? [seat, sheet, thread] : [seat, sheet];
}

/** What the checks found of look-alikes, each said once with the rows that it was said of. */
function warningsOf(lines: readonly AuditedLine[]): readonly string[] {
  const said = lines.flatMap(({ row, findings }) =>
    findings.filter(({ rule }) => rule.startsWith('list/lookalike-')).map(({ text }) => ({ row, text: text.trim() })),
  );
  return groupBy(said, ({ text }) => text).map((same) => {
    const rows = [...new Set(same.map(({ row }) => row))];
    return `${capital(nameEveryRow(rows))}: ${same[0].text}`;
  });
}
