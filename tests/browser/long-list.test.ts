import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost, type RunningApp } from './app.ts';
import { copied, longList } from './grid-page.ts';
import { cell, counts, heading, openList, typeInto } from './list-page.ts';

const host = new AppHost();

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const ROWS = 12_000;
const LAST = ROWS + 1;

/** Opens a long list of which no more than the first rows come into the grid by themselves. */
async function openHalted(): Promise<RunningApp> {
  const app = await host.open();
  await app.page.evaluate(() => {
    const { setTimeout } = globalThis;
    let passed = 0;
    // The grid itself and its first rows come by the first two timers without a delay, every other part by one more.
    const halting = (run: () => void, ...delay: number[]) =>
      delay.length > 0 || ++passed <= 2 ? setTimeout(run, ...delay) : 0;
    Object.assign(globalThis, { setTimeout: halting });
  });
  await openList(app.page, longList(ROWS));
  await counts(app.page);
  await cell(app.page, 2, 'verdict').waitFor();
  return app;
}

const lastRow = (page: Page) => cell(page, LAST, 'verdict');

describe('a long list of which only the first rows have come', () => {
  it('has all its rows for the keys, the clipboard and a change of many', async () => {
    const { page, errors } = await openHalted();
    await cell(page, 2, 'sender-0').click();
    await page.keyboard.press('Control+a');
    expect((await copied(page)).trimEnd().split('\n')).toHaveLength(ROWS);
    await page.keyboard.press('Control+End');
    await lastRow(page).waitFor();

    const other = await openHalted();
    await other.page.getByRole('button', { name: 'Set column…' }).click();
    await other.page
      .getByRole('dialog')
      .getByText(/12[, ]?000 rows/)
      .first()
      .waitFor();
    expect([...errors, ...other.errors]).toEqual([]);
  });

  it('is searched, filtered and sorted as a whole', async () => {
    const { page, errors } = await openHalted();
    await page.getByLabel('Find in list').fill(`note ${ROWS}`);
    await lastRow(page).waitFor();

    const other = await openHalted();
    await heading(other.page, 0).locator('.sort').click();
    await heading(other.page, 0).locator('.sort').click();
    await lastRow(other.page).waitFor();
    expect([...errors, ...other.errors]).toEqual([]);
  });

  it('is edited, and the edit taken back, in rows that are there and in those that come later', async () => {
    const { page, errors } = await openHalted();
    await typeInto(page, 2, 3, '0.5');
    await expect.poll(() => counts(page)).toMatchObject({ fails: 1, holds: ROWS - 1 });
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => counts(page)).toMatchObject({ fails: 0, holds: ROWS });
    await page.getByLabel('Find in list').fill(`note ${ROWS}`);
    await typeInto(page, LAST, 3, '0.5');
    await expect.poll(() => lastRow(page).innerText()).toBe('fails');
    expect(errors).toEqual([]);
  });
});
