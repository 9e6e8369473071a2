import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { parseClipboard, writeClipboard } from '../../src/app/clipboard.ts';
import { AppHost, type RunningApp } from './app.ts';
import { blockSize, COLUMNS, copied, longList, paste, textsOf, thinBlock } from './grid-page.ts';
import { cell, counts, csv, heading, openList, typeInto } from './list-page.ts';

const host = new AppHost();

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const SMALL = csv(
  'small.csv',
  'Part number,Material,Thickness (mm),Qty\nNUT-M4-10-CS,DC01,1.5,30\nNUT-M4-10-CS,DC01,1.5,4\nNUT-M4-10-CS,DC01,1.5,200\nNUT-M4-10-CS,DC01,1.5,1\n',
);
const undoName = (page: Page) => page.getByRole('button', { name: 'Undo' }).getAttribute('title');
const message = (page: Page) => page.locator('clinch-app .message').innerText();

async function open(file: ReturnType<typeof csv>): Promise<RunningApp> {
  const app = await host.open();
  await openList(app.page, file);
  await counts(app.page);
  return app;
}

/** Opens the tools of a column from its heading. */
async function openTools(page: Page, column: number): Promise<void> {
  await heading(page, column).hover();
  await heading(page, column)
    .getByRole('button', { name: /^Filter/ })
    .click();
}

/** Goes to the first cell of an item of the long list. */
async function goToItem(page: Page, item: number): Promise<void> {
  await page.keyboard.press('Control+h');
  await page.getByLabel('Find', { exact: true }).fill(`note ${item}`);
  await page.getByLabel('Whole cell').check();
  await page.keyboard.press('Escape');
  await page.keyboard.press('Home');
}

describe('a block of cells', () => {
  it('is pasted into the middle of a long list, judged at once, and taken back in one step', async () => {
    const { page, errors } = await open(longList(2000));
    const before = await counts(page);
    expect(before).toEqual({ holds: 2000, marginal: 0, fails: 0, unknown: 0 });
    await goToItem(page, 1000);
    const block = thinBlock(50);
    const started = Date.now();
    await paste(page, writeClipboard(block));
    await expect.poll(() => counts(page), { interval: 10 }).toEqual({ ...before, holds: 1950, fails: 50 });
    expect(Date.now() - started).toBeLessThan(2000);
    expect(await undoName(page)).toBe('Undo: paste 300 cells');
    expect(parseClipboard(await copied(page))).toEqual(block);
    expect(await textsOf(page, 1001)).toEqual(block[0]);
    expect(await cell(page, 1001, 'verdict').innerText()).toBe('fails');

    await page.keyboard.press('Control+z');
    await expect.poll(() => counts(page)).toEqual(before);
    const rows = parseClipboard(await copied(page));
    expect(rows.length).toBe(50);
    expect(rows[49]).toEqual(['1049', 'NUT-M4-10-CS', 'DC01', '1.5', '5', 'note 1049']);
    expect(errors).toEqual([]);
  });

  it('is cut off at the last row, in a sentence', async () => {
    const { page, errors } = await open(longList(30));
    await cell(page, 2, 'sender-0').click();
    await page.keyboard.press('Control+ArrowDown');
    await page.keyboard.press('ArrowUp');
    await paste(page, writeClipboard(thinBlock(5)));
    await expect.poll(() => message(page)).toContain('The paste left out 3 rows beyond the last row of the list.');
    await expect.poll(() => counts(page)).toMatchObject({ holds: 28, fails: 2 });
    expect(errors).toEqual([]);
  });

  it('grows with Shift, is copied with our columns, cleared, cut, filled by one text, and Escape ends it', async () => {
    const { page, errors } = await open(SMALL);
    await cell(page, 2, 'sender-2').click();
    await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Shift+ArrowRight');
    expect(await blockSize(page)).toBe(4);
    expect(await copied(page)).toBe('1.5\t30\n1.5\t4');
    await page.keyboard.press('Delete');
    await expect.poll(() => cell(page, 3, 'sender-3').innerText()).toBe('');
    expect(await undoName(page)).toBe('Undo: clear 4 cells');
    expect(await counts(page)).toMatchObject({ holds: 2, unknown: 2 });
    await paste(page, '2\n');
    await expect.poll(() => cell(page, 3, 'sender-3').innerText()).toBe('2');
    expect(await copied(page, 'x')).toBe('2\t2\n2\t2');
    await expect.poll(() => undoName(page)).toBe('Undo: cut 4 cells');
    for (const _ of [1, 2, 3]) await page.keyboard.press('Control+z');
    await expect.poll(() => counts(page)).toMatchObject({ holds: 4 });
    await page.keyboard.press('Escape');
    expect(await blockSize(page)).toBe(1);

    await page.keyboard.press('Control+a');
    const everything = parseClipboard(await copied(page));
    expect(everything.length).toBe(4);
    expect(everything[0]?.slice(0, 4)).toEqual(['NUT-M4-10-CS', 'DC01', '1.5', '30']);
    expect(everything[0]).toContain('holds');
    await page.keyboard.press('Control+Home');
    await page.keyboard.press('Control+Shift+ArrowDown');
    expect(await blockSize(page)).toBe(4);
    expect(errors).toEqual([]);
  });

  it('is selected and filled down with the mouse, and with Ctrl+D', async () => {
    const { page, errors } = await open(SMALL);
    const first = (await cell(page, 2, 'sender-2').boundingBox())!;
    const corner = (await cell(page, 2, 'sender-3').boundingBox())!;
    const last = (await cell(page, 5, 'sender-3').boundingBox())!;
    await page.mouse.move(first.x + 8, first.y + 8);
    await page.mouse.down();
    await page.mouse.move(corner.x + 20, corner.y + 8, { steps: 3 });
    await page.mouse.up();
    expect(await blockSize(page)).toBe(2);
    await page.mouse.move(corner.x + corner.width - 4, corner.y + corner.height - 4);
    await page.mouse.down();
    await page.mouse.move(last.x + 10, last.y + 8, { steps: 5 });
    await page.mouse.up();
    await expect.poll(() => cell(page, 5, 'sender-3').innerText()).toBe('30');
    expect(await undoName(page)).toBe('Undo: fill down 6 cells');
    expect(await blockSize(page)).toBe(8);
    await page.keyboard.press('Control+z');
    await expect.poll(() => cell(page, 5, 'sender-3').innerText()).toBe('1');

    await cell(page, 3, 'sender-3').click();
    await cell(page, 5, 'sender-3').click({ modifiers: ['Shift'] });
    expect(await blockSize(page)).toBe(3);
    await page.keyboard.press('Control+d');
    await expect.poll(() => cell(page, 5, 'sender-3').innerText()).toBe('4');
    await cell(page, 4, 'row').click();
    expect(await blockSize(page)).toBeGreaterThan(5);
    expect(errors).toEqual([]);
  });

  it('means the displayed rows where the list is sorted or filtered', async () => {
    const { page, errors } = await open(SMALL);
    await heading(page, 3).locator('.sort').click();
    await cell(page, 5, 'sender-3').click();
    await page.keyboard.press('Shift+ArrowDown');
    await page.keyboard.press('Shift+ArrowDown');
    expect(await copied(page)).toBe('1\n4\n30');
    await paste(page, '11\r\n12\r\n13\r\n');
    await expect.poll(() => cell(page, 2, 'sender-3').innerText()).toBe('13');
    expect(await cell(page, 5, 'sender-3').innerText()).toBe('11');
    expect(await cell(page, 3, 'sender-3').innerText()).toBe('12');
    expect(await cell(page, 4, 'sender-3').innerText()).toBe('200');
    expect(errors).toEqual([]);
  });
});

