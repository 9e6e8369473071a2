import { hold } from './children.ts';
import type { Measured } from './measured.ts';

const ROWS = 100_000;

/** From a judged list to the bytes of a new workbook with all its sheets. The writing library, which is slow, writes one sheet of them once. */
export function measure(): Promise<readonly Measured[]> {
  return hold({
    script: 'write-once',
    what: 'writing a new workbook, 100k rows of 25 and all our sheets',
    yardstick: 'exceljs writeBuffer of the list’s sheet alone',
    mostTime: 0.35,
    mostMegabytes: 1024,
    ourTimes: 3,
    theirTimes: 1,
    prepare: () => [String(ROWS)],
  });
}
