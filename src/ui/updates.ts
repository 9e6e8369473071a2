import type { Store } from '../app/store.ts';

/** Where the service worker stands beside the built page. */
const SERVICE_WORKER = './service-worker.js';

/**
 * Keeps the app on this computer for work without a network, and tells the store when a newer version waits. Only the built app has a
 * service worker; where the browser has none, or it is not allowed, the app works as before, from the network.
 */
export async function keepOffline(store: Store): Promise<void> {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const { serviceWorker, onLine } = navigator;
  const found = onLine ? serviceWorker.register(SERVICE_WORKER) : serviceWorker.getRegistration();
  const registration = await found.catch(() => null);
  if (!registration) return;
  const tell = () => {
    const waiting = registration.waiting;
    // The very first version has nothing to replace.
    if (waiting && serviceWorker.controller) store.set({ update: () => use(waiting) });
  };
  tell();
  registration.addEventListener('updatefound', () => {
    registration.installing?.addEventListener('statechange', tell);
  });
}

/** Puts the newer version in place and opens it. What is on screen has been kept by then, and is offered again. */
function use(waiting: ServiceWorker): void {
  navigator.serviceWorker.addEventListener('controllerchange', () => location.reload(), { once: true });
  waiting.postMessage('use now');
}
