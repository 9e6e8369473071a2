import type { AuditedLine, FastenerSummary, Remedy, Requirement, SheetSummary } from '../model/audited.ts';
import type { Finding } from '../model/finding.ts';
import type { Line } from '../model/line.ts';
import type { Verdict } from '../model/outcome.ts';
import type { Judged, JudgedRow } from './judge-rows.ts';

/** What all the rules say of a row. */
export type AllSaid = Pick<AuditedLine, 'findings' | 'verdict' | 'decidedBy'>;

/** One judged row; its remedies are sought when they are first asked for. */
export class AuditedRow implements AuditedLine {
  declare readonly row: number;
  declare readonly line: Line;
  declare readonly verdict: Verdict;
  declare readonly decidedBy: Finding | null;
  declare readonly findings: readonly Finding[];
  declare readonly fastener: FastenerSummary | null;
  declare readonly sheet: SheetSummary | null;
  declare readonly requires: Requirement | null;
  declare readonly quantity: number | null;
  declare readonly extendedQuantity: number | null;
  readonly #judged: Judged;

  constructor({ subject, judged }: JudgedRow, said: AllSaid) {
    const { line, pieces } = subject;
    this.row = line.row;
    this.line = line;
    this.verdict = said.verdict;
    this.decidedBy = said.decidedBy;
    this.findings = said.findings;
    this.fastener = judged.fastener;
    this.sheet = judged.sheet;
    this.requires = judged.requires;
    this.quantity = line.quantity.value;
    this.extendedQuantity = pieces;
    this.#judged = judged;
  }

  get remedies(): readonly Remedy[] {
    return this.#judged.remedies();
  }

  toJSON(): AuditedLine {
    return { ...this, remedies: this.remedies };
  }
}
