import { execFileSync, spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import axe from 'axe-core';
import exceljs from 'exceljs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { auditFile, createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import type { RawFile } from '../../src/core/model/raw.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { rollUpPress } from '../../src/core/rollup/press.ts';
import { rollUpPurchase } from '../../src/core/rollup/purchase.ts';
import { askSender, showQuestions } from '../../src/core/rollup/questions.ts';
import { DEMO_WORDS, PRESS_WORDS, SAFETY_SHORT, SAFETY_WORDS } from '../../src/core/say/safety.ts';
import { readFile } from '../../src/io/read-file.ts';
import { AppHost, type RunningApp } from './app.ts';
import { counts, csv, openList } from './list-page.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const DEMO = resolve(ROOT, 'sample-data/recorder-cabinet.xlsx');
const HAS_PDF_TOOLS = spawnSync('pdftotext', ['-v']).error === undefined;
const VIEWS = [
  ['Purchasing', 'purchasing-view'],
  ['Press sheet', 'press-view'],
  ['Questions', 'questions-view'],
] as const;
const host = new AppHost();

/** The demo list as the core itself judges it. */
const basis = createBasis([importCatalogue(sample('demo-catalogue.csv'))], DEFAULT_SHOP);
const list = auditFile(sample('recorder-cabinet.xlsx'), basis);
const purchase = rollUpPurchase(list, basis.parts);
const press = rollUpPress(list, basis.parts);
const questions = askSender(list);

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

function sample(name: string): RawFile {
  return readFile(new Uint8Array(readFileSync(resolve(ROOT, 'sample-data', name))), name);
}

async function openDemo(): Promise<RunningApp> {
  const app = await host.open();
  await app.page.context().grantPermissions(['clipboard-read', 'clipboard-write']);
  await openList(app.page, DEMO);
  await counts(app.page);
  return app;
}

async function show(page: Page, name: string, element: string): Promise<void> {
  await page.getByRole('button', { name, exact: true }).click();
  await page.locator(`${element} .page[aria-busy=false]`).waitFor();
}

async function saved(page: Page, button: string): Promise<{ name: string; bytes: Buffer }> {
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: button, exact: true }).click();
  const file = await download;
  return { name: file.suggestedFilename(), bytes: readFileSync(await file.path()) };
}

/** The cells of one part in the order, spaces evened out. */
async function orderRow(page: Page, part: string): Promise<readonly string[]> {
  return page.locator(`order-table tr[data-part="${part}"] td`).allInnerTexts();
}

function copied(page: Page): Promise<string> {
  return page.evaluate(() => navigator.clipboard.readText());
}

function clean({ errors, strangers }: RunningApp): void {
  expect(errors).toEqual([]);
  expect(strangers).toEqual([]);
}

