import { anodicIndex } from '../../../src/core/reference/finish/anodic-index.ts';
import { anodicLimits } from '../../../src/core/reference/finish/anodic-limits.ts';
import { bakingTimes } from '../../../src/core/reference/finish/baking.ts';
import { finishBuildUp } from '../../../src/core/reference/finish/build-up.ts';
import { embrittlementThresholds } from '../../../src/core/reference/finish/embrittlement.ts';
import { galvanicDisagreements } from '../../../src/core/reference/finish/galvanic-disagreements.ts';
import { galvanicOrder } from '../../../src/core/reference/finish/galvanic-order.ts';
import { seaWaterPotentials } from '../../../src/core/reference/finish/sea-water-potentials.ts';
import { bendClearanceRules } from '../../../src/core/reference/forming/bend-clearance.ts';
import { bendRadii } from '../../../src/core/reference/forming/bend-radii.ts';
import { bendRadiusSteel } from '../../../src/core/reference/forming/bend-radius-steel.ts';
import { holeSpacingRules } from '../../../src/core/reference/forming/hole-spacing.ts';
import { nutAql } from '../../../src/core/reference/sampling/nut-aql.ts';
import { samplingZ14 } from '../../../src/core/reference/sampling/z14.ts';
import { compareTable, type Line } from '../compare-table.ts';

