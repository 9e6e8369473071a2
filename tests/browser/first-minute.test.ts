import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';

const host = new AppHost({ isKept: true });
beforeAll(() => host.start(), 60_000);
afterAll(() => host.stop());

const DEMO = readFileSync(resolve(import.meta.dirname, '../../sample-data/recorder-cabinet.xlsx'));

/** Lets a file fall onto the middle of what the page shows. */
async function drop(page: Page, name: string, bytes: Buffer): Promise<void> {
  const transfer = await page.evaluateHandle(
    ([fileName, base64]) => {
      const data = new DataTransfer();
      data.items.add(new File([Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0))], fileName));
      return data;
    },
    [name, bytes.toString('base64')] as const,
  );
  const main = page.locator('main');
  await main.dispatchEvent('dragover', { dataTransfer: transfer });
  await main.dispatchEvent('drop', { dataTransfer: transfer });
}

describe('somebody who has never seen the app', () => {
  it.each([
    { width: 1440, height: 900 },
    { width: 1024, height: 768 },
  ])(
    'knows at $width x $height after three actions why the first row that fails does',
    async (size) => {
      const started = performance.now();
      const since = () => `${Math.round(performance.now() - started)} ms`;
      // First action: the page is opened, nothing of it being kept from an earlier visit.
      const { page, errors } = await host.open(size);
      const opened = since();
      // Second: the list is dropped on it.
      await drop(page, 'recorder-cabinet.xlsx', DEMO);
      await page.locator('list-grid .ag-row [col-id="verdict"]').first().waitFor();
      const judged = since();
      await expect
        .poll(() => page.locator('read-line p').first().innerText())
        .toMatch(/\d+ rows read .*headings in row \d+/);
      const failing = page.locator('list-grid .ag-row', {
        has: page.locator('[col-id="verdict"]', { hasText: 'fails' }),
      });
      await expect.poll(() => isInSight(page, failing.first().locator('[col-id="verdict"]'))).toBe(true);
      // Third: the row that fails is clicked.
      await failing.first().locator('[col-id="verdict"]').click();
      const decision = page.locator('row-panel .decision');
      await expect.poll(() => decision.innerText()).toMatch(/^Fails/);
      const explained = since();
      expect(await isInSight(page, decision)).toBe(true);
      expect((await decision.innerText()).length).toBeGreaterThan(20);
      expect(errors).toEqual([]);
      console.info(
        `Cold, ${size.width} x ${size.height}: open ${opened}, judged rows ${judged}, explained ${explained}.`,
      );
    },
    60_000,
  );
});

/** Whether nothing of it lies outside the window. */
async function isInSight(page: Page, what: ReturnType<Page['locator']>): Promise<boolean> {
  const box = await what.boundingBox();
  const { width, height } = page.viewportSize()!;
  return box !== null && box.x >= 0 && box.y >= 0 && box.x + box.width <= width && box.y + box.height <= height;
}
