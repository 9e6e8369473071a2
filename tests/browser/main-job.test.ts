import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import exceljs, { type Workbook } from 'exceljs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { readFile } from '../../src/io/read-file.ts';
import { AppHost } from './app.ts';

const SAMPLES = resolve(import.meta.dirname, '../../sample-data');
const host = new AppHost();

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

async function openList(page: Page, file: { name: string; mimeType: string; buffer: Buffer } | string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open list', exact: true }).click();
  await (await chooser).setFiles(file);
}

async function counts(page: Page): Promise<Record<string, number>> {
  await page.locator('verdict-counts b').first().waitFor();
  const entries = await page
    .locator('verdict-counts button')
    .evaluateAll((buttons) =>
      buttons.map(
        (button) =>
          [button.getAttribute('data-verdict') ?? '', Number(button.querySelector('b')?.textContent)] as const,
      ),
    );
  return Object.fromEntries(entries);
}

function cell(page: Page, row: number, column: string) {
  return page.locator(`list-grid .ag-row[row-id="${row}"] .ag-cell[col-id="${column}"]`);
}

function csv(name: string, text: string) {
  return { name, mimeType: 'text/csv', buffer: Buffer.from(text) };
}

describe('the main job in a browser', () => {
  it('opens the demo workbook, judges an edit, exports, and the export reads back', async () => {
    const { page, errors, strangers } = await host.open();
    await openList(page, resolve(SAMPLES, 'recorder-cabinet.xlsx'));
    const before = await counts(page);
    expect(Object.keys(before).sort()).toEqual(['fails', 'holds', 'marginal', 'unknown']);
    for (const count of Object.values(before)) expect(count).toBeGreaterThan(0);

    // The first nut of the list sits in sheet that is thick enough; half a millimetre is not.
    const thickness = await columnOf(page, 'Thk');
    const row = await firstRow(page, 'holds');
    await cell(page, row, `sender-${thickness}`).dblclick();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('0.5');
    await page.keyboard.press('Enter');
    await expect.poll(() => cell(page, row, 'verdict').innerText()).toContain('fails');
    const after = await counts(page);
    expect(after.fails).toBe((before.fails ?? 0) + 1);
    // The other rows of the panel now contradict this one about its thickness: which is right?
    expect(after.unknown).toBeGreaterThan(before.unknown ?? 0);
    expect(Object.values(after).reduce((sum, count) => sum + count)).toBe(
      Object.values(before).reduce((sum, count) => sum + count),
    );
    await cell(page, row, 'verdict').click();
    await expect.poll(() => page.locator('row-panel .decision').innerText()).toMatch(/Fails.*0\.50.*too thin/s);

    const fresh = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export', exact: true }).click();
    await page.getByRole('menuitem', { name: 'As a new workbook' }).click();
    await compareExport(await (await fresh).path(), row, thickness, 1, ['Hardware', 'Findings']);

    const inPlace = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export', exact: true }).focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.getByRole('menuitem', { name: 'In your workbook' }).evaluate(hasFocus)).toBe(true);
    await page.keyboard.press('Enter');
    expect((await inPlace).suggestedFilename()).toBe('recorder-cabinet-judged.xlsx');
    await compareExport(await (await inPlace).path(), row, thickness, 4, ['Hardware', 'Notes', 'Findings']);
    expect(errors).toEqual([]);
    expect(strangers).toEqual([]);
  });

  it('takes an edit back and makes it again', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    const before = await counts(page);
    const thickness = await columnOf(page, 'Thk');
    const row = await firstRow(page, 'holds');
    await cell(page, row, `sender-${thickness}`).dblclick();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('0.5');
    await page.keyboard.press('Enter');
    await expect.poll(() => cell(page, row, 'verdict').innerText()).toContain('fails');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => cell(page, row, 'verdict').innerText()).toContain('holds');
    expect(await counts(page)).toEqual(before);
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => cell(page, row, 'verdict').innerText()).toContain('fails');
    expect(errors).toEqual([]);
  });

  it('filters by verdict and finds words', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    const { fails } = await counts(page);
    await page.locator('verdict-counts [data-verdict="fails"]').click();
    const shown = page.locator('list-grid .ag-row');
    await expect.poll(() => shown.count()).toBe(fails);
    await page.locator('verdict-counts [data-verdict="fails"]').click();
    await page.getByRole('searchbox', { name: 'Find in list' }).fill('no such words anywhere');
    await expect.poll(() => shown.count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it('says in one sentence what is wrong with a file, and keeps the open list', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    const before = await counts(page);
    await openList(page, csv('empty.csv', ''));
    await expect.poll(() => page.getByRole('alert').innerText()).toContain('empty.csv');
    expect(await counts(page)).toEqual(before);
    expect(errors).toEqual([]);
  });

  it('judges by a loaded catalogue and says what in it could not be used', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Catalogue', exact: true }).click();
    const chooser = page.waitForEvent('filechooser');
    await page.getByRole('button', { name: 'Load catalogue…' }).click();
    const catalogue =
      'partNumber,kind,thread,material,sheetMinMm,holeMm,edgeMm\nOWN-1,clinch nut,M4,carbon-steel-hardened,1,5.6,9\nOWN-2,clinch nut,M4,carbon-steel-hardened,-1,5.6,9\n';
    await (await chooser).setFiles(csv('own.csv', catalogue));
    await expect.poll(() => page.locator('catalogue-view .problems').innerText()).toMatch(/row 3/i);
    await openList(
      page,
      csv('list.csv', 'Part number,Material,Thickness (mm),Qty\nOWN-1,DC01,1.5,2\nNUT-M4-10-CS,DC01,1.5,2\n'),
    );
    expect(await counts(page)).toEqual({ holds: 1, marginal: 0, fails: 0, unknown: 1 });
    expect(await page.locator('read-line p').first().innerText()).not.toContain('demo');
    expect(errors).toEqual([]);
  });

  it('shows the page of the rule behind a finding', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    const { fails } = await counts(page);
    await page.locator('verdict-counts [data-verdict="fails"]').click();
    const shown = page.locator('list-grid .ag-row');
    await expect.poll(() => shown.count()).toBe(fails);
    await shown.first().locator('.ag-cell[col-id="verdict"]').click();
    const check = page.locator('check-list details').filter({ hasText: 'fails' }).first();
    await check.locator('summary').click();
    await check.getByRole('button', { name: 'About this check' }).click();
    await expect.poll(() => page.locator('rules-view details[open]').count()).toBe(1);
    expect(errors).toEqual([]);
  });
});

