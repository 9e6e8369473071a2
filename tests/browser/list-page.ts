import type { Locator, Page } from 'playwright-core';

/** A file as a test hands it to the file chooser. */
export function csv(name: string, text: string) {
  return { name, mimeType: 'text/csv', buffer: Buffer.from(text) };
}

export async function openList(page: Page, file: ReturnType<typeof csv> | string): Promise<void> {
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Open list', exact: true }).click();
  await (await chooser).setFiles(file);
}

export async function loadCatalogue(page: Page, file: ReturnType<typeof csv>): Promise<void> {
  await page.getByRole('button', { name: 'Catalogue', exact: true }).click();
  const chooser = page.waitForEvent('filechooser');
  await page.getByRole('button', { name: 'Load catalogue…' }).click();
  await (await chooser).setFiles(file);
  const name = file.name.replace(/\.\w+$/, '');
  await page.locator('catalogue-view').getByText(`${name} · `).waitFor();
}

/** How many rows have each verdict, once the list is there. */
export async function counts(page: Page): Promise<Record<string, number>> {
  await page.locator('verdict-counts b').first().waitFor();
  const entries = await page
    .locator('verdict-counts button')
    .evaluateAll((buttons) =>
      buttons.map(
        (button) =>
          [button.getAttribute('data-verdict') ?? '', Number(button.querySelector('b')?.textContent)] as const,
      ),
    );
  return Object.fromEntries(entries);
}

export function cell(page: Page, row: number, column: string): Locator {
  return page.locator(`list-grid .ag-row[row-id="${row}"] .ag-cell[col-id="${column}"]`);
}

/** The heading of one of the sender's columns, by its 0-based position. */
export function heading(page: Page, column: number): Locator {
  return page.locator(`list-grid .ag-header-cell[col-id="sender-${column}"]`);
}

export async function typeInto(page: Page, row: number, column: number, text: string): Promise<void> {
  await cell(page, row, `sender-${column}`).dblclick();
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** Opens the first check of the row that is chosen and asks to accept it as it is. */
export async function beginConcession(page: Page): Promise<void> {
  const check = page.locator('check-list details').first();
  await check.locator('summary').click();
  await check.getByRole('button', { name: 'Accept with reason…' }).click();
}

/** Accepts the first check of the row that is chosen, signed. */
export async function concedeFirstCheck(page: Page, reason: string, name: string): Promise<void> {
  await beginConcession(page);
  const dialog = page.locator('concede-dialog');
  await dialog.getByLabel('Reason').fill(reason);
  await dialog.getByLabel('Accepted by').fill(name);
  await dialog.getByRole('button', { name: 'Accept', exact: true }).click();
}
