import Papa from 'papaparse';
import { createBasis } from '../../src/core/audit.ts';
import { importCatalogue } from '../../src/core/catalogue/import.ts';
import { judgeList, toAuditedList } from '../../src/core/engine/audit-list.ts';
import { buildList } from '../../src/core/intake/build-list.ts';
import { DEFAULT_SHOP } from '../../src/core/model/shop.ts';
import { readFile } from '../../src/io/read-file.ts';
import { makeList, type Repetition } from './lists.ts';
import { type Measured, medianOf, timeInTurns } from './measured.ts';

const YARDSTICK = 'Papa.parse of the same text';
const SMALL = 1_000;
const LARGE = 100_000;
/** A small list is soon read, and needs more rounds to be told apart from noise. */
const ROUNDS: Readonly<Record<number, number>> = { [SMALL]: 15, [LARGE]: 3 };
/** What the whole way may take over cutting the text into cells, and what judging alone may. */
const MOST_WHOLE: Readonly<Record<Repetition, number>> = { realistic: 2.5, none: 6 };
const MOST_JUDGING: Readonly<Record<Repetition, number | null>> = { realistic: 1, none: null };
const MOST_PER_ROW = 1.2;

/** From the bytes of a CSV file to all findings, over cutting its text into cells and nothing else. */
export async function measure(): Promise<readonly Measured[]> {
  return [...(await measureKind('realistic')), ...(await measureKind('none'))];
}

async function measureKind(repetition: Repetition): Promise<readonly Measured[]> {
  const sizes = [SMALL, LARGE] as const;
  const taken = new Map<number, Taken>();
  for (const rows of sizes) {
    const list = await timeList(rows, repetition);
    taken.set(rows, list);
    console.error(`  ${repetition}, ${rows / 1000}k rows: ${(list.whole / list.yardstick).toFixed(2)} ×`);
  }
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

/** Every time from the bytes on, so that nothing kept for one run is found by the next; the steps are those of the same runs. */
async function timeList(rows: number, repetition: Repetition) {
  const { list: bytes, catalogue } = makeList(rows, repetition);
  const text = new TextDecoder().decode(bytes);
  const catalogues = [importCatalogue(readFile(catalogue, 'parts.csv'))];
  const steps: (readonly [cells: number, lines: number, judging: number])[] = [];
  const auditStepwise = () => {
    const start = performance.now();
    const raw = readFile(bytes, 'list.csv');
    const cut = performance.now();
    const list = buildList(raw);
    const read = performance.now();
    const audited = toAuditedList(judgeList(list, createBasis(catalogues, DEFAULT_SHOP)));
    steps.push([cut - start, read - cut, performance.now() - read]);
    return audited;
  };
  const jobs = { yardstick: () => Papa.parse(text, { header: false }), whole: auditStepwise };
  const taken = await timeInTurns(jobs, ROUNDS[rows]);
  const stepOf = (at: 0 | 1 | 2) => medianOf(steps.slice(1).map((times) => times[at]));
  return { ...taken, cells: stepOf(0), lines: stepOf(1), judging: stepOf(2) };
}
