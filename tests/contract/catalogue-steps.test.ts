import { describe, expect, it } from 'vitest';
import { namedApart, withPartEdits } from '../../src/app/catalogue-files.ts';
import { toChangeRecords } from '../../src/app/change-records.ts';
import { ANY_PART, choicesOf, findParts, listParts } from '../../src/app/find-parts.ts';
import { parseProject } from '../../src/app/parse-project.ts';
import { showProject, toProject } from '../../src/app/project.ts';
import type { Catalogue, Fastener } from '../../src/core/model/fastener.ts';
import type { HandedFile } from '../../src/worker/protocol.ts';
import { type Bench, openBench } from '../properties/stand-in-worker.ts';

const LIST = 'Part number,Material,Thk,Qty\nNUT-M4-10-CS,DC01,0.9,2\nNUT-M3-10-CS,DC01,1.5,2\n';
const OWN =
  'partNumber,kind,thread,material,sheetMinMm,holeMm,edgeMm,stocked,supplier\nNUT-M4-10-CS,clinch nut,M4,carbon-steel-hardened,0.8,5.6,7,yes,Alder\nOWN-9,clinch stud,M5,brass,1,5,8,no,Alder\n';
const csv = (name: string, text: string): HandedFile => ({ name, data: new Blob([text]) });

const verdictOf = ({ store }: Bench, row: number) => store.state.list?.lines.find((line) => line.row === row)?.verdict;
const catalogueOf = ({ store }: Bench, position = 0) => store.state.catalogues[position] as Catalogue;
const partOf = (bench: Bench, partNumber = 'NUT-M4-10-CS', position = 0) =>
  catalogueOf(bench, position).fasteners.find((part) => part.partNumber === partNumber) as Fastener;

describe('an edit of the catalogue', () => {
  it('judges the list again, can be taken back and made again', async () => {
    const bench = await openBench(LIST);
    const { commands, store } = bench;
    expect(verdictOf(bench, 2)).toBe('fails');
    expect(await commands.catalogues.editPart(0, partOf(bench), { sheetMinMm: '0.9', shankMm: '0.8' })).toEqual([]);
    expect(verdictOf(bench, 2)).toBe('holds');
    expect(store.state.message?.text).toMatch(/holds 1 → 2/);
    expect(catalogueOf(bench)).toMatchObject({ name: 'demo-catalogue (1 part edited)', demo: true });
    expect(store.state.list?.catalogues).toEqual([{ name: 'demo-catalogue (1 part edited)', demo: true }]);
    await commands.undo();
    expect(verdictOf(bench, 2)).toBe('fails');
    expect(catalogueOf(bench).name).toBe('demo-catalogue');
    expect(commands.work?.catalogues).toEqual([]);
    await commands.redo();
    expect(verdictOf(bench, 2)).toBe('holds');
  });

  it('is no step where it is refused', async () => {
    const bench = await openBench(LIST);
    const faults = await bench.commands.catalogues.editPart(0, partOf(bench), { holeMm: '2' });
    expect(faults.map(({ field }) => field)).toEqual(['holeMm']);
    expect(bench.store.state.undoName).toBeNull();
  });

  it('tells what was before and after, part by part', async () => {
    const bench = await openBench(LIST);
    const { catalogues } = bench.commands;
    await catalogues.editPart(0, partOf(bench), { sheetMinMm: '0.9' });
    await catalogues.editPart(0, partOf(bench), { stocked: 'no' });
    await catalogues.addPart(0, { partNumber: 'OWN-9', kind: 'clinch stud' });
    await catalogues.removePart(0, partOf(bench, 'NUT-M3-10-CS'));
    expect(verdictOf(bench, 3)).toBe('unknown');
    const records = toChangeRecords(bench.store.state.history, []);
    expect(records.map(({ details }) => details.map(({ where, before, after }) => [where, before, after]))).toEqual([
      [['NUT-M4-10-CS, minimum sheet', '1', '0.9']],
      [['NUT-M4-10-CS, stocked', expect.any(String), 'no']],
      [['OWN-9', 'not in the catalogue', 'added']],
      [['NUT-M3-10-CS', 'in the catalogue', 'taken out']],
    ]);
  });

  it('comes back with the project, with its undo', async () => {
    const bench = await openBench(LIST);
    await bench.commands.catalogues.editPart(0, partOf(bench), { sheetMinMm: '0.9', shankMm: '0.8' });
    const { work } = bench.commands;
    const text = await showProject(toProject(work!, bench.store.state, ''));
    const other = await openBench('Part number,Qty\nX-1,1\n');
    await other.commands.restore(parseProject(text, 'list-work.json'));
    expect(verdictOf(other, 2)).toBe('holds');
    expect(partOf(other).origin.edited).toEqual({ sheetMinMm: '1', shankMm: expect.any(String) });
    await other.commands.undo();
    expect(verdictOf(other, 2)).toBe('fails');
  });

  it('stays with the catalogue when another list is opened', async () => {
    const bench = await openBench(LIST);
    await bench.commands.catalogues.editPart(0, partOf(bench), { sheetMinMm: '0.9' });
    await bench.commands.openFile(csv('next.csv', LIST));
    expect(partOf(bench).sheetMinMm).toBe(0.9);
  });

  it.each([
    [
      '{"app":"clinchsheet","version":1,"list":{"name":"a.csv","bytesBase64":""},"catalogues":[{"name":"c.csv","bytesBase64":"","edits":[{"partNumber":4}]}]}',
      'catalogues[0].edits[0].partNumber',
    ],
    [
      '{"app":"clinchsheet","version":1,"list":{"name":"a.csv","bytesBase64":""},"steps":[{"name":"x","before":{"parts":{}},"after":{"parts":{"catalogue":"c","edits":[]}}}]}',
      'steps[0].before.parts.catalogue',
    ],
  ])('is refused where the project is damaged', (text, place) => {
    expect(() => parseProject(text, 'x.json')).toThrow(place);
  });
});

