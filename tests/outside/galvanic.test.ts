import { describe, expect, it } from 'vitest';
import { galvanicPair } from '../../src/core/calc/galvanic-pair.ts';
import { anodicIndex } from '../../src/core/reference/finish/anodic-index.ts';
import { anodicLimits } from '../../src/core/reference/finish/anodic-limits.ts';
import { galvanicDisagreements } from '../../src/core/reference/finish/galvanic-disagreements.ts';
import { galvanicOrder } from '../../src/core/reference/finish/galvanic-order.ts';
import { seaWaterPotentials } from '../../src/core/reference/finish/sea-water-potentials.ts';
import { agrees, readTable } from './read-table.ts';

/** Printed row of the anodic index to the rows that stand for it: some printed rows name two metals. */
const ROWS: readonly (readonly string[])[] = [
  ['gold'],
  ['silver'],
  ['nickel'],
  ['copper'],
  ['brass'],
  ['high-brass'],
  ['stainless-300'],
  ['stainless-400', 'chromium'],
  ['tin'],
  ['lead'],
  ['aluminium-2000'],
  ['steel'],
  ['aluminium'],
  ['cast-aluminium', 'cadmium'],
  ['hot-dip-zinc'],
  ['zinc'],
  ['magnesium'],
  ['beryllium'],
];

describe('anodic index', () => {
  const printed = readTable('anodic-index');

  it('stands for every printed row and no other', () => {
    expect(ROWS.length).toBe(printed.length);
    expect(ROWS.flat()).toEqual(anodicIndex.rows.map(({ id }) => id));
  });

  // anodic index handbook table, as restated from MIL-F-14072
  it.each(printed.map((record, at) => ({ record, ids: ROWS[at] ?? [] })))('$record.material', ({ record, ids }) => {
    for (const id of ids) {
      const row = anodicIndex.rows.find((one) => one.id === id);
      expect(agrees(record.index_v ?? '', row?.indexV ?? Number.NaN)).toBe(true);
      expect(row?.mark).toBe(record.mark);
    }
  });

  it.each(readTable('galvanic-limits').slice(0, 3))(
    'limit in a $environment environment',
    ({ environment, limit_v = '' }) => {
      const row = anodicLimits.rows.find((one) => one.environment === environment);
      expect(agrees(limit_v, row?.limitV ?? Number.NaN)).toBe(true);
    },
  );
});

describe('galvanic pairs', () => {
  const said = { within: 'ok', 'at-limit': 'at limit', exceeds: 'exceeds' } as const;

  // worked by hand from the anodic index; anode and direction by MIL-DTL-14072F 3.13.1b
  it.each(readTable('galvanic-pairs'))('$fastener in $sheet', (record) => {
    const pairs = [0.5, 0.25, 0.15].map((limit) =>
      galvanicPair(Number(record.fastener_v), Number(record.sheet_v), limit),
    );
    expect(agrees(record.delta_v ?? '', pairs[0]?.differenceV ?? Number.NaN)).toBe(true);
    expect(pairs[0]?.anode ?? '').toBe(record.anode);
    expect(pairs.map((pair) => (pair ? said[pair.against] : ''))).toEqual([
      record['at_0.50'],
      record['at_0.25'],
      record['at_0.15'],
    ]);
  });
});

describe('other lists of potentials', () => {
  // independent list of electrode potentials, gold = 0; printed carbon steel and cast iron share a row
  it('keeps the disagreements visible', () => {
    const printed = readTable('galvanic-disagreements');
    const rows = galvanicDisagreements.rows.filter(({ material }) => material !== 'cast-iron');
    expect(rows.length).toBe(printed.length);
    for (const [at, row] of rows.entries()) {
      const record = printed[at] ?? {};
      expect(agrees(record.index_v || record.index_low || '', row.indexLowV), row.material).toBe(true);
      expect(agrees(record.other_v || record.other_high || '', row.otherListV), row.material).toBe(true);
    }
  });

  // MIL-STD-889B
  it('keeps the order of sea water', () => {
    expect(galvanicOrder.rows.map(({ position }) => String(position))).toEqual(
      readTable('galvanic-order').map(({ position }) => position),
    );
  });

  // galvanic series in sea water
  it('keeps the potentials of sea water', () => {
    expect(seaWaterPotentials.rows.map(({ millivolts }) => String(millivolts))).toEqual(
      readTable('sea-water-potentials').map(({ mv }) => mv),
    );
  });
});
