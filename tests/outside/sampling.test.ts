import { describe, expect, it } from 'vitest';
import { zeroAcceptanceSample } from '../../src/core/calc/zero-acceptance-sample.ts';
import { nutAql } from '../../src/core/reference/sampling/nut-aql.ts';
import { samplingZ14 } from '../../src/core/reference/sampling/z14.ts';
import { agrees, readTable } from './read-table.ts';

describe('sampling', () => {
  const arrow: Readonly<Record<string, string>> = { v: 'down', '^': 'up' };

  // ANSI/ASQ Z1.4, from memory
  it.each(readTable('sampling'))('lots to $lot_to', (record) => {
    const row = samplingZ14.rows.find(({ letter }) => letter === record.letter);
    expect([row?.lotFrom, row?.lotTo, row?.sample].map(String)).toEqual([record.lot_from, record.lot_to, record.n]);
    const printed = ['0.65', '1.0', '1.5', '2.5', '4.0']
      .map((aql) => record[`ac_${aql}`] ?? '')
      .map((cell) => arrow[cell] ?? cell);
    expect([row?.aql065, row?.aql10, row?.aql15, row?.aql25, row?.aql40].map(String)).toEqual(printed);
  });

  // MIL-N-21337
  it.each(readTable('sampling-nuts').map((record, at) => ({ ...record, at })))(
    '$defects',
    ({ aql = '', at }: { aql?: string; at: number }) => {
      expect(agrees(aql, nutAql.rows[at]?.aql ?? Number.NaN)).toBe(true);
    },
  );

  // binomial law
  it.each(readTable('sampling-zero'))('$n pieces without a defect', ({ confidence_pct, defective_pct, n }) => {
    expect(String(zeroAcceptanceSample(Number(confidence_pct) / 100, Number(defective_pct) / 100))).toBe(n);
  });
});
