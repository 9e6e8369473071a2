import { Pairs } from '../../caching/pairs.ts';
import { isAtLeast, isAtMost } from '../../calc/closeness.ts';
import type { Fastener } from '../../model/fastener.ts';
import type { Judgement } from '../../model/finding.ts';
import { Judgements } from '../judgements.ts';
import type { ListRule, Subject } from '../rule.ts';
import { groupByLength, groupByPanel, nameRows, panelKey, partsAmong, type SameLength } from './group.ts';

/** Holes closer than this are told apart neither by eye nor by feel. Source: common practice, no source. */
const TOLD_APART_MM = 0.25;
const CITES = ['practice-look-alike-holes'];

/** Are there mounting holes on one panel so close in size that parts can be swapped? */
export const lookalikeHole: ListRule = {
  id: 'list/lookalike-hole',
  title: 'Look-alike holes',
  summary: 'Mounting holes on one panel are equal, or at least 0.25 mm apart.',
  reason:
    'A part pressed into the hole of its neighbour seats well: too large a hole lets it come loose, too small a one warps the sheet.',
  reads: ['partNumber', 'panel'],
  needs: CITES,
  texts: {
    alike: {
      brief: 'Hole {holeMm}, {otherHoleMm:unit} in {rows}',
      full: 'The mounting hole {holeMm:unit} of {partNumber} is only {differenceMm:unit} from the {otherHoleMm:unit} of {otherPart} in {rows} on panel {panel}: parts can be swapped. Mark the holes, or choose parts whose holes are equal or clearly different.',
    },
  },
  examples: [
    {
      rows: [{}, { partNumber: 'EXAMPLE-NUT-8-32' }, { partNumber: 'EXAMPLE-NUT-M5' }],
      parts: { 'EXAMPLE-NUT-8-32': { holeMm: 5.8 }, 'EXAMPLE-NUT-M5': { holeMm: 6.85 } },
      expect: [['note', 'alike'], ['note', 'alike'], null],
    },
    {
      rows: [{}, { partNumber: 'EXAMPLE-SPACER' }, { partNumber: 'EXAMPLE-STUD' }],
      parts: { 'EXAMPLE-SPACER': { holeMm: 5.6 }, 'EXAMPLE-STUD': { holeMm: 5.85 } },
      expect: [null, null, null],
    },
    {
      rows: [{}, { panel: 'P2', partNumber: 'EXAMPLE-NUT-8-32' }, { panel: '', partNumber: 'EXAMPLE-NUT-8-32' }],
      parts: { 'EXAMPLE-NUT-8-32': { holeMm: 5.8 } },
      expect: [null, null, null],
    },
  ],
  groupOf: panelKey,
  checkList(subjects: readonly Subject[]): Judgements {
    const judgements = new Judgements(subjects);
    if (subjects.length < 2) return judgements;
    for (const rows of groupByPanel(subjects).values()) if (hasLookalikes(rows)) judgePanel(rows, judgements);
    return judgements;
  },
};

/** Seen by the parts alone, which are few: most panels have no holes so near each other. */
function hasLookalikes(panel: readonly Subject[]): boolean {
  const sizes = partsAmong(panel)
    .map(({ holeMm }) => holeMm ?? Number.NaN)
    .filter(Number.isFinite)
    .sort((a, b) => a - b);
  return sizes.some(
    (mm, at) => !isAtMost(mm, sizes[at - 1] ?? mm) && !isAtLeast(mm - (sizes[at - 1] ?? mm), TOLD_APART_MM),
  );
}

/** The nearest size on either side is enough to look at: whatever else is near is further away. */
function judgePanel(panel: readonly Subject[], judgements: Judgements): void {
  const sizes = groupByLength(panel, ({ fastener }) => fastener?.holeMm ?? Number.NaN);
  for (const [index, size] of sizes.entries()) {
    const beside = [sizes[index - 1], sizes[index + 1]].flatMap((other) =>
      other && isTooNear(size, other) ? [other] : [],
    );
    const nearest = beside.sort((a, b) => apartMm(size, a) - apartMm(size, b))[0];
    if (!nearest) continue;
    const known = new Pairs<Fastener | null, string, Judgement>();
    for (const subject of size.rows) {
      const { line, fastener } = subject;
      judgements.set(
        subject,
        known.get(fastener, line.panel, () => alike(subject, size, nearest)),
      );
    }
  }
}

function apartMm(one: SameLength, other: SameLength): number {
  return Math.abs(one.mm - other.mm);
}

function isTooNear(one: SameLength, other: SameLength): boolean {
  return !isAtLeast(apartMm(one, other), TOLD_APART_MM);
}

function alike({ line, fastener }: Subject, size: SameLength, other: SameLength): Judgement {
  return {
    outcome: 'note',
    says: 'alike',
    values: { holeMm: size.mm, otherHoleMm: other.mm, differenceMm: apartMm(size, other) },
    words: {
      partNumber: fastener?.partNumber ?? '',
      otherPart: other.rows[0]?.fastener?.partNumber ?? '',
      rows: nameRows(other.rows),
      panel: line.panel.trim(),
    },
    cites: CITES,
  };
}
