import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Parts of paths whose tests wait for a browser or for a process of their own, the slowest first. */
const SLOW = ['files/hostile-set', 'browser/access', 'browser/', 'command-line/', 'files/', 'properties/'];

/** Begins with what takes longest, so that no worker is left with it at the end while the others have nothing to do. */
export class SlowestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const sorted = await super.sort(files);
    return sorted.toSorted((one, other) => rank(one) - rank(other));
  }
}

function rank({ moduleId }: TestSpecification): number {
  const at = SLOW.findIndex((part) => moduleId.includes(`/tests/${part}`));
  return at === -1 ? SLOW.length : at;
}
