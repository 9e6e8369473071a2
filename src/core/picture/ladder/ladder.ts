import { type Drawing, type Label, polyline, type Shape } from '../drawing.ts';
import { findingOf, type PicturedRow } from '../pictured-row.ts';
import { type BandGroup, bandGroups, describeBand } from './bands.ts';
import { groupOnScale, rowsOf } from './group.ts';
import { ladderNotes } from './notes.ts';
import { type HardnessScaleEnds, scaleEnds, scaleSteps, showPoints } from './scale.ts';

/** Sheet metals drawn where there is room for a long ladder, all groups together. */
const MOST_BANDS = 16;

/**
 * Fastener and sheet on one Rockwell B scale: one point across is one mm, and y counts rows of text. Everything shown is what the
 * hardness check compared; of more than `mostBands` sheet metals the hardest, as those decide. Null where neither side has a hardness, or the part is not on file.
 */
export function drawHardness(row: PicturedRow, mostBands = MOST_BANDS): Drawing | null {
  const all = bandGroups(row);
  const most = Math.max(Math.floor(mostBands / all.length), 1);
  const groups = all.map((group) => ({ ...group, bands: group.bands.slice(-most) }));
  const ends = scaleEnds(groups);
  if (!ends) return null;
  let top = 0;
  const drawn = groups.map((group, at) => {
    const on = groupOnScale(group, ends, top, groups.length > 1 ? `-${at}` : '');
    top += rowsOf(group);
    return on;
  });
  const scale = axis(ends, top);
  return {
    kind: 'hardness',
    scale: 'points',
    title: 'Hardness, on one Rockwell B scale',
    summary: summarise(row, groups),
    corner: { x: ends.from, y: 0 },
    widthMm: ends.to - ends.from,
    heightMm: top + 1.2,
    shapes: [...drawn.flatMap(({ shapes }) => shapes), ...scale.shapes],
    dimensions: [],
    labels: [...scale.labels, ...drawn.flatMap(({ labels }) => labels)],
    notKnown: missing(groups),
    notes: ladderNotes(row, all, groups),
  };
}

/** The scale itself, with a number at each ten. */
function axis(
  { from, to }: HardnessScaleEnds,
  y: number,
): { readonly shapes: readonly Shape[]; readonly labels: readonly Label[] } {
  const steps = scaleSteps({ from, to });
  const line = polyline('scale', 'tick', [
    { x: from, y },
    { x: to, y },
  ]);
  const ticks = steps.map((step) =>
    polyline(`tick-${step}`, 'tick', [
      { x: step, y: y - 0.15 },
      { x: step, y: y + 0.2 },
    ]),
  );
  const labels = steps.map(
    (step): Label => ({ name: `step-${step}`, text: String(step), at: { x: step, y: y + 1.1 }, anchor: 'middle' }),
  );
  return { shapes: [line, ...ticks], labels };
}

function missing(groups: readonly BandGroup[]): readonly string[] {
  const bands = groups.flatMap((group) => group.bands);
  return [
    ...(groups.some(({ fastenerHrb }) => fastenerHrb === null) ? ['hardness of the fastener'] : []),
    ...(bands.some(({ typicalHrb }) => typicalHrb === null) ? ['hardness of the sheet'] : []),
  ];
}

function summarise(row: PicturedRow, groups: readonly BandGroup[]): string {
  const texts = groups.map(({ fastenerName, fastenerHrb, limitHrb, bands }) => {
    const who = groups.length > 1 ? fastenerName : 'fastener';
    return [
      fastenerHrb === null ? `${who} not known` : `${who} at least ${showPoints(fastenerHrb)}`,
      ...bands.map((band) => `${describeBand(band)} (${band.outcome})`),
      ...(limitHrb === null ? [] : [`asked for is sheet up to ${showPoints(limitHrb)}`]),
    ].join('; ');
  });
  const finding = findingOf(row, 'clinch/hardness');
  const says = finding ? ` The check says ${finding.outcome}: ${finding.brief}.` : '';
  return `Hardness of fastener and sheet on one Rockwell B scale: ${texts.join('. ')}.${says}`;
}
