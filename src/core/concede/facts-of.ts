import type { AuditedLine } from '../model/audited.ts';
import type { Finding } from '../model/finding.ts';
import type { Field, Line } from '../model/line.ts';
import { listRules, rules } from '../rules/index.ts';
import { unitOf } from '../say/show-value.ts';
import { nameOfValue } from '../say/value-names.ts';

/** A fact by its key, as it reads. */
export type Fact = readonly [key: string, value: string];

const READS = new Map<string, readonly Field[]>([...rules, ...listRules].map(({ id, reads }) => [id, reads]));
const OVER_LIST = new Set(listRules.map(({ id }) => id));

const FIELD_NAMES: Readonly<Record<Field, string>> = {
  partNumber: 'part',
  description: 'description',
  quantity: 'quantity',
  panel: 'panel',
  material: 'sheet metal',
  thickness: 'sheet thickness',
  hole: 'hole',
  edge: 'edge distance',
  spacing: 'spacing',
  bend: 'distance to bend',
  fastenerMaterial: 'fastener metal',
  finish: 'finish',
  thread: 'thread',
  length: 'length',
  load: 'load',
  note: 'note',
};

/**
 * What a finding rests on: the part, every field of the row that its check reads, as understood, and the numbers that the check found
 * (of the catalogue, the settings); for a check over the list also its words, which tell of other rows. A cell written in another way
 * but meaning the same is the same fact, and so is a length shown in another unit.
 */
export function factsOf(line: AuditedLine, finding: Finding): readonly Fact[] {
  const fields = new Set<Field>(['partNumber', ...(READS.get(finding.rule) ?? [])]);
  const words = OVER_LIST.has(finding.rule) ? Object.entries(finding.words) : [];
  return [
    ...[...fields].map((field): Fact => [field, showField(line, field)]),
    ['part.material', line.fastener?.material ?? ''],
    ['outcome', finding.outcome],
    ['says', finding.says],
    ...Object.entries(finding.values).map(([key, value]): Fact => [`value.${key}`, showNumber(key, value)]),
    ...words.map(([key, word]): Fact => [`word.${key}`, word.trim()]),
  ];
}

/** Whether a fact's value means something to a reader; the text key and slot words of a finding do not. */
export function isTold(key: string): boolean {
  return key !== 'says' && !key.startsWith('word.');
}

/** What a reader is told where the facts themselves would say nothing. */
export const FOUND = 'what the check found';

/** A fact's name for a reader. */
export function nameOfFact(key: string): string {
  if (key === 'part.material') return 'fastener metal';
  if (key === 'outcome') return 'outcome';
  if (key.startsWith('value.')) return nameOfValue(key.slice('value.'.length));
  return FIELD_NAMES[key as Field] ?? FOUND;
}

function showNumber(key: string, value: number): string {
  return `${Number(value.toFixed(6))}${unitOf(key, 'mm')}`;
}

function showField({ line, fastener, sheet }: AuditedLine, field: Field): string {
  switch (field) {
    case 'partNumber':
      return fastener?.partNumber ?? line.partNumber;
    case 'material':
      return line.material.candidates.join(' or ') || line.material.text;
    case 'thickness':
      return showThickness(line, sheet?.thicknessMm ?? null);
    case 'hole':
      return [size(line.hole), line.hole.lowMm, line.hole.highMm].filter((part) => part !== null).join(' ');
    case 'edge':
    case 'spacing':
    case 'bend':
      return size(line[field]);
    case 'quantity':
      return String(line.quantity.value ?? line.quantity.text);
    default:
      return line[field].trim();
  }
}

/** A gauge counts as what it is in the metal of the row. */
function showThickness({ thickness }: Line, mm: number | null): string {
  const { text, toleranceMm } = thickness;
  const nominal = mm === null ? text.trim() : `${mm} mm`;
  return toleranceMm ? `${nominal} +${toleranceMm.plus}/-${toleranceMm.minus}` : nominal;
}

function size({ text, mm, how }: { readonly text: string; readonly mm: number | null; readonly how: string }): string {
  return how === 'size' && mm !== null ? `${mm} mm` : text.trim();
}
