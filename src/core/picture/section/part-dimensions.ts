import type { Dimension } from '../drawing.ts';
import { markOf, type PicturedRow, showMm } from '../pictured-row.ts';
import type { SectionFrame } from './frame.ts';
import type { SectionNumbers } from './numbers.ts';
import { holderHighMm } from './rods.ts';
import { shankProud } from './wrong.ts';

/** The dimension lines of the part, on the right: its height or length, and its shank. */
export function partDimensions(row: PicturedRow, numbers: SectionNumbers, frame: SectionFrame): readonly Dimension[] {
  return [...partHeight(row, numbers, frame), ...shank(row, numbers, frame)];
}

function partHeight(row: PicturedRow, numbers: SectionNumbers, frame: SectionFrame): readonly Dimension[] {
  const { kind, heightMm, lengthMm, flangeMm, majorMm } = numbers;
  const [flange, thread] = [(flangeMm ?? 0) / 2, (majorMm ?? 0) / 2];
  const on = (name: string, mm: number | null, startMm: number, fromMm: number): readonly Dimension[] =>
    mm === null
      ? []
      : [{ name, side: 'right', fromMm, toMm: fromMm + mm, startMm, lines: [`${name} ${showMm(mm, row)}`] }];
  const height = on('height', heightMm, flange, -(heightMm ?? 0));
  switch (kind) {
    case 'clinch nut':
    case 'floating nut':
      return height;
    case 'captive screw':
      return [...height, ...on('length', majorMm && lengthMm, thread, -holderHighMm(numbers, frame))];
    case 'through standoff':
    case 'blind standoff': {
      const longMm = lengthMm ?? heightMm;
      return on('length', longMm, flange, -(longMm ?? 0));
    }
    case 'clinch stud':
    case 'clinch pin':
      return on('length', lengthMm, thread, (frame.bottomMm ?? 0) - (lengthMm ?? 0));
    case null:
      return [];
  }
}

function shank(row: PicturedRow, numbers: SectionNumbers, frame: SectionFrame): readonly Dimension[] {
  const { shankMm, kind } = numbers;
  const half = frame.shankHalfMm;
  if (shankMm === null || half === null || kind === null) return [];
  const isFromBelow = kind === 'clinch stud' || kind === 'clinch pin';
  const fromMm = isFromBelow ? (frame.bottomMm ?? 0) - shankMm : 0;
  const lines = [`shank ${showMm(shankMm, row)}`];
  const own: Dimension = { name: 'shank', side: 'right', fromMm, toMm: fromMm + shankMm, startMm: half, lines };
  const proud = shankProud(row, numbers, frame);
  if (!proud) return [{ ...own, ...markOf(row, 'clinch/shank') }];
  const by = showMm(Math.abs(proud.toMm - proud.fromMm), row);
  const line = proud.outcome === 'marginal' ? `may stand ${by} proud` : `${by} proud`;
  const ends = { fromMm: Math.min(proud.fromMm, proud.toMm), toMm: Math.max(proud.fromMm, proud.toMm) };
  return [
    own,
    { name: 'proud', side: 'right', ...ends, startMm: frame.rightMm, lines: [line], outcome: proud.outcome },
  ];
}