describe('Purchasing', () => {
  it('shows the totals and lines that the command line reports', async () => {
    const app = await openDemo();
    await show(app.page, 'Purchasing', 'purchasing-view');
    const reported = execFileSync(
      'npm',
      ['run', '--silent', 'audit', '--', DEMO, '--report', 'purchase', '--format', 'csv', '--fail-on', 'never'],
      { cwd: ROOT, encoding: 'utf8' },
    );
    const [, currency, price] = /\r\nCurrency,Total\r\n(\w+),([\d.]+)\r\n/.exec(reported) ?? [];
    const total = await app.page.locator('purchasing-view .total').innerText();
    expect(total).toContain(`${currency} ${Number(price).toFixed(2)}`);
    expect(total).toContain(`longest lead time ${purchase.lead.longestDays} days`);
    expect(await app.page.locator('order-table tbody tr').count()).toBe(purchase.lines.length);
    for (const line of purchase.lines) {
      const cells = await orderRow(app.page, line.partNumber);
      expect(cells[1]?.split('\n')).toEqual(line.panels.map(({ panel, pieces }) => `${panel}: ${pieces}`));
      expect([2, 3, 6].map((at) => Number(cells[at]))).toEqual([line.perBuild, line.used, line.toOrder]);
      expect(Number.parseInt(cells[9] ?? '', 10)).toBe(line.order);
      expect(reported).toContain(`${line.partNumber},`);
    }
    const rows = await app.page.locator('purchasing-view .left-out tbody tr').count();
    expect(rows).toBe(purchase.heldBack.reduce((sum, part) => sum + part.rows.length, 0));
    clean(app);
  });

  it('counts other builds and spares at once, and undo takes each back by itself', async () => {
    const app = await openDemo();
    const { page } = app;
    await show(page, 'Purchasing', 'purchasing-view');
    const [first] = purchase.lines;
    const builds = page.getByLabel('The list is built');
    await builds.fill('100');
    await builds.press('Enter');
    const used = async () => Number((await orderRow(page, first?.partNumber ?? ''))[3]);
    await expect.poll(used).toBe((first?.used ?? 0) * 100);
    await page.getByLabel('Spare parts on top').fill('10');
    await page.getByLabel('Spare parts on top').press('Enter');
    const spares = async () => Number((await orderRow(page, first?.partNumber ?? ''))[4]);
    await expect.poll(spares).toBe((first?.used ?? 0) * 10);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(spares).toBe(0);
    expect(await used()).toBe((first?.used ?? 0) * 100);
    await page.getByRole('button', { name: 'Undo', exact: true }).click();
    await expect.poll(used).toBe(first?.used);
    await builds.fill('0');
    await builds.press('Enter');
    await expect.poll(() => page.locator('build-fields [role=alert]').innerText()).toContain('The list is built');
    expect(await used()).toBe(first?.used);
    clean(app);
  });

  it('saves the order as CSV and XLSX, and copies it', async () => {
    const app = await openDemo();
    const { page } = app;
    await show(page, 'Purchasing', 'purchasing-view');
    const file = await saved(page, 'Save as CSV');
    expect(file.name).toBe('recorder-cabinet-purchase.csv');
    const rows = readFile(new Uint8Array(file.bytes), file.name).tables[0]?.rows ?? [];
    const texts = rows.map(({ cells }) => cells);
    const at = texts[0]?.indexOf('Order') ?? -1;
    for (const { partNumber, order } of purchase.lines)
      expect(texts.find((row) => row[0] === partNumber)?.[at]).toBe(String(order));

    const book = new exceljs.Workbook();
    const { name, bytes } = await saved(page, 'Save as XLSX');
    expect(name).toBe('recorder-cabinet-purchase.xlsx');
    await book.xlsx.load(bytes as unknown as Parameters<typeof book.xlsx.load>[0]);
    expect(book.worksheets.map((sheet) => sheet.name)).toEqual(['Purchase']);
    expect(book.worksheets[0]?.getCell('A2').value).toBe(purchase.lines[0]?.partNumber);

    await page.getByRole('button', { name: 'Copy as text' }).click();
    await expect.poll(() => page.locator('.message').innerText()).toContain('copied');
    const lines = (await copied(page)).split('\n').map((line) => line.split('\t'));
    expect(lines).toHaveLength(purchase.lines.length + 1);
    expect(lines[1]?.[0]).toBe(purchase.lines[0]?.partNumber);
    clean(app);
  });

  it('sorts by the headings with the keyboard, and leads from a row held back into the list', async () => {
    const app = await openDemo();
    const { page } = app;
    await show(page, 'Purchasing', 'purchasing-view');
    const heading = page.locator('order-table th', { hasText: 'Price' }).last();
    await heading.getByRole('button').focus();
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    expect(await heading.getAttribute('aria-sort')).toBe('descending');
    const dearest = [...purchase.lines].sort((a, b) => (b.price ?? 0) - (a.price ?? 0))[0];
    expect(await page.locator('order-table tbody tr').first().getAttribute('data-part')).toBe(dearest?.partNumber);
    await page.locator('order-table th', { hasText: 'Supplier' }).getByRole('button').click();
    expect(await page.locator('order-table .group').first().innerText()).toContain('Invented Supply · EUR');

    const row = purchase.heldBack[0]?.rows[0]?.row ?? 0;
    await page.locator('purchasing-view .left-out .link').first().focus();
    await page.keyboard.press('Enter');
    await expect.poll(() => page.locator('row-panel h2').innerText()).toContain(`Row ${row} ·`);
    clean(app);
  });
});

