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
