import type { AuditedLine, Totals } from '../model/audited.ts';
import { VERDICTS, type Verdict } from '../model/outcome.ts';
import { listRules, rules } from '../rules/index.ts';
import { panelKey } from '../rules/list/group.ts';
import { groupBy } from './group-by.ts';

/** Rows of a list that have something in common, and how they stand. */
export interface Share {
  readonly name: string;
  readonly rows: readonly number[];
  readonly totals: Totals;
}

/** One fastener metal in one sheet metal. */
export interface MetalPair extends Share {
  readonly fastener: string;
  readonly sheet: string;
}

/** How a list stands, looked at by panel, by check and by metals. */
export interface Overview {
  /** In the order of the list; '' are rows that name no panel. */
  readonly panels: readonly Share[];
  /** Checks that do not hold somewhere, the one that fails most often first; counted by what the check itself says. */
  readonly checks: readonly Share[];
  /** Metals of fasteners and of sheets, and each pair of them that occurs. */
  readonly fasteners: readonly string[];
  readonly sheets: readonly string[];
  readonly pairs: readonly MetalPair[];
}

const NOT_KNOWN = 'not known';
const TITLES = new Map([...rules, ...listRules].map(({ id, title }) => [id, title]));

/** Counts the verdicts of a judged list by panel, by check, and by pairs of metals. */
export function overviewOf(lines: readonly AuditedLine[]): Overview {
  const pairs = groupBy(lines, (line) => `${fastenerMetal(line)}\n${sheetMetal(line)}`).map((same) => ({
    ...share('', same),
    fastener: fastenerMetal(same[0]),
    sheet: sheetMetal(same[0]),
  }));
  return {
    panels: groupBy(lines, (line) => panelKey(line) ?? '').map((same) => share(same[0].line.panel.trim(), same)),
    checks: checksOf(lines),
    fasteners: sorted(pairs.map(({ fastener }) => fastener)),
    sheets: sorted(pairs.map(({ sheet }) => sheet)),
    pairs,
  };
}

function checksOf(lines: readonly AuditedLine[]): readonly Share[] {
  const said = lines.flatMap(({ row, findings }) =>
    findings.flatMap(({ rule, outcome }) => (isOpen(outcome) ? [{ row, rule, verdict: outcome }] : [])),
  );
  return groupBy(said, ({ rule }) => rule)
    .map((same) => share(TITLES.get(same[0].rule) ?? same[0].rule, same))
    .sort((a, b) => b.totals.fails - a.totals.fails || b.rows.length - a.rows.length);
}

function isOpen(outcome: string): outcome is Exclude<Verdict, 'holds'> {
  return outcome === 'fails' || outcome === 'marginal' || outcome === 'unknown';
}

function share(name: string, rows: readonly { readonly row: number; readonly verdict: Verdict }[]): Share {
  const count = (verdict: Verdict) => rows.filter((row) => row.verdict === verdict).length;
  const totals = Object.fromEntries(VERDICTS.map((verdict) => [verdict, count(verdict)])) as Record<Verdict, number>;
  return { name, rows: rows.map(({ row }) => row), totals };
}

function fastenerMetal({ fastener }: AuditedLine): string {
  return fastener?.material ?? NOT_KNOWN;
}

/** The alloy where it is one, else the sender's own words. */
function sheetMetal({ sheet, line }: AuditedLine): string {
  return sheet?.name || line.material.text.trim() || NOT_KNOWN;
}

/** By name; what is not known comes last. */
function sorted(names: readonly string[]): readonly string[] {
  const known = [...new Set(names)].filter((name) => name !== NOT_KNOWN).sort();
  return names.includes(NOT_KNOWN) ? [...known, NOT_KNOWN] : known;
}
