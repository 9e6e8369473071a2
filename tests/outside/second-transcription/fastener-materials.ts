import { type FastenerMaterialEntry, fastenerMaterials } from '../../../src/core/reference/fastener-materials.ts';
import { type Compared, compareTable, type Line } from '../compare-table.ts';
import { readTable } from '../read-table.ts';

/** Outside names that differ from the product's by more than their punctuation. */
const IDS: Readonly<Record<string, string | readonly string[]>> = {
  'iso898-1_8.8a': 'iso-898-1-8-8',
  'iso898-1_8.8b': 'iso-898-1-8-8-over-m16',
  'iso898-2_10': ['iso-898-2-10', 'carbon-steel-hardened'],
  j429_2s: 'sae-j429-2',
  j429_2l: 'sae-j429-2-over-3-4-in',
  j429_5s: 'sae-j429-5',
  j429_5l: 'sae-j429-5-over-1-in',
  casehard: 'case-hardened-steel',
  f593_cw1: ['astm-f593-cw1', 'stainless-300'],
  f593_410h: 'astm-f593-410-h',
  f593_410ht: ['astm-f593-410-ht', 'stainless-400-hardened'],
  f593_630ah: 'astm-f593-630-ah',
  a1_12h: 'iso-3506-3-12h',
  a1_21h: 'iso-3506-3-21h',
  '174_a693': 'astm-a693-630-h900',
  a286: 'a286-aged',
  '410_q': '410-as-quenched',
  '410_t': '410-tempered',
  '410_ann': '410-annealed',
  '416_ht': '416-hardened',
  al2024t4: ['2024-t4', 'aluminium-2024-t4'],
  al6061t6: '6061-t6',
  al7075t73: '7075-t73',
  al7075t6: '7075-t6',
  al6262t9: '6262-t9',
  cu110: 'c11000',
  br260: 'c26000',
  br270: 'c27000',
  nb462: 'c46200',
  nb464: 'c46400',
  pb510: 'c51000',
  sb651: 'c65100',
  sb655: 'c65500',
  al_br613: 'c61300',
};

const PREFIXES: readonly (readonly [RegExp, string])[] = [
  [/^iso(\d+)/, 'iso-$1'],
  [/^j(429|995)/, 'sae-j$1'],
  [/^f593/, 'astm-f593'],
  [/^a2/, 'iso-3506-1-a'],
  [/^(c\d|f1)_/, 'iso-3506-1-$1-'],
  [/^630/, 'sus630'],
];

/** Tapping screws share one outside name; the note tells them apart. */
const nameOf = ({ id = '', note = '' }: Line) => (id === 'a_20h' ? `iso-3506-4-${note.toLowerCase()}` : id);

function idsOf(line: Line): readonly string[] {
  const name = nameOf(line);
  const [pattern, start] = PREFIXES.find(([prefix]) => prefix.test(name)) ?? [/^/, ''];
  return [IDS[name] ?? name.replace(pattern, start).replace(/[._]/g, '-')].flat();
}

interface End {
  readonly id: string;
  readonly end: 'least' | 'most';
  readonly unit: string;
  readonly value: number;
}

function endsOf({ id, hardnessMin, hardnessMax }: FastenerMaterialEntry): readonly End[] {
  return [
    ...(hardnessMin ? [{ id, end: 'least' as const, unit: hardnessMin.scale, value: hardnessMin.value }] : []),
    ...(hardnessMax ? [{ id, end: 'most' as const, unit: hardnessMax.scale, value: hardnessMax.value }] : []),
  ];
}

const ends = fastenerMaterials.rows.flatMap(endsOf);

/** Least and greatest hardness of a line, for each material that it speaks of. */
function limitsOf(line: Line): readonly Line[] {
  const { low = '', high = '', unit = '', mark = '' } = line;
  const sides = [
    { end: 'least', value: low },
    { end: 'most', value: high },
  ];
  return idsOf(line)
    .flatMap((id) => sides.map((side) => ({ ...side, id, unit, mark })))
    .filter((limit) => limit.value !== '' && !isToldOtherwise(limit) && !isMostOfClass(limit));
}

/** Documents state a limit in two scales or more, and the product keeps one of them. */
const isToldOtherwise = ({ id, end, unit }: { id: string; end: string; unit: string }) =>
  ends.some((known) => known.id === id && known.end === end && known.unit !== unit);

/** A class stands for many materials by the least of one of them: it has no greatest hardness. */
const isMostOfClass = ({ id, end }: { id: string; end: string }) =>
  end === 'most' && /^(carbon-steel-hardened|stainless-(300|400-hardened))$/.test(id);

const SMALL = 'the small sizes are softer, and sheet metal takes small sizes: the lower of two minima is kept';

/** Materials that an outside table speaks of. */
const idsIn = (csv: string) => new Set(readTable(csv).flatMap(idsOf));

function compareHardness(csv: string, except: Readonly<Record<string, string>> = {}): Compared {
  const spokenOf = idsIn(csv);
  return compareTable({
    csv,
    table: fastenerMaterials,
    of: ({ what }) => what === 'lim',
    lines: limitsOf,
    rows: (row) => (spokenOf.has(row.id) ? endsOf(row) : []),
    key: { id: 'id', end: 'end', unit: 'unit' },
    columns: { value: 'value' },
    except,
  });
}

const isClass = (id: string) => fastenerMaterials.rows.some((row) => row.id === id && row.standard === 'class minimum');

/** Bolts and nuts of one alloy are one material, under the standard of the bolts where there is one. */
const isNut = ({ id, note }: Line) => note === 'nut' && id !== 'al6262t9';

/** Lines without a limit of hardness name the material of a data sheet. */
const isDefining = ({ id = '', what }: Line) => what === 'lim' || /^410_(t|ann)$/.test(id);

function compareNames(csv: string, except: Readonly<Record<string, string>> = {}): Compared {
  const spokenOf = idsIn(csv);
  return compareTable({
    csv,
    table: fastenerMaterials,
    of: (line) => isDefining(line) && !isNut(line),
    lines: (line) =>
      idsOf(line)
        .filter((id) => !isClass(id))
        .map((id) => ({ id, standard: line.standard ?? '', mark: line.mark ?? '' })),
    rows: ({ id, standard }) => (spokenOf.has(id) && !isClass(id) ? [{ id, standard }] : []),
    key: { id: 'id' },
    columns: { standard: 'standard' },
    words: { 'material data sheet': 'data sheet', 'common practice': 'trade practice' },
    except,
  });
}

const STRENGTH_READ = 'the strength was read, and the row holds no hardness';

export const fastenerMaterialsCompared = [
  compareHardness('fastener-materials-steel', {
    'iso-898-2-8 least HV value': SMALL,
    'iso-898-2-12 least HV value': SMALL,
  }),
  compareHardness('fastener-materials-stainless'),
  compareHardness('fastener-materials-nonferrous'),
  compareNames('fastener-materials-steel'),
  compareNames('fastener-materials-stainless', {
    'iso-3506-1-a-50 mark': STRENGTH_READ,
    'iso-3506-1-a-70 mark': STRENGTH_READ,
    'iso-3506-1-a-80 mark': STRENGTH_READ,
  }),
  compareNames('fastener-materials-nonferrous', {
    '7075-t6 mark': 'the data sheet was read; the row holds no hardness limit',
    '7075-t6 standard': 'the standard of bolts has no such temper: a data sheet gives the typical value',
  }),
];