const finishes = [
  compareTable({
    csv: 'build-up',
    table: finishBuildUp,
    lines: ({ finish = '', um_low, um, um_high = '', mark = '' }) => [
      { finish, um_low: um_low || um || '', um_high, mark },
    ],
    rows: ({ id, minUm, maxUm, mark }) => [{ id, ...filmOf(id, minUm, maxUm), mark }],
    key: { finish: 'id' },
    columns: { um_low: 'lowUm', um_high: 'highUm' },
    words: {
      'zinc SC1 (Fe/Zn 5)': 'zinc-sc1',
      'zinc SC2 (Fe/Zn 8)': 'zinc-sc2',
      'zinc SC3 (Fe/Zn 12)': 'zinc-sc3',
      'zinc SC4 (Fe/Zn 25)': 'zinc-sc4',
      'cadmium class 3': 'cadmium-class-3',
      'cadmium class 2': 'cadmium-class-2',
      'cadmium class 1': 'cadmium-class-1',
      'powder coat typical': 'powder',
      'powder coat hard-to-cover colours': 'powder-hard-to-cover',
      'powder coat mild interior minimum': 'powder-mild-interior',
      'powder coat exterior minimum': 'powder-exterior',
      'anodise type II': 'anodise-ii',
      'anodise type III': 'anodise-iii',
      'chem film': 'chem-film',
    },
    missing: [
      { of: ({ finish }) => finish === 'anodise type III nominal', reason: 'lies within the range of type III' },
    ],
    except: { 'chem film um_low': 'a range with a highest value only begins at nothing' },
  }),
  compareTable({
    csv: 'embrittlement',
    table: embrittlementThresholds,
    lines: thresholdOf,
    rows: ({ document, ...row }) => [{ ...row, document: document.replace(/,.*| \(.*/, '') }],
    key: { document: 'document', above: 'above', below: 'below' },
    columns: { unit: 'scale' },
    words: {
      'ASTM F1941 2005': 'ASTM F1941M-05',
      'ASTM F1941 2015 on': 'ASTM F1941',
      'ISO 4042 1999': 'ISO 4042:1999',
      'ISO 4042 2018': 'ISO 4042:2018',
      'ASTM B633 2015': 'ASTM B633-15',
      'ASTM B633 2019': 'ASTM B633-19',
      'ASTM B633 restated': 'ASTM B633',
      'QQ-P-416 F': 'QQ-P-416F',
      'SAE J1648 restated': 'SAE J1648',
    },
  }),
  compareTable({
    csv: 'baking',
    table: bakingTimes,
    key: { uts_from_mpa: 'strengthFromMpa' },
    columns: { uts_to_mpa: 'strengthToMpa', hrc_from: 'hrcFrom', hrc_to: 'hrcTo', hours: 'hours' },
  }),
];

/** The outside table gives the film of anodising; the product, by how much the surface grows: a third to a half of it, or a half. */
function filmOf(id: string, minUm: number, maxUm: number | null) {
  const partOfFilm = id === 'anodise-ii' ? [1 / 3, 1 / 2] : id === 'anodise-iii' ? [1 / 2, 1 / 2] : [1, 1];
  return { lowUm: minUm / (partOfFilm[0] ?? 1), highUm: maxUm === null ? null : maxUm / (partOfFilm[1] ?? 1) };
}

/** A limit in ksi is kept by the Rockwell C that stands beside it. */
function thresholdOf(line: Line): readonly Line[] {
  const { standard, edition, sign = '', low = '', value = '', high = '', unit = '', also = '', also_unit = '' } = line;
  const [limit, scale] = unit === 'ksi' ? [also, also_unit] : [value, unit];
  return [
    {
      document: `${standard} ${edition}`,
      above: sign.startsWith('>') ? limit : low,
      below: sign.startsWith('<') ? limit : high,
      unit: scale,
      mark: line.mark ?? '',
    },
  ];
}

const galvanic = [
  compareTable({
    csv: 'anodic-index',
    table: anodicIndex,
    key: { material: 'id' },
    columns: { index_v: 'indexV' },
    words: {
      'silver; high Ni-Cu alloys': 'silver',
      'nickel plate; titanium; Monel': 'nickel',
      'copper; low brass/bronze; Ni-Cr alloys': 'copper',
      'brass and bronze': 'brass',
      'high brass and bronze': 'high-brass',
      '18 % Cr stainless (300 series passive)': 'stainless-300',
      '12 % Cr stainless (400 series); chromium plate': ['stainless-400', 'chromium'],
      'tin plate; tin-lead solder': 'tin',
      '2000-series wrought aluminium': 'aluminium-2000',
      'plain carbon and low-alloy steel; cast iron': 'steel',
      'other wrought aluminium (1xxx 3xxx 5xxx 6xxx 7xxx); cast Al-Si': 'aluminium',
      'cast aluminium not Si; cadmium plate': ['cast-aluminium', 'cadmium'],
      'hot-dip zinc; galvanized steel': 'hot-dip-zinc',
      'zinc wrought/die-cast/electroplate': 'zinc',
    },
  }),
  compareTable({
    csv: 'galvanic-limits',
    table: anodicLimits,
    key: { environment: 'environment' },
    columns: { limit_v: 'limitV' },
    missing: [
      {
        of: ({ environment = '' }) => environment.startsWith('quoted'),
        reason: 'the same 0.25 V again, told in the note',
      },
      { of: ({ environment = '' }) => environment.startsWith('same group'), reason: 'stands among the rules in words' },
    ],
  }),
  compareTable({
    csv: 'galvanic-order',
    table: galvanicOrder,
    key: { material: 'material' },
    columns: { position: 'position' },
    words: {
      'zinc hot-dip or plated': 'zinc, hot-dip or plated',
      'Al 2014-T3': 'aluminium 2014-T3',
      '5052-O': 'aluminium 5052-O',
      '5052-H32': 'aluminium 5052-H32',
      '1100-O': 'aluminium 1100-O',
      '3003-H25': 'aluminium 3003-H25',
      '6061-T6': 'aluminium 6061-T6',
      '7075-T6': 'aluminium 7075-T6',
      '2024-T4': 'aluminium 2024-T4',
      '430 active': 'stainless 430, active',
      '410 active': 'stainless 410, active',
      '304 active': 'stainless 304, active',
      '316L active': 'stainless 316L, active',
    },
  }),
  compareTable({
    csv: 'galvanic-disagreements',
    table: galvanicDisagreements,
    lines: disagreements,
    key: { material: 'material' },
    columns: { index_low: 'indexLowV', index_high: 'indexHighV', other_v: 'otherListV', comment: 'verdict' },
    words: {
      'stainless 18-9': 'stainless-300',
      'Al-Cu (2xxx)': 'aluminium-2000',
      'cast iron': 'cast-iron',
      'carbon steel': 'steel',
      'large disagreement': 'disagree',
      'large disagreement (passive)': 'disagree',
      '': 'near',
    },
  }),
  compareTable({
    csv: 'sea-water-potentials',
    table: seaWaterPotentials,
    key: { material: 'material' },
    columns: { mv: 'millivolts' },
    words: { 'stainless active': 'stainless, active' },
  }),
];

/** "cast iron / carbon steel" is two materials with one index and two potentials. */
function disagreements(line: Line): readonly Line[] {
  const {
    material = '',
    index_low,
    index_v = '',
    index_high,
    other_low,
    other_v = '',
    other_high,
    comment = '',
  } = line;
  const index = { index_low: index_low || index_v, index_high: index_high || index_v, comment };
  const [first = '', second] = material.split(' / ');
  if (second === undefined) return [{ ...index, material, other_v }];
  return [
    { ...index, material: first, other_v: other_low ?? '' },
    { ...index, material: second, other_v: other_high ?? '' },
  ];
}

const isBend = ({ rule = '' }: Line) => /^hole edge (or cut-out )?to bend/.test(rule);
const isRadius = ({ rule = '' }: Line) => rule.startsWith('minimum bend radius');

const EDGES = 'no datum is printed: taken from edge to edge like the other rules for holes, which is the careful side';
const PITCH = 'no datum is printed: a pitch runs from centre to centre';

const forming = [
  compareTable({
    csv: 'bend-clearance',
    table: bendClearanceRules,
    of: isBend,
    lines: (line) => [{ ...line, plus_radius: line.plus_radius === 'yes' ? '1' : '0' }],
    key: { multiple: 'timesThickness', plus_radius: 'plusRadii' },
    columns: { datum: 'datum' },
    words: { 'start of bend radius': 'tangent', bend: 'inside face' },
  }),
  compareTable({
    csv: 'bend-clearance',
    table: holeSpacingRules,
    of: (line) => !isBend(line) && !isRadius(line),
    lines: spacings,
    key: { rule: 'rule' },
    columns: { multiple: 'multiple', of: 'of', datum: 'measured' },
    words: {
      T: 'thickness',
      D: 'diameter',
      'hole to edge': 'slot or hole edge to sheet edge',
      'hole to hole gap, minimum round': 'round hole to round hole, least',
      'hole to hole gap, common': 'round hole to round hole, usual',
      'rivet edge distance': 'rivet to sheet edge',
      'rivet pitch minimum': 'rivet pitch, least',
      'rivet pitch usual, least': 'rivet pitch, usual, least',
      'rivet pitch usual, most': 'rivet pitch, usual, most',
    },
    except: {
      'counterbore or countersink to edge datum': EDGES,
      'counterbore or countersink to bend, plus the radius datum': EDGES,
      'counterbore to counterbore datum': EDGES,
      'rivet pitch minimum datum': PITCH,
      'rivet pitch usual, least datum': PITCH,
      'rivet pitch usual, most datum': PITCH,
    },
  }),
  compareTable({
    csv: 'bend-clearance',
    table: bendRadiusSteel,
    of: isRadius,
    key: { rule: 'material' },
    columns: { multiple: 'timesThickness', floor_mm: 'leastMm' },
    words: { 'minimum bend radius low-carbon steel': 'low-carbon steel' },
  }),
  compareTable({
    csv: 'bend-radii',
    table: bendRadii,
    lines: ({ alloy = '', t_in = '', low, times_t = '', high }) => [
      { alloy, t_in, low: low || times_t, high: high || times_t },
    ],
    key: { alloy: 'alloy', t_in: 'thicknessIn' },
    columns: { low: 'low', high: 'high' },
  }),
];

/** A rule with a range is two rules, a rule that adds the radius says so in its name. */
function spacings(line: Line): readonly Line[] {
  const { rule = '', multiple_low = '', multiple = '', multiple_high = '', plus_radius, ...rest } = line;
  if (multiple_high !== '')
    return [
      { ...rest, rule: `${rule}, least`, multiple: multiple_low },
      { ...rest, rule: `${rule}, most`, multiple: multiple_high },
    ];
  const name = plus_radius === 'yes' ? `${rule}, plus the radius` : rule;
  return [{ ...rest, rule: name, multiple: multiple || multiple_low }];
}

const sampling = [
  compareTable({
    csv: 'sampling',
    table: samplingZ14,
    key: { lot_from: 'lotFrom' },
    columns: {
      lot_to: 'lotTo',
      letter: 'letter',
      n: 'sample',
      'ac_0.65': 'aql065',
      'ac_1.0': 'aql10',
      'ac_1.5': 'aql15',
      'ac_2.5': 'aql25',
      'ac_4.0': 'aql40',
    },
    words: { v: 'down', '^': 'up' },
  }),
  compareTable({
    csv: 'sampling-nuts',
    table: nutAql,
    key: { defects: 'what' },
    columns: { aql: 'aql' },
    words: {
      major: 'major defects of plain nuts',
      minor: 'minor defects of plain nuts',
      'composition and hardness': 'composition and hardness of plain nuts, level L3',
    },
  }),
];

export const finishAndFormingCompared = [...finishes, ...galvanic, ...forming, ...sampling];
