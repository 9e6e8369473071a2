import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';

const host = new AppHost();
beforeAll(() => host.start(), 60_000);
afterAll(() => host.stop());

describe('the overview', () => {
  it('shows the rows of a panel, of a check, of a pair of metals alone, and all of them again', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await page.locator('.ag-row').first().waitFor();
    await page.getByRole('button', { name: 'Overview' }).click();
    const overview = page.locator('overview-panel');
    const rows = page.locator('list-grid .ag-cell[col-id="sender-1"]');

    await overview.getByRole('button', { name: 'RC-02', exact: true }).click();
    await expect.poll(() => rows.count()).toBe(8);
    const panels = await page.locator('list-grid .ag-cell[col-id="sender-3"]').allInnerTexts();
    expect(new Set(panels)).toEqual(new Set(['RC-02']));

    await overview.getByRole('button', { name: 'Edge distance', exact: true }).click();
    await expect.poll(() => rows.count()).toBe(1);
    await page.locator('list-grid').getByText('Edge 4.50, needs 7.00 mm').waitFor();

    await page.getByRole('button', { name: 'Show all rows' }).click();
    await expect.poll(() => rows.count()).toBeGreaterThan(15);
    expect(await overview.getByRole('button', { pressed: true }).count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it('makes room for a row that is chosen, and comes back', async () => {
    const { page } = await host.open({ width: 1024, height: 768 });
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await page.locator('.ag-row').first().waitFor();
    await page.locator('list-grid .ag-row[row-id="9"] .ag-cell[col-id="sender-1"]').click();
    await page.locator('row-panel').waitFor();
    await page.getByRole('button', { name: 'Close this panel' }).click();
    await page.getByRole('button', { name: 'Overview' }).click();
    await page.locator('overview-panel').waitFor();
    expect(await page.locator('row-panel').count()).toBe(0);
    await page.locator('overview-panel').getByRole('button', { name: 'Close this panel' }).click();
    await expect.poll(() => page.locator('overview-panel').count()).toBe(0);
  });

  it('gives way to a row that another view leads to', async () => {
    const { page } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await page.locator('.ag-row').first().waitFor();
    await page.getByRole('button', { name: 'Overview' }).click();
    await page.locator('overview-panel').getByRole('button', { name: 'RC-02', exact: true }).click();
    await page.getByRole('button', { name: 'Purchasing' }).click();
    await page.getByTitle('Show row 6 in the list').click();
    await page.locator('list-grid .ag-row[row-id="6"] .ag-cell[col-id="sender-1"]').waitFor();
    expect(await page.getByRole('button', { name: 'Show all rows' }).count()).toBe(0);
  });
});
