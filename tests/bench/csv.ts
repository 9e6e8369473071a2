import Papa from 'papaparse';
import { createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { type JudgedList, judgeList, toAuditedList } from '../../src/core/engine/audit-list.ts';
import { buildList } from '../../src/core/intake/build-list.ts';
import type { HardwareList } from '../../src/core/model/list.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';
import { makeList, type Repetition } from './lists.ts';
import { type Measured, timeInTurns } from './measured.ts';

const YARDSTICK = 'Papa.parse of the same text';
const SMALL = 1_000;
const MIDDLE = 10_000;
const LARGE = 100_000;
/** What the whole way may take over cutting the text into cells, and what judging alone may. */
const MOST_WHOLE: Readonly<Record<Repetition, number>> = { realistic: 2.5, none: 6 };
const MOST_JUDGING: Readonly<Record<Repetition, number | null>> = { realistic: 1, none: null };
const MOST_PER_ROW = 1.2;

/** From the bytes of a CSV file to all findings, over cutting its text into cells and nothing else. */
export async function measure(): Promise<readonly Measured[]> {
  return [...(await measureKind('realistic')), ...(await measureKind('none'))];
}

async function measureKind(repetition: Repetition): Promise<readonly Measured[]> {
  const sizes = [SMALL, MIDDLE, LARGE] as const;
  const taken = new Map<number, Taken>();
  for (const rows of sizes) taken.set(rows, await timeList(rows, repetition));
  const perRow = (rows: number) => (taken.get(rows)?.whole ?? Number.NaN) / rows;
  const growth = perRow(LARGE) / perRow(SMALL);
  return [
    ...sizes.flatMap((rows) => linesOf(rows, repetition, taken.get(rows)!)),
    {
      what: `${repetition}, a row of 100k`,
      medianMs: perRow(LARGE),
      ratio: growth,
      yardstick: 'a row of 1k',
      target: MOST_PER_ROW,
    },
  ];
}

type Taken = Awaited<ReturnType<typeof timeList>>;

function linesOf(rows: number, repetition: Repetition, taken: Taken): readonly Measured[] {
  const line = (what: string, ms: number, target: number | null): Measured => ({
    what: `${repetition}, ${rows / 1000}k rows: ${what}`,
    medianMs: ms,
    ratio: ms / taken.yardstick,
    yardstick: YARDSTICK,
    target: rows === LARGE ? target : null,
  });
  return [
    line('Papa.parse', taken.yardstick, null),
    line('bytes to raw cells', taken.cells, null),
    line('raw cells to lines', taken.lines, null),
    line('judging', taken.judging, MOST_JUDGING[repetition]),
    line('bytes to all findings', taken.whole, MOST_WHOLE[repetition]),
  ];
}

/** Each step with what it starts from made afresh, so that nothing kept for one run is found by the next. */
async function timeList(rows: number, repetition: Repetition) {
  const { list: bytes, catalogue } = makeList(rows, repetition);
  const text = new TextDecoder().decode(bytes);
  const catalogues = [importCatalogue(readFile(catalogue, 'parts.csv'))];
  const judge = (list: HardwareList): JudgedList => judgeList(list, createBasis(catalogues, DEFAULT_SHOP));
  const file = () => readFile(bytes, 'list.csv');
  let raw = file();
  let read = buildList(raw);
  return timeInTurns({
    yardstick: () => Papa.parse(text, { header: false }),
    cells: () => {
      raw = file();
    },
    lines: () => {
      read = buildList(raw);
    },
    judging: () => toAuditedList(judge(read)),
    whole: () => toAuditedList(judge(buildList(file()))),
  });
}
