import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';

const demo = readFileSync(new URL('../../sample-data/demo-catalogue.csv', import.meta.url));
const catalogue = importCatalogue(readFile(demo, 'demo-catalogue.csv'));

function firstRow(row: string, catalogues = [catalogue]) {
  const text = `Part number,Description,Material,Thickness (mm),Qty\n${row}\n`;
  const list = readFile(new TextEncoder().encode(text), 'list.csv');
  return auditFile(list, createBasis(catalogues, DEFAULT_SHOP));
}

function saidOfPart(row: string) {
  const line = firstRow(row).lines[0];
  return { verdict: line?.verdict, text: line?.findings.find(({ rule }) => rule === 'part/listed')?.text ?? '' };
}

describe('a part that is not on file', () => {
  it.each([
    ['X-77,NUT CLINCH M4 SST 300 SERIES MIN SHT 1.0,DC01,1.5,4', 'NUT-M4-10-S3'],
    [',Self-clinching nut M5 hardened steel,DC01,1.5,4', 'NUT-M5'],
    ['0815,Clinch stud M4 x 12 hardened steel,DC01,1.5,4', 'STUD-M4'],
  ])('%s: its description proposes %s', (row, proposed) => {
    const { verdict, text } = saidOfPart(row);
    expect(verdict).toBe('unknown');
    expect(text).toContain('By its description it could be');
    expect(text).toContain(proposed);
  });

  it.each([
    ['a description without a thread', 'X-77,Clinch nut stainless,DC01,1.5,4'],
    ['a description of nothing on file', 'X-77,Clinch nut M20 hardened steel,DC01,1.5,4'],
    ['no description', 'X-77,,DC01,1.5,4'],
  ])('%s proposes nothing', (_, row) => {
    const { verdict, text } = saidOfPart(row);
    expect(verdict).toBe('unknown');
    expect(text).not.toContain('By its description');
  });

  it('is never judged by what it could be', () => {
    const rules = firstRow('X-77,NUT CLINCH M4 SST 300 SERIES,DC01,1.5,4').lines[0]?.findings.map(({ rule }) => rule);
    expect(rules?.filter((rule) => rule.startsWith('clinch/'))).toEqual([]);
  });
});

describe('two catalogues that differ about a part', () => {
  const other = importCatalogue(
    readFile(
      new TextEncoder().encode('partNumber,thread,holeMm\nNUT-M4-10-CS,M4,6.1\nNUT-M5-10-CS,M5,6.85\n'),
      'other.csv',
    ),
  );

  it('are reported, and the first counts', () => {
    const audit = firstRow('NUT-M4-10-CS,,DC01,1.5,4', [catalogue, other]);
    const texts = audit.notices.map(({ text }) => text).filter((text) => text.includes('different data'));
    expect(texts).toHaveLength(1);
    expect(texts[0]).toContain('NUT-M4-10-CS');
    expect(audit.lines[0]?.requires?.holeMm).toBe(5.6);
  });

  it('are not mentioned where they agree', () => {
    expect(firstRow('NUT-M4-10-CS,,DC01,1.5,4', [catalogue, catalogue]).notices).toEqual([]);
  });
});
