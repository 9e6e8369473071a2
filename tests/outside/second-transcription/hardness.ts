import { aluminiumHardness } from '../../../src/core/reference/hardness/aluminium.ts';
import { aluminiumDataSheets } from '../../../src/core/reference/hardness/aluminium-data-sheets.ts';
import { austeniticRockwellB } from '../../../src/core/reference/hardness/austenitic-rockwell-b.ts';
import { cartridgeBrass } from '../../../src/core/reference/hardness/cartridge-brass.ts';
import { copperTempers } from '../../../src/core/reference/hardness/copper-tempers.ts';
import { rockwellBThickness } from '../../../src/core/reference/hardness/rockwell-b-thickness.ts';
import { scatterContributions } from '../../../src/core/reference/hardness/scatter-contributions.ts';
import { scatterWorking } from '../../../src/core/reference/hardness/scatter-working.ts';
import { steelBrinellLed } from '../../../src/core/reference/hardness/steel-brinell-led.ts';
import { steelIso18265 } from '../../../src/core/reference/hardness/steel-iso-18265.ts';
import { steelRockwellB } from '../../../src/core/reference/hardness/steel-rockwell-b.ts';
import { steelRockwellC } from '../../../src/core/reference/hardness/steel-rockwell-c.ts';
import { compareTable, type Line } from '../compare-table.ts';

const isWorkingFigure = ({ contribution = '' }: Line) => contribution.startsWith('working figure');

const BRINELL = 'Brinell against Rockwell B, many metals: very few results beyond 10 % in HB';
const BLOCKS = 'Machine error allowed on blocks';
const TWO_BRINELLS = 'Two tables for steel, HB to HRB';
const AUSTENITIC = 'Austenitic against other steel, same HB';
const ALUMINIUM = 'Two conversions of aluminium HB 95';

/** Outside contributions with the name that the product gives them, and which of their columns is which end of its range. */
const ENDS: Readonly<Record<string, readonly (readonly [name: string, end: string, column: string])[]>> = {
  'HB from HRB by formula': [[BRINELL, 'percent', 'value']],
  'the same in HRB points at HRB 100': [[BRINELL, 'least', 'value']],
  'the same in HRB points at HRB 60': [[BRINELL, 'most', 'value']],
  'tensile strength from Rockwell': [['Tensile strength from Rockwell', 'percent', 'value']],
  'two steel tables, HV to HRB': [['Two tables for steel, HV to HRB', 'most', 'high']],
  'two steel tables, HB to HRB at HB 105': [[TWO_BRINELLS, 'most', 'value']],
  'austenitic against ferritic table, same HB': [
    [AUSTENITIC, 'least', 'low'],
    [AUSTENITIC, 'most', 'high'],
  ],
  'aluminium HB 95, two conversions': [
    [ALUMINIUM, 'least', 'value'],
    [ALUMINIUM, 'most', 'value'],
  ],
  'steel ball against carbide ball': [['Carbide ball reads lower than steel ball', 'most', 'high']],
  'machine error on blocks, E18': [[BLOCKS, 'least', 'low']],
  'machine error on blocks, ISO 6508-2': [[BLOCKS, 'most', 'high']],
};

function contributionEnds(line: Line): readonly Line[] {
  const { contribution = '', value = '', high = '', mark = '' } = line;
  const ends = ENDS[contribution];
  if (!ends) return [{ contribution, end: '', value: value || high, mark }];
  return ends.map(([name, end, column]) => ({ contribution: name, end, value: line[column] ?? '', mark }));
}

