import { nutLike, standoff } from './bodies.ts';
import type { DrawnPart } from './drawn-part.ts';
import type { SectionFrame } from './frame.ts';
import type { SectionNumbers } from './numbers.ts';
import { captiveScrew, rod } from './rods.ts';

/** The plain schematic of a fastener by its kind: solid where the number is known, dashed where it is not. */
export function partShapes(numbers: SectionNumbers, frame: SectionFrame): DrawnPart {
  switch (numbers.kind) {
    case 'clinch nut':
    case 'floating nut':
      return nutLike(numbers, frame);
    case 'through standoff':
    case 'blind standoff':
      return standoff(numbers, frame);
    case 'clinch stud':
    case 'clinch pin':
      return rod(numbers, frame);
    case 'captive screw':
      return captiveScrew(numbers, frame);
    case null:
      return { shapes: [], notKnown: ['kind of the fastener'], notes: [] };
  }
}
