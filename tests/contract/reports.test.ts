import { describe, expect, it } from 'vitest';
import { concessionsAfter } from '../../src/app/history.ts';
import { parseProject } from '../../src/app/parse-project.ts';
import { showProject, toProject } from '../../src/app/project.ts';
import { inSetOrder } from '../../src/core/rollup/press-order.ts';
import { questionKey } from '../../src/core/rollup/questions.ts';
import { type Bench, openBench } from '../properties/stand-in-worker.ts';

const LIST = [
  'Part number,Panel,Material,Thickness (mm),Qty',
  'NUT-M4-10-CS,Front,DC01,1.5,4', // row 2
  'NUT-M3-10-CS,Front,DC01,1.5,6',
  'NUT-M4-10-CS,Lid,,1.5,2', // row 4: no metal
].join('\n');

async function shown(bench: Bench): Promise<NonNullable<Bench['store']['state']['rollups']>> {
  await expect.poll(() => bench.store.state.rollups?.list === bench.store.state.list).toBe(true);
  const { rollups } = bench.store.state;
  if (!rollups) throw new Error('nothing was added up');
  return rollups;
}

function stepsOf({ store }: Bench): readonly string[] {
  const { rollups, pressOrder } = store.state;
  return rollups
    ? (inSetOrder(rollups.press, pressOrder).panels[0]?.steps.map(({ partNumber }) => partNumber) ?? [])
    : [];
}

describe('what a list comes to, as the app keeps it', () => {
  it('is asked for only while one of its views is shown, and again when the list has changed', async () => {
    const bench = await openBench(LIST);
    expect(bench.store.state.rollups).toBeNull();
    bench.commands.show('purchasing');
    expect((await shown(bench)).purchase.lines.map(({ used }) => used)).toEqual([4, 6]);
    await bench.commands.setShop({ ...bench.store.state.shop, buildQuantity: 3 });
    expect((await shown(bench)).purchase.lines.map(({ used }) => used)).toEqual([12, 18]);
    await bench.commands.undo();
    expect((await shown(bench)).purchase.lines.map(({ used }) => used)).toEqual([4, 6]);
    bench.commands.show('list');
    const before = bench.store.state.rollups;
    await bench.commands.editCell(2, 4, '5');
    expect(bench.store.state.rollups).toBe(before);
  });

  it('never shows an answer beside a list that it does not belong to', async () => {
    const bench = await openBench(LIST);
    const seen: boolean[] = [];
    bench.commands.show('purchasing');
    bench.store.addEventListener('change', () => {
      const { rollups } = bench.store.state;
      const piecesListed = rollups?.list.lines.find(({ row }) => row === 2)?.quantity;
      if (rollups) seen.push(rollups.purchase.lines[0]?.perBuild === piecesListed);
    });
    await Promise.all(['5', '6', '7'].map((text) => bench.commands.editCell(2, 4, text)));
    expect((await shown(bench)).purchase.lines[0]?.perBuild).toBe(7);
    expect(seen.length).toBeGreaterThan(0);
    expect(seen).not.toContain(false);
  });

  it('keeps a set order of pressing as one step: undone, made again, and in the project file', async () => {
    const bench = await openBench(LIST);
    bench.commands.show('press');
    const { press } = await shown(bench);
    const suggested = stepsOf(bench);
    expect(suggested).toEqual(['NUT-M3-10-CS', 'NUT-M4-10-CS']);
    const [front] = press.panels;
    if (!front) throw new Error('no panel');
    await bench.commands.reports.movePressStep(front, 1, 0);
    expect(stepsOf(bench)).toEqual([...suggested].reverse());
    expect(bench.store.state.undoName).toBe('press NUT-M4-10-CS as number 1 in panel Front');
    await bench.commands.undo();
    expect(stepsOf(bench)).toEqual(suggested);
    await bench.commands.redo();

    const { work } = bench.commands;
    if (!work) throw new Error('nothing open');
    const text = await showProject(toProject(work, bench.store.state, '2025-03-14T00:00:00Z'));
    await bench.commands.restore(parseProject(text, 'work.json'));
    bench.commands.show('press');
    await shown(bench);
    expect(stepsOf(bench)).toEqual([...suggested].reverse());
    expect(concessionsAfter(bench.store.state.history)).toEqual([]);
  });

  it('leaves a question out until its tick is back, and forgets that with another list', async () => {
    const bench = await openBench(LIST);
    bench.commands.show('questions');
    const [question] = (await shown(bench)).questions;
    if (!question) throw new Error('no question');
    bench.commands.reports.toggleQuestion(question);
    expect([...bench.store.state.leftOut]).toEqual([questionKey(question)]);
    bench.commands.reports.toggleQuestion(question);
    expect(bench.store.state.leftOut.size).toBe(0);
    bench.commands.reports.toggleQuestion(question);
    const former = bench.store.state.list;
    await bench.commands.openFile({ name: 'other.csv', data: new Blob([LIST]) });
    expect(bench.store.state.leftOut.size).toBe(0);
    expect(bench.store.state.rollups?.list).not.toBe(former);
  });

  it('shows a row in the list even where the list was narrowed down to others', async () => {
    const bench = await openBench(LIST);
    bench.commands.toggleFilter('holds');
    bench.commands.search('M3');
    bench.commands.reports.showRow(4);
    expect(bench.store.state).toMatchObject({ view: 'list', selectedRow: 4, search: '' });
    expect(bench.store.state.filter.size).toBe(0);
    bench.commands.toggleFilter('unknown');
    bench.commands.reports.showRow(4);
    expect([...bench.store.state.filter]).toEqual(['unknown']);
  });
});
