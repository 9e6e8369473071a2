import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { AppHost } from './app.ts';
import { counts, loadCatalogue, openList } from './list-page.ts';
import { CATALOGUE, LIST } from './own-list.ts';

vi.setConfig({ testTimeout: 60_000 });

const host = new AppHost();
beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const recalled = (page: Page) => page.getByText('judged by the catalogues of your last visit:');

async function visitAgain(page: Page): Promise<void> {
  await page.reload();
  await page.locator('first-screen').waitFor();
}

/** Edits the part so that it holds in thinner sheet. */
async function needLess(page: Page): Promise<void> {
  await page.locator('catalogue-view tbody').getByRole('button', { name: 'OWN-1', exact: true }).click();
  const panel = page.locator('part-panel');
  await panel.getByRole('button', { name: 'Edit', exact: true }).click();
  await panel.getByLabel('Minimum sheet', { exact: true }).fill('0.5');
  await panel.getByRole('button', { name: 'Save edits' }).click();
}

/** What is kept is written right after it is shown; no sign tells when. */
async function untilKept(page: Page): Promise<void> {
  await page.waitForTimeout(500);
}

describe('a catalogue that was loaded at an earlier visit', () => {
  it('judges the next list, and says so before', async () => {
    const { page, errors } = await host.open();
    await recalled(page).waitFor({ state: 'detached' });
    await loadCatalogue(page, CATALOGUE);
    await untilKept(page);
    await visitAgain(page);
    await recalled(page).getByText('own.csv').waitFor();
    await openList(page, LIST);
    expect(await counts(page)).toMatchObject({ holds: 1, fails: 1 });
    await page.locator('read-line').getByText('Judged by “own”.', { exact: true }).waitFor();
    expect(errors).toEqual([]);
  });

  it('comes with what was edited of it while no list was open', async () => {
    const { page, errors } = await host.open();
    await loadCatalogue(page, CATALOGUE);
    await needLess(page);
    await page.locator('catalogue-view').getByText('own (1 part edited) · 1 part').waitFor();
    await untilKept(page);
    await visitAgain(page);
    await openList(page, LIST);
    expect(await counts(page)).toMatchObject({ holds: 2, fails: 0 });
    expect(errors).toEqual([]);
  });

  it('is gone once it was removed', async () => {
    const { page, errors } = await host.open();
    await loadCatalogue(page, CATALOGUE);
    await page.getByRole('button', { name: /^Remove:/ }).click();
    await page.locator('catalogue-view').getByText('234 parts', { exact: true }).waitFor();
    await untilKept(page);
    await visitAgain(page);
    expect(await recalled(page).count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it('stays as another tab has kept it: edits that cannot be kept beside it are named', async () => {
    const first = await host.open();
    const second = await host.openBeside(first);
    await loadCatalogue(first.page, CATALOGUE);
    await untilKept(first.page);
    await loadCatalogue(second.page, { ...CATALOGUE, name: 'other.csv' });
    await needLess(second.page);
    await second.page.getByText('Your edits of the catalogue are not kept for the next visit').waitFor();
    await visitAgain(first.page);
    await recalled(first.page).getByText('own.csv').waitFor();
    expect([...first.errors, ...second.errors]).toEqual([]);
  });

  it('and does not hold the parts of the demo list: the page says what to do', async () => {
    const { page, errors } = await host.open();
    await loadCatalogue(page, CATALOGUE);
    await page.getByRole('button', { name: 'Start', exact: true }).click();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await page.getByText('The demo list was judged by your own catalogues.').waitFor();
    expect(errors).toEqual([]);
  });
});