describe('several catalogues', () => {
  it('the demo gives way, edited or not; rank decides which data count', async () => {
    const bench = await openBench(LIST);
    const { catalogues } = bench.commands;
    await catalogues.editPart(0, partOf(bench), { edgeMm: '20' });
    await catalogues.add([csv('own.csv', OWN)]);
    expect(bench.store.state.catalogues.map(({ name }) => name)).toEqual(['own']);
    await catalogues.add([csv('other.csv', OWN.replace(',0.8,', ',1.2,'))]);
    expect(verdictOf(bench, 2)).toBe('holds');
    await catalogues.move(1, -1);
    expect(bench.store.state.catalogues.map(({ name }) => name)).toEqual(['other', 'own']);
    expect(verdictOf(bench, 2)).toBe('fails');
    await catalogues.remove(0);
    expect(verdictOf(bench, 2)).toBe('holds');
    await bench.commands.undo();
    expect(bench.store.state.message).toBeNull();
    expect(bench.store.state.catalogues.map(({ name }) => name)).toEqual(['own']);
  });

  it('asked for twice in a hurry, the same catalogue moves on, and no edit is lost', async () => {
    const bench = await openBench(LIST);
    const { catalogues } = bench.commands;
    await catalogues.add([csv('a.csv', OWN), csv('b.csv', OWN), csv('c.csv', OWN)]);
    await Promise.all([catalogues.move(2, -1), catalogues.move(2, -1), catalogues.move(2, -1)]);
    expect(bench.store.state.catalogues.map(({ name }) => name)).toEqual(['c', 'a', 'b']);
    const part = partOf(bench, 'OWN-9');
    await Promise.all([
      catalogues.editPart(0, part, { edgeMm: '9' }),
      catalogues.editPart(0, part, { stocked: 'yes' }),
      catalogues.move(0, 1),
    ]);
    expect(bench.store.state.catalogues.map(({ name }) => name)).toEqual(['a', 'c (1 part edited)', 'b']);
    expect(partOf(bench, 'OWN-9', 1)).toMatchObject({ edgeMm: 9, stocked: { yes: true } });
    await Promise.all([catalogues.remove(0), catalogues.remove(0)]);
    expect(bench.store.state.catalogues).toHaveLength(2);
  });

  it('with the same file name are told apart', () => {
    const files = namedApart([csv('a.csv', '')], [csv('a.csv', ''), csv('a.csv', ''), csv('b', '')]);
    expect(files.map(({ name }) => name)).toEqual(['a (2).csv', 'a (3).csv', 'b']);
    expect(withPartEdits(files, { catalogue: 'gone.csv', edits: [] })).toEqual(files);
  });
});

describe('finding a part', () => {
  it('by words, kind, thread, stock and edits, with the catalogue that counts', async () => {
    const bench = await openBench(LIST);
    const { catalogues } = bench.commands;
    await catalogues.add([csv('own.csv', OWN), csv('more.csv', OWN)]);
    await catalogues.editPart(1, partOf(bench, 'OWN-9', 1), { supplier: 'Birch' });
    const all = listParts(bench.store.state.catalogues);
    const found = (query: object) =>
      findParts(all, { ...ANY_PART, ...query }).map(({ part, position }) => `${position} ${part.partNumber}`);
    expect(found({})).toHaveLength(4);
    expect(found({ text: 'brass alder' })).toEqual(['0 OWN-9']);
    expect(found({ kind: 'clinch nut' })).toEqual(['0 NUT-M4-10-CS', '1 NUT-M4-10-CS']);
    expect(found({ thread: 'M5', stock: 'not stocked', isEdited: true })).toEqual(['1 OWN-9']);
    expect(found({ text: 'nothing of the kind' })).toEqual([]);
    expect(all.map(({ takenFrom }) => takenFrom)).toEqual([null, null, 'own', 'own']);
    expect(choicesOf(all)).toEqual({ kinds: ['clinch nut', 'clinch stud'], threads: ['M4', 'M5'] });
  });
});
