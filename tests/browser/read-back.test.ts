import { readFileSync } from 'node:fs';
import axe from 'axe-core';
import exceljs from 'exceljs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';
import { cell, concedeFirstCheck, counts, csv, openList, typeInto } from './list-page.ts';

const host = new AppHost();
beforeAll(() => host.start(), 60_000);
afterAll(() => host.stop());

const file = (name: string, bytes: Buffer) => ({
  name,
  mimeType: 'application/octet-stream',
  buffer: Buffer.from(bytes),
});
/** What stands in somebody's way on the page as it is, in short. */
async function barriers(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, {
      resultTypes: ['violations'],
    });
    return violations.flatMap(({ id, nodes }) => nodes.map(({ failureSummary }) => `${id}: ${failureSummary ?? ''}`));
  });
}
const message = (page: Page) => page.locator('clinch-app .message span').innerText();
const tab = (page: Page, name: string) => page.getByRole('button', { name, exact: true }).click();

async function saved(page: Page, ask: () => Promise<void>): Promise<Buffer> {
  const download = page.waitForEvent('download');
  await ask();
  return readFileSync(await (await download).path());
}

async function exported(page: Page, how: string): Promise<Buffer> {
  return saved(page, async () => {
    await page.getByRole('button', { name: 'Export', exact: true }).click();
    await page.getByRole('menuitem', { name: how }).click();
  });
}

async function changed(workbook: Buffer, change: (book: exceljs.Workbook) => void): Promise<Buffer> {
  const book = new exceljs.Workbook();
  await book.xlsx.load(new Uint8Array(workbook).buffer as ArrayBuffer);
  change(book);
  return Buffer.from(await book.xlsx.writeBuffer());
}

async function accept(page: Page, row: number): Promise<void> {
  await cell(page, row, 'verdict').click();
  await page.locator('row-panel h2', { hasText: `Row ${row} ·` }).waitFor();
  await concedeFirstCheck(page, 'decorative, carries no load', 'R. Vale');
}

it('a concession and the changes go out with the workbook, come back with it, and the concession can be taken back', {
  timeout: 60_000,
}, async () => {
  const { page, errors } = await host.open();
  await page.getByRole('button', { name: 'Try the demo list' }).click();
  const before = await counts(page);
  await accept(page, 9);
  const buffer = await exported(page, 'In your workbook');

  const again = await host.open();
  await openList(again.page, file('back.xlsx', buffer));
  await expect
    .poll(() => message(again.page))
    .toMatch(/^The workbook brought a concession, signed by R\. Vale.* One earlier change stands under Changes\.$/);
  await cell(again.page, 9, 'verdict').click();
  expect(await counts(again.page)).toEqual(before);
  const panel = again.page.locator('row-panel .decision');
  await expect.poll(() => panel.innerText()).toMatch(/Fails[\s\S]*Conceded[\s\S]*decorative, carries no load/i);
  await tab(again.page, 'Changes');
  const changes = again.page.locator('changes-view .page');
  await expect.poll(() => changes.innerText()).toMatch(/take over a concession[\s\S]*R\. Vale[\s\S]*accept “.*earlier/);
  await tab(again.page, 'List');
  await again.page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => panel.innerText()).not.toContain('decorative');

  const third = await host.open();
  await openList(third.page, file('third.xlsx', await exported(again.page, 'In your workbook')));
  await cell(third.page, 9, 'verdict').click();
  await expect.poll(() => third.page.locator('row-panel .decision').innerText()).toMatch(/fails/i);
  expect(await third.page.locator('row-panel .decision').innerText()).not.toContain('decorative');
  expect([...errors, ...again.errors, ...third.errors]).toEqual([]);
});