export const hardnessCompared = [
  compareTable({
    csv: 'e140-table-2',
    table: steelRockwellB,
    key: { hrb: 'hrb' },
    columns: { hv: 'hv', hbw: 'hbw', hk: 'hk', hra: 'hra', hr30t: 'hr30t' },
  }),
  compareTable({
    csv: 'e140-table-1',
    table: steelRockwellC,
    key: { hrc: 'hrc' },
    columns: { hv: 'hv', hbw: 'hbw' },
  }),
  compareTable({
    csv: 'brinell-led-steel',
    table: steelBrinellLed,
    key: { hbw: 'hbw' },
    columns: { hrb: 'hrb', hrc: 'hrc', bracketed: 'bracketed' },
    words: { yes: 'true' },
  }),
  compareTable({
    csv: 'iso-18265-a1',
    table: steelIso18265,
    key: { hv: 'hv' },
    columns: { hb: 'hb', hrb: 'hrb', hrc: 'hrc', rm_mpa: 'rmMpa' },
  }),
  compareTable({
    csv: 'e140-austenitic',
    table: austeniticRockwellB,
    key: { hrb: 'hrb' },
    columns: { hb: 'hbw' },
  }),
  compareTable({
    csv: 'e140-aluminium',
    table: aluminiumHardness,
    key: { hb: 'hb' },
    columns: { hv: 'hv', hrb: 'hrb', hre: 'hre' },
  }),
  compareTable({
    csv: 'cartridge-brass',
    table: cartridgeBrass,
    key: { hv: 'hv' },
    columns: { hrb: 'hrb', hrf: 'hrf', hb: 'hb' },
  }),
  compareTable({
    csv: 'copper-tempers',
    table: copperTempers,
    key: { temper: 'temper' },
    columns: { uts_ksi: 'utsKsi', hrb: 'hrb', hrf: 'hrf', hr30t: 'hr30t' },
  }),
  compareTable({
    csv: 'e18-thin-sheet',
    table: rockwellBThickness,
    key: { thickness_mm: 'thicknessMm' },
    columns: { min_hrb: 'minHrb' },
  }),
  // The points of the data sheets stand among the alloys: the Brinell number and the Rockwell B that is given beside it.
  compareTable({
    csv: 'sheet-alloys-aluminium',
    table: aluminiumDataSheets,
    of: ({ standard }) => standard === 'ASM data sheet',
    lines: ({ id = '', value = '', mark = '' }) => [{ id, hrb: value, mark }],
    key: { id: 'alloy' },
    columns: { hrb: 'hrb' },
  }),
  compareTable({
    csv: 'sheet-alloys-aluminium',
    table: aluminiumDataSheets,
    of: ({ id = '', unit, standard = '' }) =>
      unit === 'HB' && standard.startsWith('Aluminum Association') && /^(6061-T6|2024-T3|7075-T6)$/.test(id),
    lines: ({ id = '', value = '', mark = '' }) => [{ id, hb: value, mark }],
    key: { id: 'alloy' },
    columns: { hb: 'hb' },
  }),
  compareTable({
    csv: 'scatter',
    table: scatterContributions,
    of: (line) => !isWorkingFigure(line),
    lines: contributionEnds,
    rows: ({ contribution, hrbPoints, percent }) => [
      ...(percent === null ? [] : [{ contribution, end: 'percent', value: percent }]),
      // A range that begins at nothing has no lower end.
      ...(hrbPoints?.[0] ? [{ contribution, end: 'least', value: hrbPoints[0] }] : []),
      ...(hrbPoints ? [{ contribution, end: 'most', value: hrbPoints[1] }] : []),
    ],
    key: { contribution: 'contribution', end: 'end' },
    columns: { value: 'value' },
    missing: [{ of: ({ end }) => end === '', reason: 'lies between the two ends that the product states' }],
  }),
  compareTable({
    csv: 'scatter',
    table: scatterWorking,
    of: isWorkingFigure,
    key: { contribution: 'scale' },
    columns: { value: 'hrbPoints' },
    words: {
      'working figure, value given in HRB': 'HRB',
      'working figure, value converted from HV': 'HV',
      'working figure, value converted from HB': ['HB3000', 'HB500'],
      'working figure, value converted from tensile strength': 'MPa',
    },
    surplus: [
      { of: ({ scale }) => /^HR[CEF]|^HR30T/.test(scale), reason: 'a converted Rockwell scale is judged like Vickers' },
    ],
  }),
];
