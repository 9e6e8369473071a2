import type { Text } from '../../model/finding.ts';

/** Everything that the check of the order of work can say. */
export const orderTexts: Readonly<Record<string, Text>> = {
  some: {
    brief: 'Works for {holding}, not for {failing}',
    full: 'The order of work suits a fastener of {holding}, not one of {failing}: what is the fastener made of?',
  },
  'some-may': {
    brief: 'May work for {holding}, not for {failing}',
    full: 'The order of work may suit a fastener of {holding}, not one of {failing}: what is the fastener made of?',
  },
  after: {
    brief: 'Pressed after the {finish}',
    full: 'The sheet gets its {finish} first and is pressed afterwards: the order works.',
  },
  'after-anodising': {
    brief: 'Pressed after {finish}',
    full: 'The sheet is pressed after {finish}: the order works. The film is brittle and cracks in a ring around the hole, where the metal is then bare.',
  },
  'mask-threads': {
    brief: 'Mask threads for the {finish}',
    full: 'Pressed before the {finish}: the order works if the threads are masked.',
  },
  'anodised-along': {
    brief: 'Aluminium fastener is anodised with the sheet',
    full: 'Pressed before {finish}: a fastener of {fastener} takes the film together with the sheet. Mask the threads, the film makes them tighter.',
  },
  'filmed-along': {
    brief: 'Fastener gets the {finish} with the sheet',
    full: 'Pressed before {finish}: a fastener of {fastener} takes it together with the sheet.',
  },
  attack: {
    brief: 'Anodising attacks the pressed-in fastener',
    full: 'Pressed before {finish}: the bath attacks the {fastener} and the sheet around it. Anodise the sheet first and press afterwards, or use an aluminium fastener.',
  },
  'not-anodised': {
    brief: 'Anodised “{sheet}”?',
    full: 'The sheet “{sheet}” cannot be anodised, yet the list asks for {finish}: the right sheet metal or the right finish would settle this.',
  },
  'traps-acid': {
    brief: 'Bath after pressing traps acid',
    full: 'Pressed before {finish}: the joint traps acid, which can embrittle {fastener}. Plate the sheet first and press afterwards.',
  },
  bath: {
    brief: 'Bath after pressing may trap acid',
    full: 'Pressed before {finish}: the joint may trap acid that creeps out later, and the bath covers the threads ({fastener}). Finish the sheet first, or have the finisher confirm rinsing and masking.',
  },
  'chem-film': {
    brief: 'Chemical film after pressing: masked?',
    full: 'Pressed before the {finish}: the bath can attack a fastener of {fastener}. Whether the fastener is masked would settle this; film the sheet first, then press.',
  },
  'no-metal': {
    brief: 'Fastener metal unknown',
    full: 'Pressed before {finish}, and the catalogue does not say in known words what {partNumber} is made of: its material would settle this.',
  },
  'painted-face': {
    brief: 'Pressed from the painted face',
    full: 'Listed: “{side}”. Pressing from the painted face breaks the paint under the flange and leaves the joint loose. Press from the punch side, away from the painted face.',
  },
  'burr-side': {
    brief: 'Pressed from the burr side',
    full: 'Listed: “{side}”. On the burr side the shank meets the torn edge of the hole. Press from the punch side, or have the first piece tested.',
  },
  'say-order': {
    brief: 'Pressed before or after the {finish}?',
    full: 'The list gives {finish} but not whether the fastener is pressed before or after it. The order that works: {order}.',
  },
  unnamed: {
    brief: 'Which finish follows pressing?',
    full: 'A finish follows pressing, but the list does not say which: its name would settle this. Powder coat and paint work with the threads masked; a bath traps acid in the joint.',
  },
  silent: {
    brief: 'Finish not said',
    full: 'The list says nothing of a finish: the finish of the sheet, or that it has none, and whether it is pressed before or after would settle this.',
  },
};
