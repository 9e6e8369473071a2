import { describe, expect, it } from 'vitest';
import type { Table } from '../../src/core/model/table.ts';
import { aliasTables } from '../../src/core/reference/aliases/index.ts';
import { alloyTables } from '../../src/core/reference/alloys/index.ts';
import { austeniticRockwellB } from '../../src/core/reference/hardness/austenitic-rockwell-b.ts';
import { rockwellBThickness } from '../../src/core/reference/hardness/rockwell-b-thickness.ts';
import { referenceTables } from '../../src/core/reference/index.ts';
import { type Compared, compareTable } from './compare-table.ts';
import { readTable, tableNames } from './read-table.ts';
import { alloyFiles, alloyNumbers, alloyProblems } from './second-transcription/alloys.ts';
import { fastenerMaterialsCompared } from './second-transcription/fastener-materials.ts';
import { finishAndFormingCompared } from './second-transcription/finish-and-forming.ts';
import { hardnessCompared } from './second-transcription/hardness.ts';
import {
  columnsLeftOut,
  fieldsLeftOut,
  linesLeftOut,
  outsideWithoutTable,
  rowsLeftOut,
  tableWithoutCopy,
} from './second-transcription/left-out.ts';
import { thicknessCompared } from './second-transcription/thickness.ts';
import { threadsAndHolesCompared } from './second-transcription/threads-and-holes.ts';

const compared: readonly Compared[] = [
  ...hardnessCompared,
  ...thicknessCompared,
  ...threadsAndHolesCompared,
  ...finishAndFormingCompared,
  ...fastenerMaterialsCompared,
];

const tables = new Map<string, Table<unknown>>(
  [...referenceTables.flatMap(({ tables }) => tables), ...aliasTables].map((table) => [table.id, table]),
);
const alloyIds: readonly string[] = alloyTables.map(({ id }) => id);

describe('the tables of the product against a second transcription of their documents', () => {
  it.each(compared)('$csv and $table: $count values', ({ problems }) => expect(problems).toEqual([]));

  it(`sheet alloys: ${alloyNumbers} values`, () => expect(alloyProblems).toEqual([]));

  it('hold enough values for the comparison to mean something', () => {
    expect(alloyNumbers + compared.reduce((total, { count }) => total + count, 0)).toBeGreaterThan(2500);
  });
});

describe('the comparison', () => {
  const { rows } = rockwellBThickness;
  const first = { thicknessMm: 0.61, minHrb: 94 };
  const problemsOf = (changed: readonly (typeof first)[], except = {}) =>
    compareTable({
      csv: 'e18-thin-sheet',
      table: { ...rockwellBThickness, rows: changed },
      key: { thickness_mm: 'thicknessMm' },
      columns: { min_hrb: 'minHrb' },
      except,
    }).problems;

  it.each([
    ['a wrong value', [{ ...first, minHrb: 95 }, ...rows.slice(1)], /0\.61 min_hrb: printed 94, .* is 95/],
    ['a number that is none', [{ ...first, minHrb: Number.NaN }, ...rows.slice(1)], /is NaN/],
    ['a missing row', rows.slice(1), /0\.61: missing in the product/],
    ['a surplus row', [...rows, { ...first, thicknessMm: 1 }], / 1: surplus/],
  ])('notices %s', (_what, changed, problem) => {
    expect(problemsOf(changed)).toEqual([expect.stringMatching(problem)]);
  });

  it('takes an excuse, but none in vain', () => {
    const excuse = { '0.61 min_hrb': 'on purpose' };
    expect(problemsOf([{ ...first, minHrb: 95 }, ...rows.slice(1)], excuse)).toEqual([]);
    expect(problemsOf(rows, excuse)).toEqual([expect.stringContaining('nothing differs')]);
  });

  it('notices a mark that is better than the outside one', () => {
    const [source] = austeniticRockwellB.sources;
    const better = compareTable({
      csv: 'e140-austenitic',
      table: { ...austeniticRockwellB, sources: [{ ...source, mark: 'printed' }] },
      key: { hrb: 'hrb' },
      columns: { hb: 'hbw' },
    });
    expect(better.problems).toHaveLength(austeniticRockwellB.rows.length);
    expect(better.problems[0]).toContain('says printed');
  });
});

