import { fork } from 'node:child_process';
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { layDown } from './examine.ts';

/** What a process of its own says before an input (`at` alone) and after it. */
interface Message {
  readonly at: number;
  readonly code?: number | null;
  readonly faults?: readonly string[];
  readonly ms?: number;
}

const HANGS_AFTER_MS = 5000;
const STARTS_WITHIN_MS = 60_000;
const CHILD = join(import.meta.dirname, 'examine-many.ts');

const { values } = parseArgs({
  options: {
    seed: { type: 'string', default: '1' },
    inputs: { type: 'string', default: '20000' },
    minutes: { type: 'string', default: '30' },
    from: { type: 'string', default: '0' },
  },
});
const seed = Number(values.seed);
const from = Number(values.from);
const end = from + Number(values.inputs);
const until = Date.now() + Number(values.minutes) * 60_000;

const codes = new Map<number | null, number>();
const slowest = { at: from, ms: 0 };
let finds = 0;
let next = from;
while (next < end && Date.now() < until) next = await runChild(next);
console.log(`${next - from} inputs of seed ${seed}, ${finds} finds.`);
const counts = [0, 1, 2].map((code) => `${codes.get(code) ?? 0} with exit code ${code}`);
console.log(`${counts.join(', ')}; the slowest, input ${slowest.at}, took ${Math.round(slowest.ms)} ms.`);
process.exit(finds === 0 ? 0 : 1);

/** Lets a process of its own go on from an input, until all are done or one hangs or ends it. The answer is where to go on. */
function runChild(first: number): Promise<number> {
  return new Promise((resolve) => {
    const argv = [seed, first, end, until].map(String);
    const child = fork(CHILD, argv, { execArgv: ['--import', 'tsx'], stdio: ['ignore', 'ignore', 'inherit', 'ipc'] });
    let at = first;
    const stop = () => child.kill('SIGKILL');
    let timer = setTimeout(stop, STARTS_WITHIN_MS);
    child.on('message', (message: Message) => {
      clearTimeout(timer);
      timer = setTimeout(stop, HANGS_AFTER_MS);
      at = message.faults === undefined ? message.at : message.at + 1;
      if (message.faults !== undefined) note(message, message.faults);
    });
    child.on('exit', (code, signal) => {
      clearTimeout(timer);
      if (signal === 'SIGKILL') tell(at++, [`takes over ${HANGS_AFTER_MS / 1000} s`]);
      else if (code !== 0) tell(at++, [`ends the process with ${code ?? signal}`]);
      resolve(at);
    });
  });
}

function note({ at, code = null, ms = 0 }: Message, faults: readonly string[]): void {
  codes.set(code, (codes.get(code) ?? 0) + 1);
  if (ms > slowest.ms) Object.assign(slowest, { at, ms });
  if (faults.length > 0) tell(at, faults);
}

/** Says what was found, and lays the files down in a folder, to be looked at. */
function tell(number: number, faults: readonly string[]): void {
  finds += 1;
  const folder = mkdtempSync(join(tmpdir(), `clinchsheet-found-${seed}-${number}-`));
  layDown(seed, number, folder);
  console.log(`Seed ${seed}, input ${number} (${folder}):\n  ${faults.join('\n  ')}`);
}
