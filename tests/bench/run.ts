import { cpus } from 'node:os';
import type { Measured, Part } from './measured.ts';

/** The parts in the order of the table; `npm run bench -- csv` runs one. */
const parts = import.meta.glob<Part>(['./csv.ts', './read-xlsx.ts', './write.ts', './annotate.ts', './browser.ts']);
const HEAD = ['what', 'median', 'ratio', 'over', 'at most', ''] as const;

const asked = process.argv.slice(2);
const names = ['csv', 'read-xlsx', 'write', 'annotate', 'browser'];
const unknown = asked.find((name) => !names.includes(name));
if (unknown !== undefined) throw new Error(`There is no part “${unknown}”; there are ${names.join(', ')}.`);

const rows: Measured[] = [];
for (const name of names.filter((one) => asked.length === 0 || asked.includes(one))) {
  console.error(`${name} …`);
  const part = await parts[`./${name}.ts`]?.();
  rows.push(...((await part?.measure()) ?? []));
}
console.log(tableOf([HEAD, ...rows.map(cellsOf)]));
console.log(`\nNode ${process.version}, ${cpus().length} × ${cpus()[0]?.model.trim()}`);
process.exit(rows.every(isMet) ? 0 : 1);

function cellsOf(measured: Measured): readonly string[] {
  const { what, medianMs, unit, ratio, yardstick, target } = measured;
  const show = (value: number) => (unit === undefined ? showMs(value) : `${value.toFixed(0)} ${unit}`);
  const most = target === null ? '' : ratio === null ? show(target) : showRatio(target);
  const verdict = target === null ? '' : isMet(measured) ? 'met' : 'NOT MET';
  return [what, show(medianMs), ratio === null ? '' : showRatio(ratio), yardstick, most, verdict];
}

function isMet({ medianMs, ratio, target }: Measured): boolean {
  return target === null || (ratio ?? medianMs) <= target;
}

function showMs(ms: number): string {
  return ms < 10 ? `${ms.toFixed(2)} ms` : `${ms.toFixed(0)} ms`;
}

function showRatio(ratio: number): string {
  return `${ratio.toFixed(2)} ×`;
}

function tableOf(lines: readonly (readonly string[])[]): string {
  const widths = HEAD.map((_, at) => Math.max(...lines.map((cells) => cells[at]?.length ?? 0)));
  const isNumber = (at: number) => at === 1 || at === 2 || at === 4;
  const show = (cell: string, at: number) =>
    isNumber(at) ? cell.padStart(widths[at] ?? 0) : cell.padEnd(widths[at] ?? 0);
  return lines.map((cells) => cells.map(show).join('  ').trimEnd()).join('\n');
}
