import { Pairs } from '../../caching/pairs.ts';
import { isAtLeast } from '../../calc/closeness.ts';
import type { Fastener } from '../../model/fastener.ts';
import type { Judgement } from '../../model/finding.ts';
import type { DistanceReading } from '../../model/line.ts';
import { Judgements } from '../judgements.ts';
import { groupByPanel, panelKey, partsAmong } from '../list/group.ts';
import type { ListRule, Subject } from '../rule.ts';
import { unreadLength } from '../unread-length.ts';
import { spacingTexts } from './spacing-texts.ts';

const CITES = ['practice-spacing'];

/**
 * Is there enough metal between two fasteners? Asked only where the list gives the distance. A list does not say which part the
 * neighbour is: the other parts of the panel could be it.
 */
export const spacing: ListRule = {
  id: 'clinch/spacing',
  title: 'Spacing',
  summary:
    'From hole centre to the next there is at least the spacing of the part, by default its edge distance, and that of its neighbour.',
  reason: 'Two fasteners too near each other squeeze the same metal: it bulges, and the one pressed first comes loose.',
  formula:
    'centre to centre >= the larger of the two parts, of each its spacing in the catalogue, else its edge distance.',
  reads: ['partNumber', 'panel', 'spacing'],
  needs: CITES,
  texts: spacingTexts,
  examples: [
    {
      rows: [{ spacing: '9' }, { spacing: '8.9' }, { spacing: 'as drawn' }, { spacing: '900 in' }, { spacing: '' }],
      expect: [
        ['holds', 'holds-default'],
        ['fails', 'close-default'],
        ['unknown', 'unreadable'],
        ['unknown', 'impossible'],
        null,
      ],
    },
    {
      rows: [
        { partNumber: 'EXAMPLE-NUT-WIDE', spacing: '14' },
        { partNumber: 'EXAMPLE-NUT-WIDE', spacing: '13.9' },
        { partNumber: 'EXAMPLE-PIN', spacing: '9' },
      ],
      parts: { 'EXAMPLE-NUT-WIDE': { spacingMm: 14 }, 'EXAMPLE-PIN': { edgeMm: null } },
      expect: [
        ['holds', 'holds'],
        ['fails', 'close'],
        ['unknown', 'no-minimum'],
      ],
    },
    {
      rows: [
        { spacing: '10.9' },
        { spacing: '11' },
        { partNumber: 'EXAMPLE-NUT-M5' },
        { panel: 'P2', spacing: '9' },
        { panel: '', spacing: '9' },
      ],
      parts: { 'EXAMPLE-NUT-M5': { edgeMm: 11 } },
      expect: [
        ['marginal', 'neighbour'],
        ['holds', 'holds-default'],
        null,
        ['holds', 'holds-default'],
        ['holds', 'holds-default'],
      ],
    },
  ],
  // A row that names no panel has no neighbours.
  groupOf: (subject) => panelKey(subject) ?? '',
  checkList(subjects: readonly Subject[]): Judgements {
    const othersOn = createNeighbourFinder(subjects);
    const alone = new Pairs<Fastener | null, DistanceReading, Judgement | null>();
    const beside = new Pairs<Judgement, string, Judgement>();
    const judgements = new Judgements(subjects);
    for (const subject of subjects) {
      const { line, fastener } = subject;
      if (line.spacing.how === 'blank') continue;
      const own = alone.get(fastener, line.spacing, () => judgeAlone(subject));
      if (!own) continue;
      judgements.set(
        subject,
        beside.get(own, line.panel, () => besideOthers(subject, own, othersOn(subject))),
      );
    }
    return judgements;
  },
};

function judgeAlone({ line, fastener }: Subject): Judgement | null {
  const { how, mm: spacingMm } = line.spacing;
  if (!fastener || how === 'blank') return null;
  if (how !== 'size' || spacingMm === null) return unreadLength(line.spacing, CITES);
  const spacingMinMm = minimumOf(fastener);
  if (spacingMinMm === null) {
    return { outcome: 'unknown', says: 'no-minimum', words: { partNumber: fastener.partNumber }, cites: CITES };
  }
  const says = (key: 'holds' | 'close') => (fastener.spacingMm === null ? `${key}-default` : key);
  const values = { spacingMm, spacingMinMm };
  if (isAtLeast(spacingMm, spacingMinMm)) return { outcome: 'holds', says: says('holds'), values, cites: CITES };
  const shortfallMm = spacingMinMm - spacingMm;
  return { outcome: 'fails', says: says('close'), values: { ...values, shortfallMm }, cites: CITES };
}

/** What holds for the part itself is in doubt where another part of the panel needs more. */
function besideOthers({ line, fastener }: Subject, own: Judgement, others: readonly Fastener[]): Judgement {
  const neighbour = others.find(({ partNumber }) => partNumber !== fastener?.partNumber);
  const neighbourMinMm = neighbour ? minimumOf(neighbour) : null;
  const isEnough = neighbourMinMm === null || isAtLeast(line.spacing.mm ?? Number.NaN, neighbourMinMm);
  if (own.outcome !== 'holds' || !neighbour || isEnough) return own;
  return {
    outcome: 'marginal',
    says: 'neighbour',
    values: { ...own.values, neighbourMinMm },
    words: { partNumber: fastener?.partNumber ?? '', neighbour: neighbour.partNumber, panel: line.panel.trim() },
    cites: CITES,
  };
}

/** For a row, the two parts of its panel that need the most: one of them is not the part itself. */
function createNeighbourFinder(subjects: readonly Subject[]): (subject: Subject) => readonly Fastener[] {
  const panels = groupByPanel(subjects);
  const known = new Map<string, readonly Fastener[]>();
  return (subject) => {
    const panel = panelKey(subject) ?? '';
    const parts = known.get(panel) ?? mostDemanding(panels.get(panel) ?? []);
    known.set(panel, parts);
    return parts;
  };
}

function mostDemanding(rows: readonly Subject[]): readonly Fastener[] {
  const parts = new Map(partsAmong(rows).map((part) => [part.partNumber, part]));
  const needOf = (part: Fastener) => minimumOf(part) ?? 0;
  return [...parts.values()].sort((a, b) => needOf(b) - needOf(a)).slice(0, 2);
}

function minimumOf({ spacingMm, edgeMm }: Fastener): number | null {
  return spacingMm ?? edgeMm;
}
