import { spawnSync } from 'node:child_process';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';

const SCRIPT = join(import.meta.dirname, 'fuzz.ts');
const INPUTS = 80;

describe('broken lists, workbooks, catalogues, settings and projects', () => {
  it('are judged as they should be or refused in a sentence', { timeout: 120_000 }, () => {
    const argv = ['--import', 'tsx', SCRIPT, '--seed', '1', '--inputs', String(INPUTS), '--minutes', '1.5'];
    const { stdout, stderr, status } = spawnSync(process.execPath, argv, { encoding: 'utf8' });
    expect(stdout + stderr).toContain(`${INPUTS} inputs of seed 1, 0 finds.\n`);
    expect(status).toBe(0);
  });
});
