import { readdirSync, readFileSync } from 'node:fs';
import Papa from 'papaparse';
import { describe, expect, it } from 'vitest';
import { createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { type Aspect, aspectsOf } from '../../src/core/engine/aspects.ts';
import { createRowJudge, type Judged } from '../../src/core/engine/judge-rows.ts';
import { createJoiner } from '../../src/core/engine/prepare.ts';
import { buildLine } from '../../src/core/intake/build-line.ts';
import { buildList } from '../../src/core/intake/build-list.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { rules } from '../../src/core/rules/index.ts';
import type { Rule, Subject } from '../../src/core/rules/rule.ts';
import { readFile } from '../../src/io/read-file.ts';
import { plain } from '../plain.ts';

const FOLDER = new URL('../sheets/', import.meta.url);
const CATALOGUE = 'matrix-catalogue.csv';
const AREAS = readdirSync(FOLDER).filter((name) => /^matrix-.*\.csv$/.test(name) && name !== CATALOGUE);
/** Columns of the tests' own. */
const OWN = /^(?:list|settings|expect|why)$/;
const ROWS = 400;

const catalogue = importCatalogue(readFile(readFileSync(new URL(CATALOGUE, FOLDER)), CATALOGUE));
const basis = createBasis([catalogue], DEFAULT_SHOP);

/** Cells of the matrix mixed anew, each column by itself: many rows share some facts and differ in others. */
function mixed(name: string, seed: number) {
  const [head = [], ...rows] = Papa.parse<string[]>(readFileSync(new URL(name, FOLDER), 'utf8').trim()).data;
  const columns = head.flatMap((heading, at) => (OWN.test(heading) ? [] : [at]));
  const pick = random(seed);
  const made = Array.from({ length: ROWS }, () => columns.map((at) => rows[pick(rows.length)]?.[at] ?? ''));
  const text = Papa.unparse([columns.map((at) => head[at] ?? ''), ...made]);
  return buildList(readFile(new TextEncoder().encode(text), name));
}

function random(seed: number): (below: number) => number {
  let state = seed;
  return (below) => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((state / 2 ** 32) * below);
  };
}

const said = (judged: Judged) => plain({ ...judged, remedies: judged.remedies() });

const lists = AREAS.map((name, index) => [name, mixed(name, 20_251_125 + index)] as const);

describe.each(lists)('rows mixed from %s', (_, list) => {
  it('are judged together as each is judged alone', () => {
    const together = createRowJudge(basis);
    let shared = 0;
    const seen = new Set<object>();
    for (const line of list.lines) {
      const pieces = list.relations.extended.get(line.row) ?? null;
      const { judged } = together(line, pieces);
      if (judged.findings.some((finding) => seen.has(finding))) shared += 1;
      for (const finding of judged.findings) seen.add(finding);
      expect(said(judged), `row ${line.row}`).toEqual(said(createRowJudge(basis)(line, pieces).judged));
    }
    expect(shared).toBeGreaterThan(ROWS / 4);
  });

  it('are read together as each is read alone', () => {
    for (const line of list.relations.ownLines) {
      const { row: number, cells, flags } = line;
      expect(buildLine({ number, cells, flags }, list.columns)).toEqual(line);
    }
  });
});

/** What of a line belongs to which aspect. */
const LINE_ASPECTS: Readonly<Record<string, Aspect>> = {
  partNumber: 'part',
  material: 'material',
  thickness: 'thickness',
  hole: 'hole',
  edge: 'edge',
  bend: 'bend',
  spacing: 'spacing',
  facts: 'facts',
  description: 'words',
  fastenerMaterial: 'words',
  finish: 'words',
  thread: 'words',
  length: 'words',
  described: 'words',
  quantity: 'quantity',
};

/** A subject that notes which aspects are looked at; what belongs to no aspect comes under its own name. */
function watched(subject: Subject, looked: Set<string>): Subject {
  const watch = <T extends object>(object: T, aspectOf: (key: string) => string | null): T =>
    new Proxy(object, {
      get(target, key) {
        const aspect = typeof key === 'string' ? aspectOf(key) : null;
        if (aspect !== null) looked.add(aspect);
        return Reflect.get(target, key);
      },
    });
  const sheets = subject.sheets.map((sheet) => watch(sheet, (key) => (key === 'entry' ? 'material' : 'thickness')));
  const parts: Record<string, string | null> = { shop: null, line: null, sheets: 'material', pieces: 'quantity' };
  return watch({ ...subject, sheets, line: watch(subject.line, (key) => LINE_ASPECTS[key] ?? `line.${key}`) }, (key) =>
    key in parts ? (parts[key] ?? null) : 'part',
  );
}

describe('what a rule looks at', () => {
  const subjects = lists.flatMap(([, list]) => {
    const { partOf, subjectOf } = createJoiner(basis.parts, basis.shop);
    return list.lines.map((line) => subjectOf(line, partOf(line), list.relations.extended.get(line.row) ?? null));
  });

  it.each(rules.map((rule) => [rule.id, rule] as const))('%s: no more than it says it reads', (_, rule: Rule) => {
    const looked = new Set<string>();
    for (const subject of subjects) rule.check(watched(subject, looked));
    expect(looked.size).toBeGreaterThan(0);
    const allowed = new Set<string>(aspectsOf(rule));
    expect([...looked].filter((aspect) => !allowed.has(aspect))).toEqual([]);
  });
});
