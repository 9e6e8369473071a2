import { partKey } from '../catalogue/part-key.ts';
import type { AuditedLine } from '../model/audited.ts';
import type { Finding } from '../model/finding.ts';
import type { Column, LengthUnit } from '../model/list.ts';
import { panelKey } from '../rules/list/group.ts';
import { fillText } from '../say/fill.ts';
import { type Answerable, aboutOf } from './about.ts';
import { type AskText, findAskText, WHICH_FASTENER_METAL, WHICH_METAL } from './ask-texts.ts';
import { piecesOf } from './pieces.ts';

/** One thing that one row asks of the sender. */
export interface RowAsk {
  /** Asks with one key are one question. */
  readonly key: string;
  /** Panel of the answer; null where one answer serves the whole list. */
  readonly panel: string | null;
  readonly line: AuditedLine;
  /** The question; where data of a part are missing, only what is missing. */
  readonly text: string;
  readonly isData: boolean;
  /** The fact that the answer gives; null where it belongs into no cell of the row. */
  readonly about: Answerable | null;
  /** Why it matters, where the question does not say; '' otherwise. */
  readonly because: string;
}

/** What has to be known of the list to ask about a row of it. */
export interface AskContext {
  readonly columns: readonly Column[];
  readonly units: LengthUnit;
}

/** Everything to ask about one row: what is unknown or marginal, and a quantity that cannot be used. Each topic once. */
export function askRow(line: AuditedLine, context: AskContext): readonly RowAsk[] {
  const asked = new Set<string>();
  return [...line.findings.filter(isOpen), ...quantityFinding(line)].flatMap((finding) => {
    const askText = askTextFor(finding, line);
    const ask = toRowAsk(finding, askText, line, context);
    const topic = askText?.topic && !ask.isData ? askText.topic : ask.text;
    if (asked.has(topic)) return [];
    asked.add(topic);
    return [ask];
  });
}

/** A check that broke is ours to mend: the sender cannot settle it. */
function isOpen({ outcome, says }: Finding): boolean {
  return (outcome === 'unknown' || outcome === 'marginal') && says !== 'broken';
}

/** The finding about the quantity, where the row cannot be counted; one of our own where only a quantity above it is at fault. */
function quantityFinding(line: AuditedLine): readonly Finding[] {
  if (piecesOf(line) !== null) return [];
  const found = line.findings.find(({ rule }) => rule === 'list/quantity');
  return found ? [found] : [];
}

/** Where the words could mean several metals, the first thing to know is which. */
function askTextFor({ rule, says }: Finding, { line }: AuditedLine): AskText | null {
  const isVague = line.material.candidates.length > 1;
  if (isVague && rule === 'clinch/hardness' && /^(?:limit-)?marginal/.test(says)) return WHICH_METAL;
  if (says !== 'some' && says !== 'some-may') return findAskText(rule, says);
  return isVague && !rule.startsWith('finish/') ? WHICH_METAL : WHICH_FASTENER_METAL;
}

function toRowAsk(
  finding: Finding,
  askText: AskText | null,
  line: AuditedLine,
  { columns, units }: AskContext,
): RowAsk {
  const words = { ...finding.words, ...wordsOf(line), heading: headingFor(finding.rule, columns) };
  const text = askText
    ? fillText({ brief: '', full: askText.text }, finding.values, words, units).full
    : plain(finding);
  const panel = askText?.scope === 'list' ? null : (panelKey(line) ?? '');
  const isData = askText?.topic === 'data';
  const key = isData ? `data ${partKey(line.line.partNumber)}` : `${panel ?? 'list'}\n${text}`;
  const isChoice = askText === WHICH_METAL || askText === WHICH_FASTENER_METAL;
  const about = aboutOf(finding, askText);
  return { key, panel, line, text, isData, about, because: isChoice ? whyOf(finding) : '' };
}

/** What hangs on a choice: "holds in 5052-H32, not in 7075-T6", or the one metal that is in doubt. */
function whyOf({ brief, words, says }: Finding): string {
  return says.startsWith('some') || !words.sheet ? brief : `in ${words.sheet}: ${brief}`;
}

function wordsOf({ line, fastener }: AuditedLine) {
  return {
    rowPart: fastener?.partNumber ?? line.partNumber.trim(),
    rowMetal: line.material.text.trim() || (line.material.takenFrom?.text.trim() ?? ''),
  };
}

/** The sender's own heading of the column that a check reads. */
function headingFor(rule: string, columns: readonly Column[]): string {
  const role = rule === 'sheet/thickness-read' ? 'thickness' : rule.split('/')[1];
  return columns.find((column) => column.role === role)?.heading.trim() || (role ?? '');
}

/** The finding's own sentence as a question. */
function plain({ text, outcome }: Finding): string {
  const said = text.trim();
  if (said.endsWith('?')) return said;
  return `${said} ${outcome === 'unknown' ? 'Can you tell us?' : 'How shall this be settled?'}`;
}
