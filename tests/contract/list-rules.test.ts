import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decide, runListRule } from '../../src/core/engine/audit-line.ts';
import { exampleSubjects } from '../../src/core/engine/example.ts';
import { ROLES } from '../../src/core/model/list.ts';
import { findCited } from '../../src/core/reference/index.ts';
import { listRules } from '../../src/core/rules/index.ts';
import type { ListExample, ListRule, Subject } from '../../src/core/rules/rule.ts';

describe.each(listRules.map((rule) => [rule.id, rule] as const))('%s', (_, rule) => {
  it('is named area/thing and says what it asks and why', () => {
    expect(rule.id).toMatch(/^(list|clinch)\/[a-z-]+$/);
    for (const text of [rule.title, rule.summary, rule.reason]) expect(text.length).toBeGreaterThan(3);
  });

  it('reads fields that exist and cites what can be looked up', () => {
    expect(rule.reads.length).toBeGreaterThan(0);
    for (const field of rule.reads) expect(ROLES).toContain(field);
    for (const id of rule.needs) expect(findCited(id), id).toBeDefined();
    for (const { cites, outcome } of rule.examples.flatMap((example) => findingsFor(rule, exampleSubjects(example)))) {
      if (outcome !== 'note') expect(cites.length).toBeGreaterThan(0);
      for (const id of cites) expect(rule.needs).toContain(id);
    }
  });

  it.each(rule.examples.map((example) => [JSON.stringify(example.rows), example] as const))(
    'example %s',
    (_, example) => {
      expect(outcomesOf(rule, exampleSubjects(example))).toEqual(example.expect);
      expect(example.expect).toHaveLength(example.rows.length);
    },
  );

  it('has an example for every text, and one of which it says nothing', () => {
    const shown = rule.examples.flatMap(({ expect }) => expect.map((row) => row?.[1] ?? null));
    const missing = Object.keys(rule.texts).filter((says) => !shown.includes(says));
    // The lengths of an example are in mm: for the question for a unit see the contract of the rule.
    expect(missing.filter((says) => says !== 'no-unit')).toEqual([]);
    expect(shown).toContain(null);
  });

  it('says the same of each row in whatever order the rows come', () => {
    const subjects = everyExample(rule);
    const wanted = sentences(rule, subjects);
    expect([...wanted.values()].filter((sentence) => sentence !== undefined).length).toBeGreaterThan(1);
    fc.assert(
      fc.property(fc.shuffledSubarray([...subjects], { minLength: subjects.length }), (shuffled) => {
        expect(sentences(rule, shuffled)).toEqual(wanted);
      }),
      { numRuns: 20 },
    );
  });

  it('says nothing of a list without rows, of one row, or of rows whose cells it reads are blank', () => {
    const blank = Object.fromEntries(rule.reads.map((field) => [field, '']));
    for (const rows of [[], [{}], [blank, blank, {}]]) {
      expect(runListRule(rule, exampleSubjects({ rows })).size).toBe(0);
    }
  });

  it.runIf(rule.id.startsWith('list/'))('names the other rows, never a row of which it says nothing', () => {
    for (const example of rule.examples) {
      const found = runListRule(rule, exampleSubjects(example));
      const concerned = [...found.keys()].map(({ line }) => line.row);
      for (const { text } of found.values()) {
        const named = [...text.matchAll(/\brows? (\d+(?:, \d+)*(?: and \d+)?)\b/g)].flatMap(
          ([, rows = '']) => rows.match(/\d+/g) ?? [],
        );
        expect(named.length, text).toBeGreaterThan(0);
        for (const row of named) expect(concerned, text).toContain(Number(row));
      }
    }
  });
});

describe('a rule over the whole list that breaks', () => {
  it('makes every row unknown, names itself, and leaves the other rules alone', () => {
    const broken: ListRule = {
      id: 'list/broken',
      title: 'Broken',
      summary: 'Throws on purpose.',
      reason: 'To see that the run goes on.',
      reads: ['panel'],
      needs: [],
      texts: {},
      examples: [],
      groupOf: () => '',
      checkList: () => {
        throw new Error('on purpose');
      },
    };
    const subjects = exampleSubjects({ rows: [{}, { panel: 'P2' }] });
    const findings = [...listRules, broken].map((rule) => runListRule(rule, subjects));
    expect(findings).toHaveLength(listRules.length + 1);
    for (const subject of subjects) {
      const own = findings.flatMap((byRow) => byRow.get(subject) ?? []);
      expect(own.at(-1)).toMatchObject({
        rule: 'list/broken',
        outcome: 'unknown',
        text: expect.stringContaining('list/broken'),
      });
      expect(decide(own).verdict).toBe('unknown');
    }
  });
});

