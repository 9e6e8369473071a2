import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { Locator, Page } from 'playwright-core';
import { build, preview } from 'vite';
import { launchChromium } from '../browser/chromium.ts';
import { cell, counts, csv, loadCatalogue, openList } from '../browser/list-page.ts';
import { HOLE_COLUMN, makePageList, OLD_PART, PART_COLUMN } from './browser-list.ts';
import { type Measured, medianOf } from './measured.ts';
import { readClock, scrollDown, startClock, startStallWatch, worstStall } from './page-clock.ts';

const ROWS = 100_000;
const EDITED_ROWS = 15;
const SWAPS = 5;
const FRAMES = 300;
const MOST_COLD_KB = 350;
const MOST_STALL_MS = 100;
const MOST_EDIT_MS = 50;
const MOST_SWAP_MS = 500;
/** 55 frames a second. */
const MOST_FRAME_MS = 1000 / 55;
/** What follows the opening by itself: keeping the list, the first look at it. */
const SETTLED_MS = 2_500;
const SLOW_MS = 60_000;

/** The built app with 100,000 rows in a real Chromium; another build may be named in the variable BUILT_APP. */
export async function measure(): Promise<readonly Measured[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-browser-'));
  const built = process.env.BUILT_APP ? resolve(process.env.BUILT_APP) : folder;
  if (built === folder) await build({ root: process.cwd(), logLevel: 'warn', build: { outDir: folder } });
  const server = await preview({
    root: process.cwd(),
    build: { outDir: built },
    preview: { port: 0, host: '127.0.0.1' },
    logLevel: 'error',
  });
  const browser = await launchChromium();
  try {
    const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, serviceWorkers: 'block' });
    return await measurePage(await context.newPage(), server.resolvedUrls?.local[0] ?? '', folder);
  } finally {
    await browser.close();
    await server.close();
    rmSync(folder, { recursive: true });
  }
}

async function measurePage(page: Page, address: string, folder: string): Promise<readonly Measured[]> {
  page.setDefaultTimeout(SLOW_MS);
  const cold = await openCold(page, address);
  return [
    line('opening the app cold, gzip', cold, MOST_COLD_KB, 'kB'),
    ...(await measureLoading(page, folder)),
    ...(await measureScrolling(page)),
    ...(await measureEdits(page)),
    ...(await measureSwaps(page)),
  ];
}

/** Kilobytes of everything that the page asks for before a file is dropped, each compressed as a server would. */
async function openCold(page: Page, address: string): Promise<number> {
  const bodies: Promise<Buffer>[] = [];
  page.on('response', (response) => bodies.push(response.body().catch(() => Buffer.alloc(0))));
  await page.goto(address, { waitUntil: 'networkidle' });
  const sizes = (await Promise.all(bodies)).map((body) => Math.min(gzipSync(body).length, body.length || Infinity));
  page.removeAllListeners('response');
  return sizes.reduce((sum, size) => sum + size, 0) / 1000;
}

async function measureLoading(page: Page, folder: string): Promise<readonly Measured[]> {
  const { list, catalogue } = makePageList(ROWS);
  await loadCatalogue(page, csv('parts.csv', Buffer.from(catalogue).toString()));
  // A file on disk: bytes would be handed to the page as one long text, which halts it.
  const file = join(folder, 'list.csv');
  writeFileSync(file, list);
  await page.waitForTimeout(SETTLED_MS);
  await page.evaluate(startStallWatch);
  const start = performance.now();
  await openList(page, file);
  await page.locator('verdict-counts b').first().waitFor();
  await cell(page, 2, 'verdict').waitFor();
  const taken = performance.now() - start;
  await page.waitForTimeout(SETTLED_MS);
  const { longTaskMs, gapMs } = await page.evaluate(worstStall);
  const total = Object.values(await counts(page)).reduce((sum, count) => sum + count, 0);
  if (total < ROWS) throw new Error(`Only ${total} rows were loaded.`);
  return [
    line('loading 100k rows, from file to list', taken, null),
    line('  longest task of the page meanwhile', longTaskMs, MOST_STALL_MS),
    line('  longest gap between beats of 10 ms', gapMs, null),
  ];
}

async function measureScrolling(page: Page): Promise<readonly Measured[]> {
  const frames = await page.locator('list-grid .ag-grid-viewport').evaluate(scrollDown, FRAMES);
  const median = medianOf(frames);
  const mean = frames.reduce((sum, ms) => sum + ms, 0) / frames.length;
  return [
    line(`scrolling by 200 px a frame, median (${fps(median)})`, median, MOST_FRAME_MS),
    line(`  mean (${fps(mean)})`, mean, MOST_FRAME_MS),
    line('  worst frame', Math.max(...frames), null),
  ];
}

