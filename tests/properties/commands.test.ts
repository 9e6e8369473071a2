import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Commands } from '../../src/app/commands.ts';
import type { AppState } from '../../src/app/state.ts';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { type Bench, openBench } from './stand-in-worker.ts';

const LIST = [
  'Part number,Panel,Material,Thk (mm),Edge (mm),Finish,Qty',
  'PANEL P1,P1,DC01,1.5,,,1',
  'NUT-M4-10-CS,P1,DC01,1.5,9,,4',
  'NUT-M4-10-CS,P1,DC01,1.5,4,,2',
  'NUT-M3-08-S3,P2,304,1.5,,,6',
  'NUT-M4-10-CS,P2,304,0.8,,zinc,1',
  'STUD-M4-10-12-CS,P3,5052-H32,,,,8',
  'NO-SUCH-PART,P3,5052-H32,1,,,1',
  'Total,,,,,,22',
].join('\n');
const ROWS = [2, 3, 4, 5, 6, 7, 8, 9] as const;
const COLUMNS = [0, 1, 2, 3, 4, 5, 6] as const;
const TEXTS = ['', '0.8', '1.5', '2', '304', 'DC01', 'ALUM', 'P1', 'P2', 'NUT-M4-08-S4', 'NUT-M4-10-CS', 'x', '=1+1'];

type Act = (commands: Commands, state: () => AppState) => Promise<void> | void;

const row = fc.constantFrom(...ROWS);
const cell = fc.record({ row, column: fc.constantFrom(...COLUMNS), text: fc.constantFrom(...TEXTS) });
const rows = fc.uniqueArray(row, { minLength: 1 });

/** Everything that makes a step, and undo and redo between. */
const act: fc.Arbitrary<Act> = fc.oneof(
  cell.map(
    (one): Act =>
      (commands) =>
        commands.editCell(one.row, one.column, one.text),
  ),
  fc.array(cell, { maxLength: 6 }).map(
    (cells): Act =>
      (commands) =>
        commands.editCells(cells, 'paste'),
  ),
  rows.map(
    (some): Act =>
      (commands) =>
        commands.swap('NUT-M4-08-S4', some),
  ),
  fc.constantFrom(10, 22, 40).map(
    (hardnessMarginHrb): Act =>
      (commands, state) =>
        commands.setShop({ ...state().shop, hardnessMarginHrb }),
  ),
  fc.constantFrom('mm' as const, 'in' as const).map(
    (units): Act =>
      (commands, state) =>
        commands.setShop({ ...state().shop, units }),
  ),
  fc.constantFrom('note' as const, 'thickness' as const, 'other' as const).map(
    (role): Act =>
      (commands) =>
        commands.setColumn(3, role),
  ),
  row.map(
    (one): Act =>
      (commands, state) => {
        const rule = state().list?.lines.find((line) => line.row === one)?.decidedBy?.rule;
        return rule ? commands.concede(one, rule, { reason: 'tested', by: 'R. Alder' }) : undefined;
      },
  ),
  row.map(
    (one): Act =>
      (commands, state) => {
        const concession = state().concessions.find((each) => each.row === one);
        return concession && commands.withdraw(one, concession.rule);
      },
  ),
  fc.constant<Act>((commands) => commands.undo()),
  fc.constant<Act>((commands) => commands.redo()),
);

const acts = fc.array(act, { minLength: 1, maxLength: 8 });

async function make({ commands, store }: Bench, list: readonly Act[]): Promise<void> {
  for (const one of list) await one(commands, () => store.state);
}

async function undoAll({ commands, store }: Bench): Promise<void> {
  while (store.state.undoName) await commands.undo();
}

async function redoAll({ commands, store }: Bench): Promise<void> {
  while (store.state.redoName) await commands.redo();
}

/** What the user sees of the list, its settings and what was accepted. */
function seen({ rows, list, concessions, shop }: AppState) {
  const lines = rows.map(({ row, cells, line, other, conceded }) => {
    return {
      row,
      cells: trimmed(cells),
      conceded,
      verdict: line?.verdict,
      findings: line?.findings,
      what: other?.what,
    };
  });
  return { lines, totals: list?.totals, columns: list?.columns, concessions, shop: { ...shop, units: 'mm' } };
}

/** An edit right of the last cell of a row may leave empty cells behind. */
function trimmed(cells: readonly string[]): readonly string[] {
  const last = cells.findLastIndex((text) => text !== '');
  return cells.slice(0, last + 1);
}

const units = (state: AppState) => state.shop.units;

