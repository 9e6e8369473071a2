import type { Text } from '../../model/finding.ts';
import { LENGTH_NOT_READ } from '../unread-length.ts';

/** Everything that the hole check can say. */
export const holeTexts: Readonly<Record<string, Text>> = {
  ...LENGTH_NOT_READ('hole'),
  within: {
    brief: '{holeMm}, in {holeLowMm} to {holeHighMm:unit}',
    full: 'Hole {holeMm:unit} is within {holeLowMm} to {holeHighMm:unit}{usual}.',
  },
  'by-nominal': {
    brief: '{holeMm}, in {holeLowMm} to {holeHighMm:unit}',
    full: 'Hole {holeMm:unit} is within {holeLowMm} to {holeHighMm:unit}{usual} by its nominal size. Call out the band of the part, {callOut}: a general tolerance is too wide for it.',
  },
  'by-nominal-laser': {
    brief: '{holeMm}, in {holeLowMm} to {holeHighMm:unit}; laser-cut',
    full: 'Hole {holeMm:unit} is within {holeLowMm} to {holeHighMm:unit}{usual} by its nominal size. A laser keeps such a hole to plus or minus {laserLeastMm} to {laserMostMm:unit}, by sheet thickness (ISO 9013 class 1): that cannot keep the band. Call out {callOut}, and punch, drill or ream it.',
  },
  'within-general': {
    brief: '{holeMm}, in {holeLowMm} to {holeHighMm:unit}',
    full: 'Hole {holeMm:unit} has no tolerance of its own; with plus or minus {generalMm:unit} by the shop settings it stays within {holeLowMm} to {holeHighMm:unit}.',
  },
  'leaves-general': {
    brief: 'General tolerance leaves the band',
    full: 'Hole {holeMm:unit} has no tolerance of its own; with plus or minus {generalMm} by the shop settings it may come out {smallestMm} to {largestMm:unit}, and {holeLowMm} to {holeHighMm:unit} is needed. Call out {callOut}.',
  },
  over: {
    brief: 'Hole {holeMm} is {offMm:unit} too large',
    full: 'Hole {holeMm:unit} is {offMm:unit} too large: {holeLowMm} to {holeHighMm:unit} is needed. Call out {callOut}.',
  },
  under: {
    brief: 'Hole {holeMm} is {offMm:unit} too small',
    full: 'Hole {holeMm:unit} is {offMm:unit} too small: {holeLowMm} to {holeHighMm:unit} is needed. Call out {callOut}.',
  },
  leaves: {
    brief: 'Hole tolerance leaves the band',
    full: 'Hole {holeMm:unit} may come out {smallestMm} to {largestMm:unit}, and {holeLowMm} to {holeHighMm:unit} is needed. Call out {callOut}.',
  },
  'before-coating': {
    brief: 'Hole {holeMm:unit} is before coating',
    full: 'Hole {holeMm:unit} is cut larger for the coating that follows; what the coating leaves of it is judged by “Coated hole” against {holeLowMm} to {holeHighMm:unit}.',
  },
  'call-out': { brief: 'Hole to call out: {callOut}', full: 'The list gives no hole. Call out hole {callOut}.' },
  'no-hole': {
    brief: 'No hole in the catalogue',
    full: 'The catalogue gives no mounting hole for {partNumber}: its hole and tolerance would settle this.',
  },
};
