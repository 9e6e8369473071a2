import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Plugin } from 'vite';

/** The name of the file beside the page. */
export const LICENCES = 'licences.txt';

/** Packages that are in the app without being a dependency of its code. */
const BESIDE_CODE = ['node_modules/@fontsource/ibm-plex-sans'];

interface Locked {
  readonly version?: string;
  readonly license?: string;
  readonly dev?: boolean;
  readonly optional?: boolean;
}

/** Puts the licences of all that the app is made with beside the page: who made a library asks for that. */
export function licences(): Plugin {
  return {
    name: 'licences',
    apply: 'build',
    generateBundle: {
      order: 'post',
      handler() {
        this.emitFile({ type: 'asset', fileName: LICENCES, source: licencesOf(process.cwd()) });
      },
    },
  };
}

/** Every package that the app uses or that a library of it brings along: name, version, licence, and the licence's text. */
export function licencesOf(root: string): string {
  const lock = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
    packages: Record<string, Locked>;
  };
  const shipped = Object.entries(lock.packages).filter(
    ([place, { dev }]) => place !== '' && (!dev || BESIDE_CODE.includes(place)) && existsSync(join(root, place)),
  );
  const entries = shipped.map(([place, locked]) => entryOf(root, place, locked));
  return [...new Set(entries)].sort().join(`\n\n${'-'.repeat(80)}\n\n`);
}

function entryOf(root: string, place: string, { version, license }: Locked): string {
  const name = place.slice(place.lastIndexOf('node_modules/') + 'node_modules/'.length);
  const file = readdirSync(join(root, place)).find((entry) => /^licen[cs]e/i.test(entry));
  const text = file ? readFileSync(join(root, place, file), 'utf8').trim() : 'The package has no file with the text.';
  return `${name} ${version ?? ''} - ${license ?? 'see below'}\n\n${text}`;
}
