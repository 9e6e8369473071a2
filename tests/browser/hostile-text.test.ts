import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { AppHost } from './app.ts';
import { cell, concedeFirstCheck, counts, csv, heading, loadCatalogue, openList } from './list-page.ts';

vi.setConfig({ testTimeout: 60_000 });

const host = new AppHost({ isKept: true });

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const IMAGE = '<img src=x onerror="window.ran=1">';
/** What would run, or reach into every object, if a text were taken for anything but a text. */
const TEXTS = [
  IMAGE,
  '<svg onload=window.ran=1>',
  '<script>window.ran=1</script>',
  '<iframe srcdoc="<script>parent.ran=1</script>">',
  '"><img src=x onerror=window.ran=1>',
  '<a href="javascript:window.ran=1">x</a>',
  'javascript:window.ran=1',
  '</style><script>window.ran=1</script>',
  '{{constructor.constructor("window.ran=1")()}}',
  '__proto__',
  'constructor',
  'prototype',
  'toString',
  'hasOwnProperty',
  '{"__proto__":{"polluted":1}}',
];
/** Wide enough for every column. */
const WIDE = { width: 6400, height: 1400 };
const quoted = (text: string) => `"${text.replaceAll('"', '""')}"`;
const line = (cells: readonly string[]) => cells.map(quoted).join(',');

const FIXED = ['Part number', 'Description', 'Panel', 'Material', 'Thickness (mm)', 'Qty', 'Note'];
const PANEL = FIXED.indexOf('Panel');
const NOTE = FIXED.indexOf('Note');
/** Under each of them as a heading the next: a row that repeats the headings is no row of the list. */
const SHIFTED = TEXTS.map((_, at) => TEXTS[(at + 1) % TEXTS.length] ?? '');
/** A row for each text as note, panel and description, and all of them under one another. */
const LIST = csv(
  `list ${IMAGE}.csv`,
  [
    line([...FIXED, ...TEXTS]),
    ...TEXTS.map((text) => line(['TOO-THICK', text, text, 'DC01', '1.5', '4', text, ...SHIFTED])),
    ...TEXTS.map((text) => line([text, 'Clinch nut M4', text, text, '1.5', '4', text])),
  ].join('\n'),
);
const PART = 'clinch nut,M4,carbon-steel-hardened,HRC 32';
/** One part that needs thicker sheet, and parts with hostile names that would hold instead. */
const CATALOGUE = csv(
  `parts ${IMAGE}.csv`,
  [
    'partNumber,kind,thread,material,hardnessMin,sheetMinMm,holeMm,holePlusMm,holeMinusMm,edgeMm,supersededBy,supplier,note',
    `TOO-THICK,${PART},3,5.6,0.08,0,9,${quoted(IMAGE)},,`,
    ...TEXTS.map((text) => `${quoted(text)},${PART},1,5.6,0.08,0,9,,${quoted(text)},${quoted(text)}`),
    `${quoted('bad <b>')},${quoted(IMAGE)},${quoted(IMAGE)},${quoted(IMAGE)},${quoted(IMAGE)},${quoted(IMAGE)},,,,,${quoted(IMAGE)},,`,
  ].join('\n'),
);

/** What stands in the page that only markup of the texts can have brought there, in whatever shadow. */
async function intruders(page: Page): Promise<readonly string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const search = (root: Document | ShadowRoot) => {
      for (const element of root.querySelectorAll('*')) {
        if (element.matches('img, iframe, object, embed, script:not([src]), a[href^="javascript:" i]'))
          found.push(element.outerHTML);
        for (const { name } of element.attributes) if (name.startsWith('on')) found.push(element.outerHTML);
        if (element.shadowRoot) search(element.shadowRoot);
      }
    };
    search(document);
    if ('ran' in window) found.push('a script ran');
    if (Object.keys(Object.prototype).length > 0 || 'polluted' in {}) found.push('every object was changed');
    return found;
  });
}

async function expectHarmless({ page, errors }: { page: Page; errors: readonly string[] }, where: string) {
  expect(await intruders(page), where).toEqual([]);
  expect(errors, where).toEqual([]);
}

