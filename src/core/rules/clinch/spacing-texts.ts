import type { Text } from '../../model/finding.ts';
import { LENGTH_NOT_READ } from '../unread-length.ts';

/** Everything that the check of the spacing can say. */
export const spacingTexts: Readonly<Record<string, Text>> = {
  ...LENGTH_NOT_READ('spacing'),
  holds: {
    brief: 'Spacing {spacingMm}, needs {spacingMinMm:unit}',
    full: 'Centre to centre {spacingMm}, needs {spacingMinMm:unit} by the catalogue.',
  },
  'holds-default': {
    brief: 'Spacing {spacingMm}, needs {spacingMinMm:unit}',
    full: "Centre to centre {spacingMm}, needs {spacingMinMm:unit}: the part's own edge distance, as is usual in the trade where the catalogue gives no spacing. A neighbour with a larger edge distance needs that.",
  },
  close: {
    brief: 'Spacing {spacingMm}, needs {spacingMinMm:unit}',
    full: 'Centre to centre {spacingMm}, needs {spacingMinMm:unit} by the catalogue: {shortfallMm:unit} too close. Move one of the holes.',
  },
  'close-default': {
    brief: 'Spacing {spacingMm}, needs {spacingMinMm:unit}',
    full: "Centre to centre {spacingMm}, needs {spacingMinMm:unit}: {shortfallMm:unit} too close. That is the part's own edge distance, as is usual in the trade where the catalogue gives no spacing. Move one of the holes, or ask the maker for the part's own spacing.",
  },
  'no-minimum': {
    brief: 'No spacing in the catalogue',
    full: 'The catalogue gives neither spacing nor edge distance for {partNumber}: its least distance from centre to centre would settle this.',
  },
  neighbour: {
    brief: 'Spacing {spacingMm}, {neighbour} needs {neighbourMinMm:unit}',
    full: 'Centre to centre {spacingMm} is enough for {partNumber}, which needs {spacingMinMm:unit}, but not beside {neighbour} on panel {panel}, which needs {neighbourMinMm:unit}: which neighbour is it? Where it is that one, move one of the holes.',
  },
};
