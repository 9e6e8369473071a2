import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';
import { cell } from './list-page.ts';

const host = new AppHost();
beforeAll(() => host.start(), 60_000);
afterAll(() => host.stop());

/** As long as a hand takes between the two clicks. */
const BETWEEN_CLICKS = 120;

describe('a double click on a list that no row was chosen of', () => {
  it.each([
    [1440, 5],
    [1440, 7],
    [1024, 4],
  ])('at %i px opens the cell under the pointer (column %i), though a panel opens beside it', async (width, column) => {
    const { page, errors } = await host.open({ width, height: 800 });
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    const target = cell(page, 6, `sender-${column}`);
    await target.waitFor();
    const box = (await target.boundingBox())!;
    await page.mouse.move(box.x + 8, box.y + box.height / 2);
    await page.mouse.down();
    await page.mouse.up();
    await page.waitForTimeout(BETWEEN_CLICKS);
    await page.mouse.down({ clickCount: 2 });
    await page.mouse.up({ clickCount: 2 });
    await page.keyboard.press('Control+A');
    await page.keyboard.type('0.5', { delay: 150 });

    await page.locator('row-panel').waitFor();
    const editor = (await page.locator('list-grid .ag-cell-inline-editing').boundingBox())!;
    const frozen = (await cell(page, 6, 'verdict').boundingBox())!;
    // On a narrow page the panel lies over the list and its frozen columns stay where they are.
    expect(editor.x + editor.width).toBeLessThanOrEqual(frozen.x + 1);
    await page.keyboard.type('1');
    await page.keyboard.press('Enter');
    await expect.poll(() => target.innerText()).toBe('0.51');
    expect(errors).toEqual([]);
  });
});
