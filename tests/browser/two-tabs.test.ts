import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it, vi } from 'vitest';
import { AppHost, type RunningApp } from './app.ts';
import { cell, counts, csv, openList, typeInto } from './list-page.ts';

vi.setConfig({ testTimeout: 90_000 });

const host = new AppHost({ isKept: true });

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const LIST = csv(
  'list.csv',
  'Part number,Material,Thickness (mm),Qty\nNUT-M4-10-CS,DC01,1.5,2\nNUT-M4-10-CS,DC01,0.5,4\n',
);
const THICKNESS = 2;
/** A second, and the little that a write takes. */
const KEPT_BY_MS = 1500;

const kept = (page: Page) => page.locator('saved-lists li');
const keptAs = (page: Page) => page.locator('saved-lists').getByRole('button', { name: 'list.csv', exact: true });
const thickness = (page: Page, row: number) => cell(page, row, `sender-${THICKNESS}`).innerText();

async function type(page: Page, row: number, text: string): Promise<void> {
  await typeInto(page, row, THICKNESS, text);
  await expect.poll(() => thickness(page, row)).toBe(text);
}

/** What is kept, as a third page finds it. */
async function keptTexts(app: RunningApp, row: number): Promise<readonly string[]> {
  const look = await host.openBeside(app);
  await expect.poll(() => kept(look.page).count()).toBe(2);
  const texts: string[] = [];
  for (const at of [0, 1]) {
    await keptAs(look.page).nth(at).click();
    await counts(look.page);
    texts.push(await thickness(look.page, row));
    await look.page.reload();
    await look.page.locator('first-screen').waitFor();
  }
  await look.page.close();
  return texts.sort();
}

it('two tabs that open the same file keep their work apart, however their writes fall', async () => {
  const one = await host.open();
  await openList(one.page, LIST);
  await type(one.page, 2, '1.1');
  await one.page.waitForTimeout(KEPT_BY_MS);
  const two = await host.openBeside(one);
  await openList(two.page, LIST);
  await Promise.all([type(one.page, 2, '1.2'), type(two.page, 2, '2.1')]);
  await Promise.all([type(one.page, 2, '1.3'), type(two.page, 2, '2.2')]);
  await one.page.waitForTimeout(KEPT_BY_MS);
  expect(await keptTexts(one, 2)).toEqual(['1.3', '2.2']);
  expect([...one.errors, ...two.errors]).toEqual([]);
});

it('two tabs that go on with the same kept list write side by side, and neither overwrites the other', async () => {
  const first = await host.open();
  await openList(first.page, LIST);
  await type(first.page, 2, '1.1');
  await first.page.waitForTimeout(KEPT_BY_MS);
  await first.page.close();
  const [one, two] = [await host.openBeside(first), await host.openBeside(first)];
  await keptAs(one.page).click();
  await keptAs(two.page).click();
  for (const step of [1, 2, 3]) {
    await Promise.all([type(one.page, 2, `1.2${step}`), type(two.page, 2, `2.1${step}`)]);
    await one.page.waitForTimeout(KEPT_BY_MS);
  }
  expect(await keptTexts(one, 2)).toEqual(['1.23', '2.13']);
  expect([...one.errors, ...two.errors]).toEqual([]);
});
