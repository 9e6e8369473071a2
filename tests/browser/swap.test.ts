import { readFileSync } from 'node:fs';
import exceljs from 'exceljs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';
import { cell, concedeFirstCheck, counts, csv, openList } from './list-page.ts';

const host = new AppHost();

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const HEADINGS = 'Part number,Panel,Material,Thickness (mm),Edge (mm),Qty';
/** One nut on 140 rows over nine panels: it holds in none of the three sheets. */
const SHEETS = ['304,1.0', '5052-H32,0.8', '304,1.5'];
const MANY = Array.from({ length: 140 }, (_, index) => `NUT-M4-10-S3,P${index % 9},${SHEETS[(index % 9) % 3]},,4`);
const list = (rows: readonly string[]) => csv('list.csv', `${HEADINGS}\n${rows.join('\n')}\n`);

const totals = (holds: number, fails: number) => ({ holds, marginal: 0, fails, unknown: 0 });

async function choose(page: Page, row: number): Promise<void> {
  await cell(page, row, 'verdict').click();
}

describe('a swap', () => {
  it('is seen before it is made on 140 rows, taken back and made again, the totals right each time', async () => {
    const { page, errors } = await host.open();
    await openList(page, list(MANY));
    await expect.poll(() => counts(page)).toEqual(totals(0, 140));
    await choose(page, 2);
    const offer = page.locator('remedy-list .remedy').filter({ hasText: 'NUT-M4-08-S4' });
    await offer.getByRole('button', { name: 'Use on 140 rows' }).click();
    const dialog = page.getByRole('dialog', { name: 'Use NUT-M4-08-S4 on 140 rows' });
    await expect.poll(() => dialog.locator('[data-verdict="holds"]').innerText()).toMatch(/holds 0 →\s+140/);
    expect(await counts(page)).toEqual(totals(0, 140));
    await dialog.getByRole('button', { name: 'Swap on 140 rows' }).click();
    await expect.poll(() => counts(page)).toEqual(totals(140, 0));
    expect(await cell(page, 2, 'sender-0').innerText()).toBe('NUT-M4-08-S4');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => counts(page)).toEqual(totals(0, 140));
    await page.getByRole('button', { name: 'Redo' }).click();
    await expect.poll(() => counts(page)).toEqual(totals(140, 0));
    await page.getByRole('button', { name: 'Changes' }).click();
    const step = page.locator('changes-view details');
    await expect.poll(() => step.count()).toBe(1);
    expect(await step.innerText()).toContain('swap NUT-M4-10-S3 for NUT-M4-08-S4 on 140 rows');
    expect(errors).toEqual([]);
  });

  it('is made on the ticked rows alone, and not at all when cancelled', async () => {
    const { page, errors } = await host.open();
    await openList(page, list(MANY.slice(0, 9)));
    await choose(page, 2);
    const use = page.locator('remedy-list .remedy').filter({ hasText: 'NUT-M4-08-S4' }).getByRole('button');
    await use.click();
    await page.keyboard.press('Escape');
    expect(await page.getByRole('dialog').count()).toBe(0);
    expect(await counts(page)).toEqual(totals(0, 9));
    await use.click();
    const dialog = page.getByRole('dialog');
    await dialog.getByRole('button', { name: 'None' }).click();
    await dialog.getByLabel('Row 3').check();
    await dialog.getByLabel('Row 5').check();
    await expect.poll(() => dialog.locator('[data-verdict="holds"]').innerText()).toMatch(/holds 0 →\s+2/);
    await dialog.getByRole('button', { name: 'Swap on 2 rows' }).click();
    await expect.poll(() => counts(page)).toEqual(totals(2, 7));
    expect(errors).toEqual([]);
  });
});

describe('one column set on many rows', () => {
  it('shows what it would do, and is one step', async () => {
    const { page, errors } = await host.open();
    await openList(
      page,
      list(['NUT-M4-10-CS,P1,DC01,0.8,,4', 'NUT-M4-10-CS,P1,DC01,0.8,,4', 'NUT-M4-10-S3,P2,304,1.5,,4']),
    );
    await expect.poll(() => counts(page)).toEqual(totals(0, 3));
    await page.getByRole('button', { name: 'Set column…' }).click();
    const dialog = page.getByRole('dialog', { name: 'Set a column on 3 rows' });
    await dialog.getByLabel('Set to').fill('1.0');
    await expect.poll(() => dialog.locator('[data-verdict="holds"]').innerText()).toMatch(/holds 0 →\s+2/);
    await dialog.getByRole('button', { name: 'Set on 3 rows' }).click();
    await expect.poll(() => counts(page)).toEqual(totals(2, 1));
    expect(await page.getByRole('button', { name: 'Undo' }).getAttribute('title')).toBe(
      'Undo: set Thickness (mm) to 1.0 on 3 rows',
    );
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => counts(page)).toEqual(totals(0, 3));
    expect(errors).toEqual([]);
  });
});

