import { readFileSync } from 'node:fs';
import axe from 'axe-core';
import type { Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { compareLists } from '../../src/core/compare/compare-lists.ts';
import { compareReport } from '../../src/core/compare/compare-report.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { DEMO_WORDS, SAFETY_SHORT, SAFETY_WORDS } from '../../src/core/say/safety.ts';
import { readFile } from '../../src/io/read-file.ts';
import { AppHost, type RunningApp } from './app.ts';
import { longList } from './grid-page.ts';
import { cell, concedeFirstCheck, counts, csv, openList, typeInto } from './list-page.ts';
import { REVISION_A, revisionB } from './revision-b.ts';

const host = new AppHost();
beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const FAILING = 30;
const A = csv('recorder-a.csv', REVISION_A);
const B = revisionB();
const DEMO = new URL('../../sample-data/demo-catalogue.csv', import.meta.url);
const basis = createBasis([importCatalogue(readFile(readFileSync(DEMO), 'demo-catalogue.csv'))], DEFAULT_SHOP);
/** Both revisions as the core itself judges and compares them. */
const before = auditFile(readFile(A.buffer, A.name), basis);
const after = auditFile(readFile(B.buffer, B.name), basis);
const comparison = compareLists(before, after);

async function openRevisionB(): Promise<RunningApp> {
  const app = await host.open();
  await openList(app.page, B);
  await counts(app.page);
  await showCompare(app.page);
  return app;
}

async function showCompare(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Compare', exact: true }).click();
  await page.locator('compare-view .page').waitFor();
}

async function choose(page: Page, file: ReturnType<typeof csv>): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Choose the earlier list…' }).click();
  await (await chooser).setFiles(file);
}

async function compareWithA(page: Page): Promise<void> {
  await choose(page, A);
  await table(page, 'wrong').waitFor();
}

/** The table of one kind of change. */
function table(page: Page, kind: string): Locator {
  return page.locator(`change-table section[data-kind=${kind}]`);
}

/** Numbers in the first column: rows of the open list, or of the earlier one where there are no others. */
async function rowsIn(page: Page, kind: string): Promise<readonly number[]> {
  const texts = await table(page, kind).locator('tbody tr td:first-child').allInnerTexts();
  return texts.map((text) => Number(text.split(/\s/)[0]));
}

async function saved(page: Page, button: string) {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).click();
  const file = await download;
  const bytes = new Uint8Array(readFileSync(await file.path()));
  return { name: file.suggestedFilename(), read: readFile(bytes, file.suggestedFilename()) };
}

/** Accepts the first check of a failing row in revision A, and leaves it kept on this computer. */
async function openBAfterConcession(): Promise<RunningApp> {
  const app = await host.open();
  const { page } = app;
  await openList(page, A);
  await counts(page);
  await cell(page, FAILING, 'sender-1').click();
  await concedeFirstCheck(page, 'pull test passed', 'R. Alder');
  await cell(page, FAILING, 'decision').getByText('pull test passed').waitFor();
  await openList(page, B);
  await page.locator('read-line').getByText('recorder-b.csv').waitFor();
  await showCompare(page);
  return app;
}

function clean({ errors, strangers }: RunningApp): void {
  expect(errors).toEqual([]);
  expect(strangers).toEqual([]);
}

