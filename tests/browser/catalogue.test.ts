import { readFile } from 'node:fs/promises';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';
import { counts, csv, loadCatalogue, openList } from './list-page.ts';

const host = new AppHost({ isKept: true });
beforeAll(() => host.start(), 60_000);
afterAll(() => host.stop());

const OWN =
  'partNumber,kind,thread,material,hardnessMin,sheetMinMm,shankMm,flush,holeMm,holePlusMm,holeMinusMm,edgeMm,stocked,source,sourceDate\n' +
  'OWN-1,clinch nut,M4,carbon-steel-hardened,HRC 30,1,0.97,yes,5.6,0.08,0,7,yes,data sheet 4,2024-05-01\n' +
  'OWN-2,clinch nut,M4,carbon-steel-hardened,HRC 30,1.5,1.4,yes,3,0.08,0,7,no,data sheet 4,2024-05-01\n';
const LIST = 'Part number,Material,Thk (mm),Qty\nOWN-1,DC01,0.8,2\nOWN-1,DC01,1.5,4\n';

async function start(size?: { width: number; height: number }) {
  const app = await host.open(size);
  await loadCatalogue(app.page, csv('own.csv', OWN));
  return app;
}

const part = (page: Page, name: string) =>
  page.locator('catalogue-view tbody').getByRole('button', { name, exact: true });
const panel = (page: Page) => page.locator('part-panel');

async function edit(page: Page, name: string, values: Readonly<Record<string, string>>): Promise<void> {
  await part(page, name).click();
  await panel(page).getByRole('button', { name: 'Edit', exact: true }).click();
  for (const [label, value] of Object.entries(values)) await panel(page).getByLabel(label, { exact: true }).fill(value);
  await panel(page).getByRole('button', { name: 'Save edits' }).click();
}

