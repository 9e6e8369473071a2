import { buildLine } from '../intake/build-line.ts';
import type { Fastener } from '../model/fastener.ts';
import type { Finding } from '../model/finding.ts';
import type { Column, Role } from '../model/list.ts';
import { DEFAULT_SHOP } from '../model/shop.ts';
import type { Example, ListExample, ListRule, Rule, Subject } from '../rules/rule.ts';
import { auditLine, runListRule } from './audit-line.ts';
import { subjectFor } from './prepare.ts';

/** A complete catalogued part, invented for the examples; an example changes what it is about. */
export const EXAMPLE_PART: Fastener = {
  partNumber: 'EXAMPLE-NUT',
  kind: 'clinch nut',
  thread: 'M4',
  lengthMm: null,
  material: { text: 'hardened carbon steel', candidates: ['carbon-steel-hardened'] },
  hardnessMin: { scale: 'HRC', value: 32 },
  finish: null,
  sheetMinMm: 1,
  sheetMaxMm: null,
  shankMm: 0.97,
  flush: true,
  holeMm: 5.6,
  holePlusMm: 0.08,
  holeMinusMm: 0,
  edgeMm: 9,
  spacingMm: null,
  sheetHardnessMax: null,
  flangeMm: 7.6,
  heightMm: 3,
  forceSteelKn: 12,
  forceAluminiumKn: 7,
  pushOutSteelN: 500,
  pushOutAluminiumN: 300,
  torqueOutSteelNm: 3,
  torqueOutAluminiumNm: 2,
  stocked: { yes: true, quantity: 1000 },
  packSize: 100,
  moq: 100,
  unitPrice: 0.1,
  currency: 'EUR',
  leadDays: 5,
  supersededBy: null,
  supplier: null,
  source: null,
  sourceDate: null,
  note: null,
  origin: { catalogue: 'example catalogue', row: 2 },
};

/** Cells that an example does not mention: a row without fault. */
const CELLS: Readonly<Partial<Record<Role, string>>> = {
  partNumber: 'EXAMPLE-NUT',
  description: 'Clinch nut M4',
  quantity: '4',
  panel: 'P1',
  material: 'DC01',
  thickness: '1.5',
  hole: '5.6',
  edge: '12',
};

const LENGTHS: ReadonlySet<string> = new Set(['thickness', 'hole', 'edge', 'spacing', 'bend', 'length']);

/** A row built from cells by role, as if read from a list whose lengths are in mm. */
export function exampleSubject(example: Omit<Example, 'outcome' | 'says'>, row = 2): Subject {
  const { cells, part, shop, unit, piecesByAssembly } = example;
  const all = Object.entries({ ...CELLS, ...cells });
  const columns = all.map(([role], index): Column => {
    const isLength = LENGTHS.has(role);
    const settled = isLength && unit !== 'none';
    return {
      index,
      heading: role,
      role: role as Role,
      unit: settled ? (unit ?? 'mm') : null,
      unitFrom: settled ? 'heading' : null,
    };
  });
  const line = buildLine({ number: row, cells: all.map(([, text]) => text) }, columns);
  const fastener = part === null ? null : { ...EXAMPLE_PART, ...part };
  const near = line.partNumber.startsWith('EXAMPLE') ? ['EXAMPLE-NUT'] : [];
  const subject = subjectFor(line, fastener, { ...DEFAULT_SHOP, ...shop }, near);
  return piecesByAssembly === undefined ? subject : { ...subject, pieces: piecesByAssembly };
}

/** What one rule says of an example; undefined where it does not apply. */
export function findingFor(rule: Rule, example: Omit<Example, 'outcome' | 'says'>): Finding | undefined {
  return auditLine(exampleSubject(example), [rule])[0];
}

/** The rows of an example in file order, from row 2 on. A part that the example does not give is not on file. */
export function exampleSubjects({ rows, parts = {} }: Omit<ListExample, 'expect'>): readonly Subject[] {
  return rows.map((cells, index) => {
    const partNumber = cells.partNumber ?? EXAMPLE_PART.partNumber;
    const given = partNumber === EXAMPLE_PART.partNumber ? {} : parts[partNumber];
    return exampleSubject({ cells, part: given ? { partNumber, ...given } : null }, index + 2);
  });
}

/** What a rule over the whole list says of each row of an example; undefined for rows of which it says nothing. */
export function listFindingsFor(
  rule: ListRule,
  example: Omit<ListExample, 'expect'>,
): readonly (Finding | undefined)[] {
  const subjects = exampleSubjects(example);
  const findings = runListRule(rule, subjects);
  return subjects.map((subject) => findings.get(subject));
}
