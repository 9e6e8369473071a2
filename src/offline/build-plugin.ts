import { createHash } from 'node:crypto';
import type { Plugin } from 'vite';
import { STYLE_NONCE } from './style-nonce.ts';

/** The name that the service worker is built under: it must stand beside the page to serve all of it. */
export const SERVICE_WORKER = 'service-worker.js';

/** Files of the page that are not yet in the bundle when the list of files is made. */
const BESIDE = ['index.html', 'icon.svg', 'app.webmanifest'];

const ICON =
  '<svg xmlns="http://www.w3.org/2000/svg" viewBox="-6 -8 34 34"><rect x="-6" y="-8" width="34" height="34" rx="6" fill="#f6f5f1"/><path fill="#1f4e79" d="M0 9.8h6.2v1.6l1.3.6-1.3.6V15H0zM22 9.8h-6.2v1.6l-1.3.6 1.3.6V15H22z"/><path fill="#1d2327" d="M4 3h14v6h-3v2l-1.5 1 1.5 1v2H7v-2l1.5-1L7 11v-2H4z"/></svg>';

const MANIFEST = {
  name: 'Clinchsheet',
  short_name: 'Clinchsheet',
  description: 'Judges hardware lists of press-in fasteners in sheet metal: will every row hold?',
  start_url: './',
  scope: './',
  display: 'standalone',
  background_color: '#f6f5f1',
  theme_color: '#f6f5f1',
  icons: [{ src: 'icon.svg', sizes: 'any', type: 'image/svg+xml', purpose: 'any' }],
};

/** What the page may load and run: its own files only, no script in the page itself. */
const POLICY = [
  "default-src 'none'",
  "script-src 'self'",
  "worker-src 'self'",
  "connect-src 'self'",
  "img-src 'self' data:",
  "font-src 'self'",
  `style-src 'self' 'nonce-${STYLE_NONCE}'`,
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
  "object-src 'none'",
].join('; ');

/** Makes the built app installable and able to open without a network, and locks down what its page may load. */
export function offline(): Plugin {
  return {
    name: 'offline',
    apply: 'build',
    transformIndexHtml: {
      order: 'post',
      handler: () => [
        { tag: 'meta', attrs: { 'http-equiv': 'Content-Security-Policy', content: POLICY }, injectTo: 'head-prepend' },
        { tag: 'link', attrs: { rel: 'manifest', href: './app.webmanifest' }, injectTo: 'head' },
        { tag: 'link', attrs: { rel: 'icon', href: './icon.svg' }, injectTo: 'head' },
      ],
    },
    generateBundle: {
      order: 'post',
      handler(_, bundle) {
        this.emitFile({ type: 'asset', fileName: 'icon.svg', source: ICON });
        this.emitFile({ type: 'asset', fileName: 'app.webmanifest', source: JSON.stringify(MANIFEST) });
        const worker = bundle[SERVICE_WORKER];
        if (worker?.type !== 'chunk') throw new Error('The service worker is not in the build.');
        const files = Object.keys(bundle).filter((file) => file !== SERVICE_WORKER && !/\.(?:map|woff)$/.test(file));
        const version = versionOf(Object.entries(bundle));
        worker.code = worker.code
          .replace('__VERSION__', `clinchsheet-${version}`)
          .replace('__FILES__', JSON.stringify([...new Set([...BESIDE, ...files])].sort()).replaceAll("'", "\\'"));
      },
    },
  };
}

/** Changes with any byte of any file. */
function versionOf(files: readonly (readonly [string, { readonly type: string }])[]): string {
  const hash = createHash('sha256');
  for (const [name, file] of [...files].sort(([a], [b]) => (a < b ? -1 : 1))) {
    const content = 'code' in file ? String(file.code) : 'source' in file ? (file.source as string | Uint8Array) : '';
    hash.update(name).update(content);
  }
  return hash.digest('hex').slice(0, 12);
}
