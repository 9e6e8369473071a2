// Takes a picture of every view in every size and scheme, for looking at: npm run screens -- FOLDER [part of a name].
import { mkdirSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { AppHost } from './app.ts';
import { beginConcession, cell, heading } from './list-page.ts';

/** A screen at 200 % shows half as much of the page in each direction. */
const SIZES = [
  { name: '1440', width: 1440, height: 900, scale: 1 },
  { name: '1024', width: 1024, height: 768, scale: 1 },
  { name: '200', width: 720, height: 450, scale: 2 },
] as const;
const SCHEMES = ['light', 'dark'] as const;

/** How to get to each screen from the open demo list; null: the first screen, without a list. */
const SCREENS: Readonly<Record<string, ((page: Page) => Promise<void>) | null>> = {
  first: null,
  list: async () => {},
  row: (page) => cell(page, 9, 'verdict').click(),
  overview: (page) => page.getByRole('button', { name: 'Overview' }).click(),
  filter: async (page) => {
    await heading(page, 1).hover();
    await heading(page, 1)
      .getByRole('button', { name: /^Filter, hide/ })
      .click();
  },
  meaning: (page) =>
    heading(page, 1)
      .getByRole('button', { name: /^What .* means$/ })
      .click(),
  export: (page) => page.getByRole('button', { name: 'Export', exact: true }).click(),
  find: async (page) => {
    await cell(page, 9, 'sender-1').click();
    await page.keyboard.press('Control+H');
  },
  'no-result': (page) => page.getByRole('searchbox').fill('nothing like it'),
  'set-column': (page) => page.getByRole('button', { name: 'Set column…' }).click(),
  concede: async (page) => {
    await cell(page, 9, 'verdict').click();
    await beginConcession(page);
  },
  swap: async (page) => {
    await cell(page, 9, 'verdict').click();
    await page.locator('remedy-list button.main').first().click();
  },
  ...Object.fromEntries(
    [
      'Purchasing',
      'Press sheet',
      'Questions',
      'Changes',
      'Compare',
      'Catalogue',
      'Shop settings',
      'Rules and sources',
      'Help',
    ].map((name) => [
      name.toLowerCase().replaceAll(' ', '-'),
      (page: Page) => page.getByRole('button', { name, exact: true }).click(),
    ]),
  ),
};

const [folder = 'screens', part = ''] = process.argv.slice(2);
mkdirSync(folder, { recursive: true });
const host = new AppHost();
await host.start();
for (const scheme of SCHEMES)
  for (const size of SIZES)
    for (const [name, reach] of Object.entries(SCREENS)) {
      const file = `${name}-${size.name}-${scheme}.png`;
      if (file.includes(part)) await take(file, size, scheme, reach);
    }
await host.stop();

async function take(
  file: string,
  { width, height, scale }: (typeof SIZES)[number],
  colorScheme: (typeof SCHEMES)[number],
  reach: ((page: Page) => Promise<void>) | null,
): Promise<void> {
  const { page } = await host.open({ width, height }, scale);
  await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
  try {
    if (reach) {
      await page.getByRole('button', { name: 'Try the demo list' }).click();
      await page.locator('.ag-row').first().waitFor();
      await reach(page);
      await page.waitForTimeout(700);
    }
    await page.screenshot({ path: resolve(folder, file) });
  } catch (error) {
    console.error(`${file}: ${error instanceof Error ? error.message.split('\n')[0] : error}`);
  }
  await page.context().close();
}
