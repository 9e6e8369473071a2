import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { AppHost, type RunningApp } from './app.ts';
import { cell, counts, loadCatalogue, openList, typeInto } from './list-page.ts';
import { CATALOGUE, LIST } from './own-list.ts';

/** Several pages open one after the other, also on a busy machine. */
vi.setConfig({ testTimeout: 60_000 });

const host = new AppHost({ isKept: true });

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

/** The row of the list that is too thin, and its column. */
const THIN = [3, 2] as const;
/** A second, and the little that a write takes. */
const KEPT_BY_MS = 1200;

const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });
const redo = (page: Page) => page.getByRole('button', { name: 'Redo' });
const thin = (page: Page) => cell(page, THIN[0], `sender-${THIN[1]}`);
const kept = (page: Page) => page.locator('saved-lists li');
const keptAs = (page: Page, name: string) => page.locator('saved-lists').getByRole('button', { name, exact: true });

/** A list with its own catalogue and one edit, after which both rows hold. */
async function openEdited(app: RunningApp): Promise<void> {
  await loadCatalogue(app.page, CATALOGUE);
  await openList(app.page, LIST);
  expect(await counts(app.page)).toMatchObject({ holds: 1, fails: 1 });
  await edit(app.page, '1.2', { holds: 2, fails: 0 });
}

async function edit(page: Page, text: string, then: Record<string, number>): Promise<void> {
  await typeInto(page, ...THIN, text);
  await expect.poll(() => counts(page)).toMatchObject(then);
  await expect.poll(() => thin(page).innerText()).toBe(text);
}

/** The edit is there and can be taken back and made again. */
async function expectEdited(page: Page, text = '1.2'): Promise<void> {
  await expect.poll(() => counts(page)).toMatchObject({ holds: 2, fails: 0 });
  await expect.poll(() => thin(page).innerText()).toBe(text);
  await undo(page).click();
  await expect.poll(() => counts(page)).toMatchObject({ holds: 1, fails: 1 });
  await redo(page).click();
  await expect.poll(() => counts(page)).toMatchObject({ holds: 2, fails: 0 });
}

async function saveProject(page: Page): Promise<{ name: string; text: string }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save project' }).click();
  const file = await download;
  return { name: file.suggestedFilename(), text: readFileSync(await file.path(), 'utf8') };
}

const project = (name: string, text: string) => ({ name, mimeType: 'application/json', buffer: Buffer.from(text) });

