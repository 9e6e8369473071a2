import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import axe from 'axe-core';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';
import { cell, concedeFirstCheck, counts, csv, openList } from './list-page.ts';

const host = new AppHost();

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const LIST = csv(
  'Größe: 1.csv',
  'Part number,Panel,Material,Thickness (mm),Edge (mm),Qty,Note\nNUT-M4-10-CS,P1,DC01,1.5,4,4,=1+1\nNUT-M4-10-CS,P2,DC01,1.5,9,4,-5\n',
);
const DEMO = resolve(import.meta.dirname, '../../sample-data/recorder-cabinet.xlsx');

const button = (page: Page) => page.getByRole('button', { name: 'Export', exact: true });
const items = (page: Page) => page.locator('export-menu [role^=menuitem]');
const focused = (page: Page) => page.locator('export-menu :focus').first();
const message = (page: Page) => page.locator('clinch-app .message span').innerText();

/** Saves what the keys or clicks ask for: the file's name and its bytes. */
async function saved(page: Page, ask: () => Promise<void>): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent('download');
  await ask();
  const file = await download;
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

describe('the Export menu by keyboard', () => {
  it('opens, moves, ticks, closes, and gives the focus back', async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await counts(page);
    await button(page).focus();
    for (const [key, first] of [
      ['Enter', 'As a new workbook'],
      ['Space', 'As a new workbook'],
      ['ArrowDown', 'As a new workbook'],
      ['ArrowUp', 'Print findings…'],
    ] as const) {
      await page.keyboard.press(key);
      await expect.poll(() => focused(page).innerText()).toContain(first);
      await page.keyboard.press('Escape');
      await expect.poll(() => items(page).count()).toBe(0);
      expect(await focused(page).innerText()).toBe('Export');
    }
    await page.keyboard.press('Enter');
    await expect.poll(() => items(page).allInnerTexts()).toHaveLength(4);
    for (const [key, text] of [
      ['End', 'Print'],
      ['ArrowDown', 'As a new'],
      ['ArrowUp', 'Print'],
      ['Home', 'As a new'],
      ['ArrowDown', 'As CSV'],
      ['ArrowDown', 'Safe'],
    ] as const) {
      await page.keyboard.press(key);
      expect(await focused(page).innerText(), key).toContain(text);
    }
    const tick = page.getByRole('menuitemcheckbox', { name: 'Safe for spreadsheets' });
    expect(await tick.getAttribute('aria-checked')).toBe('true');
    await page.keyboard.press('Space');
    expect(await tick.getAttribute('aria-checked')).toBe('false');
    await page.keyboard.press('Enter');
    expect(await tick.getAttribute('aria-checked')).toBe('true');
    await page.keyboard.press('Tab');
    await expect.poll(() => items(page).count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it('has no barriers', async () => {
    const { page } = await host.open();
    await openList(page, DEMO);
    await counts(page);
    await button(page).click();
    await expect.poll(() => items(page).first().innerText()).toBe('In your workbook');
    await page.evaluate(axe.source);
    const violations = await page.evaluate(async () => {
      const { axe } = window as unknown as { axe: { run(on: string[][]): Promise<{ violations: { id: string }[] }> } };
      return (await axe.run([['clinch-app', 'export-menu']])).violations.map(({ id }) => id);
    });
    expect(violations).toEqual([]);
  });
});

describe('an export as CSV', () => {
  it('is safe for spreadsheets unless unticked, names the file, and says what it does not hold', async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await counts(page);
    const safe = await saved(page, async () => {
      await button(page).click();
      await page.getByRole('menuitem', { name: 'As CSV' }).click();
    });
    expect(safe.name).toBe('Größe 1-judged.csv');
    expect(safe.bytes.subarray(0, 3)).toEqual(Buffer.from([0xef, 0xbb, 0xbf]));
    const text = safe.bytes.toString('utf8');
    expect(text).toContain(",4,4,'=1+1,2,fails,");
    expect(text).toContain(',9,4,-5,3,holds,');
    expect(text).toContain('does not approve joints');
    expect(await message(page)).toBe(
      'Saved as Größe 1-judged.csv. Findings, reports and changes are not in it; a workbook has them.',
    );
    const plain = await saved(page, async () => {
      await button(page).click();
      await page.getByRole('menuitemcheckbox').click();
      await page.getByRole('menuitem', { name: 'As CSV' }).click();
    });
    expect(plain.bytes.toString('utf8')).toMatch(/^Part number,.*\r\n.*,4,4,=1\+1,2,fails,/);
    expect(errors).toEqual([]);
  });

  it('holds the edits, and what was conceded beside the verdict', async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await cell(page, 2, 'verdict').click();
    await concedeFirstCheck(page, 'fixture holds the edge', 'R. Alder');
    await expect.poll(() => cell(page, 2, 'decision').innerText()).toContain('conceded');
    const { bytes } = await saved(page, async () => {
      await button(page).focus();
      for (const key of ['Enter', 'ArrowDown', 'Enter']) {
        await page.keyboard.press(key);
        await expect.poll(() => focused(page).count()).toBe(1);
      }
    });
    const [headings = '', first = ''] = bytes.toString('utf8').split('\r\n');
    expect(headings).toContain('Verdict,Conceded,What decides it');
    expect(first).toContain(',fails,conceded: fixture holds the edge,');
    expect(errors).toEqual([]);
  });
});

describe('an export of a workbook', () => {
  it('says what a new one does not hold', async () => {
    const { page } = await host.open();
    await openList(page, DEMO);
    await counts(page);
    for (const [choice, says] of [
      ['As a new workbook', 'Saved as recorder-cabinet-judged.xlsx. Your other sheets are not in it.'],
      ['In your workbook', 'Saved as recorder-cabinet-judged.xlsx.'],
    ] as const) {
      await saved(page, async () => {
        await button(page).click();
        await page.getByRole('menuitem', { name: choice }).click();
      });
      await expect.poll(() => message(page)).toBe(says);
    }
  });
});
