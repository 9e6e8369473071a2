import { generalTolerance } from '../../../src/core/reference/holes/general-tolerance.ts';
import { iso286Grades } from '../../../src/core/reference/holes/iso286.ts';
import { iso9013Class1 } from '../../../src/core/reference/holes/iso9013.ts';
import { letterDrills } from '../../../src/core/reference/holes/letter-drills.ts';
import { numberDrills } from '../../../src/core/reference/holes/number-drills.ts';
import { clearanceAsme } from '../../../src/core/reference/threads/clearance-asme-b18-2-8.ts';
import { clearanceIso273 } from '../../../src/core/reference/threads/clearance-iso273.ts';
import { metricBasicDiameters } from '../../../src/core/reference/threads/metric-basic-diameters.ts';
import { metricCoarse } from '../../../src/core/reference/threads/metric-coarse.ts';
import { metricLimits } from '../../../src/core/reference/threads/metric-limits.ts';
import { nutProofIso } from '../../../src/core/reference/threads/nut-proof-iso898-2.ts';
import { nutProofJ995 } from '../../../src/core/reference/threads/nut-proof-j995.ts';
import { screwProof } from '../../../src/core/reference/threads/screw-proof.ts';
import { stripAreasOneDiameter } from '../../../src/core/reference/threads/strip-areas-one-diameter.ts';
import { stripAreasPerInch } from '../../../src/core/reference/threads/strip-areas-per-inch.ts';
import { torqueFactors } from '../../../src/core/reference/threads/torque-factors.ts';
import { unifiedThreads } from '../../../src/core/reference/threads/unified.ts';
import { unifiedLimits } from '../../../src/core/reference/threads/unified-limits.ts';
import { compareTable, type Line } from '../compare-table.ts';

const THREAD = { thread: 'thread' } as const;

/** "10-24 UNC" is the thread 10-24, which tells the series of those in the table. */
function withoutSeries(line: Line): readonly Line[] {
  return [{ ...line, thread: (line.thread ?? '').replace(/ UN[CF]$/, '') }];
}

/** "10-24 UNC" is thread 10-24 of the series UNC. */
function splitSeries(line: Line): readonly Line[] {
  const [thread = '', series = ''] = (line.thread ?? '').split(' ');
  return [{ ...line, thread, series }];
}

const threads = [
  compareTable({
    csv: 'iso-coarse',
    table: metricCoarse,
    key: THREAD,
    columns: {
      d_mm: 'diameterMm',
      pitch_mm: 'pitchMm',
      stress_area_mm2: 'stressAreaMm2',
      core_drill_mm: 'coreDrillMm',
    },
  }),
  compareTable({
    csv: 'iso-coarse-diameters',
    table: metricBasicDiameters,
    key: THREAD,
    columns: { d2_mm: 'pitchDiameterMm', d1_mm: 'internalMinorMm', d3_mm: 'externalMinorMm' },
  }),
  compareTable({
    csv: 'iso-limits',
    table: metricLimits,
    key: THREAD,
    columns: {
      ext_major_min: 'externalMajorMinMm',
      ext_pitch_min: 'externalPitchMinMm',
      int_minor_max: 'internalMinorMaxMm',
      int_pitch_max: 'internalPitchMaxMm',
    },
  }),
  compareTable({
    csv: 'unified',
    table: unifiedThreads,
    lines: splitSeries,
    key: { thread: 'thread', series: 'series' },
    columns: { d_in: 'diameterIn', tpi: 'threadsPerInch', stress_area_in2: 'stressAreaIn2' },
  }),
  compareTable({
    csv: 'unified-basic',
    table: unifiedLimits,
    lines: withoutSeries,
    key: THREAD,
    columns: { pitch_dia_in: 'pitchBasicIn', minor_dia_in: 'minorBasicIn' },
  }),
  compareTable({
    csv: 'unified-limits',
    table: unifiedLimits,
    lines: withoutSeries,
    key: THREAD,
    columns: {
      major_min_in: 'externalMajorMinIn',
      pitch_min_in: 'externalPitchMinIn',
      minor_max_in: 'internalMinorMaxIn',
      pitch_max_in: 'internalPitchMaxIn',
    },
  }),
  compareTable({
    csv: 'strip-areas',
    table: stripAreasOneDiameter,
    key: THREAD,
    columns: { external_in2: 'externalIn2', internal_in2: 'internalIn2' },
  }),
  compareTable({
    csv: 'strip-areas-per-inch',
    table: stripAreasPerInch,
    key: THREAD,
    columns: { internal_in2_per_in: 'internalIn2PerIn' },
  }),
];

