// Runs the bench from one bundle, made as the shipped code is: a loader that compiles file by file adds helpers to every inner
// function and would be measured along. Arguments name the parts to run.
import { spawnSync } from 'node:child_process';
import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'vite';

const root = fileURLToPath(new URL('../..', import.meta.url));
const outDir = join(root, `node_modules/.cache/bench-${process.pid}`);

try {
  await build({
    root,
    configFile: false,
    logLevel: 'warn',
    build: { ssr: 'tests/bench/run.ts', outDir, target: 'node20', emptyOutDir: true },
    ssr: { noExternal: ['papaparse', 'fflate'] },
  });
  const command = [
    '--expose-gc',
    ...(process.env.BENCH_FLAGS?.split(' ') ?? []),
    join(outDir, 'run.js'),
    ...process.argv.slice(2),
  ];
  process.exitCode = spawnSync(process.execPath, command, { stdio: 'inherit', cwd: root }).status ?? 1;
} finally {
  rmSync(outDir, { recursive: true, force: true });
}