describe('typing', () => {
  it('starts an edit; Enter goes down, Tab right, Escape gives up, and undo works in the grid', async () => {
    const { page, errors } = await open(SMALL);
    await cell(page, 2, 'sender-2').click();
    await page.keyboard.type('0.5');
    await page.keyboard.press('Enter');
    await page.keyboard.type('0.6');
    await page.keyboard.press('Tab');
    await page.keyboard.type('77');
    await page.keyboard.press('Escape');
    await expect.poll(() => page.locator('list-grid .grid input').count()).toBe(0);
    await page.keyboard.press('F2');
    await page.keyboard.type('0');
    await page.keyboard.press('Enter');
    await expect.poll(() => cell(page, 3, 'sender-3').innerText()).toBe('40');
    expect(await cell(page, 2, 'sender-2').innerText()).toBe('0.5');
    expect(await cell(page, 3, 'sender-2').innerText()).toBe('0.6');
    await expect.poll(() => counts(page)).toMatchObject({ fails: 2 });
    for (const _ of [1, 2, 3]) await page.keyboard.press('Control+z');
    await expect.poll(() => counts(page)).toMatchObject({ holds: 4 });
    expect(errors).toEqual([]);
  });

  it('keeps an open field open while other rows are judged', async () => {
    const { page, errors } = await open(SMALL);
    await typeInto(page, 2, 2, '0.5');
    await page.keyboard.type('1.');
    await expect.poll(() => cell(page, 2, 'verdict').innerText()).toBe('fails');
    await page.keyboard.type('25');
    await page.keyboard.press('Enter');
    await expect.poll(() => cell(page, 3, 'sender-2').innerText()).toBe('1.25');
    expect(errors).toEqual([]);
  });
});