describe('Press sheet', () => {
  const [front] = press.panels;
  const parts = (page: Page) =>
    page
      .locator('press-panel')
      .first()
      .locator('.steps tbody tr')
      .evaluateAll((rows) => rows.map((row) => row.getAttribute('data-part')));

  it('shows hole, force and count of every step, and the safety words', async () => {
    const app = await openDemo();
    const { page } = app;
    await show(page, 'Press sheet', 'press-view');
    expect(await page.locator('press-panel').count()).toBe(press.panels.length);
    for (const [at, panel] of press.panels.entries()) {
      const section = page.locator('press-panel').nth(at);
      const text = (await section.locator('td *, td').allTextContents()).join(' ').replaceAll(/\s+/g, ' ');
      for (const step of panel.steps)
        for (const word of [step.hole, step.partNumber, `${step.forceKn} kN`, step.sheet]) expect(text).toContain(word);
      for (const { row, reason } of panel.notYet) expect(text).toMatch(new RegExp(`${row} .* ${escaped(reason)}`));
      expect(await section.locator('.first-piece tbody tr').count()).toBe(panel.steps.length);
    }
    const all = await page.locator('press-view .page').innerText();
    for (const words of [DEMO_WORDS, PRESS_WORDS, ...SAFETY_WORDS]) expect(all).toContain(words);
    await page.getByLabel('Go to panel').selectOption({ label: 'Panel RC-05' });
    await expect.poll(() => page.locator('press-panel h2:focus').innerText()).toBe('Panel RC-05');
    clean(app);
  });

  it('keeps an order set by hand: focus follows, undo takes it back, the saved sheet and a visit elsewhere keep it', async () => {
    const app = await openDemo();
    const { page } = app;
    await show(page, 'Press sheet', 'press-view');
    const suggested = front?.steps.map(({ partNumber }) => partNumber) ?? [];
    expect(await parts(page)).toEqual(suggested);
    const last = suggested.at(-1) ?? '';
    await page
      .locator('press-panel')
      .first()
      .getByRole('button', { name: `Press ${last} earlier` })
      .focus();
    await page.keyboard.press('Enter');
    const once = [...suggested.slice(0, -2), last, suggested.at(-2) ?? ''];
    await expect.poll(() => parts(page)).toEqual(once);
    await expect
      .poll(() => page.locator('press-panel .move:focus').getAttribute('aria-label'))
      .toBe(`Press ${last} earlier`);
    await page.keyboard.press('Enter');
    const twice = [...suggested.slice(0, -3), last, ...suggested.slice(-3, -1)];
    await expect.poll(() => parts(page)).toEqual(twice);
    await page.keyboard.press('Control+z');
    await expect.poll(() => parts(page)).toEqual(once);

    const file = await saved(page, 'Save as CSV');
    expect(file.name).toBe('recorder-cabinet-press-sheet.csv');
    const written = file.bytes
      .toString('utf8')
      .split('\r\n')
      .filter((line) => line.startsWith('RC-01,') && /^RC-01,\d+,(?:holds|marginal),/.test(line))
      .map((line) => line.split(',')[3]);
    expect(written).toEqual(once);
    await show(page, 'Questions', 'questions-view');
    await show(page, 'Press sheet', 'press-view');
    expect(await parts(page)).toEqual(once);
    await page.getByRole('button', { name: 'Back to the suggested order' }).click();
    await expect.poll(() => parts(page)).toEqual(suggested);
    clean(app);
  });
});

describe('Questions', () => {
  it('copies the letter, and leaves out what has no tick', async () => {
    const app = await openDemo();
    const { page } = app;
    await show(page, 'Questions', 'questions-view');
    expect(await page.locator('questions-view li').count()).toBe(questions.length);
    await page.getByRole('button', { name: 'Copy as text' }).click();
    await expect.poll(() => copied(page)).toBe(showQuestions(list, questions));

    await page.getByLabel('Ask question 2', { exact: true }).focus();
    await page.keyboard.press('Space');
    const kept = questions.filter(({ number }) => number !== 2);
    await page.getByRole('button', { name: 'Copy as text' }).click();
    await expect.poll(() => copied(page)).toBe(showQuestions(list, kept));
    const { name, bytes } = await saved(page, 'Save as XLSX');
    expect(name).toBe('recorder-cabinet-questions.xlsx');
    const book = new exceljs.Workbook();
    await book.xlsx.load(bytes as unknown as Parameters<typeof book.xlsx.load>[0]);
    const sheet = book.worksheets[0];
    const headings = (sheet?.getRow(1).values ?? []) as unknown[];
    expect(headings.at(-1)).toBe('Answer');
    const numbers = sheet?.getColumn(1).values.filter((value) => typeof value === 'number');
    expect(numbers).toEqual(kept.map(({ number }) => number));
    clean(app);
  });
});

