import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { NOT_CHECKED } from '../../src/core/say/not-checked.ts';
import { AppHost } from './app.ts';
import { cell, counts, heading } from './list-page.ts';

const host = new AppHost();
beforeAll(() => host.start(), 60_000);
afterAll(() => host.stop());

describe('help', () => {
  it('opens by button, F1 and question mark, and gives the focus back', async () => {
    const { page, errors } = await host.open();
    const dialog = page.locator('help-dialog dialog');
    const button = page.getByRole('button', { name: 'Help', exact: true });
    const hasFocus = () => button.evaluate((own) => (own.getRootNode() as ShadowRoot).activeElement === own);
    await button.click();
    await dialog.waitFor();
    expect(await hasFocus()).toBe(false);
    await page.keyboard.press('Escape');
    await expect.poll(() => dialog.count()).toBe(0);
    expect(await hasFocus()).toBe(true);
    await page.keyboard.press('?');
    await dialog.waitFor();
    await dialog.getByRole('button', { name: 'Close' }).click();
    await expect.poll(() => dialog.count()).toBe(0);
    expect(await hasFocus()).toBe(true);
    await page.keyboard.press('F1');
    await dialog.waitFor();
    expect(errors).toEqual([]);
  });

  it('tells verdicts, checks, what is not checked, keys, safety, and that nothing is sent', async () => {
    const { page, errors } = await host.open({ width: 1024, height: 768 });
    await page.getByRole('button', { name: 'Help', exact: true }).click();
    const help = page.locator('help-dialog');
    await help.getByText('The sheet is at least 20 points softer than the fastener').waitFor();
    for (const { title } of NOT_CHECKED) await help.getByText(title, { exact: true }).waitFor();
    await help.getByRole('button', { name: 'Keys' }).click();
    await expect.poll(() => help.getByText('Ctrl+Shift+Z').isVisible()).toBe(true);
    await help.getByRole('button', { name: 'Safety' }).click();
    await help.getByText('Clinchsheet screens lists; it does not approve joints.').waitFor();
    await help.getByText(/nothing is sent anywhere/).waitFor();
    expect(errors).toEqual([]);
  });

  it('leaves a question mark to the cell that is typed into', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await counts(page);
    await cell(page, 9, 'sender-1').click();
    await page.keyboard.type('?');
    expect(await page.locator('.ag-cell-edit-wrapper input').inputValue()).toBe('?');
    expect(await page.locator('help-dialog').count()).toBe(0);
    await page.keyboard.press('Escape');
    expect(errors).toEqual([]);
  });

  it('stands on each heading, by pointer and by key', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await counts(page);
    const thickness = page.locator('list-grid .ag-header-cell').filter({ hasText: 'sheet thickness' });
    await thickness.getByRole('button', { name: /^What .* means$/ }).click();
    await page
      .locator('role-menu')
      .getByText(/Read as sheet thickness.*Read by:.*Sheet thickness/)
      .waitFor();
    await page.keyboard.press('Escape');
    const verdict = page.locator('list-grid .ag-header-cell[col-id="verdict"]');
    await verdict.hover();
    await verdict.getByRole('button', { name: /^Filter/ }).click();
    await page.locator('column-menu').getByText('The worst finding of all checks of the row.').waitFor();
    await page.keyboard.press('Escape');
    await heading(page, 1).focus();
    await page.keyboard.press('Alt+ArrowDown');
    await page
      .locator('role-menu')
      .getByText(/^Read as part number\. Read by \d+ of \d+ checks\.$/)
      .waitFor();
    expect(errors).toEqual([]);
  });
});
