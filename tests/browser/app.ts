import { existsSync } from 'node:fs';
import { resolve } from 'node:path';
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { type Plugin, type PreviewServer, preview } from 'vite';
import { onTestFinished } from 'vitest';
import { launchChromium } from './chromium.ts';

const ROOT = resolve(import.meta.dirname, '../..');
/** The built app; another build may be named in the variable BUILT_APP. */
export const BUILT = resolve(ROOT, process.env.BUILT_APP ?? 'dist/app');

/** Within one machine, packing what is sent takes longer than sending it. */
const UNPACKED: Plugin = {
  name: 'unpacked',
  configurePreviewServer({ middlewares }) {
    middlewares.use(({ headers }, _, next) => {
      delete headers['accept-encoding'];
      next();
    });
  },
};

/** The built app in a real Chromium, with everything that went wrong in the page. */
export interface RunningApp {
  readonly page: Page;
  /** Exceptions and console errors; a test ends by expecting none. */
  readonly errors: string[];
  /** Addresses outside the app's own origin that were asked for. */
  readonly strangers: string[];
}

/** Serves the built app and starts a browser once for a file of tests. */
export class AppHost {
  #server: PreviewServer | null = null;
  #browser: Browser | null = null;
  #contexts: BrowserContext[] = [];
  /** Of all pages. */
  readonly #errors: string[] = [];
  #address = '';
  readonly #built: string;
  readonly #isKept: boolean;

  /**
   * The build in a folder of its own, or the one that all tests use. Tests of what is there at the next visit have the app kept by its service
   * worker; the others do without, because that fetches all of it once more for each of them.
   */
  constructor({ built = BUILT, isKept = false }: { readonly built?: string; readonly isKept?: boolean } = {}) {
    this.#built = built;
    this.#isKept = isKept;
  }

  async start(): Promise<void> {
    if (!existsSync(resolve(this.#built, 'index.html')))
      throw new Error('The app is not built: run npm run build first.');
    this.#server = await preview({
      root: ROOT,
      build: { outDir: this.#built },
      preview: { port: 0, host: '127.0.0.1' },
      logLevel: 'error',
      plugins: [UNPACKED],
    });
    this.#address = this.#server.resolvedUrls?.local[0] ?? '';
    this.#browser = await launchChromium();
  }

  /** Ends everything. Whatever went wrong in any page fails the file of tests, also where no test has looked; but for what a test provokes. */
  async stop(provoked = /^$/): Promise<void> {
    await Promise.all(this.#contexts.map((context) => context.close()));
    await this.#browser?.close();
    await this.#server?.close();
    const unforeseen = this.#errors.filter((error) => !provoked.test(error));
    if (unforeseen.length > 0) throw new Error(`A page complained: ${unforeseen.join('; ')}`);
  }

  /** A fresh page with the app's first screen; at a scale of 2 each of its pixels is shown as two by two. It is closed when its test ends. */
  async open(size = { width: 1440, height: 900 }, scale = 1): Promise<RunningApp> {
    const context = await this.#browser!.newContext({
      viewport: size,
      deviceScaleFactor: scale,
      acceptDownloads: true,
      serviceWorkers: this.#isKept ? 'allow' : 'block',
    });
    this.#contexts.push(context);
    if (process.env.VITEST) onTestFinished(() => context.close());
    return this.#openIn(context);
  }

  /** Another page of the same visitor: what the browser keeps is there. */
  async openBeside({ page }: RunningApp): Promise<RunningApp> {
    return this.#openIn(page.context());
  }

  async #openIn(context: BrowserContext): Promise<RunningApp> {
    const page = await context.newPage();
    const errors: string[] = [];
    const strangers: string[] = [];
    const complain = (text: string) => {
      errors.push(text);
      this.#errors.push(text);
    };
    page.on('pageerror', (error) => complain(error.message));
    page.on('console', (message) => message.type() === 'error' && complain(message.text()));
    page.on('request', (request) => {
      const url = request.url();
      if (!url.startsWith(this.#address) && !/^(data|blob):/.test(url)) strangers.push(url);
    });
    await page.goto(this.#address);
    await page.locator('first-screen').waitFor();
    return { page, errors, strangers };
  }
}
