import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';

const SRC = resolve(import.meta.dirname, '../../src');

/** Folders from the ground up; a file may import from its own level and from what is below it. */
const CORE_LEVELS: readonly (readonly string[])[] = [
  ['core/units', 'core/caching'],
  ['core/model'],
  ['core/reference'],
  ['core/calc', 'core/say'],
  ['core/intake', 'core/catalogue'],
  ['core/rules'],
  ['core/engine'],
  ['core/concede', 'core/picture', 'core/remedies'],
  ['core/readback', 'core/rollup'],
  ['core/answers', 'core/compare'],
  ['core/audit.ts'],
];

/** What each layer above the core may import besides itself. */
const ABOVE: Readonly<Record<string, readonly string[]>> = {
  io: ['core'],
  worker: ['core', 'io'],
  app: ['core', 'worker'],
  ui: ['core', 'app', 'worker', 'offline'],
  offline: [],
  cli: ['core', 'io'],
};

const PACKAGES: Readonly<Record<string, readonly RegExp[]>> = {
  core: [],
  io: [/^papaparse$/, /^exceljs$/, /^fflate$/],
  worker: [],
  app: [],
  ui: [/^lit(\/|$)/],
  'ui/grid': [/^lit(\/|$)/, /^ag-grid-community$/],
  cli: [/^node:/],
  offline: [/^node:/, /^vite$/],
};

interface Import {
  readonly from: string;
  readonly to: string;
}

const imports: readonly Import[] = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((file) => file.endsWith('.ts'))
  .flatMap((file) => importsOf(file));

describe('imports go down', () => {
  it('finds the imports at all', () => {
    expect(imports.length).toBeGreaterThan(200);
  });

  it('inside the core, level by level', () => {
    const upward = imports.filter(
      ({ from, to }) => from.startsWith('core/') && to.startsWith('core/') && levelOf(to) > levelOf(from),
    );
    expect(upward).toEqual([]);
  });

  it('from the layers above to those they may use', () => {
    const wrong = imports.filter(({ from, to }) => {
      const [layer = '', target = ''] = [from.split('/')[0], to.split('/')[0]];
      if (layer === 'core') return !to.startsWith('core/') && !isPackage(to);
      return !isPackage(to) && target !== layer && target !== '..' && !(ABOVE[layer] ?? []).includes(target);
    });
    expect(wrong).toEqual([]);
  });

  it('to packages only where the layer is allowed them', () => {
    const wrong = imports.filter(
      ({ from, to }) => isPackage(to) && !allowedPackages(from).some((allowed) => allowed.test(to)),
    );
    expect(wrong).toEqual([]);
  });
});

function importsOf(file: string): Import[] {
  const text = readFileSync(join(SRC, file), 'utf8');
  const found = text.matchAll(/(?:from\s+|import\s+|import\()'([^']+)'/g);
  return [...found].flatMap(([, target = '']) => {
    if (target.endsWith('.css')) return [];
    const to = target.startsWith('.') ? relative(SRC, resolve(SRC, dirname(file), target)) : `package:${target}`;
    return [{ from: file, to }];
  });
}

function levelOf(path: string): number {
  const level = CORE_LEVELS.findIndex((folders) =>
    folders.some((folder) => path === folder || path.startsWith(`${folder}/`)),
  );
  if (level < 0) throw new Error(`${path} is in no layer`);
  return level;
}

function isPackage(to: string): boolean {
  return to.startsWith('package:');
}

function allowedPackages(from: string): readonly RegExp[] {
  const layer = from.startsWith('ui/grid/') ? 'ui/grid' : (from.split('/')[0] ?? '');
  return (PACKAGES[layer] ?? []).map((pattern) => new RegExp(pattern.source.replace('^', '^package:')));
}
