import type { AuditedList } from '../../core/model/audited.ts';
import type { Outcome } from '../../core/model/outcome.ts';
import { DEMO_WORDS, SAFETY_SHORT } from '../../core/say/safety.ts';
import type { PlannedCell, PlannedRow } from './sheet-plan.ts';
import type { Style } from './style.ts';

const QUIET = 'FF7A8288';
const LINE_HEIGHT = 14;
/** Of bold words, mostly long ones, this share goes into the same width. */
const BOLD_FITS = 0.8;

/** Cells of rows. */
export const BODY: Style = { top: true };
export const WRAPPED: Style = { top: true, wraps: true };
export const QUIET_BODY: Style = { top: true, ink: QUIET };
/** Sentences under a table. */
export const WORDS: Style = { italic: true, ink: QUIET };
/** Taken back. */
export const STRUCK: Style = { top: true, wraps: true, strike: true, ink: QUIET };

/** Bold on a pale ground, wrapped, with a rule below. */
const HEADING: Style = { bold: true, ground: 'FFEEECE6', top: true, wraps: true, ruled: true };
/** Heading of one of our own columns: told from the sender's by its ground. */
export const OWN_HEADING: Style = { ...HEADING, ground: 'FFE3E8EE' };

/** Ground and ink of each outcome; the word is always there too. */
const OUTCOMES: Readonly<Record<Outcome, Style>> = {
  holds: outcomeStyle('FFE3F2EA', 'FF14634A'),
  marginal: outcomeStyle('FFFBEFD9', 'FF7D4E08'),
  fails: outcomeStyle('FFFBE4E1', 'FF9A271F'),
  unknown: outcomeStyle('FFE9EBEE', 'FF434C56'),
  note: outcomeStyle('FFFFFFFF', 'FF5C666D'),
};

const OUTCOME_CELLS = Object.fromEntries(
  Object.entries(OUTCOMES).map(([value, style]) => [value, { value, style }]),
) as Readonly<Record<Outcome, PlannedCell>>;

/** The word of an outcome in its colours. */
export function outcomeCell(outcome: Outcome): PlannedCell {
  return OUTCOME_CELLS[outcome];
}

/** The row of headings over columns of these widths, as tall as they need. */
export function headingRow(headings: readonly string[], widths: readonly number[]): PlannedRow {
  return { cells: headings.map((value) => ({ value, style: HEADING })), height: headingHeight(headings, widths) };
}

/** Height in points of a row of headings. */
export function headingHeight(headings: readonly string[], widths: readonly number[]): number {
  return heightFor(headings.map((heading, at) => [heading, (widths[at] ?? 1) * BOLD_FITS]));
}

/** A text; one that begins like a formula is marked as text, so that a later edit does not bring it to life. */
export function textCell(value: string, style: Style = BODY): PlannedCell | null {
  if (value === '') return null;
  return { value, style: /^[=+\-@]/.test(value) ? withFormat(style, '@') : style };
}

/** A number; nothing for one that is none. */
export function numberCell(value: number | null, style: Style = BODY): PlannedCell | null {
  return value === null || !Number.isFinite(value) ? null : { value, style };
}

const FORMATTED = new Map<string, WeakMap<Style, Style>>();

/** A style with a number format: the same each time, so that it is found again quickly. */
export function withFormat(style: Style, format: string): Style {
  const styles = FORMATTED.get(format) ?? new WeakMap<Style, Style>();
  const made = styles.get(style) ?? { ...style, format };
  FORMATTED.set(format, styles.set(style, made));
  return made;
}

/**
 * Height of a row in points, as tall as its longest wrapped text needs: spreadsheets do not all see to that by themselves when they open
 * a file.
 */
export function heightFor(wrapped: readonly (readonly [text: string, width: number])[]): number {
  let lines = 1;
  for (const [text, width] of wrapped) lines = Math.max(lines, linesOf(text, width));
  return lines * LINE_HEIGHT + 2;
}

/** Words wrap whole, so a line is rarely quite full. */
function linesOf(text: string, width: number): number {
  const fit = width * 1.12;
  if (text.length <= fit && !text.includes('\n')) return 1;
  return text.split('\n').reduce((sum, part) => sum + Math.max(1, Math.ceil(part.length / fit)), 0);
}

/** What stands at the foot of every printed page. */
export function footerOf(list: AuditedList): string {
  return `&L&8${isDemo(list) ? `${DEMO_WORDS} ` : ''}${SAFETY_SHORT}&R&8&P / &N`;
}

/** What stands under a judged list. */
export function wordsUnder(list: AuditedList): readonly string[] {
  return isDemo(list) ? [DEMO_WORDS, SAFETY_SHORT] : [SAFETY_SHORT];
}

/** True when any catalogue behind the judgement is invented demonstration data. */
export function isDemo({ catalogues }: AuditedList): boolean {
  return catalogues.some(({ demo }) => demo);
}

function outcomeStyle(ground: string, ink: string): Style {
  return { bold: true, ground, ink, top: true, indent: 1 };
}
