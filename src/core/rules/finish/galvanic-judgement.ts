import { type GalvanicPair, galvanicPair } from '../../calc/galvanic-pair.ts';
import type { Environment } from '../../model/facts.ts';
import type { Judgement } from '../../model/finding.ts';
import { type AnodicLimitRow, anodicLimits } from '../../reference/finish/anodic-limits.ts';
import type { Surface } from './surface.ts';

/** Surface of a fastener; assumed where nobody states its finish and bare metal was taken. */
export interface FastenerSurface extends Surface {
  readonly isAssumed: boolean;
}

const LIMITS: Readonly<Record<Environment, { readonly row: AnodicLimitRow['environment']; readonly where: string }>> = {
  controlled: { row: 'controlled', where: 'in controlled air' },
  indoor: { row: 'normal', where: 'indoors' },
  outdoor: { row: 'harsh', where: 'outdoors' },
};

/** The pair by its anodic indices; null where they make no pair. The least favourable has the least `spareV`. */
export function judgeSurfaces(fastener: FastenerSurface, sheet: Surface, environment: Environment): Judgement | null {
  const { row, where } = LIMITS[environment];
  const limitV = anodicLimits.rows.find((one) => one.environment === row)?.limitV ?? Number.NaN;
  const pair = galvanicPair(fastener.indexV, sheet.indexV, limitV);
  if (!pair) return null;
  const { differenceV: anodicDifferenceV, anode, against } = pair;
  const isOver = against === 'exceeds';
  const isBad = isOver && anode === 'fastener' && environment === 'outdoor';
  return {
    // A finish that nobody states may be any: bare metal is told, never trusted.
    outcome: isBad ? 'marginal' : isOver || fastener.isAssumed ? 'note' : 'holds',
    says: isOver ? 'over' : 'within',
    values: { anodicDifferenceV, limitV, spareV: Number((limitV - anodicDifferenceV).toFixed(3)) },
    words: {
      difference: showVolts(anodicDifferenceV),
      limit: showVolts(limitV),
      where,
      fastener: `Fastener of ${fastener.name}`,
      sheet: sheet.name,
      ...anodeWords(pair),
      assumed: fastener.isAssumed ? 'No finish of the fastener is stated: its bare metal was compared. ' : '',
      apart: [fastener, sheet]
        .map(apartSentence)
        .filter((text, at, all) => all.indexOf(text) === at)
        .join(''),
    },
    cites: ['anodic-index', 'anodic-limits', 'galvanic-rules'],
  };
}

/** Which part is the anode; whether that is bad is told only where the pair is over the limit. */
function anodeWords({ anode, against }: GalvanicPair): { readonly anode: string; readonly anodeBrief: string } {
  const isOver = against === 'exceeds';
  if (anode === null) return { anode: 'Neither is the anode.', anodeBrief: 'no anode' };
  const verdict = anode === 'fastener' ? ': bad' : ': tolerable';
  const part = anode === 'fastener' ? 'the fastener, the small part' : 'the sheet, the large part';
  return {
    anode: `The anode, which corrodes first, is ${part}${isOver ? verdict : ''}.`,
    anodeBrief: anode === 'fastener' ? 'small fastener is the anode' : 'large sheet is the anode',
  };
}

function apartSentence({ name, apartV }: Surface): string {
  return apartV === null ? '' : `Sources differ by ${showVolts(apartV)} for ${name}. `;
}

function showVolts(volts: number): string {
  return `${volts.toFixed(2)} V`;
}