describe('work that was not saved', () => {
  it('is there again after the page has gone without a word', async () => {
    const first = await host.open();
    await openEdited(first);
    await first.page.waitForTimeout(KEPT_BY_MS);
    await first.page.close();

    const next = await host.openBeside(first);
    await expect.poll(() => kept(next.page).count()).toBe(1);
    const words = await kept(next.page).innerText();
    expect(words).toContain('cabinet.csv');
    expect(words).toContain('1 change');
    expect(
      await kept(next.page)
        .getByRole('img')
        .evaluateAll((all) => all.map((one) => one.ariaLabel)),
    ).toEqual(['2 hold', '0 marginal', '0 fail', '0 unknown']);
    await keptAs(next.page, 'cabinet.csv').click();
    await expectEdited(next.page);
    expect(await undo(next.page).getAttribute('title')).toContain('Undo: edit Thickness (mm) in row 3');
    expect([...first.errors, ...next.errors]).toEqual([]);
  });

  it('comes back with what was shown, and goes on being kept', async () => {
    const first = await host.open();
    await openEdited(first);
    await first.page.locator('verdict-counts [data-verdict="holds"]').click();
    await undo(first.page).click();
    await expect.poll(() => counts(first.page)).toMatchObject({ fails: 1 });
    await first.page.waitForTimeout(KEPT_BY_MS);
    await first.page.close();

    const second = await host.openBeside(first);
    await keptAs(second.page, 'cabinet.csv').click();
    await expect.poll(() => counts(second.page)).toMatchObject({ holds: 1, fails: 1 });
    const pressed = second.page.locator('verdict-counts [aria-pressed="true"]');
    expect(await pressed.getAttribute('data-verdict')).toBe('holds');
    await pressed.click();
    await redo(second.page).click();
    await expect.poll(() => counts(second.page)).toMatchObject({ holds: 2 });
    await edit(second.page, '1.3', { holds: 2 });
    await second.page.waitForTimeout(KEPT_BY_MS);
    await second.page.close();

    const third = await host.openBeside(first);
    await expect.poll(() => kept(third.page).count()).toBe(1);
    await keptAs(third.page, 'cabinet.csv').click();
    await expect.poll(() => thin(third.page).innerText()).toBe('1.3');
    await undo(third.page).click();
    await expect.poll(() => thin(third.page).innerText()).toBe('1.2');
    await undo(third.page).click();
    await expect.poll(() => thin(third.page).innerText()).toBe('0.5');
    expect([...first.errors, ...second.errors, ...third.errors]).toEqual([]);
  });

  it('of two pages on one document is kept twice rather than once too little', async () => {
    const first = await host.open();
    await openEdited(first);
    await first.page.waitForTimeout(KEPT_BY_MS);
    const second = await host.openBeside(first);
    await keptAs(second.page, 'cabinet.csv').click();
    await edit(second.page, '1.4', { holds: 2 });
    await second.page.waitForTimeout(KEPT_BY_MS);
    await edit(first.page, '1.6', { holds: 2 });
    await first.page.waitForTimeout(KEPT_BY_MS);

    const third = await host.openBeside(first);
    await expect.poll(() => kept(third.page).count()).toBe(2);
    await keptAs(third.page, 'cabinet.csv').first().click();
    await expect.poll(() => thin(third.page).innerText()).toBe('1.6');
    const fourth = await host.openBeside(first);
    await keptAs(fourth.page, 'cabinet.csv').last().click();
    await expect.poll(() => thin(fourth.page).innerText()).toBe('1.4');
    expect([first, second, third, fourth].flatMap(({ errors }) => errors)).toEqual([]);
  });

  it('is kept list by list, also when the next list is opened at once, and can be deleted', async () => {
    const first = await host.open();
    await openEdited(first);
    await openList(first.page, { ...LIST, name: 'panel.csv' });
    await expect.poll(() => counts(first.page)).toMatchObject({ holds: 1, fails: 1 });
    await first.page.waitForTimeout(KEPT_BY_MS);
    await first.page.close();

    const next = await host.openBeside(first);
    await expect.poll(() => kept(next.page).count()).toBe(2);
    expect(await kept(next.page).first().innerText()).toContain('panel.csv');
    await next.page.getByRole('button', { name: 'Delete panel.csv from this browser' }).click();
    await expect.poll(() => kept(next.page).count()).toBe(1);
    next.page.once('dialog', (dialog) => dialog.dismiss());
    await next.page.getByRole('button', { name: 'Delete cabinet.csv from this browser' }).click();
    await next.page.reload();
    await expect.poll(() => kept(next.page).count()).toBe(1);
    await keptAs(next.page, 'cabinet.csv').click();
    await expectEdited(next.page);
    expect([...first.errors, ...next.errors]).toEqual([]);
  });

  it('is warned about only while it is not kept', async () => {
    const { page, errors } = await host.open();
    const warnings: string[] = [];
    page.on('dialog', (dialog) => {
      warnings.push(dialog.type());
      dialog.accept();
    });
    await openEdited({ page, errors, strangers: [] });
    await page.waitForTimeout(KEPT_BY_MS);
    await page.reload();
    expect(warnings).toEqual([]);

    await keptAs(page, 'cabinet.csv').click();
    await expect.poll(() => counts(page)).toMatchObject({ holds: 2 });
    // A disk that takes its time: the write has begun and does not end.
    await page.evaluate(() => {
      IDBFactory.prototype.open = () => new EventTarget() as IDBOpenDBRequest;
    });
    await edit(page, '1.7', { holds: 2 });
    await page.reload();
    expect(warnings).toEqual(['beforeunload']);
    expect(errors).toEqual([]);
  });

  it.each([
    ['the browser forbids storage', 'SecurityError', 'it allows no storage here'],
    ['its storage is full', 'QuotaExceededError', 'its storage is full'],
  ])('stays in memory with one sentence where %s', async (_, name, words) => {
    const app = await host.open();
    const { page, errors } = app;
    await page.addInitScript((errorName) => {
      IDBFactory.prototype.open = () => {
        throw new DOMException('no', errorName);
      };
    }, name);
    await page.reload();
    await openEdited(app);
    await expect.poll(() => page.getByRole('alert').innerText()).toContain(words);
    await page.getByRole('button', { name: 'Dismiss' }).click();
    await edit(page, '1.1', { holds: 2 });
    await page.waitForTimeout(KEPT_BY_MS);
    expect(await page.getByRole('alert').count()).toBe(0);

    await saveProject(page);
    page.on('dialog', (dialog) => errors.push(dialog.type()));
    await page.reload();
    expect(errors).toEqual([]);
  });
});

