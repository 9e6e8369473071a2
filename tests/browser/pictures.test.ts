import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost } from './app.ts';
import { cell, csv, openList } from './list-page.ts';

const host = new AppHost();

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const HEADINGS = 'Part number,Material,Thickness (mm),Hole (mm),Edge (mm),Qty';
const ROWS = [
  'NUT-M4-10-CS,DC01,1.5,5.6,12,4',
  'NUT-M4-10-CS,DC01,0.8,5.6,12,4',
  'NUT-M4-10-CS,DC01,1.5,6.2,12,4',
  'NUT-M4-10-S3,304,1.5,5.6,12,4',
  'NUT-M4-10-CS,see drawing,1.5,5.6,12,4',
  'NUT-M4-10-CS,DC01,1.5,5.6,6,4',
];
const LIST = csv('pictures.csv', `${HEADINGS}\n${ROWS.join('\n')}\n`);

async function choose(page: Page, row: number): Promise<void> {
  await cell(page, row, 'verdict').click();
  await page.locator(`aside[aria-label="Row ${row}"] row-pictures svg`).first().waitFor();
}

/** Where the parts of the drawings stand on screen, by name. */
function places(page: Page): Promise<Record<string, { x: number; y: number; width: number; height: number }>> {
  return page
    .locator('row-pictures')
    .evaluate((element) =>
      Object.fromEntries(
        [...element.shadowRoot!.querySelectorAll('svg.drawing > path')].map((path) => [
          path.getAttribute('data-name'),
          path.getBoundingClientRect().toJSON(),
        ]),
      ),
    );
}

/** Pairs of texts in one drawing of which one covers the other, and texts that leave their drawing. */
function covered(page: Page): Promise<string[]> {
  return page.locator('row-pictures').evaluate((element) =>
    [...element.shadowRoot!.querySelectorAll('svg.drawing')].flatMap((drawing) => {
      const room = (drawing as SVGSVGElement).viewBox.baseVal;
      const texts = [...drawing.querySelectorAll('text')].map((text) => ({
        text: text.textContent,
        box: text.getBBox(),
      }));
      const outside = texts.filter(
        ({ box: { x, y, width, height } }) =>
          x < room.x - 1 ||
          x + width > room.x + room.width + 1 ||
          y < room.y - 2 ||
          y + height > room.y + room.height + 2,
      );
      const pairs = texts.flatMap((one, at) =>
        texts.slice(at + 1).flatMap((other) => {
          const [a, b] = [one.box, other.box];
          const apart =
            a.x + a.width <= b.x || b.x + b.width <= a.x || a.y + a.height <= b.y + 2 || b.y + b.height <= a.y + 2;
          return apart ? [] : [`${one.text} / ${other.text}`];
        }),
      );
      return [...outside.map(({ text }) => `outside: ${text}`), ...pairs];
    }),
  );
}

