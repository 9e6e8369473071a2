import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { hold } from './children.ts';
import type { Measured } from './measured.ts';
import { makeWorkbook } from './workbooks.ts';

const ROWS = 100_000;

/** From the bytes of a workbook to those of the same with the judgement in it. */
export function measure(): Promise<readonly Measured[]> {
  return hold({
    script: 'annotate-once',
    what: 'writing into a workbook, 100k rows of 25, with all our sheets',
    yardstick: 'exceljs load and writeBuffer of the same file',
    mostTime: 0.2,
    mostMegabytes: null,
    ourTimes: 3,
    theirTimes: 1,
    prepare: (folder) => {
      const file = join(folder, 'list.xlsx');
      writeFileSync(file, makeWorkbook(ROWS, 'realistic'));
      return [file];
    },
  });
}
