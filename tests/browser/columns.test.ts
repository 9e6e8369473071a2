import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';
import { cell, counts, csv, heading, loadCatalogue, openList, typeInto } from './list-page.ts';
import { CATALOGUE } from './own-list.ts';

const host = new AppHost();

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

// The catalogue has no thread in its part numbers, so nothing settles the unit of a bare number.
const UNCLEAR = csv('unclear.csv', 'Part number,Material,Thk,Qty\nOWN-1,DC01,1,2\nOWN-1,DC01,0.8,4\n');
const MISREAD = csv('misread.csv', 'Part number,Material,Depth (mm),Qty\nOWN-1,DC01,1.5,2\nOWN-1,DC01,0.5,4\n');
const NOTHING_KNOWN = { holds: 0, marginal: 0, fails: 0, unknown: 2 };
const BOTH_KNOWN = { holds: 1, marginal: 0, fails: 1, unknown: 0 };

const question = (page: Page) => page.locator('unit-question p');
const readLine = (page: Page) => page.locator('read-line p');
const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });
const redo = (page: Page) => page.getByRole('button', { name: 'Redo' });

async function choose(page: Page, column: number, meaning: string): Promise<void> {
  await heading(page, column)
    .getByRole('button', { name: /^What .* means$/ })
    .click();
  await page.getByRole('menuitemradio', { name: meaning, exact: true }).click();
}

describe('the meaning of columns', () => {
  it('asks once whether numbers are millimetres or inches, and knows it the next time', async () => {
    const { page, errors } = await host.open();
    await loadCatalogue(page, CATALOGUE);
    await openList(page, UNCLEAR);
    expect(await counts(page)).toEqual(NOTHING_KNOWN);
    expect(await question(page).innerText()).toContain('Thk: are these millimetres or inches?');
    await question(page).getByRole('button', { name: 'millimetres' }).click();
    await expect.poll(() => counts(page)).toEqual(BOTH_KNOWN);
    expect(await question(page).count()).toBe(0);
    expect(await heading(page, 2).innerText()).toContain('sheet thickness, mm');

    await undo(page).click();
    await expect.poll(() => counts(page)).toEqual(NOTHING_KNOWN);
    await expect.poll(() => question(page).count()).toBe(1);
    await redo(page).click();
    await expect.poll(() => counts(page)).toEqual(BOTH_KNOWN);

    await page.reload();
    await loadCatalogue(page, CATALOGUE);
    await openList(page, { ...UNCLEAR, name: 'the-next-one.csv' });
    expect(await counts(page)).toEqual(BOTH_KNOWN);
    expect(await readLine(page).innerText()).toContain('Columns as you set them last time');
    expect(await question(page).count()).toBe(0);

    await page.getByRole('button', { name: 'Forget' }).click();
    await expect.poll(() => counts(page)).toEqual(NOTHING_KNOWN);
    await page.reload();
    await loadCatalogue(page, CATALOGUE);
    await openList(page, UNCLEAR);
    expect(await counts(page)).toEqual(NOTHING_KNOWN);
    expect(await readLine(page).innerText()).not.toContain('last time');
    expect(errors).toEqual([]);
  });

  it('is put right in two clicks; edits of cells stay, and undo goes back step by step', async () => {
    const { page, errors } = await host.open();
    await loadCatalogue(page, CATALOGUE);
    await openList(page, MISREAD);
    expect(await counts(page)).toEqual(NOTHING_KNOWN);
    await typeInto(page, 3, 2, '1.2');
    await expect.poll(() => cell(page, 3, 'sender-2').innerText()).toBe('1.2');

    await choose(page, 2, 'sheet thickness');
    await expect.poll(() => counts(page)).toEqual({ holds: 2, marginal: 0, fails: 0, unknown: 0 });
    expect(await cell(page, 3, 'sender-2').innerText()).toBe('1.2');
    expect(await undo(page).getAttribute('title')).toBe('Undo: set column Depth (mm) to sheet thickness');

    await undo(page).click();
    await expect.poll(() => counts(page)).toEqual(NOTHING_KNOWN);
    expect(await cell(page, 3, 'sender-2').innerText()).toBe('1.2');
    await undo(page).click();
    await expect.poll(() => cell(page, 3, 'sender-2').innerText()).toBe('0.5');
    await redo(page).click();
    await redo(page).click();
    await expect.poll(() => counts(page)).toEqual({ holds: 2, marginal: 0, fails: 0, unknown: 0 });
    expect(errors).toEqual([]);
  });

  it('is chosen with the keyboard, and Escape gives the focus back', async () => {
    const { page, errors } = await host.open();
    await loadCatalogue(page, CATALOGUE);
    await openList(page, MISREAD);
    await counts(page);
    await heading(page, 2).focus();
    await page.keyboard.press('Alt+ArrowDown');
    const chosen = page.getByRole('menuitemradio', { checked: true });
    await expect.poll(() => chosen.innerText()).toBe('level');
    await page.keyboard.press('Escape');
    await expect.poll(() => page.getByRole('menu').count()).toBe(0);
    expect(await heading(page, 2).evaluate((element) => element.matches(':focus-within'))).toBe(true);

    await page.keyboard.press('Alt+ArrowDown');
    await page.keyboard.press('Home');
    await page.keyboard.press('s');
    await page.keyboard.press('s');
    await page.keyboard.press('Enter');
    await expect.poll(() => counts(page)).toEqual(BOTH_KNOWN);
    expect(errors).toEqual([]);
  });

  it('is read from another row of headings where the user says so', async () => {
    const { page, errors } = await host.open();
    await loadCatalogue(page, CATALOGUE);
    const text =
      'Part number,Material,Thickness (mm),Qty\nExample,,,\nPart number,Material,Depth,Qty\nOWN-1,DC01,1.5,2\n';
    await openList(page, csv('two-heads.csv', text));
    expect(await counts(page)).toMatchObject({ holds: 1 });
    await page.getByRole('button', { name: 'Change', exact: true }).click();
    await page.getByLabel('Row of headings').fill('3');
    await page.getByRole('button', { name: 'Read again' }).click();
    await expect.poll(() => readLine(page).innerText()).toContain('headings in row 3');
    expect(await counts(page)).toMatchObject({ holds: 0, unknown: 1 });
    expect(errors).toEqual([]);
  });

  it('offers the sheets of a workbook', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await counts(page);
    await page.getByRole('button', { name: 'Change', exact: true }).click();
    const sheets = await page.getByLabel('Sheet').locator('option').allInnerTexts();
    expect(sheets).toContain('Hardware');
    expect(sheets.length).toBeGreaterThan(1);
    await page.getByLabel('Sheet').press('Escape');
    await expect.poll(() => page.getByLabel('Sheet').count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it.each([
    '{"broken',
    '[{"key":1},null,7]',
    '[{"key":"part number\\nmaterial\\nthk\\nqty","roles":{"2":"nonsense"},"units":3}]',
  ])('is not troubled by %s in the memory of the browser', async (kept) => {
    const { page, errors } = await host.open();
    await page.evaluate((text) => localStorage.setItem('clinchsheet-columns', text), kept);
    await loadCatalogue(page, CATALOGUE);
    await openList(page, UNCLEAR);
    expect(await counts(page)).toEqual(NOTHING_KNOWN);
    await question(page).getByRole('button', { name: 'millimetres' }).click();
    await expect.poll(() => counts(page)).toEqual(BOTH_KNOWN);
    expect(errors).toEqual([]);
  });
});
