import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { auditLine, decide } from '../../src/core/engine/audit-line.ts';
import { exampleSubject, exampleSubjects, listFindingsFor } from '../../src/core/engine/example.ts';
import { summariseFastener } from '../../src/core/engine/summarise.ts';
import type { AuditedLine, AuditedList } from '../../src/core/model/audited.ts';
import type { Finding } from '../../src/core/model/finding.ts';
import { nameEveryRow } from '../../src/core/rollup/name-rows.ts';
import { askSender, showQuestions } from '../../src/core/rollup/questions.ts';
import { listRules, rules } from '../../src/core/rules/index.ts';
import type { Subject } from '../../src/core/rules/rule.ts';
import { SAFETY_SHORT } from '../../src/core/say/safety.ts';
import { judged, NUT } from './rollup-list.ts';

const PARTS = [
  `NUT-A,${NUT},,,,,,,`,
  `NUT-SOFTER,${NUT.replace('HRC 32', 'HRC 26')},,,,,,,`,
  'NUT-BARE,clinch nut,M4,carbon-steel-hardened,,,,,,,,,,,,,,,,,',
];

describe('questions to the sender', () => {
  const rows = [
    'NUT-A,P1,,1.5,5.6,4', // row 2
    'NUT-A,P1,DC01,1.5,5.6,', // row 3: quantity
    'nut a 2,P1,,1.5,5.6,4', // row 4: not on file either
    'NUT-A,P2,DC01,,5.6,4', // row 5
    'NUT-A,P2,DC01,,5.6,4',
    'NUT-BARE,P3,DC01,1.5,,4', // row 7
    'NUT-BARE,P2,DC01,,,4',
    'NUT-A,P3,DC01,1.5,5.6,4', // row 9: holds
    'NUT-A,P4,ALUM,1.5,5.6,4', // row 10: in 7075-T6 marginal
    'NUT-SOFTER,P4,ALUM,1.5,5.6,4', // row 11: in 7075-T6 it fails
  ];
  const { list } = judged(rows, PARTS);
  const questions = askSender(list);
  const asked = (row: number) => questions.filter((question) => question.rows.includes(row));

  it('asks an equal question of several rows once, with the sender’s own part numbers', () => {
    const [metal] = questions.filter(({ text }) => text.startsWith('The sheet metal is missing'));
    expect(metal).toMatchObject({ panel: 'P1', rows: [2, 4], partNumbers: ['NUT-A', 'nut a 2'] });
    const thickness = questions.filter(({ text }) => text.includes('thickness is missing'));
    expect(thickness).toMatchObject([{ panel: 'P2', rows: [5, 6, 8] }]);
  });

  it('puts together what a part lacks in the catalogue, over all panels', () => {
    const [data, ...more] = questions.filter(({ text }) => text.startsWith('Our catalogue'));
    expect(data).toMatchObject({ panel: null, rows: [7, 8], partNumbers: ['NUT-BARE'] });
    expect(data?.text).toContain('minimum sheet thickness');
    expect(more).toEqual([]);
  });

  it('asks about quantities that cannot be used', () => {
    expect(asked(3)).toMatchObject([{ panel: 'P1', text: 'The quantity is missing. How many pieces are needed?' }]);
  });

  it('says what hangs on the answer where words could mean several metals', () => {
    expect(asked(10)).toMatchObject([
      {
        rows: [10, 11],
        text: expect.stringContaining('“ALUM”'),
        because: [expect.stringContaining('in 7075-T6: '), expect.stringContaining('not in 7075-T6')],
      },
    ]);
  });

  it('asks nothing about a row that holds', () => {
    expect(asked(9)).toEqual([]);
  });

  it('makes a letter: greeting, panels, rows, no more than the questions, safety words once', () => {
    const letter = showQuestions(list, questions);
    expect(letter.startsWith('Hello,\n')).toBe(true);
    expect(letter).toContain('Panel P2\n');
    expect(letter).toContain('Rows 5, 6 and 8 (NUT-A, NUT-BARE): The sheet thickness is missing.');
    expect(letter.split(SAFETY_SHORT)).toHaveLength(2);
    expect(letter.match(/^\d+\. /gm)).toHaveLength(questions.length);
  });

  it('says so where there is nothing to ask', () => {
    const good = judged(['NUT-A,P1,DC01,1.5,5.6,4'], PARTS).list;
    expect(showQuestions(good, askSender(good))).toContain('We have no questions about it.');
  });
});

