import {
  boundsOf,
  circle,
  type Dimension,
  type Drawing,
  drawable,
  type Point,
  polyline,
  rectangle,
  type Shape,
} from '../drawing.ts';
import { type PicturedRow, UNIT_WORDS, verdictSentence } from '../pictured-row.ts';
import { type Area, areaOf, type Sizes } from './area.ts';
import { type Distance, describeDistance, planDistances } from './distances.ts';

const SIDE_NAMES = { edge: 'Sheet edge', bend: 'Bend', neighbour: 'Next hole' } as const;

/**
 * The hole from above with edge, bend and neighbour at true scale, as given and as needed: the edge to the right, the bend below, the
 * neighbour to the left. The centre of the hole is 0, 0. Null where the list gives none of the three.
 */
export function drawPlan(row: PicturedRow): Drawing | null {
  const { part, shop } = row;
  const sizes = sizesOf(row);
  const distances = planDistances(row);
  if (!distances.some(({ givenMm }) => givenMm !== null)) return null;
  const drawn = distances.filter(({ isDrawn }) => isDrawn);
  const area = areaOf(sizes, drawn);
  const shapes = [
    rectangle('sheet', 'face', area.corner, area.end),
    ...drawn.flatMap((distance) => straightThings(distance, area, sizes)),
    ...roundThings(sizes, area),
    ...centreLines(area),
  ];
  const { least, most } = boundsOf(shapes);
  return {
    kind: 'plan',
    scale: 'true',
    title: `From above, true scale (${shop.units})`,
    summary: `The hole from above, in ${UNIT_WORDS[shop.units]}: ${distances.map(describeDistance).join('; ')}. ${verdictSentence(row)}`,
    corner: least,
    widthMm: most.x - least.x,
    heightMm: most.y - least.y,
    shapes,
    dimensions: drawn.flatMap((distance) => dimensionsOf(distance, area)),
    labels: [],
    notKnown: [
      ...(sizes.holeMm === null ? ['hole'] : sizes.holeIsGiven ? [] : ['hole on the list']),
      ...(part && sizes.flangeMm === null ? ['flange'] : []),
    ],
    notes: [...distances.flatMap(notesOf), ...sidesNote(distances)],
  };
}

function sizesOf({ line, part }: PicturedRow): Sizes {
  const { how, mm } = line.line.hole;
  const givenMm = how === 'size' ? drawable(mm) : null;
  return {
    holeMm: givenMm ?? drawable(part?.holeMm),
    holeIsGiven: givenMm !== null,
    flangeMm: drawable(part?.flangeMm),
  };
}

/** The hole, blue where only the catalogue tells it, the flange around it, and the neighbour's hole, of which only its place is known. */
function roundThings({ holeMm, holeIsGiven, flangeMm }: Sizes, { neighbourMm }: Area): readonly Shape[] {
  const centre = { x: 0, y: 0 };
  return [
    ...(flangeMm === null ? [] : [circle('flange', 'thread', centre, flangeMm / 2)]),
    ...(holeMm === null ? [] : [circle('hole', holeIsGiven ? 'outline' : 'asked', centre, holeMm / 2)]),
    ...(neighbourMm === null ? [] : [circle('neighbour', 'unknown', { x: -neighbourMm, y: 0 }, (holeMm ?? 2) / 2)]),
  ];
}

/** Through the hole, and down through its neighbour, as far as the sheet is drawn: the dimensions start there. */
function centreLines({ corner, end, neighbourMm }: Area): readonly Shape[] {
  const line = (name: string, from: Point, to: Point) => polyline(name, 'axis', [from, to]);
  const leftMm = neighbourMm === null ? corner.y : corner.x;
  return [
    line('centre-across', { x: leftMm, y: 0 }, { x: end.x, y: 0 }),
    line('centre-down', { x: 0, y: corner.y }, { x: 0, y: end.y }),
    ...(neighbourMm === null
      ? []
      : [line('centre-neighbour', { x: -neighbourMm, y: corner.y }, { x: -neighbourMm, y: end.y })]),
  ];
}

/** Edge and bend as lines at their distance, the needed distance in blue, and what is missing between the two. */
function straightThings(distance: Distance, area: Area, { holeMm }: Sizes): readonly Shape[] {
  const { what, givenMm, neededMm, missing } = distance;
  const [from, to] = spanOf(what, area, holeMm);
  const place = (mm: number, along: number): Point =>
    what === 'bend' ? { x: along, y: mm } : { x: what === 'edge' ? mm : -mm, y: along };
  const at = (name: string, look: 'outline' | 'asked', mm: number) =>
    polyline(name, look, [place(mm, from), place(mm, to)]);
  return [
    ...(missing !== null && givenMm !== null && neededMm !== null
      ? [rectangle(`${what}-missing`, 'wrong', place(givenMm, from), place(neededMm, to), missing)]
      : []),
    ...(givenMm === null || what === 'neighbour' ? [] : [at(what, 'outline', givenMm)]),
    ...(neededMm === null ? [] : [at(`${what}-needed`, 'asked', neededMm)]),
  ];
}

/** How far a line reaches along the sheet; beside a neighbour only as far as the holes. */
function spanOf(what: Distance['what'], { corner, end }: Area, holeMm: number | null): readonly [number, number] {
  if (what === 'bend') return [corner.x, end.x];
  if (what === 'edge') return [corner.y, end.y];
  return [-(holeMm ?? 2) / 2, (holeMm ?? 2) / 2];
}

/** Given and needed, each from the centre of the hole. */
function dimensionsOf({ what, givenMm, neededMm, given, needed, mark }: Distance, { end }: Area): readonly Dimension[] {
  const on = (name: string, mm: number, line: string, how: Partial<Dimension>): Dimension => {
    const [fromMm, toMm] = what === 'neighbour' ? [-mm, 0] : [0, mm];
    const [side, startMm] = what === 'bend' ? (['right', end.x] as const) : (['below', end.y] as const);
    return { name, side, fromMm, toMm, startMm, lines: [line], ...how };
  };
  return [
    ...(givenMm === null ? [] : [on(what, givenMm, given, mark)]),
    ...(neededMm === null || needed === null ? [] : [on(`${what}-needed`, neededMm, needed, { asked: true })]),
  ];
}

/** Only how far things are is on the list. */
function sidesNote(distances: readonly Distance[]): readonly string[] {
  const given = distances.filter(({ givenMm }) => givenMm !== null);
  return given.length > 1 ? ['On which side of the hole each of them lies, the list does not say.'] : [];
}

function notesOf(distance: Distance): readonly string[] {
  const { what, isDrawn, note } = distance;
  const beyond = isDrawn ? [] : [`${SIDE_NAMES[what]} beyond the drawing: ${describeDistance(distance)}.`];
  return [...beyond, ...(note === null ? [] : [note])];
}
