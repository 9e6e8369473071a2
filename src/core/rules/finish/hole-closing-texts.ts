import type { Text } from '../../model/finding.ts';

/** Everything that the check of coated holes can say. */
export const holeClosingTexts: Readonly<Record<string, Text>> = {
  masked: { brief: 'Hole masked', full: 'The hole is masked for the {finish}: it keeps its size.' },
  thin: {
    brief: 'No allowance for {finish}',
    full: 'The {finish} adds no thickness worth an allowance: the hole keeps its size.',
  },
  inside: {
    brief: 'Coated hole {closed}, at least {holeLowMm:unit}',
    full: 'Hole {holeMm:unit}{smallest} with {finish} of {build} a side is {closed} {unit}, and {holeLowMm} to {holeHighMm:unit} is needed.',
  },
  closed: {
    brief: 'Coating closes hole to {closed}, needs {holeLowMm:unit}',
    full: 'Hole {holeMm:unit}{smallest} with {finish} of {build} a side closes to {closed} {unit}, and at least {holeLowMm:unit} is needed. Mask hole and seat, or press first.',
  },
  'may-close': {
    brief: 'Coating may close hole to {closedHoleMm}',
    full: 'Hole {holeMm:unit}{smallest} with {finish} of {build} a side may close to {closed} {unit}, and at least {holeLowMm:unit} is needed. The build of the coating in the hole would settle this; mask hole and seat, or {make}.',
  },
  open: {
    brief: 'Coated hole {open}, takes {holeHighMm:unit} at most',
    full: 'Hole {holeMm:unit} with {finish} of {build} a side still measures {open} {unit}, and {holeLowMm} to {holeHighMm:unit} is needed: {make}.',
  },
  'may-stay-open': {
    brief: 'Coated hole may measure {open}',
    full: 'Hole {holeMm:unit} with {finish} of {build} a side may still measure {open} {unit}, and {holeHighMm:unit} is the most: {make}. A tighter hole, or the build of the coating, would settle this.',
  },
  'call-out': {
    brief: 'Coated hole: {holeLowMm} to {holeHighMm:unit}',
    full: 'The list gives no hole. With the {finish} on it, it must measure {holeLowMm} to {holeHighMm:unit}: mask hole and seat{make}.',
  },
  'no-build': {
    brief: 'Build of the {finish} unknown',
    full: 'The {finish} is put on before pressing and closes the hole by twice its build, which is not given: the build per side, or a masked hole, would settle this.',
  },
  'no-hole': {
    brief: 'No hole in the catalogue',
    full: 'The {finish} is put on before pressing, and the catalogue gives no mounting hole for {partNumber}: its hole and tolerance would settle this.',
  },
};
