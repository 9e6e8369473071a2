import { boundsOf, type Drawing, polyline, type Shape } from '../drawing.ts';
import { findingOf, markOf, type PicturedRow, showMm, UNIT_WORDS, verdictSentence } from '../pictured-row.ts';
import { sectionDimensions } from './dimensions.ts';
import { sectionFrame } from './frame.ts';
import { type SectionNumbers, sectionNumbers } from './numbers.ts';
import { partShapes } from './part.ts';
import { sheetShapes } from './sheet.ts';
import { wrongShapes } from './wrong.ts';

/**
 * The part in its sheet, cut through the axis of the hole, at true scale. The seat (upper face of the sheet) is y = 0, the axis x = 0.
 * What is not known is dashed and named, what is wrong is marked where it is wrong. Null where neither sheet nor hole nor part is known.
 */
export function drawSection(row: PicturedRow): Drawing | null {
  const numbers = sectionNumbers(row);
  if (!row.part && numbers.thicknessMm === null && numbers.givenHoleMm === null) return null;
  const frame = sectionFrame(row, numbers);
  const part = row.part ? partShapes(numbers, frame) : { shapes: [], notKnown: ['the fastener'], notes: [] };
  const solid = [...sheetShapes(numbers, frame), ...part.shapes, ...wrongShapes(row, numbers, frame)];
  const shapes = [...solid, ...axis(solid)];
  const { least, most } = boundsOf(shapes);
  const dimensions = sectionDimensions(row, numbers, frame);
  const notKnown = [...missingOfSheet(row, numbers), ...part.notKnown];
  return {
    kind: 'section',
    scale: 'true',
    title: `Section, true scale (${row.shop.units})`,
    summary: summarise(
      row,
      dimensions.map(({ lines }) => lines.join(', ')),
      notKnown,
    ),
    corner: least,
    widthMm: most.x - least.x,
    heightMm: most.y - least.y,
    shapes,
    dimensions,
    labels: [],
    notKnown,
    notes: [...part.notes, ...leftOut(part.shapes), ...severalThicknesses(row, numbers)],
  };
}

/** The line through the middle reaches a little beyond what it is the middle of. */
function axis(shapes: readonly Shape[]): readonly Shape[] {
  const { least, most } = boundsOf(shapes);
  const beyond = Math.max((most.x - least.x) * 0.03, 0.1);
  return [
    polyline('axis', 'axis', [
      { x: 0, y: least.y - beyond },
      { x: 0, y: most.y + beyond },
    ]),
  ];
}

function missingOfSheet({ part }: PicturedRow, numbers: SectionNumbers): readonly string[] {
  return [
    ...(numbers.thicknessMm === null ? ['sheet thickness'] : []),
    ...(part && numbers.sheetMinMm === null ? ['minimum sheet of the part'] : []),
    ...(numbers.givenHoleMm === null ? ['hole on the list'] : []),
  ];
}

/** What every part has and no catalogue gives. */
function leftOut(part: readonly Shape[]): readonly string[] {
  if (part.length === 0) return [];
  const hasShank = part.some(({ name }) => name.startsWith('shank'));
  const width = hasShank ? '; the shank is drawn as wide as the hole that the part asks for' : '';
  return [`Groove and knurl are left out${width}.`];
}

/** Where the words allow several metals with several thicknesses, the least is drawn. */
function severalThicknesses(row: PicturedRow, { thicknessMm }: SectionNumbers): readonly string[] {
  const isVague = row.line.line.thickness.how === 'gauge' && row.line.line.material.candidates.length > 1;
  if (!isVague || thicknessMm === null) return [];
  return [
    `The gauge number means other thicknesses in other metals: the least of those possible, ${showMm(thicknessMm, row)}, is drawn.`,
  ];
}

function summarise(row: PicturedRow, texts: readonly string[], notKnown: readonly string[]): string {
  const { part, line, shop } = row;
  const what = part
    ? [part.kind ?? 'fastener', part.thread].filter(Boolean).join(' ')
    : 'hole without a known fastener';
  const metal = line.sheet?.name ? ` in ${line.sheet.name}` : '';
  const unknown = notKnown.length > 0 ? ` Not known: ${notKnown.join(', ')}.` : '';
  const marks = markedRules(row);
  return `Section of a ${what}${metal}, in ${UNIT_WORDS[shop.units]}: ${texts.join('; ') || 'no size is known'}.${unknown}${marks} ${verdictSentence(row)}`;
}

/** What the marks in the picture say. */
function markedRules(row: PicturedRow): string {
  const rules = ['clinch/sheet-thickness', 'clinch/shank', 'clinch/hole', 'finish/hole-closing', 'clinch/edge'];
  const marked = rules.flatMap((rule) => (markOf(row, rule).outcome ? (findingOf(row, rule) ?? []) : []));
  return marked
    .filter(({ rule }) => rule !== row.line.decidedBy?.rule)
    .map(({ brief, outcome }) => ` Marked ${outcome}: ${brief}.`)
    .join('');
}