describe('empty states', () => {
  it('says so where there is nothing to order, press or ask', async () => {
    const app = await host.open();
    const { page } = app;
    expect(await page.getByRole('button', { name: 'Purchasing', exact: true }).count()).toBe(0);
    const heads = 'Part number,Panel,Material,Thickness (mm),Qty';
    await openList(page, csv('thin.csv', `${heads}\nNUT-M4-10-CS,P1,DC01,0.5,4\n`));
    await counts(page);
    await show(page, 'Purchasing', 'purchasing-view');
    expect(await page.locator('purchasing-view .page').innerText()).toContain('Nothing to order.');
    await show(page, 'Press sheet', 'press-view');
    expect(await page.locator('press-view .page').innerText()).toContain('No row is to be pressed yet');
    await show(page, 'Questions', 'questions-view');
    expect(await page.locator('questions-view .page').innerText()).toContain('Nothing to ask');
    clean(app);
  });
});

describe('nothing stands in the way', () => {
  it.each(['light', 'dark'] as const)('in each of the views, %s', async (colorScheme) => {
    const app = await openDemo();
    const { page } = app;
    await page.emulateMedia({ colorScheme });
    for (const [name, element] of VIEWS) {
      await show(page, name, element);
      expect(await barriers(page)).toEqual([]);
    }
    clean(app);
  });

  it('at 1024 pixels, where nothing is cut', async () => {
    const app = await openDemo();
    const { page } = app;
    await page.setViewportSize({ width: 1024, height: 768 });
    for (const [name, element] of VIEWS) {
      await show(page, name, element);
      const over = await page.evaluate((view) => {
        const app = document.querySelector('clinch-app');
        const ends = [...(app?.shadowRoot?.querySelectorAll('header button, header export-menu') ?? [])];
        const shown = app?.shadowRoot?.querySelector(view);
        return {
          header: ends.filter((one) => one.getBoundingClientRect().right > innerWidth).length,
          view: (shown?.scrollWidth ?? 0) - (shown?.clientWidth ?? 0),
        };
      }, element);
      expect(over).toEqual({ header: 0, view: 0 });
    }
    clean(app);
  });
});

