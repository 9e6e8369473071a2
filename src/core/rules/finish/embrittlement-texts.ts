import type { Text } from '../../model/finding.ts';

const DISAGREE =
  'Editions disagree on where care starts: 320 or 365 HV in ISO 4042:1999, 360 or 390 HV in ISO 4042:2018, 39 or 40 HRC in ASTM F1941, 1200 MPa in ASTM B633.';

/** Everything that the check for hydrogen embrittlement can say. */
export const embrittlementTexts: Readonly<Record<string, Text>> = {
  some: {
    brief: 'Plating suits {holding}, not {failing}',
    full: 'Plating suits a fastener of {holding}, not one of {failing}: what is the fastener made of?',
  },
  'some-may': {
    brief: 'Plating may suit {holding}, not {failing}',
    full: 'Plating may suit a fastener of {holding}, not one of {failing}: what is the fastener made of?',
  },
  none: {
    brief: 'At {hardnessHv} HV no baking after {finish}',
    full: 'The fastener is at least {hardnessHv} HV ({given}): {finish} needs no baking below 320 HV.',
  },
  note: {
    brief: 'At {hardnessHv} HV {finish} needs a controlled process',
    full: `The fastener is at least {hardnessHv} HV ({given}): its {finish} asks for a controlled process. ${DISAGREE}`,
  },
  assumed: {
    brief: 'Hardness under {finish} not stated',
    full: `The fastener has {finish} and the catalogue gives no hardness ({given}). From 320 HV on a controlled process is asked for, above 390 HV baking: ask the maker. ${DISAGREE}`,
  },
  bake: {
    brief: 'At {hardnessHv} HV: baked after {finish}?',
    full: `The fastener is {what} at {hardnessHv} HV ({given}): evidence that it was baked after {finish}{hours} would settle this. ${DISAGREE}`,
  },
  'do-not-plate': {
    brief: 'Too hard for {finish}: {hardnessHv} HV',
    full: `The fastener is {hardnessHv} HV ({given}), too hard for {finish}: take a softer fastener or a coating that is not electroplated. ${DISAGREE}`,
  },
  'no-hardness': {
    brief: 'Hardness of the plated fastener unknown',
    full: 'The fastener has {finish}, and its hardness{stated} converts to no Vickers value: its hardness in HV or HRC would settle this.',
  },
};