describe('revision B against revision A', () => {
  it('shows every kind of change as the core finds it, what is newly wrong first', async () => {
    const app = await openRevisionB();
    const { page } = app;
    await compareWithA(page);
    const line = await page.locator('compare-view .line').innerText();
    for (const words of [
      'recorder-a.csv',
      'recorder-b.csv',
      '63 rows',
      `${comparison.pairs.length} rows found again: `,
    ])
      expect(line).toContain(words);
    const kinds = await page.locator('change-table section').evaluateAll((all) => all.map((one) => one.dataset.kind));
    expect(kinds).toEqual(['wrong', 'changed', 'added', 'removed', 'moved', 'quantities', 'rewritten']);
    const rows = (all: readonly { readonly after: { readonly row: number } }[]) => all.map((one) => one.after.row);
    expect(await rowsIn(page, 'wrong')).toEqual(rows(comparison.newlyWrong));
    expect(await rowsIn(page, 'changed')).toEqual(rows(comparison.changed));
    expect(await rowsIn(page, 'added')).toEqual(comparison.added.map(({ row }) => row));
    expect(await rowsIn(page, 'removed')).toEqual(comparison.removed.map(({ row }) => row));
    expect(await rowsIn(page, 'moved')).toEqual(rows(comparison.moved));
    expect(await rowsIn(page, 'rewritten')).toEqual(rows(comparison.rewritten));
    const words = (kind: string) => table(page, kind).innerText();
    expect(await words('wrong')).toContain('Sheet 1.22, needs 1.50 mm');
    expect(await words('changed')).toMatch(/Gauge\/Thk: \.060 → \.048\s+holds →\s+fails/);
    expect(await words('moved')).toContain('RC-01 → RC-01B');
    expect(await words('quantities')).toMatch(/NUT-M3-10-CS\s+14\s+18\s+\+4/);
    clean(app);
  });

  it('shows one kind alone, leads to a row, and is still there on the way back', async () => {
    const app = await openRevisionB();
    const { page } = app;
    await compareWithA(page);
    await page.getByRole('button', { name: 'added' }).click();
    expect(await page.locator('change-table').count()).toBe(1);
    const [added] = comparison.added;
    await table(page, 'added')
      .getByRole('button', { name: String(added?.row) })
      .click();
    await expect.poll(() => cell(page, added?.row ?? 0, 'sender-0').isVisible()).toBe(true);
    await page
      .locator('row-panel')
      .getByText(added?.partNumber ?? '')
      .first()
      .waitFor();
    await showCompare(page);
    expect(await page.locator('change-table').count()).toBe(1);
    await page.getByRole('button', { name: 'added' }).click();
    await table(page, 'wrong').waitFor();
    clean(app);
  });

  it('goes out as XLSX and CSV with basis and safety words', async () => {
    const app = await openRevisionB();
    const { page } = app;
    await compareWithA(page);
    const report = compareReport(comparison, before, after);
    const book = await saved(page, 'Save as XLSX');
    expect(book.name).toBe('recorder-b-compare.xlsx');
    expect(book.read.tables.map(({ name }) => name)).toEqual(['Compare', 'Basis']);
    const list = await saved(page, 'Save as CSV');
    expect(list.name).toBe('recorder-b-compare.csv');
    const textOf = (at: number, { read }: typeof list) =>
      read.tables[at]?.rows.map(({ cells }) => cells.filter(Boolean).join('\t')).join('\n') ?? '';
    for (const text of [textOf(0, book), textOf(0, list)]) {
      for (const { title } of report.blocks) expect(text).toContain(title);
      for (const { row, text: says } of comparison.added)
        expect(text).toMatch(new RegExp(`^${row}\t.*${says.slice(-20)}`, 'm'));
      for (const words of [DEMO_WORDS, SAFETY_SHORT, 'recorder-a.csv']) expect(text).toContain(words);
    }
    for (const text of [textOf(1, book), textOf(0, list)]) expect(text).toMatch(/Catalogue\tdemo-catalogue/);
    for (const words of SAFETY_WORDS) expect(textOf(1, book)).toContain(words);
    clean(app);
  });

  it('is compared again when the list is edited, and takes undo', async () => {
    const app = await openRevisionB();
    const { page } = app;
    await compareWithA(page);
    const count = await table(page, 'changed').locator('tbody tr').count();
    await page.getByRole('button', { name: 'List', exact: true }).click();
    await typeInto(page, 6, 2, '11');
    await showCompare(page);
    const changed = () => table(page, 'changed').locator('tbody tr').count();
    await expect.poll(changed).toBe(count + 1);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(changed).toBe(count);
    clean(app);
  });
});