describe('a concession', () => {
  it('stands beside the verdict, lapses with what it rests on, and goes into the workbook', async () => {
    const { page, errors } = await host.open();
    await openList(page, list(['NUT-M4-10-CS,P1,DC01,1.5,4,4', 'NUT-M4-10-CS,P2,DC01,1.5,9,4']));
    await choose(page, 2);
    await concedeFirstCheck(page, 'fixture holds the edge', 'R. Alder');
    await expect.poll(() => cell(page, 2, 'decision').innerText()).toMatch(/Edge 4.00.*conceded: fixture/);
    expect(await cell(page, 2, 'verdict').innerText()).toContain('fails');
    expect(await counts(page)).toEqual(totals(1, 1));

    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export', exact: true }).click();
    await page.getByRole('menuitem', { name: 'As a new workbook' }).click();
    const workbook = new exceljs.Workbook();
    await workbook.xlsx.load(readFileSync(await (await download).path()) as unknown as ArrayBuffer);
    const row = workbook.getWorksheet('Concessions')?.getRow(2);
    expect([1, 2, 3, 6, 7, 9].map((column) => row?.getCell(column).text)).toEqual([
      '2',
      'NUT-M4-10-CS',
      'fails',
      'fixture holds the edge',
      'R. Alder',
      'stands',
    ]);

    await cell(page, 2, 'sender-4').dblclick();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('5');
    await page.keyboard.press('Enter');
    await expect.poll(() => cell(page, 2, 'decision').innerText()).not.toContain('conceded');
    await choose(page, 2);
    await expect
      .poll(() => page.locator('check-list details').first().innerText())
      .toContain('lapsed: edge distance was 4 mm, is 5 mm');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => cell(page, 2, 'decision').innerText()).toContain('conceded');
    expect(errors).toEqual([]);
  });
});

describe('the keyboard alone', () => {
  it('opens the demo, finds the first failing row, reads why, takes the first substitute, and exports', async () => {
    const { page, errors } = await host.open();
    await tabTo(page, 'Try the demo list');
    await page.keyboard.press('Enter');
    const { fails = 0 } = await counts(page);
    await page.keyboard.press('F6');
    await tabTo(page, /^\d+ fail/);
    await page.keyboard.press('Space');
    await expect.poll(() => page.locator('list-grid .ag-row').count()).toBe(fails);
    await page.keyboard.press('F6');
    await expect.poll(() => page.locator('row-panel .decision').innerText()).toMatch(/^Fails\. .{20}/s);
    await page.locator('remedy-list button').first().waitFor();
    await page.keyboard.press('F6');
    await tabTo(page, /^Use on \d+ row/);
    await page.keyboard.press('Enter');
    const swap = page.getByRole('dialog').getByRole('button', { name: /^Swap on/ });
    await expect.poll(() => page.locator('try-table tbody tr').count()).toBeGreaterThan(0);
    expect(await swap.evaluate((button) => (button.getRootNode() as ShadowRoot).activeElement === button)).toBe(true);
    await page.keyboard.press('Enter');
    await expect.poll(async () => (await counts(page)).fails).toBeLessThan(fails);
    await page.keyboard.press('F6');
    await tabTo(page, 'Export', 'Shift+Tab');
    const download = page.waitForEvent('download');
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('[role=menuitem]:focus').count()).toBe(1);
    await page.keyboard.press('Enter');
    expect((await download).suggestedFilename()).toMatch(/\.xlsx$/);
    expect(errors).toEqual([]);
  });
});

/** Presses Tab until a button with this name has the focus. */
async function tabTo(page: Page, name: string | RegExp, key = 'Tab'): Promise<void> {
  for (let presses = 0; presses < 40; presses++) {
    await page.keyboard.press(key);
    const focused = await page.evaluate(() => {
      let element = document.activeElement;
      while (element?.shadowRoot?.activeElement) element = element.shadowRoot.activeElement;
      return element?.textContent?.replace(/\s+/g, ' ').trim() ?? '';
    });
    if (typeof name === 'string' ? focused === name : name.test(focused)) return;
  }
  throw new Error(`Tab does not come to ${name}`);
}
