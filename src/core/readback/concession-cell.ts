import { partKey } from '../catalogue/part-key.ts';
import { nameKey } from '../intake/tree-row.ts';
import type { AuditedList } from '../model/audited.ts';
import type { Concession } from '../model/concession.ts';

/** Headings of the sheet of concessions that an exported workbook carries. The last column, hidden, is for reading it back. */
export const CONCESSION_HEADINGS = [
  'Row in file',
  'Part number',
  'Outcome',
  'Check',
  'Finding',
  'Reason',
  'Accepted by',
  'Date',
  'Stands or lapsed',
  'For reading back',
] as const;

/** What the hidden cell of a concession holds. */
export interface ConcessionCell extends Pick<Concession, 'row' | 'rule' | 'outcome' | 'facts'> {
  /** The row's panel when it was exported, for comparing. */
  readonly panel: string;
  /** How many rows held this part on this panel then: only where it was one is the row known by part and panel. */
  readonly alike: number;
}

/** Leaves room within what a cell of a workbook holds. */
const MOST_CHARACTERS = 32_000;

/** The hidden cell of one concession. Facts that are too many for it are left out, and the concession will lapse. */
export function showConcessionCell({ row, rule, outcome, facts }: Concession, { lines }: AuditedList): string {
  const line = lines.find((one) => one.row === row)?.line;
  const kept: ConcessionCell = {
    row,
    rule,
    outcome,
    panel: nameKey(line?.panel ?? ''),
    alike: line ? lines.filter((one) => isAlike(one.line, line)).length : 0,
    facts,
  };
  const text = JSON.stringify(kept);
  const fits = text.length <= MOST_CHARACTERS ? text : JSON.stringify({ ...kept, facts: '' });
  return fits.replace(
    /[\u007f-\u009f\ufffe\uffff]/g,
    (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`,
  );
}

/** What a hidden cell holds; null where it was damaged. */
export function parseConcessionCell(text: string): ConcessionCell | null {
  const { row, rule, outcome, panel, alike, facts } = parseObject(text);
  const isOutcome = outcome === 'fails' || outcome === 'marginal' || outcome === 'unknown';
  if (typeof row !== 'number' || typeof alike !== 'number' || !isOutcome) return null;
  if (typeof rule !== 'string' || typeof panel !== 'string' || typeof facts !== 'string') return null;
  return { row, rule, outcome, panel, alike, facts };
}

/** The same part on the same panel, however written. */
export function isAlike(one: PlacedPart, other: PlacedPart): boolean {
  return partKey(one.partNumber) === partKey(other.partNumber) && nameKey(one.panel) === nameKey(other.panel);
}

interface PlacedPart {
  readonly partNumber: string;
  readonly panel: string;
}

function parseObject(text: string): Readonly<Record<string, unknown>> {
  try {
    const read: unknown = JSON.parse(text);
    return typeof read === 'object' && read !== null ? (read as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}
