import type { Dimension } from '../drawing.ts';
import { findingOf, markOf, type PicturedRow, showMm } from '../pictured-row.ts';
import type { SectionFrame } from './frame.ts';
import type { SectionNumbers } from './numbers.ts';
import { partDimensions } from './part-dimensions.ts';
import { thicknessOff } from './wrong.ts';

/** The dimension lines of a section: sheet on the left, part on the right, hole and edge below. */
export function sectionDimensions(
  row: PicturedRow,
  numbers: SectionNumbers,
  frame: SectionFrame,
): readonly Dimension[] {
  return [
    ...thickness(row, numbers, frame),
    ...thicknessNeeded(row, numbers, frame),
    ...thicknessWrong(row, numbers, frame),
    ...partDimensions(row, numbers, frame),
    ...hole(row, numbers, frame),
    ...coatedHole(row, frame),
    ...edge(row, numbers, frame),
  ];
}

function thickness(row: PicturedRow, numbers: SectionNumbers, { leftMm, bottomMm }: SectionFrame) {
  const { thicknessMm, thinnestMm } = numbers;
  if (bottomMm === null) return [];
  const lines =
    thicknessMm === null
      ? ['sheet not given', ...limitLines(row, numbers)]
      : [`sheet ${showMm(thicknessMm, row)}`, ...(thinnestMm === null ? [] : [`thinnest ${showMm(thinnestMm, row)}`])];
  const dimension: Dimension = {
    name: 'thickness',
    side: 'left',
    fromMm: 0,
    toMm: bottomMm,
    startMm: leftMm,
    lines,
    ...(thicknessMm === null ? { asked: true } : {}),
    ...markOf(row, 'clinch/sheet-thickness'),
  };
  return [dimension];
}

/** What the part needs, beside what there is. */
function thicknessNeeded(row: PicturedRow, numbers: SectionNumbers, { leftMm }: SectionFrame): Dimension[] {
  const { thicknessMm, sheetMinMm } = numbers;
  if (thicknessMm === null || sheetMinMm === null) return [];
  const lines = limitLines(row, numbers);
  return [{ name: 'thickness-needed', side: 'left', fromMm: 0, toMm: sheetMinMm, startMm: leftMm, lines, asked: true }];
}

function limitLines(row: PicturedRow, { sheetMinMm, sheetMaxMm }: SectionNumbers): readonly string[] {
  return [
    ...(sheetMinMm === null ? [] : [`needs ${showMm(sheetMinMm, row)}`]),
    ...(sheetMaxMm === null ? [] : [`at most ${showMm(sheetMaxMm, row)}`]),
  ];
}

/** By how much the sheet is too thin or too thick. */
function thicknessWrong(row: PicturedRow, { thicknessMm }: SectionNumbers, { leftMm }: SectionFrame): Dimension[] {
  const off = thicknessOff(row);
  if (!off || thicknessMm === null) return [];
  const { fromMm, toMm, outcome, what } = off;
  const by = showMm(toMm - fromMm, row);
  const line = what === 'may lack' ? `may lack ${by}` : `${by} ${what}`;
  return [{ name: 'thickness-off', side: 'left', fromMm, toMm, startMm: leftMm, lines: [line], outcome }];
}

function hole(row: PicturedRow, numbers: SectionNumbers, { wallMm, bottomMm }: SectionFrame): Dimension[] {
  if (wallMm === null) return [];
  const { givenHoleMm, holeLowMm, holeHighMm } = numbers;
  const finding = findingOf(row, 'clinch/hole');
  const needs =
    holeLowMm === null || holeHighMm === null ? [] : [`needs ${showMm(holeLowMm, row)} to ${showMm(holeHighMm, row)}`];
  const given = givenHoleMm === null ? 'hole not given' : `hole ${showMm(givenHoleMm, row)}`;
  const { offMm, smallestMm, largestMm } = finding?.values ?? {};
  const off =
    offMm !== undefined
      ? [`${showMm(offMm, row)} too ${finding?.says === 'over' ? 'large' : 'small'}`]
      : smallestMm !== undefined && largestMm !== undefined
        ? [`may come out ${showMm(smallestMm, row)} to ${showMm(largestMm, row)}`]
        : [];
  const dimension: Dimension = {
    name: 'hole',
    side: 'below',
    fromMm: -wallMm,
    toMm: wallMm,
    startMm: bottomMm ?? 0,
    lines: [[given, ...needs].join(', '), ...off],
    ...(givenHoleMm === null ? { asked: true } : {}),
    ...markOf(row, 'clinch/hole'),
  };
  return [dimension];
}

/** The hole that the coating leaves. */
function coatedHole(row: PicturedRow, { bottomMm, wallMm }: SectionFrame): Dimension[] {
  const finding = findingOf(row, 'finish/hole-closing');
  const { closedHoleMm, holeLowMm, holeHighMm } = finding?.values ?? {};
  if (closedHoleMm === undefined || !(closedHoleMm >= 0) || wallMm === null || closedHoleMm / 2 >= wallMm) return [];
  const needs =
    holeLowMm === undefined || holeHighMm === undefined
      ? ''
      : `, needs ${showMm(holeLowMm, row)} to ${showMm(holeHighMm, row)}`;
  const dimension: Dimension = {
    name: 'coated-hole',
    side: 'below',
    fromMm: -closedHoleMm / 2,
    toMm: closedHoleMm / 2,
    startMm: bottomMm ?? 0,
    lines: [`coated ${showMm(closedHoleMm, row)}${needs}`],
    ...markOf(row, 'finish/hole-closing'),
  };
  return [dimension];
}

function edge(row: PicturedRow, { edgeMm, edgeMinMm }: SectionNumbers, frame: SectionFrame): Dimension[] {
  if (!frame.edgeIsDrawn || edgeMm === null || edgeMinMm === null) return [];
  const startMm = frame.bottomMm ?? 0;
  return [
    {
      name: 'edge',
      side: 'below',
      fromMm: 0,
      toMm: edgeMm,
      startMm,
      lines: [`edge ${showMm(edgeMm, row)}, needs ${showMm(edgeMinMm, row)}`],
      ...markOf(row, 'clinch/edge'),
    },
    {
      name: 'edge-off',
      side: 'below',
      fromMm: edgeMm,
      toMm: edgeMinMm,
      startMm,
      lines: [`${showMm(edgeMinMm - edgeMm, row)} too close`],
      outcome: 'fails',
    },
  ];
}
