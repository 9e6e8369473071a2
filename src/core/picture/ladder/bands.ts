import { sheetHardness } from '../../calc/sheet-hardness.ts';
import { subjectFor } from '../../engine/prepare.ts';
import type { Values } from '../../model/finding.ts';
import type { Outcome } from '../../model/outcome.ts';
import { hardnessCandidates } from '../../rules/clinch/hardness.ts';
import { type FastenerHardness, fastenerHardnesses } from '../../rules/clinch/hardness-fastener.ts';
import type { Subject } from '../../rules/rule.ts';
import { showHardness } from '../../units/hardness.ts';
import { findingOf, type PicturedRow } from '../pictured-row.ts';
import { showPoints } from './scale.ts';

/** One sheet metal on the scale, in Rockwell B points; null is not known. */
export interface HardnessBand {
  readonly name: string;
  readonly typicalHrb: number | null;
  readonly maxHrb: number | null;
  /** Softer than that, which is the foot of its scale. */
  readonly typicalIsBelow: boolean;
  readonly maxIsBelow: boolean;
  /** As published: "HRB 80 typical, HRB 92 at most". */
  readonly given: string;
  readonly outcome: Outcome;
}

/** Sheet metals that are compared with the same fastener hardness and limit. */
export interface BandGroup {
  /** The metal that the fastener is taken for: "300-series stainless". */
  readonly fastenerName: string;
  readonly fastenerHrb: number | null;
  /** As stated: "HRC 38 by the catalogue"; empty where only a sheet limit is known. */
  readonly fastenerGiven: string;
  /** Hardest sheet that is asked for: fastener less the needed points, or the catalogue's own limit. */
  readonly limitHrb: number | null;
  /** The limit as the catalogue states it; null where the points decide. */
  readonly limitGiven: string | null;
  /** Largest scatter among the bands. */
  readonly scatter: number | null;
  /** From soft to hard; metals without a known hardness last. */
  readonly bands: readonly HardnessBand[];
}

/** What the hardness check compared, by its own candidates: a group for each fastener hardness that the words allow. */
export function bandGroups(row: PicturedRow): readonly BandGroup[] {
  const subject = subjectFor(row.line.line, row.part, row.shop);
  const candidates = hardnessCandidates(subject);
  if (!findingOf(row, 'clinch/hardness')) return [];
  if (candidates.length === 0) return halfKnown(subject);
  const options = [...new Set(candidates.map(({ fastener }) => fastener))];
  return options.flatMap((option) => groupsOf(option, candidates, subject));
}

type Candidate = ReturnType<typeof hardnessCandidates>[number];

/** A catalogue limit may be another number on the scale of another metal: then there are several groups. */
function groupsOf(option: FastenerHardness, candidates: readonly Candidate[], { shop }: Subject): BandGroup[] {
  const own = candidates.filter(({ fastener }) => fastener === option);
  const limits = [...new Set(own.map(({ judgement }) => judgement.values?.sheetHrbLimit ?? null))];
  return limits.map((catalogued) => {
    const here = own.filter(({ judgement }) => (judgement.values?.sheetHrbLimit ?? null) === catalogued);
    const fastenerHrb = option.on?.hrb ?? null;
    const scatters = here.flatMap(({ judgement }) => judgement.values?.scatter ?? []);
    return {
      fastenerName: option.name,
      fastenerHrb,
      fastenerGiven: option.given,
      limitHrb: catalogued ?? (fastenerHrb === null ? null : fastenerHrb - shop.hardnessMarginHrb),
      limitGiven: catalogued === null ? null : (here[0]?.judgement.words?.limitGiven ?? ''),
      scatter: catalogued === null && scatters.length > 0 ? Math.max(...scatters) : null,
      bands: here.map(bandOf).sort((a, b) => hardest(a) - hardest(b)),
    };
  });
}

function hardest({ typicalHrb, maxHrb }: HardnessBand): number {
  return maxHrb ?? typicalHrb ?? Number.MAX_VALUE;
}

function bandOf({ name, judgement, sheet }: Candidate): HardnessBand {
  const values: Values = judgement.values ?? {};
  const words = judgement.words ?? {};
  const below = belowOf(sheet.entry);
  const given =
    words.typicalGiven === undefined
      ? ''
      : [`${words.typicalGiven} typical`, words.maxGiven ? `${words.maxGiven} at most` : 'no maximum published'].join(
          ', ',
        );
  return {
    name: sheet.entry?.name ?? name,
    typicalHrb: values.sheetHrbTypical ?? null,
    maxHrb: values.sheetHrbMax ?? null,
    ...below,
    given,
    outcome: judgement.outcome,
  };
}

/** One side alone is known: it is shown with a question mark on the other. */
function halfKnown(subject: Subject): readonly BandGroup[] {
  const { sheets, shop, fastener } = subject;
  const limit = fastener?.sheetHardnessMax ?? null;
  const [option] = fastenerHardnesses(subject);
  const fastenerHrb = option?.on?.hrb ?? null;
  const bands = sheets.map(({ entry }): HardnessBand => {
    const hardness = entry && sheetHardness(entry);
    return {
      name: entry?.name ?? 'sheet metal not known',
      typicalHrb: hardness?.typical.on.hrb ?? null,
      maxHrb: hardness?.max?.on.hrb ?? null,
      ...belowOf(entry),
      given: hardness ? `${showHardness(hardness.typical.given)} typical` : '',
      outcome: 'unknown',
    };
  });
  if (fastenerHrb === null && bands.every(({ typicalHrb }) => typicalHrb === null)) return [];
  return [
    {
      fastenerName: option?.name ?? '',
      fastenerHrb,
      fastenerGiven: option?.given ?? '',
      limitHrb: limit ? null : fastenerHrb === null ? null : fastenerHrb - shop.hardnessMarginHrb,
      limitGiven: limit && showHardness(limit),
      scatter: null,
      bands,
    },
  ];
}

function belowOf(entry: Subject['sheets'][number]['entry']) {
  const hardness = entry && sheetHardness(entry);
  return { typicalIsBelow: hardness?.typical.on.below ?? false, maxIsBelow: hardness?.max?.on.below ?? false };
}

/** A sheet on the scale in words: "304 annealed 80 to 92". */
export function describeBand({ name, typicalHrb, maxHrb, typicalIsBelow, maxIsBelow }: HardnessBand): string {
  if (typicalHrb === null) return name;
  const foot = typicalIsBelow ? 'below ' : '';
  if (maxHrb === null) return `${name} ${foot}${showPoints(typicalHrb)} typical`;
  if (maxIsBelow || maxHrb === typicalHrb) return `${name} ${foot}${showPoints(maxHrb)}`;
  return `${name} ${foot}${showPoints(typicalHrb)} to ${showPoints(maxHrb)}`;
}