describe('a project file', () => {
  it('gives the same rows and undo in another browser', async () => {
    const first = await host.open();
    await openEdited(first);
    await first.page.locator('row-panel').waitFor();
    const { name, text } = await saveProject(first.page);
    expect(name).toBe('cabinet-work.json');

    const other = await host.open();
    await openList(other.page, project(name, text));
    await expectEdited(other.page);
    await other.page.locator('row-panel').waitFor();
    const cells = (page: Page) => page.locator('list-grid .ag-row').allInnerTexts();
    expect(await cells(other.page)).toEqual(await cells(first.page));
    expect(await other.page.locator('read-line p').first().innerText()).not.toContain('demo');
    const again = JSON.parse((await saveProject(other.page)).text);
    const { savedAt: _, ...same } = JSON.parse(text);
    expect(again).toMatchObject(same);
    expect([...first.errors, ...other.errors]).toEqual([]);
  });

  it('of the demo list opens when dropped, with the sheet, the shop settings and the row that was chosen', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    const before = await counts(page);
    const { text } = await saveProject(page);
    const changed = { ...JSON.parse(text), selectedRow: 9, shop: { ...JSON.parse(text).shop, hardnessMarginHrb: 35 } };
    await page.locator('main').evaluate((main, dropped) => {
      const dataTransfer = new DataTransfer();
      dataTransfer.items.add(new File([dropped], 'recorder-work.json'));
      main.dispatchEvent(new DragEvent('drop', { dataTransfer, bubbles: true, cancelable: true }));
    }, JSON.stringify(changed));
    await expect.poll(() => page.locator('.message').innerText()).toMatch(/shop settings .* in force now/);
    expect(await counts(page)).not.toEqual(before);
    await page.getByRole('button', { name: 'Shop settings' }).click();
    expect(await page.locator('[data-setting="hardnessMarginHrb"]').inputValue()).toBe('35');
    expect(errors).toEqual([]);
  });

  it.each([
    ['damaged', '{"app":"clinchsheet","version":1,"list":{"name":"a', /“x-work\.json” is damaged: .* at character 50/],
    ['newer', '{"app":"clinchsheet","version":9}', /made by a newer version of Clinchsheet: update the app/],
    ['of something else', '{"pressKn":60}', /is no project of this app/],
    [
      'with a list that cannot be read',
      '{"app":"clinchsheet","version":1,"list":{"name":"a.csv","bytesBase64":""}}',
      /a\.csv/,
    ],
  ])('that is %s leaves the open list alone', async (_, text, sentence) => {
    const app = await host.open();
    await openEdited(app);
    await openList(app.page, project('x-work.json', text));
    await expect.poll(() => app.page.getByRole('alert').innerText()).toMatch(sentence);
    await expectEdited(app.page);
    expect(app.errors).toEqual([]);
  });
});

it('keeps the workbook of the demo as it came', async () => {
  const { page, errors } = await host.open();
  const path = resolve(import.meta.dirname, '../../sample-data/recorder-cabinet.xlsx');
  await openList(page, path);
  await counts(page);
  const { list } = JSON.parse((await saveProject(page)).text);
  expect(Buffer.from(list.bytesBase64, 'base64').equals(readFileSync(path))).toBe(true);
  expect(errors).toEqual([]);
});
