import { type Label, polyline, rectangle, type Shape } from '../drawing.ts';
import { type BandGroup, describeBand, type HardnessBand } from './bands.ts';
import { type HardnessScaleEnds, showPoints } from './scale.ts';

/** Beyond this the scale is no longer told apart: what is harder counts as this. */
const HIGHEST_HRB = 110;
/** Rows of text: two above the bands, two for each band. */
const HEAD_ROWS = 2.6;
const BAND_ROWS = 2.1;

/** How many rows a group takes. */
export function rowsOf({ bands }: BandGroup): number {
  return HEAD_ROWS + bands.length * BAND_ROWS + 0.5;
}

/** One fastener hardness with its gap and limit, and the sheets that are compared with it. */
export function groupOnScale(
  group: BandGroup,
  ends: HardnessScaleEnds,
  top: number,
  ending: string,
): {
  readonly shapes: readonly Shape[];
  readonly labels: readonly Label[];
} {
  const bottom = top + rowsOf(group);
  const bands = group.bands.map((band, at) => {
    const y = top + HEAD_ROWS + at * BAND_ROWS;
    return {
      shapes: bandShapes(band, group, ends, y, `${at}${ending}`),
      label: bandLabel(band, group, ends, y, `${at}${ending}`),
    };
  });
  return {
    shapes: [
      ...scatterShape(group, top + 2.3, bottom, ending),
      ...bands.flatMap(({ shapes }) => shapes),
      ...upright('limit', 'asked', group.limitHrb, top + 2.3, bottom, ending),
      ...upright('fastener', 'fastener', group.fastenerHrb, top + 1.1, bottom, ending),
      ...gap(group, top + 2.3, ending),
    ],
    labels: [...headLabels(group, top, ending), ...bands.map(({ label }) => label)],
  };
}

function upright(name: string, look: 'asked' | 'fastener', x: number | null, from: number, to: number, ending: string) {
  if (x === null) return [];
  return [
    polyline(`${name}${ending}`, look, [
      { x, y: from },
      { x, y: to },
    ]),
  ];
}

/** The points that fastener and sheet have to be apart; with a limit of the catalogue there is no such gap. */
function gap({ fastenerHrb, limitHrb, limitGiven }: BandGroup, y: number, ending: string): readonly Shape[] {
  if (fastenerHrb === null || limitHrb === null || limitGiven !== null) return [];
  return [
    polyline(`gap${ending}`, 'asked', [
      { x: limitHrb, y },
      { x: fastenerHrb, y },
    ]),
  ];
}

function scatterShape({ limitHrb, scatter }: BandGroup, from: number, to: number, ending: string): readonly Shape[] {
  if (limitHrb === null || scatter === null) return [];
  return [
    rectangle(`scatter${ending}`, 'scatter', { x: limitHrb - scatter, y: from }, { x: limitHrb + scatter, y: to }),
  ];
}

function bandShapes(
  band: HardnessBand,
  { limitHrb }: BandGroup,
  { from }: HardnessScaleEnds,
  y: number,
  name: string,
): readonly Shape[] {
  const { typicalHrb, maxHrb, typicalIsBelow, outcome } = band;
  if (typicalHrb === null) return [];
  const [high, low] = [y + 1, y + 1.75];
  const right = maxHrb ?? typicalHrb;
  const left = typicalIsBelow ? from : typicalHrb;
  const shapes = [rectangle(`band-${name}`, 'band', { x: left, y: high }, { x: right, y: low })];
  const over = limitHrb === null ? right : Math.max(left, limitHrb);
  const isWrong = outcome === 'fails' || outcome === 'marginal';
  if (isWrong && right > over)
    shapes.push(rectangle(`over-${name}`, 'wrong', { x: over, y: high }, { x: right, y: low }, outcome));
  // Below its foot the scale has no numbers, and without a published maximum there is no end: both stay open.
  if (typicalIsBelow) shapes.push(openEnd(`foot-${name}`, from, high, low, -1));
  if (maxHrb === null) shapes.push(openEnd(`no-maximum-${name}`, right, high, low, 1));
  return shapes;
}

function openEnd(name: string, x: number, high: number, low: number, way: 1 | -1): Shape {
  const middle = (high + low) / 2;
  return polyline(name, 'unknown', [
    { x, y: high },
    { x: x + way * 1.6, y: middle },
    { x, y: low },
  ]);
}

function bandLabel(
  band: HardnessBand,
  { fastenerHrb }: BandGroup,
  { from, to }: HardnessScaleEnds,
  y: number,
  name: string,
): Label {
  const left = band.typicalHrb === null || band.typicalIsBelow ? from : band.typicalHrb;
  return {
    name: `band-${name}`,
    text: describeBand(band),
    at: { x: left, y: y + 0.75 },
    anchor: 'start',
    ...(fastenerHrb === null || fastenerHrb > to ? {} : { leftOfMm: fastenerHrb }),
    outcome: band.outcome,
  };
}

function headLabels(
  { fastenerName, fastenerHrb, limitHrb, limitGiven }: BandGroup,
  top: number,
  ending: string,
): readonly Label[] {
  const labels: Label[] = [];
  if (fastenerHrb !== null) {
    const who = ending === '' ? 'fastener' : fastenerName;
    const text =
      fastenerHrb >= HIGHEST_HRB ? `${who} ${HIGHEST_HRB} or more` : `${who} at least ${showPoints(fastenerHrb)}`;
    labels.push({ name: `fastener${ending}`, text, at: { x: fastenerHrb, y: top + 0.8 }, anchor: 'end' });
  }
  if (limitHrb === null) return labels;
  const isGap = fastenerHrb !== null && limitGiven === null;
  if (isGap)
    labels.push({
      name: `gap${ending}`,
      text: `${showPoints(fastenerHrb - limitHrb)} points`,
      at: { x: (fastenerHrb + limitHrb) / 2, y: top + 1.85 },
      anchor: 'middle',
      asked: true,
    });
  const text =
    limitGiven === null ? `sheet up to ${showPoints(limitHrb)}` : `catalogue: sheet up to ${showPoints(limitHrb)}`;
  labels.push({ name: `limit${ending}`, text, at: { x: limitHrb, y: top + 1.85 }, anchor: 'end', asked: true });
  return labels;
}