describe('what the rules over the whole list go by', () => {
  const conflict = (...rows: ListExample['rows']) => saysOf('list/panel-conflict', { rows });
  const saysOf = (id: string, example: Omit<ListExample, 'expect'>) => {
    const rule = listRules.find((one) => one.id === id);
    return rule ? outcomesOf(rule, exampleSubjects(example)).map((row) => row?.[1] ?? null) : [];
  };

  it.each([
    [
      'a gauge and its thickness in inches',
      { material: 'CRS', thickness: '16 ga' },
      { material: 'CRS', thickness: '0.0598 in' },
    ],
    ['two roundings of one gauge', { thickness: '.060 in' }, { thickness: '.0598 in' }],
    [
      'the two gauge tables of stainless',
      { material: '304', thickness: '16 ga' },
      { material: '304', thickness: '0.0625 in' },
    ],
    ['a word for any steel and one of them', { material: 'STEEL' }, { material: 'DC01' }],
    ['a metal and a colour', { material: 'DC01' }, { material: 'RAL 7035' }],
    ['two spellings of a panel, one sheet', { panel: 'RC-01' }, { panel: 'rc-01 ' }],
  ] as const)('%s are no conflict', (_, one, other) => {
    expect(conflict(one, other)).toEqual([null, null]);
  });

  it.each([
    ['a tenth of a millimetre', { thickness: '1.5' }, { thickness: '1.6' }, 'thickness'],
    ['one gauge number', { material: 'CRS', thickness: '16 ga' }, { material: 'CRS', thickness: '18 ga' }, 'thickness'],
    ['two metals', { material: 'ALUM' }, { material: 'CRS' }, 'material'],
    ['two tempers', { material: '5052-H32' }, { material: '5052-H34' }, 'material'],
    ['two spellings of a panel, two sheets', { panel: 'RC-01' }, { panel: 'rc-01 ', thickness: '3' }, 'thickness'],
  ] as const)('%s apart is a conflict', (_, one, other, says) => {
    expect(conflict(one, other)).toEqual([says, says]);
  });

  it('a blank cell stays out of a conflict, yet its row is asked about too', () => {
    const rule = listRules.find(({ id }) => id === 'list/panel-conflict');
    const subjects = exampleSubjects({
      rows: [{ thickness: '1' }, { thickness: '' }, { thickness: '2' }, { thickness: '1' }],
    });
    const texts = rule ? [...runListRule(rule, subjects).values()].map(({ text }) => text) : [];
    expect(texts).toHaveLength(4);
    expect(new Set(texts)).toEqual(
      new Set(['Panel P1 is 1.00 mm thick in rows 2 and 5, but 2.00 mm in row 4: which is right?']),
    );
  });

  it.each([
    [5.6, 5.84, ['alike', 'alike']],
    [5.6, 5.85, [null, null]],
    [5.6, 5.6007, [null, null]],
  ] as const)('holes of %d and %d mm', (one, other, says) => {
    const parts = { ONE: { holeMm: one }, OTHER: { holeMm: other } };
    expect(saysOf('list/lookalike-hole', { rows: [{ partNumber: 'ONE' }, { partNumber: 'OTHER' }], parts })).toEqual(
      says,
    );
  });

  it('a part that is not on file may be listed twice, and has neither thread nor hole', () => {
    const rows = [{ partNumber: 'nut 1' }, { partNumber: 'NUT1' }];
    expect(saysOf('list/duplicate', { rows })).toEqual(['twice', 'twice']);
    expect(saysOf('list/lookalike-thread', { rows })).toEqual([null, null]);
  });

  it('many rows are named by the first few', () => {
    const rule = listRules.find(({ id }) => id === 'list/duplicate');
    const subjects = exampleSubjects({ rows: Array.from({ length: 9 }, () => ({})) });
    const texts = rule ? [...runListRule(rule, subjects).values()].map(({ brief }) => brief) : [];
    expect(texts[0]).toBe('Same as rows 3, 4, 5, 6 and 4 more');
    expect(texts[8]).toBe('Same as rows 2, 3, 4, 5 and 4 more');
  });
});

function findingsFor(rule: ListRule, subjects: readonly Subject[]) {
  return [...runListRule(rule, subjects).values()];
}

function outcomesOf(rule: ListRule, subjects: readonly Subject[]) {
  const found = runListRule(rule, subjects);
  return subjects.map((subject) => {
    const finding = found.get(subject);
    return finding ? [finding.outcome, finding.says] : null;
  });
}

/** The rows of all examples of a rule as one list. */
function everyExample({ examples }: ListRule): readonly Subject[] {
  const rows = examples.flatMap((example) => example.rows);
  return exampleSubjects({ rows, parts: Object.assign({}, ...examples.map(({ parts }) => parts)) });
}

function sentences(rule: ListRule, subjects: readonly Subject[]): ReadonlyMap<number, string | undefined> {
  const found = runListRule(rule, subjects);
  const rows = subjects.map((subject) => [subject.line.row, found.get(subject)?.text] as const);
  return new Map(rows.sort(([a], [b]) => a - b));
}
