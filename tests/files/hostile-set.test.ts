import { execFileSync, spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { HOSTILE_FILES } from './hostile-files.ts';
import { longCatalogue, longColumns, longestCells, longHeadings } from './long-cells.ts';

const SCRIPT = resolve(import.meta.dirname, '../../src/cli/audit.mjs');
/** Limits that tell slow from never: most files take a tenth of them. */
const MOST_CPU_S = 5;
const MOST_MB = 600;
const TIMEOUT_MS = 90_000;
const TELL_PEAK =
  'data:text/javascript,process.on("exit",()=>process.stderr.write("\\npeak "+process.resourceUsage().maxRSS))';
const folder = mkdtempSync(join(tmpdir(), 'clinchsheet-hostile-'));

beforeAll(() => {
  execFileSync(process.execPath, [SCRIPT, '--bundle-only']);
}, TIMEOUT_MS);
afterAll(() => rmSync(folder, { recursive: true }));

/** Runs the command line on a file, held to the limits by the system itself. */
function audit(bytes: Uint8Array, ...more: readonly string[]) {
  return auditPath(put('list', bytes), ...more);
}

function auditPath(file: string, ...more: readonly string[]) {
  const argv = [`--max-old-space-size=${MOST_MB}`, '--import', TELL_PEAK, SCRIPT, file, ...more];
  const { status, signal, stderr } = spawnSync(
    'sh',
    ['-c', `ulimit -t ${MOST_CPU_S}; exec "$@"`, 'sh', process.execPath, ...argv],
    {
      encoding: 'utf8',
      stdio: ['ignore', 'ignore', 'pipe'],
    },
  );
  const [said = '', peak = ''] = stderr.split('\npeak ');
  return { status, signal, said: said.trim(), peakMb: Number(peak) / 1024 };
}

function put(name: string, bytes: Uint8Array): string {
  const path = join(folder, name);
  writeFileSync(path, bytes);
  return path;
}

function expectAnswer({ status, signal, said, peakMb }: ReturnType<typeof audit>, says?: RegExp): void {
  expect(signal, said).toBeNull();
  expect([0, 1, 2], said).toContain(status);
  expect(said).not.toMatch(/\n\s+at |fault of Clinchsheet/);
  if (status === 2) expect(said).toMatch(/^[^\n]+\.$/);
  if (says) expect(said).toMatch(says);
  expect(peakMb).toBeLessThan(MOST_MB);
}

describe('files made to take time, memory or trust end in a result or in one sentence', () => {
  it.each(Object.entries(HOSTILE_FILES))('%s', { timeout: TIMEOUT_MS }, (_, { make, says }) => {
    expectAnswer(audit(make()), says);
  });
});

describe('what grows without end', () => {
  it('is not read to its end', { timeout: TIMEOUT_MS }, () => {
    expectAnswer(auditPath('/dev/zero'), /‘zero’ is larger than 250 MB/);
  });
});

describe('cells and headings of repeated signs', () => {
  it.each(Object.entries(longColumns()))('as %s', { timeout: TIMEOUT_MS }, (_, bytes) => {
    expectAnswer(audit(bytes));
  });

  it('of the longest there are, in every cell', { timeout: TIMEOUT_MS }, () => {
    expectAnswer(audit(longestCells()));
  });

  it('as headings', { timeout: TIMEOUT_MS }, () => {
    for (const bytes of longHeadings()) expectAnswer(audit(bytes));
  });

  it.each(Object.entries(longCatalogue()))('as %s of a catalogue', { timeout: TIMEOUT_MS }, (_, bytes) => {
    const list = new TextEncoder().encode('Part number,Qty,Material,Thickness (mm)\nN-1,4,DC01,1.5\n');
    expectAnswer(audit(list, '--catalogue', put('catalogue.csv', bytes)));
  });
});
