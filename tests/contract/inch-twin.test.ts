import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';

/** A catalogue as someone else typed it, in inches under other headings, and the same numbers in mm under our own. */
function load(name: string) {
  const bytes = readFileSync(new URL(`../sheets/${name}.csv`, import.meta.url));
  return importCatalogue(readFile(bytes, `${name}.csv`));
}

const inch = load('inch-twin');
const metric = load('metric-twin');

// Every part in sheets and holes around its limits.
const SHEETS = ['DC01', '5052-H32', '304', 'GALVANNEAL', '6061-T6'];
const THICKNESSES = ['0.8', '1.0', '1.5', '2.5'];

function listOf(parts: readonly { partNumber: string; holeMm: number | null; edgeMm: number | null }[]) {
  const rows = parts.flatMap(({ partNumber, holeMm, edgeMm }) =>
    SHEETS.flatMap((sheet) =>
      THICKNESSES.map((thickness, step) =>
        [
          partNumber,
          sheet,
          thickness,
          ((holeMm ?? 0) + step * 0.04).toFixed(2),
          ((edgeMm ?? 0) - step * 0.1 + 0.1).toFixed(2),
          '4',
        ].join(','),
      ),
    ),
  );
  const text = `Part number,Material,Thickness (mm),Hole (mm),Edge (mm),Qty\n${rows.join('\n')}\n`;
  return readFile(new TextEncoder().encode(text), 'around-the-limits.csv');
}

describe('a catalogue in inches under other headings', () => {
  it('loads whole, without problems', () => {
    expect(inch.problems).toEqual([]);
    expect(inch.fasteners.length).toBeGreaterThanOrEqual(25);
    expect(inch.fasteners.map(({ partNumber }) => partNumber)).toEqual(
      metric.fasteners.map(({ partNumber }) => partNumber),
    );
  });

  it('gives the same numbers as its metric twin', () => {
    for (const [index, part] of inch.fasteners.entries()) {
      const twin = metric.fasteners[index]!;
      expect([part.kind, part.thread, part.material.candidates, part.hardnessMin]).toEqual([
        twin.kind,
        twin.thread,
        twin.material.candidates,
        twin.hardnessMin,
      ]);
      for (const key of ['sheetMinMm', 'holeMm', 'edgeMm'] as const)
        expect(part[key], `${part.partNumber} ${key}`).toBeCloseTo(twin[key]!, 2);
    }
  });

  it('gives the same verdicts and outcomes', () => {
    const list = listOf(metric.fasteners);
    const outcomes = [inch, metric].map((catalogue) =>
      auditFile(list, createBasis([catalogue], DEFAULT_SHOP)).lines.map(({ row, verdict, findings }) => [
        row,
        verdict,
        ...findings.map(({ rule, outcome }) => `${rule} ${outcome}`),
      ]),
    );
    expect(outcomes[0]).toEqual(outcomes[1]);
    const verdicts = new Set(outcomes[0]!.map(([, verdict]) => verdict));
    expect([...verdicts].sort()).toEqual(expect.arrayContaining(['fails', 'holds']));
    expect(outcomes[0]!.length).toBe(metric.fasteners.length * SHEETS.length * THICKNESSES.length);
  });
});
