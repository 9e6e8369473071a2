/**
 * Keeps the whole app on this computer, so that it opens without a network. A newer version is fetched beside the one in use and waits
 * until the user asks for it. Built into a file of its own; the build puts the list of files in place of the two words below.
 */

const VERSION = '__VERSION__';
const FILES: readonly string[] = JSON.parse('__FILES__');
/** One version back stays: a page that is still open from it may yet need its parts. */
const KEPT_VERSIONS = 2;

/** What a service worker sees of its surroundings; the library of types for pages does not have it. */
interface Lifetime extends Event {
  waitUntil(work: Promise<unknown>): void;
}
interface Fetching extends Lifetime {
  readonly request: Request;
  respondWith(answer: Promise<Response>): void;
}
interface Surroundings {
  addEventListener(type: 'install' | 'activate', listener: (event: Lifetime) => void): void;
  addEventListener(type: 'fetch', listener: (event: Fetching) => void): void;
  addEventListener(type: 'message', listener: (event: MessageEvent) => void): void;
  skipWaiting(): Promise<void>;
  readonly registration: { readonly scope: string };
}
const here = self as unknown as Surroundings;

here.addEventListener('install', (event) => event.waitUntil(fetchAll()));
here.addEventListener('activate', (event) => event.waitUntil(dropOldVersions()));
here.addEventListener('fetch', (event) => {
  if (event.request.method === 'GET') event.respondWith(answer(event.request));
});
here.addEventListener('message', ({ data }) => {
  if (data === 'use now') here.skipWaiting();
});

async function fetchAll(): Promise<void> {
  const cache = await caches.open(VERSION);
  await cache.addAll(FILES.map((file) => new Request(new URL(file, here.registration.scope), { cache: 'reload' })));
}

async function dropOldVersions(): Promise<void> {
  const versions = await caches.keys();
  await Promise.all(versions.slice(0, -KEPT_VERSIONS).map((version) => caches.delete(version)));
}

/** From this version, else from one that is still kept, else from the network. Any page of the scope is the app. */
async function answer(request: Request): Promise<Response> {
  const wanted = request.mode === 'navigate' ? new URL('index.html', here.registration.scope).href : request.url;
  const cache = await caches.open(VERSION);
  return (await cache.match(wanted)) ?? (await caches.match(wanted)) ?? fetch(request);
}