it('changes are told once, however often the workbook goes out and comes back', { timeout: 60_000 }, async () => {
  const first = await host.open();
  await first.page.getByRole('button', { name: 'Try the demo list' }).click();
  await counts(first.page);
  await accept(first.page, 9);
  let buffer = await exported(first.page, 'As a new workbook');
  for (const round of [1, 2]) {
    const { page, errors } = await host.open();
    await openList(page, file(`round-${round}.xlsx`, buffer));
    await counts(page);
    await typeInto(page, 5 + round, 1, `NUT-M4-1${round}-CS`);
    await expect.poll(() => page.getByRole('button', { name: 'Undo' }).isEnabled()).toBe(true);
    await tab(page, 'Changes');
    const names = page.locator('changes-view summary div');
    await expect.poll(() => names.count()).toBe(2 + round);
    const texts = await names.allInnerTexts();
    expect(texts.map((text) => text.split('\n').includes('earlier') || text.endsWith('earlier'))).toEqual([
      false,
      false,
      ...Array(round).fill(true),
    ]);
    buffer = await exported(page, round === 1 ? 'As a new workbook' : 'In your workbook');
    expect(errors).toEqual([]);
  }
  const book = new exceljs.Workbook();
  await book.xlsx.load(new Uint8Array(buffer).buffer as ArrayBuffer);
  const sheet = book.worksheets.findLast(({ name }) => name.startsWith('Changes'));
  const told = sheet
    ?.getRows(2, sheet.rowCount - 1)
    ?.map((row) => [row.getCell(3).text.replace(/\d+/g, '#'), row.getCell(9).text]);
  expect(told?.map(([, mark]) => mark)).toEqual(['earlier', 'earlier', '']);
  expect(told?.slice(1).map(([what]) => what)).toEqual(['edit P/N in row #', 'edit P/N in row #']);
});

it('a concession that cannot be placed is told in a sentence', async () => {
  const { page, errors } = await host.open();
  await page.getByRole('button', { name: 'Try the demo list' }).click();
  await counts(page);
  await accept(page, 9);
  const damaged = await changed(await exported(page, 'As a new workbook'), (book) => {
    const hidden = book.getWorksheet('Concessions')?.getRow(2).getCell(10);
    if (hidden) hidden.value = '{}';
  });
  await openList(page, file('damaged.xlsx', damaged));
  await expect
    .poll(() => message(page))
    .toMatch(/The concession “.*\(row 9 of the file before\) has lapsed: what it rests on/);
  expect(errors).toEqual([]);
});

