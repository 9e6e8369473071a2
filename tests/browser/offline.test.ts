import { appendFileSync, cpSync, mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { AppHost, BUILT } from './app.ts';

const copy = mkdtempSync(join(tmpdir(), 'clinchsheet-built-'));
const host = new AppHost({ built: copy, isKept: true });

beforeAll(async () => {
  cpSync(BUILT, copy, { recursive: true });
  await host.start();
}, 60_000);
afterAll(async () => {
  await host.stop(/^Executing inline script violates/);
  rmSync(copy, { recursive: true });
});

/** The app is kept on the computer once its service worker is active. */
async function untilKept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    const { active } = await navigator.serviceWorker.ready;
    if (active?.state !== 'activated') await new Promise((done) => active?.addEventListener('statechange', done));
  });
}

describe('without a network', () => {
  it('opens, judges the demo list and exports it after the first visit', { timeout: 60_000 }, async () => {
    const app = await host.open();
    await untilKept(app.page);
    await app.page.context().setOffline(true);
    const { page, errors } = await host.openBeside(app);
    expect(await page.evaluate(() => navigator.onLine)).toBe(false);
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await page.locator('.ag-row').first().waitFor();
    const download = page.waitForEvent('download');
    await page.getByRole('button', { name: 'Export' }).click();
    await page.getByRole('menuitem', { name: 'As a new workbook' }).click();
    expect((await download).suggestedFilename()).toBe('recorder-cabinet-judged.xlsx');
    for (const view of ['Catalogue', 'Shop settings', 'Rules and sources', 'Changes'])
      await page.getByRole('button', { name: view, exact: true }).click();
    expect(errors).toEqual([]);
    await page.context().setOffline(false);
  });

  it('takes a newer version only when the user says so', { timeout: 60_000 }, async () => {
    const app = await host.open();
    await untilKept(app.page);
    appendFileSync(resolve(copy, 'service-worker.js'), '\n// another version\n');
    const { page } = await host.openBeside(app);
    const offer = page.getByRole('button', { name: 'Use it now' });
    await offer.waitFor();
    await page.getByRole('button', { name: 'Try the demo list' }).click();
    await page.locator('.ag-row').first().waitFor();
    const reloaded = page.waitForEvent('load');
    await offer.click();
    await reloaded;
    await page.locator('first-screen').waitFor();
    expect(await page.getByRole('button', { name: 'Use it now' }).count()).toBe(0);
  });

  it('can be installed: a name, a start and an icon', () => {
    const manifest = JSON.parse(readFileSync(resolve(copy, 'app.webmanifest'), 'utf8'));
    expect(manifest).toMatchObject({ name: 'Clinchsheet', start_url: './', display: 'standalone' });
    expect(readFileSync(resolve(copy, manifest.icons[0].src), 'utf8')).toContain('<svg');
  });
});

describe('the policy of the page', () => {
  it('allows no script but the files of the app, and nothing from elsewhere', () => {
    const page = readFileSync(resolve(copy, 'index.html'), 'utf8');
    const policy = /Content-Security-Policy" content="([^"]+)"/.exec(page)?.[1]?.replaceAll('&#39;', "'") ?? '';
    expect(policy).toContain("default-src 'none'");
    expect(policy).toContain("script-src 'self';");
    expect(policy).not.toMatch(/unsafe|https?:|\*/);
    expect(page).not.toMatch(/<script(?![^>]*src=)|<style|\son\w+=|style="/);
  });

  it('stops a script that was put into the page', async () => {
    const { page } = await host.open();
    await page.evaluate(() => {
      const script = document.createElement('script');
      script.textContent = 'window.intruder = true';
      document.head.append(script);
    });
    expect(await page.evaluate(() => 'intruder' in window)).toBe(false);
  });
});