describe('the pictures of a row', () => {
  it('keep the ratios of the millimetres', async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    for (const [row, thickness, hole] of [
      [2, 1.5, 5.6],
      [3, 0.8, 5.6],
      [4, 1.5, 6.2],
    ] as const) {
      await choose(page, row);
      const at = await places(page);
      const { 'sheet-left': left, 'sheet-right': right, 'body-left': body } = at;
      const holePx = right!.x - (left!.x + left!.width);
      expect(left!.height / holePx / (thickness / hole)).toBeCloseTo(1, 2);
      expect(body!.height / left!.height / (3.6 / thickness)).toBeCloseTo(1, 2);
    }
    await choose(page, 3);
    const thin = await places(page);
    expect(thin['shortfall-left']!.height / thin['sheet-left']!.height / (0.2 / 0.8)).toBeCloseTo(1, 1);
    const points = (thin.gap!.width / (thin['tick-100']!.x - thin['tick-90']!.x)) * 10;
    expect(points).toBeCloseTo(20, 0);
    expect(errors).toEqual([]);
  });

  it('are named by what one sees', async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await choose(page, 3);
    const pictures = page.locator('row-pictures').getByRole('img');
    expect(await pictures.count()).toBe(3);
    const named = (name: RegExp) => page.locator('row-pictures').getByRole('img', { name });
    await named(
      /^Section, true scale \(mm\) Section of a clinch nut M4 in cold-rolled DC01, in millimetres: sheet 0.80, thinnest 0.76; needs 1.00/,
    ).waitFor();
    await named(/The row fails: Sheet 0.80, needs 1.00 mm\.$/)
      .first()
      .waitFor();
    await named(/cold-rolled DC01 55 to 64.5 \(holds\)/).waitFor();
    await named(/^From above.*edge 12.00, needs 9.00/).waitFor();
    await page.getByLabel('Units').selectOption('in');
    await named(/^Section, true scale \(in\).*in inches: sheet 0.0315, thinnest 0.0299; needs 0.0394/).waitFor();
    expect(errors).toEqual([]);
  });

  it('are drawn again when a cell is edited', async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await choose(page, 3);
    const before = await places(page);
    expect(before['shortfall-left']).toBeDefined();
    await cell(page, 3, 'sender-2').dblclick();
    await page.keyboard.press('Control+A');
    await page.keyboard.type('1.6');
    // Tab stays in the row; Enter would choose the next one.
    await page.keyboard.press('Tab');
    await page
      .locator('row-pictures')
      .getByRole('img', { name: /sheet 1\.60/ })
      .waitFor();
    const after = await places(page);
    expect(after['shortfall-left']).toBeUndefined();
    const ratio = (at: typeof before) => at['sheet-left']!.height / at['body-left']!.height;
    expect(ratio(after) / ratio(before)).toBeCloseTo(2, 1);
    expect(errors).toEqual([]);
  });

  it('cover no text with another on any row of the demo list, in mm and in inches, in a wide and a narrow panel', async () => {
    const { page, errors } = await host.open();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    const rows = await fastenerRows(page);
    expect(rows.length).toBeGreaterThan(40);
    for (const [units, panel] of [
      ['mm', '432px'],
      ['in', '320px'],
    ] as const) {
      await page.getByLabel('Units').selectOption(units);
      await page.locator('list-view').evaluate((view, width) => view.style.setProperty('--panel-width', width), panel);
      for (const row of rows) {
        await select(page, row);
        expect({ row, units, covered: await covered(page) }).toEqual({ row, units, covered: [] });
      }
    }
    expect(errors).toEqual([]);
  }, 120_000);

  it.each(['light', 'dark'] as const)('have texts that can be read in %s mode', async (colorScheme) => {
    const { page, errors } = await host.open();
    await page.emulateMedia({ colorScheme });
    await openList(page, LIST);
    for (const row of [2, 3, 4, 5, 6, 7]) {
      await choose(page, row);
      const contrasts = await page.locator('row-pictures').evaluate((element) => {
        const ground = getComputedStyle(
          element.closest('row-panel') ?? (element.getRootNode() as ShadowRoot).host,
        ).backgroundColor;
        const light = (colour: string) => {
          const [r = 0, g = 0, b = 0] = (colour.match(/[\d.]+/g) ?? []).map((part) => {
            const share = Number(part) / 255;
            return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
          });
          return 0.2126 * r + 0.7152 * g + 0.0722 * b;
        };
        return [...element.shadowRoot!.querySelectorAll('svg.drawing text')].map((text) => {
          const [a, b] = [light(getComputedStyle(text).fill), light(ground)];
          return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
        });
      });
      expect(contrasts.length).toBeGreaterThan(10);
      expect(Math.min(...contrasts)).toBeGreaterThanOrEqual(4.5);
    }
    expect(errors).toEqual([]);
  });

  it('mark what is wrong with the shape of the verdict, not by colour alone', async () => {
    const { page } = await host.open();
    await openList(page, LIST);
    await choose(page, 2);
    const section = page.locator('row-pictures svg[data-kind="section"]');
    expect(await section.locator('g.verdict').count()).toBe(0);
    await choose(page, 4);
    expect(await section.locator('g.verdict.fails').count()).toBe(1);
    expect(await section.locator('text.fails').allTextContents()).toEqual([
      'hole 6.20, needs 5.60 to 5.68',
      '0.52 too large',
    ]);
  });

  it('are saved as one file that any XML reader takes', async () => {
    const { page, errors } = await host.open();
    await openList(page, LIST);
    await choose(page, 3);
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Save drawing' }).click();
    const file = await download;
    expect(file.suggestedFilename()).toBe('pictures-row-3.svg');
    const text = readFileSync(await file.path(), 'utf8');
    const read = await page.evaluate((source) => {
      const read = new DOMParser().parseFromString(source, 'image/svg+xml');
      return {
        root: read.documentElement.localName,
        wrong: read.querySelectorAll('parsererror').length,
        drawings: read.querySelectorAll('[role="img"]').length,
        text: read.documentElement.textContent,
      };
    }, text);
    expect(read).toMatchObject({ root: 'svg', wrong: 0, drawings: 3 });
    expect(read.text).toContain('Row 3, NUT-M4-10-CS');
    expect(read.text).toContain('invented data, not for production');
    expect(read.text).toContain('does not approve joints');
    expect(text).not.toMatch(/var\(|NaN/);
    expect(errors).toEqual([]);
  });

  it('go with the printed findings, for the first forty rows', async () => {
    const { page, errors } = await host.open();
    const many = Array.from({ length: 44 }, () => ROWS[1]);
    await openList(page, csv('many.csv', `${HEADINGS}\n${many.join('\n')}\n`));
    await page.locator('verdict-counts b').first().waitFor();
    await page.evaluate(() => {
      window.print = () => undefined;
    });
    await page.getByRole('button', { name: 'Export', exact: true }).click();
    await page.getByRole('menuitem', { name: 'Print findings' }).click();
    const figures = page.locator('findings-page figure');
    await figures.first().waitFor();
    expect(await figures.count()).toBe(40);
    expect(await figures.first().getByRole('img').count()).toBe(3);
    await figures.first().getByText('Row 2 · NUT-M4-10-CS').waitFor();
    await page.locator('findings-page').getByText('The first 40 of the 44 rows above are drawn').waitFor();
    const ids = await page
      .locator('findings-page')
      .evaluate((element) => [...element.shadowRoot!.querySelectorAll('[id]')].map(({ id }) => id));
    expect(new Set(ids).size).toBe(ids.length);
    expect(errors).toEqual([]);
  });
});

/** Row numbers of the fasteners of the open list. */
async function fastenerRows(page: Page): Promise<number[]> {
  await page.locator('verdict-counts b').first().waitFor();
  return page.evaluate(() => {
    const app = document.querySelector('clinch-app') as unknown as {
      store: { state: { list: { lines: { row: number }[] } } };
    };
    return app.store.state.list.lines.map(({ row }) => row);
  });
}

/** Chooses a row that may be outside the visible part of the list. */
async function select(page: Page, row: number): Promise<void> {
  await page.evaluate((wanted) => {
    const app = document.querySelector('clinch-app') as unknown as { commands: { select(row: number): void } };
    app.commands.select(wanted);
  }, row);
  await page.locator(`aside[aria-label="Row ${row}"] row-pictures svg`).first().waitFor();
}