describe('find and replace', () => {
  it('goes through the matches, replaces one and then all in one step, and heeds the filter', async () => {
    const { page, errors } = await open(longList(100));
    await page.keyboard.press('Control+f');
    await page.keyboard.type('note 1');
    await expect.poll(() => page.locator('list-grid .ag-row').count()).toBe(12);
    await page.keyboard.press('Control+h');
    await page.keyboard.type('NOTE');
    const count = page.locator('find-replace output');
    await expect.poll(() => count.innerText()).toBe('1 of 12 cells');
    await page.keyboard.press('Enter');
    await expect.poll(() => count.innerText()).toBe('2 of 12 cells');
    await page.getByLabel('Match case').check();
    await expect.poll(() => count.innerText()).toBe('not found');
    await page.getByLabel('Match case').uncheck();
    await page.getByLabel('Replace with').fill('see $&-');
    await page.getByRole('button', { name: 'Replace', exact: true }).click();
    await expect.poll(() => cell(page, 2, 'sender-5').innerText()).toBe('see $&- 1');
    await expect.poll(() => count.innerText()).toBe('1 of 11 cells');
    await page.getByRole('button', { name: 'Replace all' }).click();
    await expect.poll(() => undoName(page)).toBe('Undo: replace “NOTE” by “see $&-” in 11 cells');
    await page.getByRole('button', { name: 'Close', exact: true }).click();
    await page.getByRole('searchbox').fill('');
    await expect.poll(() => cell(page, 3, 'sender-5').innerText()).toBe('note 2');
    await cell(page, 3, 'sender-5').click();
    await page.keyboard.press('Control+z');
    await expect.poll(() => cell(page, 11, 'sender-5').innerText()).toBe('note 10');
    expect(await cell(page, 2, 'sender-5').innerText()).toBe('see $&- 1');
    expect(errors).toEqual([]);
  });
});

describe('columns', () => {
  it('filter by what they hold, and say so', async () => {
    const { page, errors } = await open(SMALL);
    const rows = page.locator('list-grid .ag-row');
    await openTools(page, 3);
    await page.getByLabel('Text to compare with').fill('0');
    await expect.poll(() => rows.count()).toBe(2);
    await page.getByLabel('How to compare').selectOption('equals');
    await expect.poll(() => rows.count()).toBe(0);
    await page.getByLabel('Text to compare with').fill('30');
    await expect.poll(() => rows.count()).toBe(1);
    await page.keyboard.press('Enter');
    expect(await page.locator('list-grid .notes').innerText()).toContain('Qty equals “30”: 1 shown');
    await page.getByRole('button', { name: 'Clear filters' }).click();
    await expect.poll(() => rows.count()).toBe(4);
    expect(errors).toEqual([]);
  });

  it('are hidden, frozen and widened, remembered for the same headings, and brought back', async () => {
    const { page, errors } = await open(SMALL);
    const order = () =>
      page.locator('list-grid .ag-header-cell').evaluateAll((cells) =>
        cells
          .toSorted((a, b) => a.getBoundingClientRect().left - b.getBoundingClientRect().left)
          .map((header) => header.getAttribute('col-id') ?? '')
          .filter((id) => id.startsWith('sender')),
      );
    const width = async () => Math.round((await heading(page, 3).boundingBox())!.width);
    const before = await width();
    const grip = (await heading(page, 3).locator('.ag-header-cell-resize').boundingBox())!;
    await page.mouse.move(grip.x + 4, grip.y + 20);
    await page.mouse.down();
    await page.mouse.move(grip.x + 64, grip.y + 20, { steps: 4 });
    await page.mouse.up();
    await expect.poll(width).toBe(before + 60);
    for (const column of [0, 2]) {
      await openTools(page, column);
      await page.getByRole('button', { name: 'Hide column' }).click();
    }
    await openTools(page, 1);
    await page.getByRole('button', { name: 'Keep columns to here in sight' }).click();
    const frozen = page.locator('list-grid .ag-header .ag-grid-pinned-left-cells [col-id="sender-1"]');
    await frozen.waitFor();

    await page.reload();
    await openList(page, { ...SMALL, name: 'the-next-one.csv' });
    const link = page.getByRole('button', { name: 'hidden columns: 2' });
    await link.waitFor();
    expect(await order()).toEqual(['sender-1', 'sender-3']);
    expect(await width()).toBe(before + 60);
    expect(await frozen.count()).toBe(1);
    await link.click();
    await expect.poll(order).toEqual(['sender-0', 'sender-1', 'sender-2', 'sender-3']);
    expect(await link.count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it('of lists with other headings stand as they are made', async () => {
    const { page, errors } = await open(SMALL);
    await page.evaluate(() => localStorage.setItem('clinchsheet-grid', '[{"key":7},{"broken'));
    await openList(page, longList(5));
    await expect.poll(() => cell(page, 6, 'sender-0').count()).toBe(1);
    for (const column of COLUMNS.keys()) expect(await heading(page, column).count()).toBe(1);
    expect(await page.locator('list-grid .notes').count()).toBe(0);
    expect(errors).toEqual([]);
  });
});
