import { readdirSync, readFileSync } from 'node:fs';
import { resolve } from 'node:path';
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
/** Those of them whose answer depends on a colour. */
const ABOUT_COLOUR = axe
  .getRules(['cat.color'])
  .filter(({ tags }) => tags.some((tag) => RULES.includes(tag)))
  .map(({ ruleId }) => ruleId);

const UI = resolve(import.meta.dirname, '../../src/ui');
const STYLES = readFileSync(resolve(UI, 'page.css'), 'utf8');

/** The views beside the list, by the names of their tabs, and their elements. */
const VIEWS = {
  Purchasing: 'purchasing-view',
  'Press sheet': 'press-view',
  Questions: 'questions-view',
  Changes: 'changes-view',
  Compare: 'compare-view',
  Catalogue: 'catalogue-view',
  'Shop settings': 'settings-view',
  'Rules and sources': 'rules-view',
} as const;

/** What stands in somebody's way on the page as it is, light and dark. The page is the same in both but for its colours, so dark is asked for these alone. */
async function barriers(page: Page): Promise<readonly string[]> {
  const light = await violations(page, { type: 'tag', values: RULES });
  await page.emulateMedia({ colorScheme: 'dark' });
  const dark = await violations(page, { type: 'rule', values: ABOUT_COLOUR });
  await page.emulateMedia({ colorScheme: 'light' });
  return [...light, ...dark.map((barrier) => `in the dark, ${barrier}`)];
}

async function violations(page: Page, runOnly: axe.RunOnly): Promise<readonly string[]> {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(axe.source);
  return page.evaluate(async (only) => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, {
      runOnly: only,
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) =>
      nodes.map(({ target, failureSummary }) => `${id}: ${JSON.stringify(target)} ${failureSummary ?? ''}`),
    );
  }, runOnly);
}

async function openDemo(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Try the demo list' }).click();
  await page.locator('.ag-row').first().waitFor();
}

/** Each view comes whole with its heading. */
async function show(page: Page, view: keyof typeof VIEWS): Promise<void> {
  await page.getByRole('button', { name: view, exact: true }).click();
  await page.locator(`${VIEWS[view]} h2`).first().waitFor();
}

async function open(): Promise<Page> {
  const { page } = await host.open();
  await page.emulateMedia({ colorScheme: 'light', reducedMotion: 'reduce' });
  return page;
}

it('differs between light and dark in its colours alone', () => {
  const [, dark = ''] = /@media \(prefers-color-scheme: dark\) \{\s*:root \{([^}]*)\}\s*\}/.exec(STYLES) ?? [];
  expect(dark.trim().split(/;\s*/).filter(Boolean).length).toBeGreaterThan(15);
  expect(dark).toMatch(/^(?:\s*--[\w-]+: #[0-9a-f]{3,6};)+\s*$/);
  const asking = readdirSync(UI, { recursive: true, encoding: 'utf8' }).filter(
    (file) => /\.(?:ts|css)$/.test(file) && readFileSync(resolve(UI, file), 'utf8').includes('prefers-color-scheme'),
  );
  expect(asking).toEqual(['page.css']);
  expect(STYLES.match(/prefers-color-scheme/g)).toHaveLength(1);
});

describe('nothing stands in the way, light or dark,', () => {
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

  it.each(Object.keys(VIEWS) as (keyof typeof VIEWS)[])(
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