describe('on paper', () => {
  it('shows all of a view without the page around it, black on white', async () => {
    const app = await openDemo();
    const { page } = app;
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    for (const [name, element] of VIEWS) {
      await page.emulateMedia({ media: null });
      await show(page, name, element);
      await page.emulateMedia({ media: 'print' });
      expect(await page.locator('clinch-app header').isVisible()).toBe(false);
      expect(await page.locator(`${element} .buttons`).first().isVisible()).toBe(false);
      const box = await page.locator(element).evaluate((view) => {
        const { color } = getComputedStyle(view);
        return {
          hidden: view.scrollHeight - view.clientHeight,
          color,
          ground: getComputedStyle(document.body).backgroundColor,
        };
      });
      expect(box).toEqual({ hidden: 0, color: 'rgb(0, 0, 0)', ground: 'rgb(255, 255, 255)' });
    }
    clean(app);
  });

  it.skipIf(!HAS_PDF_TOOLS)('prints every view within the page, with its words and page numbers', async () => {
    const app = await openDemo();
    const { page } = app;
    for (const [name, element, words] of [
      ['Purchasing', 'purchasing-view', [SAFETY_SHORT, ...purchase.lines.map(({ partNumber }) => partNumber)]],
      ['Press sheet', 'press-view', [...SAFETY_WORDS, ...press.panels.map(({ panel }) => `Panel ${panel}`)]],
      ['Questions', 'questions-view', [SAFETY_SHORT, ...questions.map(({ text }) => text)]],
    ] as const) {
      await show(page, name, element);
      const printed = readPdf(await page.pdf({ preferCSSPageSize: true }));
      for (const text of [DEMO_WORDS, ...words]) expect(printed.text).toContain(squeeze(text));
      expect(printed.text).toContain(squeeze(`1 / ${printed.pages}`));
      expect(printed.cut).toEqual([]);
    }
    clean(app);
  });

  it.skipIf(!HAS_PDF_TOOLS)(
    'prints all rows that are held back, also those that the screen shows on request',
    async () => {
      const app = await host.open();
      const { page } = app;
      const rows = Array.from({ length: 230 }, (_, at) => `NUT-M4-10-CS,Panel-${at}-end,DC01,0.5,4`);
      await openList(page, csv('many.csv', `Part number,Panel,Material,Thickness (mm),Qty\n${rows.join('\n')}\n`));
      await counts(page);
      await show(page, 'Purchasing', 'purchasing-view');
      expect(await page.locator('left-out-table tbody tr').count()).toBe(200);
      const { text } = readPdf(await page.pdf({ preferCSSPageSize: true }));
      for (const at of rows.keys()) expect(text).toContain(`Panel-${at}-end`);
      clean(app);
    },
  );

  it.skipIf(!HAS_PDF_TOOLS)('prints the findings from the Export menu and goes back to the list', async () => {
    const app = await openDemo();
    const { page } = app;
    await page.evaluate(() => {
      window.print = () => document.body.setAttribute('data-printed', 'yes');
    });
    await page.getByRole('button', { name: 'Export', exact: true }).click();
    await page.getByRole('menuitem', { name: 'Print findings' }).click();
    await expect.poll(() => page.locator('body').getAttribute('data-printed')).toBe('yes');
    const printed = readPdf(await page.pdf({ preferCSSPageSize: true }));
    const open = list.lines.filter(({ verdict }) => verdict !== 'holds');
    expect(open.length).toBeGreaterThan(0);
    for (const { decidedBy } of open) expect(printed.text).toContain(squeeze(decidedBy?.text ?? 'no decision'));
    for (const words of [DEMO_WORDS, ...SAFETY_WORDS]) expect(printed.text).toContain(squeeze(words));
    expect(printed.headings('Source')).toBeGreaterThan(1);
    expect(printed.cut).toEqual([]);
    // Once it is on paper the page goes away by itself.
    await page.locator('list-view').waitFor();
    clean(app);
  });
});

function escaped(text: string): string {
  return text.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&');
}

/** What stands in somebody's way on the page as it is: WCAG 2.2, levels A and AA, and axe's own best practices. */
async function barriers(page: Page): Promise<readonly string[]> {
  await page.evaluate(axe.source);
  return page.evaluate(async () => {
    const values = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'];
    const { violations } = await (window as unknown as { axe: typeof axe }).axe.run(document, {
      runOnly: { type: 'tag', values },
    });
    return violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.failureSummary}`);
  });
}

/** Words break across lines and columns on paper; what counts is their letters in order. */
function squeeze(text: string): string {
  return text.replaceAll(/\s+/g, '');
}

/** The text of a printed page, how many pages there are, and words that stand outside of a page. */
function readPdf(pdf: Buffer) {
  const run = (...options: string[]) =>
    spawnSync('pdftotext', [...options, '-', '-'], { input: pdf, encoding: 'utf8' });
  const raw = squeeze(run('-raw').stdout);
  const boxes = run('-bbox').stdout;
  const pages = [...boxes.matchAll(/<page width="([\d.]+)" height="([\d.]+)">([\s\S]*?)<\/page>/g)];
  const cut = pages.flatMap(([, width, height, words = '']) =>
    [...words.matchAll(/xMin="([-\d.]+)" yMin="([-\d.]+)" xMax="([-\d.]+)" yMax="([-\d.]+)">(.*?)</g)]
      .filter(
        ([, left, top, right, bottom]) =>
          Number(left) < 0 || Number(top) < 0 || Number(right) > Number(width) || Number(bottom) > Number(height),
      )
      .map(([, , , , , word]) => word),
  );
  return { text: raw, pages: pages.length, cut, headings: (text: string) => raw.split(text).length - 1 };
}
