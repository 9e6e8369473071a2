import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it, vi } from 'vitest';
import { AppHost, type RunningApp } from './app.ts';
import { cell, counts, csv, openList, typeInto } from './list-page.ts';

vi.setConfig({ testTimeout: 60_000 });

const host = new AppHost();

beforeAll(() => host.start(), 180_000);
afterAll(() => host.stop());

const LIST = csv(
  'list.csv',
  'Part number,Material,Thickness (mm),Qty\nNUT-M4-10-CS,DC01,1.5,2\nNUT-M4-10-CS,DC01,0.5,4\n',
);
const THICKNESS = 2;

/** The workers that the page has started; a test ends them as the browser would for want of memory. */
interface WithWorkers {
  started: Worker[];
  /** How many messages each further worker lives to get; it dies of the next. */
  livesFor: number;
}

/** A page whose workers can be ended from outside. */
async function openWithWorkers(): Promise<RunningApp> {
  const app = await host.open();
  await app.page.addInitScript(() => {
    const page = globalThis as unknown as WithWorkers & { Worker: typeof Worker };
    page.started = [];
    page.livesFor = Number.POSITIVE_INFINITY;
    page.Worker = class extends Worker {
      #left = page.livesFor;
      #isAlive = false;
      constructor(...given: ConstructorParameters<typeof Worker>) {
        super(...given);
        page.started.push(this);
        this.addEventListener('message', () => {
          this.#isAlive = true;
          setTimeout(() => this.#dieIfDue());
        });
      }
      override postMessage(message: unknown): void {
        super.postMessage(message);
        this.#left -= 1;
        if (this.#isAlive) this.#dieIfDue();
      }
      #dieIfDue(): void {
        if (this.#left < 0) this.terminate();
      }
    };
  });
  await app.page.reload();
  await app.page.locator('first-screen').waitFor();
  return app;
}

const endWorker = (page: Page) =>
  page.evaluate(() => (globalThis as unknown as WithWorkers).started.at(-1)?.terminate());
const letDieAfter = (page: Page, messages: number) =>
  page.evaluate((most) => {
    (globalThis as unknown as WithWorkers).livesFor = most;
  }, messages);
const undo = (page: Page) => page.getByRole('button', { name: 'Undo' });

describe('a worker that dies', () => {
  it('is started again with the list, the edits and the settings, and nobody notices', async () => {
    const { page, errors } = await openWithWorkers();
    await openList(page, LIST);
    expect(await counts(page)).toMatchObject({ holds: 1, fails: 1 });
    await typeInto(page, 3, THICKNESS, '1.2');
    await expect.poll(() => counts(page)).toMatchObject({ holds: 2 });
    await page.waitForTimeout(300);
    await endWorker(page);
    await typeInto(page, 2, THICKNESS, '0.4');
    await expect.poll(() => counts(page)).toMatchObject({ holds: 1, fails: 1 });
    expect(await cell(page, 2, `sender-${THICKNESS}`).innerText()).toBe('0.4');
    expect(await cell(page, 3, `sender-${THICKNESS}`).innerText()).toBe('1.2');
    await undo(page).click();
    await expect.poll(() => counts(page)).toMatchObject({ holds: 2 });
    await undo(page).click();
    await expect.poll(() => counts(page)).toMatchObject({ holds: 1, fails: 1 });
    expect(await page.getByRole('alert').count()).toBe(0);
    expect(errors).toEqual([]);
  });

  it('while it opens a list has it opened by another', async () => {
    const { page, errors } = await openWithWorkers();
    await letDieAfter(page, 0);
    await openList(page, LIST);
    await letDieAfter(page, 100);
    expect(await counts(page)).toMatchObject({ holds: 1, fails: 1 });
    expect(errors).toEqual([]);
  });

  it('twice of the same edit gives a sentence, and all that was done stays', async () => {
    const { page, errors } = await openWithWorkers();
    await openList(page, LIST);
    await typeInto(page, 3, THICKNESS, '1.2');
    await expect.poll(() => counts(page)).toMatchObject({ holds: 2 });
    await page.waitForTimeout(300);
    await letDieAfter(page, 2);
    await endWorker(page);
    await typeInto(page, 2, THICKNESS, '0.4');
    await expect.poll(() => page.getByRole('alert').innerText()).toContain('stopped twice');
    expect(await page.getByRole('alert').innerText()).toContain('0.4');
    expect(await counts(page)).toMatchObject({ holds: 2 });
    expect(await cell(page, 3, `sender-${THICKNESS}`).innerText()).toBe('1.2');

    await letDieAfter(page, 100);
    await typeInto(page, 2, THICKNESS, '0.4');
    await expect.poll(() => counts(page)).toMatchObject({ holds: 1, fails: 1 });
    expect(errors).toEqual([]);
  });
});
