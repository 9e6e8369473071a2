import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { type Measured, medianOf } from './measured.ts';
import { makeWorkbook } from './workbooks.ts';

const ROWS = 100_000;
const TIMES = 3;
const YARDSTICK = 'exceljs xlsx.load of the same file';
const MOST_TIME = 0.25;
const MOST_MEMORY = 0.4;

/** From the bytes of a workbook to its cells, each reading in a process of its own. */
export async function measure(): Promise<readonly Measured[]> {
  const folder = mkdtempSync(join(process.cwd(), 'node_modules/.cache/bench-read-'));
  try {
    const file = join(folder, 'list.xlsx');
    writeFileSync(file, makeWorkbook(ROWS, 'realistic'));
    await bundle(folder);
    return compare(join(folder, 'read-xlsx-once.js'), file);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

async function bundle(outDir: string): Promise<void> {
  await build({
    root: process.cwd(),
    configFile: false,
    logLevel: 'warn',
    build: { ssr: 'tests/bench/read-xlsx-once.ts', outDir, target: 'node20', emptyOutDir: false },
    ssr: { noExternal: ['papaparse', 'fflate'] },
  });
}

interface Taken {
  readonly ms: number;
  readonly megabytes: number;
  readonly isRead: boolean;
}

function compare(script: string, file: string): readonly Measured[] {
  const ours: Taken[] = [];
  const theirs: Taken[] = [];
  for (let time = 0; time < TIMES; time++) {
    theirs.push(readOnce(script, 'exceljs', file));
    ours.push(readOnce(script, 'ours', file));
  }
  return [
    lineOf('reading XLSX to cells, 100k rows of 25', (taken) => taken.ms, ours, theirs, MOST_TIME),
    { ...lineOf('its peak memory', (taken) => taken.megabytes, ours, theirs, MOST_MEMORY), unit: 'MB' },
  ];
}

function lineOf(
  what: string,
  pick: (taken: Taken) => number,
  ours: readonly Taken[],
  theirs: readonly Taken[],
  target: number,
): Measured {
  const median = medianOf(ours.map(pick));
  return { what, medianMs: median, ratio: median / medianOf(theirs.map(pick)), yardstick: YARDSTICK, target };
}

function readOnce(script: string, way: string, file: string): Taken {
  const taken = JSON.parse(execFileSync(process.execPath, [script, way, file], { encoding: 'utf8' })) as Taken;
  if (!taken.isRead) throw new Error(`${way} read nothing.`);
  return taken;
}