const strength = [
  compareTable({
    csv: 'nut-proof',
    table: nutProofIso,
    key: THREAD,
    columns: {
      class_5: 'class5N',
      class_6: 'class6N',
      class_8: 'class8N',
      class_10: 'class10N',
      class_12_style_1: 'class12Style1N',
      class_12_style_2: 'class12Style2N',
    },
  }),
  compareTable({
    csv: 'nut-proof',
    table: metricCoarse,
    key: THREAD,
    columns: { stress_area_mm2: 'stressAreaMm2' },
    part: true,
  }),
  compareTable({
    csv: 'nut-proof-j995',
    table: nutProofJ995,
    lines: nutStresses,
    key: { grade: 'grade', style: 'style' },
    columns: { psi: 'proofStressPsi' },
  }),
  compareTable({
    csv: 'fastener-materials-steel',
    table: screwProof,
    of: ({ what }) => what === 'rm',
    lines: ({ id = '', low = '', mark = '' }) => [{ property_class: id.replace('iso898-1_', ''), rm: low, mark }],
    key: { property_class: 'propertyClass' },
    columns: { rm: 'strengthMinMpa' },
    words: { '8.8a': '8.8' },
    missing: [
      {
        of: ({ property_class = '' }) => !/^(4\.6|5\.8|8\.8a|10\.9|12\.9)$/.test(property_class),
        reason: 'the product keeps five classes for the strength of screws',
      },
    ],
  }),
  compareTable({
    csv: 'torque-factors',
    table: torqueFactors,
    key: { condition: 'condition' },
    columns: { k_low: 'low', k_high: 'high' },
    surplus: [
      { of: ({ condition }) => condition.startsWith('handbook'), reason: 'one value, told in words, from memory' },
    ],
  }),
];

/** One stress for both thread series where the line has no second one. */
function nutStresses({ grade = '', kind, unc_psi = '', unf_psi = '' }: Line): readonly Line[] {
  const jam = kind === 'jam nut' ? 'jam ' : '';
  if (unf_psi === '') return [{ grade, style: jam.trim() || 'any', psi: unc_psi }];
  return [
    { grade, style: `${jam}UNC`, psi: unc_psi },
    { grade, style: `${jam}UNF`, psi: unf_psi },
  ];
}

const holes = [
  compareTable({
    csv: 'clearance-iso273',
    table: clearanceIso273,
    key: THREAD,
    columns: { fine: 'fineMm', medium: 'mediumMm', coarse: 'coarseMm' },
  }),
  compareTable({
    csv: 'clearance-asme',
    table: clearanceAsme,
    key: { size: 'size' },
    columns: {
      close_drill: 'closeDrill',
      close_in: 'closeIn',
      normal_drill: 'normalDrill',
      normal_in: 'normalIn',
      loose_drill: 'looseDrill',
      loose_in: 'looseMinIn',
      loose_max_in: 'looseMaxIn',
    },
  }),
  compareTable({ csv: 'number-drills', table: numberDrills, key: { number: 'number' }, columns: { in: 'inch' } }),
  compareTable({ csv: 'letter-drills', table: letterDrills, key: { letter: 'letter' }, columns: { in: 'inch' } }),
  compareTable({
    csv: 'iso286',
    table: iso286Grades,
    lines: gradesOfBand,
    rows: ({ grade, upTo3Um, upTo6Um, upTo10Um, upTo18Um, upTo30Um }) => [
      { grade, toMm: 3, um: upTo3Um },
      { grade, toMm: 6, um: upTo6Um },
      { grade, toMm: 10, um: upTo10Um },
      { grade, toMm: 18, um: upTo18Um },
      { grade, toMm: 30, um: upTo30Um },
    ],
    key: { grade: 'grade', to_mm: 'toMm' },
    columns: { um: 'um' },
  }),
  compareTable({
    csv: 'iso2768-m',
    table: generalTolerance,
    key: { over_mm: 'fromMm', to_mm: 'toMm' },
    columns: { tol_mm: 'plusMinusMm' },
  }),
  compareTable({
    csv: 'iso9013',
    table: iso9013Class1,
    key: { t_over_mm: 'overMm', t_to_mm: 'toMm' },
    columns: { nominal_to_3: 'nominalTo3Mm', nominal_to_10: 'nominalTo10Mm', nominal_to_35: 'nominalTo35Mm' },
  }),
];

/** The outside table has a line to a band of sizes, the product a row to a grade. */
function gradesOfBand(line: Line): readonly Line[] {
  return [5, 6, 7, 8, 9, 10, 11, 12, 13, 14].map((grade) => ({
    grade: String(grade),
    to_mm: line.to_mm ?? '',
    um: line[`it${grade}`] ?? '',
    mark: line[`mark_it${grade}`] ?? 'printed',
  }));
}

export const threadsAndHolesCompared = [...threads, ...strength, ...holes];
