import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { licencesOf } from '../../src/offline/licences-plugin.ts';

const ROOT = resolve(import.meta.dirname, '../..');
const read = (file: string) => readFileSync(resolve(ROOT, file), 'utf8');

interface Manifest {
  readonly dependencies: Record<string, string>;
  readonly devDependencies: Record<string, string>;
  readonly overrides: object;
}
const manifest = JSON.parse(read('package.json')) as Manifest;
const { packages } = JSON.parse(read('package-lock.json')) as {
  packages: Record<string, { version: string; license?: string; dev?: boolean }>;
};
const direct = Object.entries({ ...manifest.dependencies, ...manifest.devDependencies });

/** Licences that ask for no more than that their text goes along. */
const MAY_SHIP = ['MIT', 'ISC', 'BSD-2-Clause', 'BSD-3-Clause', 'Apache-2.0', '0BSD', 'BlueOak-1.0.0'];
/** Of two offered the first is taken; both parts of the third ask for no more either. */
const MAY_SHIP_TOO = ['(MIT OR GPL-3.0-or-later)', 'MIT OR Apache-2.0', '(MIT AND Zlib)'];

describe('what the app depends on', () => {
  it.each(direct)('%s has an exact version, and its row in the guide', (name, version) => {
    expect(version).toMatch(/^\d+\.\d+\.\d+$/);
    const licence = packages[`node_modules/${name}`]?.license;
    expect(licence).toBeTruthy();
    expect(read('DEVELOPERS.md')).toContain(`| ${name} ${version} | ${licence} | `);
  });

  it('what is put in the place of others has an exact version, and its row too', () => {
    const guide = read('DEVELOPERS.md');
    const leaves = (entry: object): [string, string][] =>
      Object.entries(entry).flatMap(([name, to]): [string, string][] =>
        typeof to === 'string' ? [[name, to]] : leaves(to as object),
      );
    const put = leaves(manifest.overrides);
    expect(put.length).toBeGreaterThan(0);
    for (const [name, version] of put) {
      expect(version).toMatch(/^\d+\.\d+\.\d+$/);
      expect(guide).toMatch(new RegExp(`^\\| ${name} ${version.replaceAll('.', '\\.')}\\b.* \\| .+ \\| .+ \\|$`, 'm'));
    }
  });

  it('everything that ships may be shipped, and its licence goes along', () => {
    const shipped = Object.entries(packages).filter(([place, { dev }]) => place !== '' && !dev);
    expect(shipped.length).toBeGreaterThan(50);
    const text = licencesOf(ROOT);
    for (const [place, { license = 'none', version }] of shipped) {
      expect([...MAY_SHIP, ...MAY_SHIP_TOO], place).toContain(license);
      expect(text).toContain(`${place.slice(place.lastIndexOf('node_modules/') + 13)} ${version} - ${license}`);
    }
    expect(text).toContain('@fontsource/ibm-plex-sans');
    expect(text).toContain('SIL OPEN FONT LICENSE');
  });
});