describe('nothing slips in unchecked', () => {
  it('every table of the product is compared, or is known to have no outside copy', () => {
    const checked = new Set([...compared.map(({ table }) => table), ...alloyIds]);
    const copies = [...tables.keys()].filter((id) => checked.has(id) === (tableWithoutCopy[id] !== undefined));
    expect(copies).toEqual([]);
    expect(Object.keys(tableWithoutCopy).filter((id) => !tables.has(id))).toEqual([]);
  });

  it('every outside table is compared, or is known to have no table in the product', () => {
    const checked = new Set<string>([...compared.map(({ csv }) => csv), ...alloyFiles]);
    const copies = tableNames().filter((name) => checked.has(name) === (outsideWithoutTable[name] !== undefined));
    expect(copies).toEqual([]);
    expect(Object.keys(outsideWithoutTable).filter((name) => !tableNames().includes(name))).toEqual([]);
  });

  it('every row of a compared table', () => {
    const left = mapped('table').flatMap(({ name, mappings }) => {
      const used = union(mappings.map(({ rowsUsed }) => rowsUsed));
      return (tables.get(name)?.rows ?? [])
        .filter((_, place) => !used.has(place))
        .map((row) => `${name} ${nameOf(row)}`);
    });
    expect(left.sort()).toEqual(listed(rowsLeftOut));
  });

  it('every line of a compared outside table', () => {
    const left = mapped('csv').flatMap(({ name, mappings }) => {
      const used = union(mappings.map(({ linesUsed }) => linesUsed));
      return readTable(name).flatMap((line, place) => (used.has(place) ? [] : [{ name, line }]));
    });
    expect(left.filter(({ name, line }) => !linesLeftOut[name]?.of(line))).toEqual([]);
    expect([...new Set(left.map(({ name }) => name))].sort()).toEqual(Object.keys(linesLeftOut).sort());
  });

  it('every column with cells', () => {
    const left = mapped('csv').flatMap(({ name, mappings }) => {
      const used = union(mappings.map(({ columnsUsed }) => columnsUsed));
      const unseen = [...union(mappings.map(({ columnsLeft }) => columnsLeft))].filter((column) => !used.has(column));
      return unseen.map((column) => `${name} ${column}`);
    });
    expect(left.sort()).toEqual(listed(columnsLeftOut));
  });

  it('every number of a row', () => {
    const left = mapped('table').flatMap(({ name, mappings }) => {
      const used = union(mappings.map(({ fieldsUsed }) => fieldsUsed));
      const unseen = [...union(mappings.map(({ fieldsLeft }) => fieldsLeft))].filter((field) => !used.has(field));
      return unseen.map((field) => `${name} ${field}`);
    });
    expect(left.sort()).toEqual(listed(fieldsLeftOut));
  });
});

/** The mappings of each table, or of each outside table. */
function mapped(side: 'table' | 'csv') {
  const names = [...new Set(compared.map((mapping) => mapping[side]))];
  return names.map((name) => ({ name, mappings: compared.filter((mapping) => mapping[side] === name) }));
}

function union<It>(sets: readonly ReadonlySet<It>[]): ReadonlySet<It> {
  return new Set(sets.flatMap((set) => [...set]));
}

function listed(leftOut: Readonly<Record<string, Readonly<Record<string, string>>>>): string[] {
  return Object.entries(leftOut)
    .flatMap(([name, inner]) => Object.keys(inner).map((key) => `${name} ${key}`))
    .sort();
}

function nameOf(row: unknown): string {
  return typeof row === 'object' && row !== null && 'id' in row ? String(row.id) : JSON.stringify(row);
}