describe('the catalogue', () => {
  it('is searched by words and by choice, and says when nothing answers', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Catalogue', exact: true }).click();
    const rows = page.locator('catalogue-view tbody tr');
    await page.locator('catalogue-view').getByText('234 parts', { exact: true }).waitFor();
    expect(await rows.count()).toBe(200);
    await page.getByRole('button', { name: 'Show more' }).click();
    await expect.poll(() => rows.count()).toBe(234);
    await page.getByLabel('Find a part').last().fill('m4 stainless-400');
    await page.getByLabel('Kind').selectOption('clinch nut');
    await expect.poll(() => rows.count()).toBeLessThan(10);
    expect(new Set(await rows.locator('td:nth-child(2)').allInnerTexts())).toEqual(new Set(['clinch nut']));
    await page.getByLabel('Find a part').last().fill('no such thing');
    await page.getByText('No part matches this search.').waitFor();
    await page.getByRole('button', { name: 'Show all 234 parts' }).click();
    await expect.poll(() => rows.count()).toBe(200);
    expect(errors).toEqual([]);
  });

  it('shows a part with each number, its unit and where it came from, in mm and inches', async () => {
    const { page, errors } = await start();
    await part(page, 'OWN-1').click();
    await panel(page).getByText('Row 2 of “own”. Source: data sheet 4, 2024-05-01.').waitFor();
    await panel(page).getByText('7.00 mm', { exact: true }).waitFor();
    await panel(page).getByText('7.00 mm assumed, the edge distance').waitFor();
    await openList(page, csv('list.csv', LIST));
    await counts(page);
    await page.getByLabel('Units').selectOption('in');
    await page.getByRole('button', { name: 'Catalogue', exact: true }).click();
    await part(page, 'OWN-1').click();
    await panel(page).getByText('0.2756 in', { exact: true }).waitFor();
    expect(errors).toEqual([]);
  });

  it('edits a part: the list is judged again, the number is marked, undo takes it back', async () => {
    const { page, errors } = await start();
    await openList(page, csv('list.csv', LIST));
    expect(await counts(page)).toEqual({ fails: 1, unknown: 0, marginal: 0, holds: 1 });
    await page.getByRole('button', { name: 'Catalogue', exact: true }).click();
    await edit(page, 'OWN-1', { 'Minimum sheet': '0.8', Shank: '0.7' });
    await page.getByText('fails 1 → 0, holds 1 → 2').waitFor();
    await panel(page).getByText('edited here; the file says 1.00 mm').waitFor();
    await page.locator('catalogue-view').getByText('own (1 part edited) · 2 parts').waitFor();
    await page.getByRole('button', { name: 'List', exact: true }).click();
    expect(await counts(page)).toEqual({ fails: 0, unknown: 0, marginal: 0, holds: 2 });
    await page.locator('list-grid .ag-row[row-id="2"] .ag-cell[col-id="sender-0"]').click();
    await page.locator('row-facts').getByText('edited in the catalogue here: minimum sheet, shank').waitFor();
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => counts(page)).toMatchObject({ fails: 1, holds: 1 });
    expect(errors).toEqual([]);
  });

  it('refuses what cannot be, beside the field, and keeps what was typed', async () => {
    const { page, errors } = await start();
    await edit(page, 'OWN-1', { 'Mounting hole': '3', 'Edge distance': 'far' });
    await panel(page).getByText('“far” cannot be read as a length.').waitFor();
    await panel(page)
      .getByText(/The hole of 3.00 mm is not larger than the M4 thread/)
      .waitFor();
    const hole = panel(page).getByLabel('Mounting hole', { exact: true });
    expect(await hole.inputValue()).toBe('3');
    expect(await hole.getAttribute('aria-invalid')).toBe('true');
    await panel(page).getByRole('button', { name: 'Cancel' }).click();
    await panel(page).getByText('5.60 mm', { exact: true }).waitFor();
    expect(errors).toEqual([]);
  });

  it('adds a part, takes one out and puts it back, and marks stock', async () => {
    const { page, errors } = await start();
    await page.getByRole('button', { name: 'Add a part…' }).click();
    await panel(page).getByRole('button', { name: 'Add part' }).click();
    await panel(page).getByText('A part needs a part number.').waitFor();
    await panel(page).getByLabel('Part number').fill('NEW-1');
    await panel(page).getByLabel('Kind', { exact: true }).selectOption('clinch pin');
    await panel(page).getByRole('button', { name: 'Add part' }).click();
    await panel(page).getByText('Added here, to “own (edited)”.').waitFor();
    await panel(page).getByRole('button', { name: 'Mark as stocked' }).click();
    await panel(page).getByRole('button', { name: 'Mark as not stocked' }).waitFor();
    await part(page, 'OWN-2').click();
    await panel(page).getByRole('button', { name: 'Take out' }).click();
    await expect.poll(() => part(page, 'OWN-2').count()).toBe(0);
    await page.getByRole('button', { name: 'Put back: OWN-2' }).click();
    await part(page, 'OWN-2').waitFor();
    expect(errors).toEqual([]);
  });

  it('names what of a file could not be used, with the way to the part', async () => {
    const { page, errors } = await start();
    await page.getByText('One cell or row of the file could not be used').waitFor();
    await page.getByText(/Row 3, holeMm: The hole of 3.00 mm is not larger/).waitFor();
    await page.getByRole('button', { name: 'Show OWN-2' }).click();
    await panel(page).getByRole('heading', { name: 'OWN-2' }).waitFor();
    expect(errors).toEqual([]);
  });

  it('saves the edited catalogue as a file that loads again', async () => {
    const { page, errors } = await start();
    await edit(page, 'OWN-1', { 'Minimum sheet': '0.8' });
    await panel(page).getByText('edited here; the file says 1.00 mm').waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: /^Save as CSV: own/ }).click();
    const saved = await download;
    expect(saved.suggestedFilename()).toBe('own-edited.csv');
    const text = await readFile(await saved.path(), 'utf8');
    expect(text).toContain('OWN-1,clinch nut,M4,,carbon-steel-hardened,HRC 30,,0.8,');
    await loadCatalogue(page, csv('again.csv', text));
    await page.locator('catalogue-ranks').getByText('own (1 part edited) · 2 parts').waitFor();
    const differences = page.getByText('Parts that the catalogues describe differently');
    expect(await differences.count()).toBe(0);
    await loadCatalogue(page, csv('other.csv', text.replace(',0.8,', ',0.9,')));
    await differences.click();
    await page.getByText(/“own \(edited\)” counts, because it ranks higher/).waitFor();
    const placeOfOther = async () =>
      (await page.locator('catalogue-ranks .name').allInnerTexts()).findIndex((name) => name.startsWith('other'));
    for (const place of [1, 0]) {
      await page.getByRole('button', { name: 'Higher: other' }).click();
      await expect.poll(placeOfOther).toBe(place);
    }
    await page
      .getByText(/“other” counts, because it ranks higher/)
      .first()
      .waitFor();
    expect(errors).toEqual([]);
  }, 60_000);

  it('says wherever it shows that the demo is invented, edited or not, and keeps edits for the next visit', async () => {
    const app = await host.open({ width: 1024, height: 768 });
    const { page } = app;
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await counts(page);
    await page.getByRole('button', { name: 'Catalogue', exact: true }).click();
    await edit(page, 'NUT-M4-10-CS', { 'Minimum sheet': '1.1' });
    await panel(page).getByText('Demo: invented, not for production.').waitFor();
    await page.locator('catalogue-ranks').getByText('demo: invented, not for production').waitFor();
    await page.waitForTimeout(1500);
    const { page: next, errors } = await host.openBeside(app);
    await next.locator('saved-lists .name').first().click();
    await counts(next);
    await next.getByRole('button', { name: 'Catalogue', exact: true }).click();
    await next.locator('catalogue-view').getByText('demo-catalogue (1 part edited)').waitFor();
    await next.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => next.locator('catalogue-view').getByText('1 part edited').count()).toBe(0);
    expect(errors).toEqual([]);
  });
});