describe('any sequence of commands', () => {
  it('is taken back to the list as it was, and made again to where it led', async () => {
    await fc.assert(
      fc.asyncProperty(acts, async (list) => {
        const bench = await openBench(LIST);
        const before = seen(bench.store.state);
        await make(bench, list);
        await redoAll(bench);
        const after = seen(bench.store.state);
        await undoAll(bench);
        const inMm = { ...bench.store.state.shop, units: 'mm' } as const;
        if (units(bench.store.state) === 'in') await bench.commands.setShop(inMm);
        expect(seen(bench.store.state)).toEqual(before);
        await redoAll(bench);
        expect(seen(bench.store.state).lines.map(({ cells, verdict }) => [cells, verdict])).toEqual(
          after.lines.map(({ cells, verdict }) => [cells, verdict]),
        );
        expect(bench.store.state.list?.totals).toEqual(after.totals);
        expect(bench.store.state.concessions).toEqual(after.concessions);
        expect(seen(bench.store.state).shop).toEqual(after.shop);
      }),
      { numRuns: 30 },
    );
  });

  it('leaves the list judged as it would be judged afresh', async () => {
    await fc.assert(
      fc.asyncProperty(acts, async (list) => {
        const bench = await openBench(LIST);
        await make(bench, list);
        const { shop, rows: now, list: audited, catalogues } = bench.store.state;
        const { session } = bench.desk;
        if (!session || !audited) throw new Error('no list is open');
        const cells = new Map(now.map((one) => [one.row, one.cells]));
        const tables = session.file.tables.map((table) => ({
          ...table,
          rows: table.rows.map((raw) => ({ ...raw, cells: cells.get(raw.number) ?? raw.cells })),
        }));
        const { options } = session;
        const units = Object.fromEntries(audited.columns.flatMap(({ index, unit }) => (unit ? [[index, unit]] : [])));
        const roles = Object.fromEntries(audited.columns.map(({ index, role }) => [index, role]));
        const fresh = auditFile({ ...session.file, tables }, createBasis(catalogues, shop), {
          ...options,
          roles,
          units,
          headerRow: audited.headerRow,
        });
        const verdicts = ({ lines }: Pick<typeof fresh, 'lines'>) =>
          lines.map((line) => [
            line.row,
            line.verdict,
            line.findings.map(({ rule, says, values }) => [rule, says, values]),
          ]);
        expect(verdicts(audited)).toEqual(verdicts(fresh));
        expect(audited.totals).toEqual(fresh.totals);
      }),
      { numRuns: 30 },
    );
  });

  it('never lets a concession change a verdict', async () => {
    await fc.assert(
      fc.asyncProperty(
        fc.array(cell, { maxLength: 6 }),
        fc.array(row, { minLength: 1, maxLength: 4 }),
        async (cells, accepted) => {
          const bench = await openBench(LIST);
          await bench.commands.editCells(cells, 'paste');
          const before = bench.store.state.list;
          for (const one of accepted) {
            const rule = before?.lines.find((line) => line.row === one)?.decidedBy?.rule;
            if (rule) await bench.commands.concede(one, rule, { reason: 'tested', by: '' });
          }
          expect(bench.store.state.list).toBe(before);
          expect(bench.store.state.rows.map(({ line }) => line?.verdict)).toEqual(
            bench.store.state.rows.map(({ row: at }) => before?.lines.find((line) => line.row === at)?.verdict),
          );
        },
      ),
      { numRuns: 15 },
    );
  });

  it('keeps every step when one is asked for before the last is done', async () => {
    const { commands, store } = await openBench(LIST);
    await Promise.all([
      commands.editCell(3, 3, '2'),
      commands.editCell(4, 3, '2'),
      commands.setShop({ ...store.state.shop, hardnessMarginHrb: 22 }),
      commands.undo(),
      commands.undo(),
    ]);
    expect(store.state.history.done.map(({ name }) => name)).toEqual(['edit Thk (mm) in row 3']);
    expect(store.state.history.undone).toHaveLength(2);
    expect(store.state.rows.map(({ cells }) => cells[3])).toEqual(['1.5', '2', '1.5', '1.5', '0.8', '', '1', '']);
    expect(store.state.shop.hardnessMarginHrb).toBe(20);
  });
});

describe('every step', () => {
  it('tells what it does, who made it and when', async () => {
    const { commands, store } = await openBench(LIST);
    commands.setName(' R. Alder ');
    await commands.swap('NUT-M4-08-CS', [3, 4]);
    await commands.setShop({ ...store.state.shop, hardnessMarginHrb: 22 });
    await commands.setShop({ ...store.state.shop, units: 'in' });
    expect(store.state.history.done.map(({ name }) => name)).toEqual([
      'swap NUT-M4-10-CS for NUT-M4-08-CS on 2 rows',
      'set “Sheet softer than the fastener by at least” to 22 HRB points',
    ]);
    for (const { when, by } of store.state.history.done) {
      expect(by).toBe('R. Alder');
      expect(new Date(when).toISOString()).toBe(when);
    }
  });
});