const hasFocus = (element: Element) => element.matches(':focus');

async function columnOf(page: Page, heading: string): Promise<number> {
  const header = page.locator('list-grid .ag-header-cell', { hasText: heading }).first();
  return Number(/\d+/.exec((await header.getAttribute('col-id')) ?? '')?.[0]);
}

async function firstRow(page: Page, verdict: string): Promise<number> {
  const row = page.locator('list-grid .ag-row', { hasText: verdict }).first();
  return Number(await row.getAttribute('row-id'));
}

/** The sender's cells are as they were but for the edit, and ours say what the screen said. */
async function compareExport(
  path: string,
  editedRow: number,
  editedColumn: number,
  headerRow: number,
  firstSheets: readonly string[],
): Promise<void> {
  const workbook: Workbook = new exceljs.Workbook();
  await workbook.xlsx.load(readFileSync(path) as unknown as ArrayBuffer);
  const names = workbook.worksheets.map(({ name }) => name);
  expect(names.slice(0, firstSheets.length)).toEqual(firstSheets);
  expect(names.at(-1)).toBe('Basis');
  const sheet = workbook.getWorksheet('Hardware')!;
  const headings = (sheet.getRow(headerRow).values as string[]).slice(1);
  const rowColumn = headings.indexOf('Row in file') + 1;
  const original = readFile(readFileSync(resolve(SAMPLES, 'recorder-cabinet.xlsx')), 'recorder-cabinet.xlsx');
  const table = original.tables.find(({ name }) => name === 'Hardware')!;
  let compared = 0;
  sheet.eachRow((row, number) => {
    const sent = table.rows.find((candidate) => candidate.number === row.getCell(rowColumn).value);
    if (number <= headerRow || !sent) return;
    sent.cells.forEach((text, column) => {
      const wanted = sent.number === editedRow && column === editedColumn ? '0.5' : text;
      expect(row.getCell(column + 1).text, `row ${sent.number}, column ${column + 1}`).toBe(
        Number.isFinite(Number(wanted)) && wanted !== '' ? String(Number(wanted)) : wanted,
      );
      compared++;
    });
    if (sent.number === editedRow) expect(row.getCell(rowColumn + 1).text).toBe('fails');
  });
  expect(compared).toBeGreaterThan(300);
  const basis: string[] = [];
  workbook.getWorksheet('Basis')!.eachRow((row) => basis.push(row.getCell(1).text, row.getCell(2).text));
  expect(basis.join('\n')).toMatch(/not for production/);
  expect(basis.join('\n')).toMatch(/does not approve joints/);
}
