import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';
import { beginConcession, cell, heading } from './list-page.ts';

const host = new AppHost();
beforeAll(() => host.start(), 60_000);
afterAll(() => host.stop());

/** Rules of WCAG 2.2, levels A and AA, and axe's own best practices. */
const RULES = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];

/** What stands in somebody's way on the page as it is, in short. */
async function barriers(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async (rules) => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, {
      runOnly: { type: 'tag', values: rules },
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${JSON.stringify(target)} ${failureSummary ?? ''}`),
    );
  }, RULES);
}

async function openDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Try the demo list' }).click();
  await page.locator('.ag-row').first().waitFor();
}

async function show(page: Page, view: string): Promise<void> {
  await page.getByRole('button', { name: view, exact: true }).click();
  await page.waitForTimeout(400);
}

describe.each(['light', 'dark'] as const)('nothing stands in the way, %s', (colorScheme) => {
  async function open() {
    const app = await host.open();
    await app.page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
    return app.page;
  }

  it('on the first screen', async () => {
    expect(await barriers(await open())).toEqual([]);
  });

  it('in the list: as it opens, with a row, while editing, with menus, filtered, with nothing found', async () => {
    const page = await open();
    await openDemo(page);
    expect(await barriers(page)).toEqual([]);
    await cell(page, 9, 'sender-1').click();
    await page.locator('row-panel').waitFor();
    expect(await barriers(page)).toEqual([]);
    await cell(page, 9, 'sender-1').dblclick();
    await page.locator('.ag-cell-edit-wrapper input').waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Escape');
    for (const menu of [/^Filter, hide or keep in sight/, /^What .* means$/]) {
      await heading(page, 1).hover();
      await heading(page, 1).hover();
      await heading(page, 1).getByRole('button', { name: menu }).click();
      expect(await barriers(page)).toEqual([]);
      await page.keyboard.press('Escape');
    }
    await page.getByRole('button', { name: 'Export' }).click();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.getByRole('searchbox').fill('nothing like it');
    expect(await barriers(page)).toEqual([]);
  }, 60_000);

  it('in the overview', async () => {
    const page = await open();
    await openDemo(page);
    await page.getByRole('button', { name: 'Overview' }).click();
    await page.locator('overview-panel').waitFor();
    expect(await barriers(page)).toEqual([]);
  });

  it('in the help, and in a part of the catalogue: shown, typed into, refused', async () => {
    const page = await open();
    await page.getByRole('button', { name: 'Help', exact: true }).click();
    await page.locator('help-dialog dialog').waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await show(page, 'Catalogue');
    await page.locator('catalogue-view tbody').getByRole('button', { name: 'NUT-M4-10-CS', exact: true }).click();
    const part = page.locator('part-panel');
    await part.waitFor();
    expect(await barriers(page)).toEqual([]);
    await part.getByRole('button', { name: 'Edit', exact: true }).click();
    await part.getByLabel('Mounting hole', { exact: true }).fill('3');
    await part.getByRole('button', { name: 'Save edits' }).click();
    await part.getByRole('alert').waitFor();
    expect(await barriers(page)).toEqual([]);
    await part.getByRole('button', { name: 'Cancel' }).click();
    await page.getByRole('searchbox').fill('nothing like it');
    expect(await barriers(page)).toEqual([]);
  }, 60_000);

  it('in the dialogs: setting a column, a concession, a swap', async () => {
    const page = await open();
    await openDemo(page);
    await page.getByRole('button', { name: 'Set column…' }).click();
    await page.locator('dialog[open]').waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await cell(page, 9, 'sender-1').click();
    await beginConcession(page);
    await page.locator('dialog[open]').waitFor();
    expect(await barriers(page)).toEqual([]);
    await page.keyboard.press('Escape');
    await page.locator('remedy-list button.main').first().click();
    await page.locator('dialog[open]').waitFor();
    expect(await barriers(page)).toEqual([]);
  }, 60_000);

  it.each([
    'Purchasing',
    'Press sheet',
    'Questions',
    'Changes',
    'Compare',
    'Catalogue',
    'Shop settings',
    'Rules and sources',
  ])(
    'in the view %s',
    async (view) => {
      const page = await open();
      await openDemo(page);
      await show(page, view);
      expect(await barriers(page)).toEqual([]);
    },
    60_000,
  );
});