describe('answers to questions', () => {
  const LIST = csv(
    'cabinet.csv',
    'Part number,Panel,Material,Thickness (mm),Qty\nNUT-M4-10-CS,P1,DC01,,4\nNUT-M3-08-CS,P1,DC01,,2\nNUT-M4-10-CS,P2,,1.5,4\nNUT-M5-15-CS,P3,DC01,2,\n',
  );
  const ANSWERS = [
    [/thickness is missing/, 'yes, 1.5 mm'],
    [/sheet metal is missing/, 'blue'],
    [/quantity is missing/, '12'],
  ] as const;

  function answer(book: exceljs.Workbook): void {
    book.getWorksheet('Questions')?.eachRow((row) => {
      const found = ANSWERS.find(([question]) => question.test(row.getCell(5).text));
      if (found) row.getCell(8).value = found[1];
    });
  }

  async function questions(page: Page): Promise<Buffer> {
    await tab(page, 'Questions');
    return changed(await saved(page, () => page.getByRole('button', { name: 'Save as XLSX' }).click()), answer);
  }

  it('are previewed, filled in as one step, and taken back', { timeout: 60_000 }, async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await counts(page);
    const answered = file('answers.xlsx', await questions(page));
    await tab(page, 'List');
    await openList(page, answered);
    const dialog = page.getByRole('dialog', { name: 'Answers in answers.xlsx' });
    await expect.poll(() => dialog.locator('section').count()).toBe(3);
    const thickness = dialog.locator('section', { hasText: 'thickness is missing' });
    await expect
      .poll(() => thickness.locator('tbody tr').first().innerText())
      .toMatch(/2\s+Thickness \(mm\)\s+–\s+1\.5 mm\s+unknown\s+holds/);
    expect(await thickness.locator('tbody tr').count()).toBe(2);
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme, reducedMotion: 'reduce' });
      expect(await barriers(page)).toEqual([]);
    }
    const metal = dialog.locator('section', { hasText: 'metal is missing' });
    expect(await metal.innerText()).toContain('“blue” cannot be read as a sheet metal.');
    expect(await metal.locator('input').isChecked()).toBe(false);
    expect(await thickness.locator('input').isChecked()).toBe(true);
    await dialog.getByRole('button', { name: 'Fill in 2 answers' }).click();
    await expect.poll(() => cell(page, 2, 'sender-3').innerText()).toBe('1.5 mm');
    expect(await cell(page, 3, 'sender-3').innerText()).toBe('1.5 mm');
    expect(await cell(page, 5, 'sender-4').innerText()).toBe('12');
    expect(await cell(page, 4, 'sender-2').innerText()).toBe('');
    await tab(page, 'Changes');
    const step = page.locator('changes-view details').first();
    expect(await step.locator('summary').innerText()).toContain('fill in 2 answers of the sender from “answers.xlsx”');
    expect(await step.innerText()).toMatch(
      /Sender’s answer to question \d: .*metal is missing.*\s+not filled in\s+blue/,
    );
    await tab(page, 'List');
    await page.getByRole('button', { name: 'Undo' }).click();
    await expect.poll(() => cell(page, 2, 'sender-3').innerText()).toBe('');

    await openList(page, answered);
    await dialog.locator('section', { hasText: 'quantity' }).locator('input').click();
    await dialog.getByRole('button', { name: 'Fill in 1 answer' }).click();
    await expect.poll(() => cell(page, 3, 'sender-3').innerText()).toBe('1.5 mm');
    expect(await cell(page, 5, 'sender-4').innerText()).toBe('');
    expect(errors).toEqual([]);
  });

  it('without an open list, or without an answer, are told so', async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await counts(page);
    const answered = await questions(page);
    const empty = await saved(page, () => page.getByRole('button', { name: 'Save as CSV' }).click());
    await openList(page, file('empty.csv', empty));
    await expect.poll(() => message(page)).toContain('its column “Answer” is empty');
    const fresh = await host.open();
    await openList(fresh.page, file('answers.xlsx', answered));
    await expect
      .poll(() => message(fresh.page))
      .toBe('“answers.xlsx” is an answered question sheet: open the list it belongs to first, then this file again.');
    await openList(
      fresh.page,
      csv('other.csv', 'Part number,Panel,Material,Thickness (mm),Qty\nSTUD-M4-10-CS,P9,DC01,,4\n'),
    );
    await counts(fresh.page);
    await openList(fresh.page, file('answers.xlsx', answered));
    await expect.poll(() => message(fresh.page)).toContain('“answers.xlsx” answers questions about another list');
    expect(await fresh.page.locator('read-line b').innerText()).toBe('other.csv');
    expect([...errors, ...fresh.errors]).toEqual([]);
  });

  it('of which none is filled in are kept in words', async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await counts(page);
    await openList(page, file('answers.xlsx', await questions(page)));
    const dialog = page.getByRole('dialog', { name: 'Answers in answers.xlsx' });
    for (const said of ['thickness', 'quantity'])
      await dialog.locator('section', { hasText: said }).locator('input').click();
    await expect.poll(() => dialog.innerText()).toContain('Nothing is ticked: no cell changes.');
    await dialog.getByRole('button', { name: 'Keep under Changes only' }).click();
    await tab(page, 'Changes');
    await expect
      .poll(() => page.locator('changes-view details').first().innerText())
      .toMatch(/keep 3 answers of the sender[\s\S]*not filled in\s+12/);
    expect(errors).toEqual([]);
  });

  it('in an exported workbook fill the open list, or the workbook’s own where none is open', {
    timeout: 60_000,
  }, async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await typeInto(page, 4, 4, '7');
    const answered = file('back.xlsx', await changed(await exported(page, 'As a new workbook'), answer));
    await openList(page, answered);
    const dialog = page.getByRole('dialog', { name: 'Answers in back.xlsx' });
    await dialog.getByRole('button', { name: 'Fill in 2 answers' }).click();
    await expect.poll(() => cell(page, 2, 'sender-3').innerText()).toBe('1.5 mm');
    await openList(page, answered);
    await dialog.getByRole('button', { name: 'Open it as a list instead' }).click();
    await expect.poll(() => page.locator('read-line b').innerText()).toBe('back.xlsx');
    expect(await cell(page, 2, 'sender-3').innerText()).toBe('');

    const fresh = await host.open();
    await openList(fresh.page, answered);
    const own = fresh.page.getByRole('dialog', { name: 'Answers in back.xlsx' });
    await own.getByRole('button', { name: 'Fill in 2 answers' }).click();
    await expect.poll(() => cell(fresh.page, 3, 'sender-3').innerText()).toBe('1.5 mm');
    expect([...errors, ...fresh.errors]).toEqual([]);
  });
});
