import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { join } from 'node:path';
import { build } from 'vite';
import { type Measured, medianOf } from './measured.ts';

/** What one process took. */
interface Taken {
  readonly ms: number;
  readonly megabytes: number;
  /** Bytes that came out. */
  readonly size: number;
}

/** Something that is measured in processes of its own, by us and by the writing library. */
export interface Contest {
  /** The script beside this file, without its ending. */
  readonly script: string;
  readonly what: string;
  readonly yardstick: string;
  readonly mostTime: number;
  readonly mostMegabytes: number | null;
  readonly ourTimes: number;
  readonly theirTimes: number;
  /** Makes what the script is given, in a folder that goes afterwards. */
  readonly prepare: (folder: string) => readonly string[];
}

/** The writing library needs more than Node would give it. */
const FLAGS = ['--expose-gc', '--max-old-space-size=12000'];

/** Runs both, one process after the other. */
export async function hold(contest: Contest): Promise<readonly Measured[]> {
  const folder = mkdtempSync(join(process.cwd(), 'node_modules/.cache/bench-write-'));
  try {
    await bundle(contest.script, folder);
    const given = contest.prepare(folder);
    const run = (way: string) => runOnce(join(folder, `${contest.script}.js`), [way, ...given]);
    const ours = Array.from({ length: contest.ourTimes }, () => run('ours'));
    const theirs = Array.from({ length: contest.theirTimes }, () => run('exceljs'));
    return linesOf(contest, ours, theirs);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

function linesOf(contest: Contest, ours: readonly Taken[], theirs: readonly Taken[]): readonly Measured[] {
  const { what, yardstick, mostTime, mostMegabytes } = contest;
  const medianMs = medianOf(ours.map(({ ms }) => ms));
  const ratio = medianMs / medianOf(theirs.map(({ ms }) => ms));
  const peak = medianOf(ours.map(({ megabytes }) => megabytes));
  const size = medianOf(ours.map((taken) => taken.size)) / 1024 / 1024;
  const plain = { ratio: null, yardstick: '', unit: 'MB' } as const;
  return [
    { what, medianMs, ratio, yardstick, target: mostTime },
    { ...plain, what: 'its peak memory, with reading and judging', medianMs: peak, target: mostMegabytes },
    { ...plain, what: 'the file that comes out', medianMs: size, target: null },
  ];
}

function runOnce(script: string, given: readonly string[]): Taken {
  return JSON.parse(execFileSync(process.execPath, [...FLAGS, script, ...given], { encoding: 'utf8' })) as Taken;
}

async function bundle(script: string, outDir: string): Promise<void> {
  await build({
    root: process.cwd(),
    configFile: false,
    logLevel: 'warn',
    build: { ssr: `tests/bench/${script}.ts`, outDir, target: 'node20', emptyOutDir: false },
    ssr: { noExternal: ['papaparse', 'fflate'] },
  });
}