describe('laws of the questions', () => {
  const row = fc
    .tuple(
      fc.constantFrom('NUT-A', 'NUT-BARE', 'NUT-X', ''),
      fc.constantFrom('P1', 'P2', 'p2 ', ''),
      fc.constantFrom('DC01', 'ALUM', '', 'zorbium', 'S420MC', '304'),
      fc.constantFrom('1.5', '', 'thick', '16 ga', '60 in'),
      fc.constantFrom('5.6', '', '5.6 ±0.1', 'as drawn'),
      fc.constantFrom('4', '', '0', '2.5'),
    )
    .map((cells) => cells.join(','));

  it('every row that is unknown or cannot be counted is asked about; nothing is asked twice; numbers run through', () => {
    fc.assert(
      fc.property(fc.array(row, { minLength: 2, maxLength: 12 }), (rows) => {
        const { list } = judged(rows, PARTS);
        const questions = askSender(list);
        for (const { row, verdict, extendedQuantity } of list.lines) {
          const isOpen = verdict === 'unknown' || verdict === 'marginal' || !extendedQuantity || extendedQuantity % 1;
          if (isOpen)
            expect(
              questions.some((question) => question.rows.includes(row)),
              String(row),
            ).toBe(true);
        }
        const keys = questions.map(({ panel, text }) => `${panel}: ${text}`);
        expect(new Set(keys).size).toBe(keys.length);
        expect(questions.map(({ number }) => number)).toEqual(questions.map((_, index) => index + 1));
        expect(askSender(judged(rows, PARTS).list)).toEqual(questions);
      }),
      { numRuns: 80 },
    );
  });

  const single = rules.flatMap((rule) =>
    rule.examples
      .filter(({ outcome }) => outcome === 'unknown' || outcome === 'marginal')
      .map((example) => {
        const subject = exampleSubject(example);
        return [rule.id, example.says, toLine(subject, auditLine(subject, [rule]))] as const;
      }),
  );
  const together = listRules.flatMap((rule) =>
    rule.examples.flatMap((example) => {
      const subjects = exampleSubjects(example);
      return listFindingsFor(rule, example).flatMap((finding, index) => {
        const subject = subjects[index];
        const isOpen = finding?.outcome === 'unknown' || finding?.outcome === 'marginal';
        return subject && finding && isOpen ? [[rule.id, finding.says, toLine(subject, [finding])] as const] : [];
      });
    }),
  );

  it.each([...single, ...together])(
    '%s, %s: every unknown and marginal example becomes one question',
    (_, __, line) => {
      const { list } = judged(['NUT-A,P1,DC01,1.5,5.6,4'], PARTS);
      const questions = askSender({ ...list, lines: [line] } satisfies AuditedList);
      expect(questions).toHaveLength(1);
      expect(questions[0]?.text).toMatch(/^[^{}]{10,}\?$/);
    },
  );
});

it.each([
  [[4], 'row 4'],
  [[4, 5], 'rows 4 and 5'],
  [[12, 14, 19], 'rows 12, 14 and 19'],
  [[2, 3, 4, 5, 9], 'rows 2 to 5 and 9'],
])('%j are named %s', (rows, named) => {
  expect(nameEveryRow(rows)).toBe(named);
});

function toLine(subject: Subject, findings: readonly Finding[]): AuditedLine {
  const { line } = subject;
  return {
    row: line.row,
    line,
    ...decide(findings),
    findings,
    fastener: summariseFastener(subject),
    sheet: null,
    requires: null,
    quantity: 4,
    extendedQuantity: 4,
    remedies: [],
  };
}