/** A hole that is right made far too large, and right again: from Enter to the other verdict on screen. */
async function measureEdits(page: Page): Promise<readonly Measured[]> {
  const taken: number[] = [];
  const rows = await rowsThatHold(page);
  await page.evaluate(startStallWatch);
  for (const row of rows) {
    const hole = await cell(page, row, `sender-${HOLE_COLUMN}`).innerText();
    taken.push(await timeEdit(page, row, '19', 'fails'));
    taken.push(await timeEdit(page, row, hole, 'holds'));
  }
  const { longTaskMs } = await page.evaluate(worstStall);
  await page.locator('verdict-counts [data-verdict="holds"]').click();
  return [
    line(`an edit to its new verdict, median of ${taken.length}`, medianOf(taken), MOST_EDIT_MS),
    line('  slowest', Math.max(...taken), null),
    line('  longest task of the page meanwhile', longTaskMs, null),
  ];
}

/** Rows in sight while those that hold are shown alone. */
async function rowsThatHold(page: Page): Promise<readonly number[]> {
  await page.locator('list-grid .ag-grid-viewport').evaluate((viewport) => viewport.scrollTo(0, 0));
  await page.locator('verdict-counts [data-verdict="holds"]').click();
  await page.waitForTimeout(SETTLED_MS);
  const ids = await page
    .locator('list-grid .ag-row:has(.verdict.holds)')
    .evaluateAll((rows) => rows.map((row) => Number(row.getAttribute('row-id'))));
  const rows = [...new Set(ids)].slice(0, EDITED_ROWS);
  if (rows.length < EDITED_ROWS) throw new Error(`Only ${rows.length} rows that hold are in sight.`);
  return rows;
}

async function timeEdit(page: Page, row: number, text: string, verdict: string): Promise<number> {
  await cell(page, row, `sender-${HOLE_COLUMN}`).dblclick();
  await page.keyboard.press('Control+A');
  await page.keyboard.type(text);
  await page.waitForTimeout(300);
  await startClock(cell(page, row, 'verdict'), verdict);
  await page.keyboard.press('Enter');
  const taken = await readClock(page);
  await page.waitForTimeout(700);
  return taken;
}

/** Another part on 10,000 rows, made, taken back and made again: from the press of the button to the row on screen. */
async function measureSwaps(page: Page): Promise<readonly Measured[]> {
  await page.locator('list-grid .ag-grid-viewport').evaluate((viewport) => viewport.scrollTo(0, 0));
  await cell(page, 2, 'verdict').click();
  const use = page.getByRole('button', { name: `Use on ${ROWS / 10} rows` });
  const offer = page.locator('remedy-list .remedy').filter({ has: use }).first();
  const newPart = await offer.locator('b').innerText();
  await offer.getByRole('button').click();
  const dialog = page.getByRole('dialog');
  await page.evaluate(startStallWatch);
  await dialog.locator('try-table table').waitFor();
  const part = cell(page, 2, `sender-${PART_COLUMN}`);
  const swap = dialog.getByRole('button', { name: /^Swap on/ });
  const taken = [await timeClick(page, swap, part, newPart)];
  for (let swap = 1; swap < SWAPS; swap++) {
    const isBack = swap % 2 === 1;
    const button = page.getByRole('button', { name: isBack ? 'Undo' : 'Redo' });
    taken.push(await timeClick(page, button, part, isBack ? OLD_PART : newPart));
  }
  const { longTaskMs } = await page.evaluate(worstStall);
  return [
    line(`a swap on 10k rows, median of ${taken.length}`, medianOf(taken), MOST_SWAP_MS),
    line('  slowest', Math.max(...taken), null),
    line('  longest task of the page meanwhile', longTaskMs, null),
  ];
}

async function timeClick(page: Page, button: Locator, shownIn: Locator, text: string): Promise<number> {
  await button.waitFor();
  await page.waitForTimeout(1_500);
  await startClock(shownIn, text);
  await button.click();
  return readClock(page);
}

function line(what: string, median: number, target: number | null, unit?: 'kB'): Measured {
  return { what, medianMs: median, ratio: null, yardstick: '', target, ...(unit && { unit }) };
}

function fps(frameMs: number): string {
  return `${(1000 / frameMs).toFixed(0)} fps`;
}
