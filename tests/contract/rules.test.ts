import { describe, expect, it } from 'vitest';
import { auditLine, decide } from '../../src/core/engine/audit-line.ts';
import { exampleSubject, findingFor } from '../../src/core/engine/example.ts';
import { ROLES } from '../../src/core/model/list.ts';
import { findCited } from '../../src/core/reference/index.ts';
import { rules } from '../../src/core/rules/index.ts';
import type { Rule } from '../../src/core/rules/rule.ts';
import { nameOfValue } from '../../src/core/say/value-names.ts';
import { plain } from '../plain.ts';

describe.each(rules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  it('is named area/thing and says what it asks and why', () => {
    expect(rule.id).toMatch(/^[a-z]+\/[a-z-]+$/);
    for (const text of [rule.title, rule.summary, rule.reason]) expect(text.length).toBeGreaterThan(3);
  });

  it('reads fields that exist and cites tables that exist', () => {
    expect(rule.reads.length).toBeGreaterThan(0);
    for (const field of rule.reads) expect(ROLES).toContain(field);
    for (const id of rule.needs) expect(findCited(id), id).toBeDefined();
  });

  it.each(
    rule.examples.map(
      (example) => [JSON.stringify({ ...example.cells, ...example.part, ...example.shop }), example] as const,
    ),
  )('example %s', (_, example) => {
    const finding = findingFor(rule, example);
    expect([finding?.outcome, finding?.says, finding?.text]).toEqual([
      example.outcome,
      example.says,
      expect.any(String),
    ]);
  });

  it('gives each of its numbers a name in words', () => {
    const keys = new Set(rule.examples.flatMap((example) => Object.keys(findingFor(rule, example)?.values ?? {})));
    expect([...keys].filter((key) => nameOfValue(key) === key && key !== 'scatter')).toEqual([]);
  });

  it('has an example for every text', () => {
    const shown = new Set(rule.examples.map(({ says }) => says));
    const missing = Object.keys(rule.texts).filter((says) => !shown.has(says));
    expect(missing).toEqual([]);
  });

  it('cites something that can be looked up whenever a row fails or is marginal', () => {
    for (const example of rule.examples.filter(({ outcome }) => outcome === 'fails' || outcome === 'marginal')) {
      const cites = findingFor(rule, example)?.cites ?? [];
      expect(cites.length, JSON.stringify(example.cells)).toBeGreaterThan(0);
      for (const id of cites) expect(findCited(id), id).toBeDefined();
    }
  });

  it('never holds and never breaks when a field that it reads is blank', () => {
    for (const field of rule.reads) {
      const finding = findingFor(rule, { cells: { [field]: '' }, ...(field === 'partNumber' ? { part: null } : {}) });
      if (finding === undefined) continue;
      expect(finding.says, `${field} blank`).not.toBe('broken');
      if (isRequired(rule, field))
        expect(['unknown', 'note'], `${field} blank: ${finding.text}`).toContain(finding.outcome);
    }
  });

  it('says nothing of a part that is not on file, or says that it is unknown', () => {
    const outcome = findingFor(rule, { cells: {}, part: null })?.outcome;
    if (rule.id.startsWith('clinch/')) expect(outcome).toBeUndefined();
    if (rule.id === 'part/listed') expect(outcome).toBe('unknown');
  });
});

/** What the row says of the fastener and of the work in words: that counts, its silence is no missing fact. */
const FREE_TEXT: ReadonlySet<string> = new Set([
  'description',
  'fastenerMaterial',
  'thread',
  'length',
  'finish',
  'load',
  'note',
]);

/** A thickness in millimetres needs no metal to be read, nor does its comparison with a minimum, nor a hole with its band. */
function isRequired(rule: Rule, field: string): boolean {
  if (FREE_TEXT.has(field)) return false;
  const metalIsAside = ['sheet/thickness-read', 'clinch/sheet-thickness', 'clinch/hole'];
  const readsThicknessForAdviceOnly = rule.id === 'clinch/hardness' && field === 'thickness';
  return !(metalIsAside.includes(rule.id) && field === 'material') && !readsThicknessForAdviceOnly;
}

describe('a rule that breaks', () => {
  const broken: Rule = {
    id: 'test/broken',
    title: 'Broken',
    summary: 'Throws on purpose.',
    reason: 'To see that the run goes on.',
    reads: ['partNumber'],
    needs: [],
    texts: {},
    examples: [],
    check: () => {
      throw new Error('on purpose');
    },
  };
  const notANumber: Rule = {
    ...broken,
    id: 'test/not-a-number',
    texts: { said: { brief: '{xMm}', full: '{xMm}' } },
    check: () => ({ outcome: 'holds', says: 'said', values: { xMm: Number.NaN } }),
  };

  it.each([broken, notANumber])('makes its row unknown, names itself, and leaves the other findings alone', (rule) => {
    const subject = exampleSubject({ cells: {} });
    const findings = auditLine(subject, [...rules, rule]);
    expect(plain(findings.slice(0, -1))).toEqual(plain(auditLine(subject, rules)));
    expect(findings.at(-1)).toMatchObject({
      rule: rule.id,
      outcome: 'unknown',
      text: expect.stringContaining(rule.id),
    });
    expect(decide(findings).verdict).toBe('unknown');
  });
});