describe('the earlier list', () => {
  it('can be dropped on the view; the open list stays open', async () => {
    const app = await openRevisionB();
    const { page } = app;
    await page.locator('main').evaluate((main, text) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([text], 'recorder-a.csv'));
      main.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    }, REVISION_A);
    await table(page, 'wrong').waitFor();
    await page.getByRole('button', { name: 'List', exact: true }).click();
    await page.locator('read-line').getByText('recorder-b.csv').waitFor();
    clean(app);
  });

  it('that cannot be read is told in one sentence, and nothing that is open is lost', async () => {
    const app = await openRevisionB();
    const { page } = app;
    await compareWithA(page);
    await page.getByRole('button', { name: 'Another earlier list…' }).click();
    await choose(page, csv('broken.xlsx', 'PK no workbook'));
    await expect.poll(() => page.getByRole('alert').innerText()).toContain('broken.xlsx');
    await page.getByRole('button', { name: 'Back to the comparison' }).click();
    expect(await rowsIn(page, 'added')).toEqual(comparison.added.map(({ row }) => row));
    clean(app);
  });

  it('that is the same is told to be so', async () => {
    const app = await openRevisionB();
    await choose(app.page, { ...B, name: 'copy.csv' });
    await app.page.getByText('The two lists are the same.').waitFor();
    expect(await app.page.locator('change-table').count()).toBe(0);
    clean(app);
  });

  it('may be the open one as it was opened', async () => {
    const app = await openRevisionB();
    const { page } = app;
    expect(await page.getByRole('button', { name: 'This list as it was opened' }).count()).toBe(0);
    await page.getByRole('button', { name: 'List', exact: true }).click();
    await typeInto(page, 6, 2, '11');
    await showCompare(page);
    await page.getByRole('button', { name: 'This list as it was opened' }).click();
    await table(page, 'changed').waitFor();
    expect(await rowsIn(page, 'changed')).toEqual([6]);
    clean(app);
  });

  it('may be one kept on this computer, whose concessions are taken over as one step', async () => {
    const app = await openBAfterConcession();
    const { page } = app;
    await page.locator('choose-earlier').getByRole('button', { name: 'recorder-a.csv' }).click();
    await table(page, 'concessions').waitFor();
    expect(await table(page, 'concessions').innerText()).toMatch(/pull test passed\s+R\. Alder.*\s+carried over/);
    await page.getByRole('button', { name: 'Take over one concession' }).click();
    await page.getByText('Those carried over stand in this list.').waitFor();
    const row = await rowsIn(page, 'concessions');
    await page.getByRole('button', { name: 'List', exact: true }).click();
    await cell(page, row[0] ?? 0, 'decision')
      .getByText('pull test passed')
      .waitFor();
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(() => cell(page, row[0] ?? 0, 'decision').innerText()).not.toContain('pull test');
    clean(app);
  }, 60_000);

  it('of thousands of rows that all differ is shown a few hundred at a time', async () => {
    const app = await host.open();
    const { page } = app;
    const rows = 3000;
    const list = longList(rows);
    await openList(page, list);
    await counts(page);
    await showCompare(page);
    await choose(page, csv('before.csv', list.buffer.toString().replaceAll(',DC01,1.5,', ',DC01,2,')));
    await table(page, 'changed').waitFor({ timeout: 60_000 });
    const shown = () => table(page, 'changed').locator('tbody tr').count();
    expect(await shown()).toBe(200);
    await table(page, 'changed')
      .getByRole('button', { name: `Show all ${rows}` })
      .click();
    await expect.poll(shown, { timeout: 30_000 }).toBe(rows);
    clean(app);
  }, 120_000);
});

describe.each(['light', 'dark'] as const)('nothing stands in the way, %s', (colorScheme) => {
  it('in a comparison', async () => {
    const { page } = await openRevisionB();
    await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    await compareWithA(page);
    await page.getByRole('button', { name: 'newly wrong' }).click();
    await page.getByRole('button', { name: 'newly wrong' }).click();
    await page.evaluate(axe.source);
    const violations = await page.evaluate(async () => {
      const rules = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
      const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, {
        runOnly: { type: 'tag', values: rules },
      });
      return violations.flatMap(({ id, nodes }) => nodes.map(({ target }) => `${id}: ${JSON.stringify(target)}`));
    });
    expect(violations).toEqual([]);
  }, 60_000);
});
