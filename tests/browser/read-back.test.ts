import { readFileSync } from 'node:fs';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { AppHost } from './app.ts';
import { cell, concedeFirstCheck, counts } from './list-page.ts';

const host = new AppHost();
beforeAll(() => host.start(), 60_000);
afterAll(() => host.stop());

it('a concession goes out with the workbook, comes back with it, and can be taken back', {
  timeout: 60_000,
}, async () => {
  const { page, errors } = await host.open();
  await page.getByRole('button', { name: 'Try the demo list' }).click();
  const before = await counts(page);
  await cell(page, 9, 'verdict').click();
  await concedeFirstCheck(page, 'decorative, carries no load', 'R. Vale');
  await page.getByRole('button', { name: 'Export' }).click();
  const download = page.waitForEvent('download');
  await page.getByRole('menuitem', { name: 'In your workbook' }).click();
  const buffer = readFileSync(await (await download).path());

  const again = await host.open();
  const chooser = again.page.waitForEvent('filechooser');
  await again.page.getByRole('button', { name: 'Open list', exact: true }).click();
  await (await chooser).setFiles({ name: 'back.xlsx', mimeType: 'application/octet-stream', buffer });
  await again.page.getByText('The workbook brought a concession, signed by R. Vale').waitFor();
  await cell(again.page, 9, 'verdict').click();
  expect(await counts(again.page)).toEqual(before);
  const panel = again.page.locator('row-panel .decision');
  await expect.poll(() => panel.innerText()).toMatch(/Fails[\s\S]*Conceded[\s\S]*decorative, carries no load/i);
  await again.page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => panel.innerText()).not.toContain('decorative');
  expect([...errors, ...again.errors]).toEqual([]);
});