describe('a list and a catalogue full of hostile texts', () => {
  it('are shown as text everywhere, and nothing of them runs', async () => {
    const app = await host.open(WIDE);
    const { page } = app;
    await loadCatalogue(page, CATALOGUE);
    const catalogue = page.locator('catalogue-view');
    for (const text of TEXTS) await catalogue.locator('td').getByText(text, { exact: true }).first().waitFor();
    await expectHarmless(app, 'catalogue');

    await openList(page, LIST);
    await expect.poll(() => counts(page)).toMatchObject({ fails: expect.any(Number) });
    for (const [at, text] of TEXTS.entries()) {
      expect(await heading(page, FIXED.length + at).innerText()).toContain(text);
      expect(await cell(page, 2, `sender-${FIXED.length + at}`).innerText()).toBe(SHIFTED[at]);
    }
    await expectHarmless(app, 'headings');
    await cell(page, 2, 'verdict').click();
    await page.keyboard.press('Control+Home');
    for (const at of TEXTS.keys()) {
      await page.keyboard.press('ArrowDown');
      await expect.poll(() => page.locator('row-panel h2').innerText()).toContain(`Row ${at + 3} `);
      await expectHarmless(app, `row ${at + 3}`);
    }
  });

  it('do nothing in the row panel, dialogs, find and replace, and the list of changes', async () => {
    const app = await host.open(WIDE);
    const { page } = app;
    await loadCatalogue(page, CATALOGUE);
    await openList(page, LIST);
    await cell(page, 2, 'verdict').click();
    const offers = page.locator('remedy-list .remedy').filter({ has: page.getByRole('button') });
    const offer = offers.filter({ hasText: '<' }).first();
    const part = await offer.locator('b').innerText();
    expect(TEXTS).toContain(part);
    await offer.getByRole('button').click();
    const swap = page.getByRole('dialog');
    await swap.getByText(part).first().waitFor();
    await expectHarmless(app, 'swap');
    await swap.getByRole('button', { name: /^Swap on/ }).click();
    await expect.poll(() => cell(page, 2, 'sender-0').innerText()).toBe(part);

    await cell(page, 3, 'verdict').click();
    await page.getByRole('button', { name: 'Set column…' }).click();
    await page.getByRole('dialog').getByLabel('Set to').fill(IMAGE);
    await expectHarmless(app, 'set column');
    await page.keyboard.press('Escape');

    await page.keyboard.press('Control+h');
    await page.getByLabel('Find', { exact: true }).fill('<svg onload');
    await page.getByLabel('Replace with').fill(IMAGE);
    await page.getByRole('button', { name: 'Replace all' }).click();
    await expect.poll(() => cell(page, 3, `sender-${PANEL}`).innerText()).toBe(`${IMAGE}=window.ran=1>`);
    await expectHarmless(app, 'find and replace');
    await page.getByRole('button', { name: 'Close', exact: true }).click();

    await page.getByRole('button', { name: 'Changes', exact: true }).click();
    for (const text of [part, IMAGE]) await page.locator('changes-view').getByText(text).first().waitFor();
    await expectHarmless(app, 'changes');
  });

  it('do nothing in a concession, in whatever view, in a message, or among the kept lists', async () => {
    const app = await host.open(WIDE);
    const { page } = app;
    await openList(
      page,
      csv(
        `own ${IMAGE}.csv`,
        line(FIXED).concat('\n', line(['NUT-M4-10-CS', IMAGE, IMAGE, 'DC01', '0.5', '4', IMAGE])),
      ),
    );
    await cell(page, 2, 'verdict').click();
    await concedeFirstCheck(page, IMAGE, IMAGE);
    await expect.poll(() => cell(page, 2, 'decision').innerText()).toContain(IMAGE);
    expect(await cell(page, 2, `sender-${NOTE}`).innerText()).toBe(IMAGE);
    await expectHarmless(app, 'concession');

    const views = page.locator('nav button');
    for (let at = 0; at < (await views.count()); at++) {
      await views.nth(at).click();
      await page.waitForTimeout(300);
      await expectHarmless(app, await views.nth(at).innerText());
    }
    await openList(page, csv(`prose ${IMAGE}.csv`, 'Dear all\nplease find nothing here\n'));
    await expect.poll(() => page.locator('clinch-app .message').innerText()).toContain(IMAGE);
    await expectHarmless(app, 'message');

    await page.waitForTimeout(1200);
    const next = await host.openBeside(app);
    await next.page.locator('saved-lists').getByText(IMAGE).first().waitFor();
    await expectHarmless(next, 'kept lists');
  });
});
