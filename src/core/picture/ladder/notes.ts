import { type Outcome, VERDICTS } from '../../model/outcome.ts';
import { findingOf, type PicturedRow } from '../pictured-row.ts';
import type { BandGroup, HardnessBand } from './bands.ts';
import { showPoints } from './scale.ts';

/** Metals whose hardness is also written as it was published: those that do not hold first, then the hardest. */
const MOST_GIVEN = 4;
const WORST_FIRST: readonly Outcome[] = VERDICTS;

/** What stands under the scale: both sides in the scales in which they were stated, what the shading means, and what is not drawn. */
export function ladderNotes(
  row: PicturedRow,
  all: readonly BandGroup[],
  drawn: readonly BandGroup[],
): readonly string[] {
  const fasteners = drawn.flatMap(({ fastenerGiven }) => (fastenerGiven ? `Fastener ${fastenerGiven}.` : []));
  const limits = drawn.flatMap(({ limitGiven }) =>
    limitGiven ? `The catalogue allows sheet up to ${limitGiven}.` : [],
  );
  const notes = [...fasteners, ...limits, ...asPublished(drawn), ...shading(drawn), ...practice(row, drawn)];
  return [...new Set([...notes, ...all.flatMap((group, at) => leftOut(group, drawn[at], all.length > 1))])];
}

function asPublished(drawn: readonly BandGroup[]): readonly string[] {
  const bands = new Map(drawn.flatMap((group) => group.bands).map((band) => [band.name, band]));
  const given = [...bands.values()].filter((band) => band.given !== '').sort((a, b) => urgency(a) - urgency(b));
  const shown = given.slice(0, MOST_GIVEN).map(({ name, given }) => `${name}: ${given}.`);
  return given.length > MOST_GIVEN
    ? [...shown, 'The published values of the others stand under Rules and sources.']
    : shown;
}

/** Smaller is more urgent: the outcome first, then the hardness. */
function urgency({ outcome, maxHrb, typicalHrb }: HardnessBand): number {
  return WORST_FIRST.indexOf(outcome) * 1000 - (maxHrb ?? typicalHrb ?? 0);
}

function shading(drawn: readonly BandGroup[]): readonly string[] {
  const scatters = [...new Set(drawn.flatMap(({ scatter }) => (scatter === null ? [] : showPoints(scatter))))];
  return scatters.length === 0 ? [] : [`Shaded: scatter of ${scatters.join(' and ')} points either way.`];
}

/** Where practice goes before the numbers, the picture alone would mislead. */
function practice(row: PicturedRow, drawn: readonly BandGroup[]): readonly string[] {
  const family = findingOf(row, 'clinch/family');
  const refuses = family?.outcome === 'fails' ? [`Practice says no, whatever the numbers: ${family.brief}.`] : [];
  const isHelped = drawn.some(({ limitHrb, limitGiven, bands }) =>
    bands.some(
      ({ outcome, maxHrb }) =>
        outcome === 'holds' && limitGiven === null && limitHrb !== null && maxHrb !== null && maxHrb > limitHrb,
    ),
  );
  return isHelped
    ? [...refuses, 'Past the line but within the scatter, a usual pair holds: practice lends weight.']
    : refuses;
}

/** Softer metals for which there was no room, counted by outcome. */
function leftOut(
  { fastenerName, bands }: BandGroup,
  drawn: BandGroup | undefined,
  several: boolean,
): readonly string[] {
  const rest = bands.slice(0, bands.length - (drawn?.bands.length ?? 0));
  if (rest.length === 0) return [];
  const count = (wanted: Outcome) => rest.filter(({ outcome }) => outcome === wanted).length;
  const counts = VERDICTS.flatMap((verdict) => (count(verdict) > 0 ? [`${count(verdict)} ${verdict}`] : []));
  const beside = several ? ` beside ${fastenerName}` : '';
  return [`Not drawn${beside}: ${rest.length} softer metals (${counts.join(', ')}).`];
}
