import type { Text } from '../../model/finding.ts';
import { SOME_TEXTS } from '../each-candidate.ts';
import { NO_THICKNESS } from '../texts.ts';

/** Everything that the thickness check can say. */
export const sheetThicknessTexts: Readonly<Record<string, Text>> = {
  ...SOME_TEXTS,
  holds: {
    brief: '{thicknessMm}, needs {sheetMinMm:unit}',
    full: 'Sheet {thicknessMm}, needs {sheetMinMm:unit}; even the thinnest that the mill may deliver, {thinnestMm:unit}, is enough{assumed}. {other}',
  },
  'holds-untold': {
    brief: '{thicknessMm}, needs {sheetMinMm:unit}',
    full: 'Sheet {thicknessMm}, needs {sheetMinMm:unit}. No mill tolerance is on file for this sheet.',
  },
  'holds-nominal': {
    brief: '{thicknessMm}, may be {thinnestMm:unit}',
    full: 'Sheet {thicknessMm}, needs {sheetMinMm:unit}: holds by nominal; may be delivered {thinnestMm:unit}{assumed}. {other}',
  },
  thinnest: {
    brief: 'Sheet may be {thinnestMm}, needs {sheetMinMm:unit}',
    full: 'Sheet {thicknessMm} may be delivered {thinnestMm}{assumed} and {sheetMinMm:unit} is needed: order to minimum thickness, or measure. {other}',
  },
  thin: {
    brief: 'Sheet {thicknessMm}, needs {sheetMinMm:unit}',
    full: 'Sheet {thicknessMm}, needs {sheetMinMm:unit}: {shortfallMm:unit} too thin. {other}{stock}A part for thinner sheet would cure it too.',
  },
  thick: {
    brief: 'Sheet {thicknessMm}, takes {sheetMaxMm:unit} at most',
    full: 'Sheet {thicknessMm}, the part takes {sheetMaxMm:unit} at most. A part for thicker sheet would cure it.',
  },
  'no-minimum': {
    brief: 'No minimum sheet in the catalogue',
    full: 'The catalogue gives no minimum sheet for {partNumber}: its minimum sheet thickness would settle this.',
  },
  'no-thickness': NO_THICKNESS,
};
