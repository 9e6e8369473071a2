// Starts the command line from one bundled file, which is made anew when any source is newer: a second start takes a fraction
// of the time that hundreds of small files would.
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const bundle = join(root, 'dist/cli/main.js');
const sources = ['src/core', 'src/io', 'src/cli', 'package-lock.json'];

if (!existsSync(bundle) || newestOf(sources) > statSync(bundle).mtimeMs) await bundleAnew();
if (process.argv[2] !== '--bundle-only') await import(pathToFileURL(bundle).href);

function newestOf(paths) {
  let newest = 0;
  for (const path of paths) {
    const full = join(root, path);
    const files = statSync(full).isDirectory() ? readdirSync(full, { recursive: true, withFileTypes: true }) : [];
    for (const file of files)
      newest = Math.max(newest, statSync(join(file.parentPath ?? file.path, file.name)).mtimeMs);
    newest = Math.max(newest, statSync(full).mtimeMs);
  }
  return newest;
}

async function bundleAnew() {
  const { build } = await import('vite');
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    build: { ssr: 'src/cli/main.ts', outDir: 'dist/cli', target: 'node20', emptyOutDir: true },
    ssr: { noExternal: ['papaparse', 'fflate'] },
  });
}
