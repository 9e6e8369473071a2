import type { Page } from 'playwright-core';
import { cell, csv } from './list-page.ts';

export const COLUMNS = ['Item', 'Part number', 'Material', 'Thickness (mm)', 'Qty', 'Note'] as const;
const THICKNESS = 3;

/** A list of many rows of the demo catalogue's nuts in 1.5 mm sheet; the row of an item is its number plus 1. */
export function longList(rows: number) {
  const lines = Array.from(
    { length: rows },
    (_, at) => `${at + 1},NUT-M4-10-CS,DC01,1.5,${(at % 9) + 1},note ${at + 1}`,
  );
  return csv('long.csv', `${COLUMNS.join(',')}\n${lines.join('\n')}\n`);
}

/** Texts of a block of whole rows in which every sheet is too thin. */
export function thinBlock(rows: number): readonly (readonly string[])[] {
  return Array.from({ length: rows }, (_, at) => {
    const row = [`P${at}`, 'NUT-M4-10-CS', 'DC01', '0.5', '7', `pasted ${at}`];
    row[THICKNESS] = '0.5';
    return row;
  });
}

/** Pastes as the browser does: the event goes to the cell that has the focus. */
export async function paste(page: Page, text: string): Promise<void> {
  await page.evaluate((pasted) => {
    let target: Element | null = document.activeElement;
    while (target?.shadowRoot?.activeElement) target = target.shadowRoot.activeElement;
    const clipboardData = new DataTransfer();
    clipboardData.setData('text/plain', pasted);
    target?.dispatchEvent(
      new ClipboardEvent('paste', { clipboardData, bubbles: true, composed: true, cancelable: true }),
    );
  }, text);
}

/** Presses Ctrl and a letter that copies or cuts, and gives the text of the event. */
export async function copied(page: Page, key: 'c' | 'x' = 'c'): Promise<string> {
  await page.evaluate(() => {
    const keep = ({ clipboardData }: ClipboardEvent) =>
      document.body.setAttribute('data-copied', clipboardData?.getData('text/plain') ?? '');
    document.addEventListener('copy', keep, { once: true });
    document.addEventListener('cut', keep, { once: true });
  });
  await page.keyboard.press(`Control+${key}`);
  return (await page.locator('body').getAttribute('data-copied')) ?? '';
}

/** How many cells are tinted: all of a block but the one with the focus. */
export async function blockSize(page: Page): Promise<number> {
  const tinted = await page.locator('list-grid .in-block').count();
  return tinted + 1;
}

export async function textsOf(page: Page, row: number): Promise<readonly string[]> {
  const texts: string[] = [];
  for (const column of COLUMNS.keys()) texts.push(await cell(page, row, `sender-${column}`).innerText());
  return texts;
}
