import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { Column, Role } from '../../core/model/list.ts';
import { describeRemedies } from '../../core/say/describe.ts';

/** Notes on more cells than this make a workbook slow to open. */
export const MOST_NOTES = 2000;

/** The cell that decides a check, by the check or its area; where the list has no such column, the part number. */
const DECIDED_BY: Readonly<Record<string, Role>> = {
  'part/description': 'description',
  'sheet/material': 'material',
  sheet: 'thickness',
  'clinch/family': 'material',
  'clinch/hardness': 'material',
  'clinch/sheet-thickness': 'thickness',
  'clinch/shank': 'thickness',
  'clinch/hole': 'hole',
  'clinch/rim': 'hole',
  'clinch/edge': 'edge',
  'clinch/bend': 'bend',
  'clinch/spacing': 'spacing',
  'finish/galvanic': 'material',
  finish: 'finish',
  joint: 'load',
  'list/quantity': 'quantity',
  'list/panel-conflict': 'thickness',
};
const REMEDIES_SHOWN = 3;

/** A note and the 0-based column that it belongs in. */
export interface DecidingNote {
  readonly column: number;
  readonly text: string;
}

/** What decides a row that does not hold, on its cell: the sentence with its cure, and the parts that would hold. Null for one that holds. */
export function decidingNote(line: AuditedLine, { columns }: AuditedList): DecidingNote | null {
  const { verdict, decidedBy } = line;
  if (verdict === 'holds' || decidedBy === null) return null;
  const remedies = describeRemedies(line, REMEDIES_SHOWN);
  const instead = remedies === '' ? '' : `\nWould hold instead: ${remedies}`;
  return { column: columnOf(decidedBy.rule, columns), text: `${capital(verdict)}: ${decidedBy.text}${instead}` };
}

/** How many rows get no note of their own, said where the notes are looked for; nothing when all get one. */
export function noteOnNotes({ lines }: AuditedList): string | undefined {
  const wanted = lines.filter(({ verdict, decidedBy }) => verdict !== 'holds' && decidedBy !== null).length;
  if (wanted <= MOST_NOTES) return undefined;
  return `${wanted} rows do not hold. The first ${MOST_NOTES} have a note on the cell that decides; the others say what decides in this column alone, so that the file stays quick to open.`;
}

function columnOf(rule: string, columns: readonly Column[]): number {
  const role = DECIDED_BY[rule] ?? DECIDED_BY[rule.split('/')[0] ?? ''];
  const find = (wanted: Role | undefined) => columns.find((column) => column.role === wanted)?.index;
  return find(role) ?? find('partNumber') ?? columns[0]?.index ?? 0;
}

function capital(word: string): string {
  return word.charAt(0).toUpperCase() + word.slice(1);
}
