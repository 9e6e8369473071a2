import type { Table } from '../../model/table.ts';
import { clearanceAsme } from './clearance-asme-b18-2-8.ts';
import { clearanceIso273 } from './clearance-iso273.ts';
import { metricBasicDiameters } from './metric-basic-diameters.ts';
import { metricCoarse } from './metric-coarse.ts';
import { metricLimits } from './metric-limits.ts';
import { minimumEngagement } from './minimum-engagement.ts';
import { nutProofIso } from './nut-proof-iso898-2.ts';
import { nutProofJ995 } from './nut-proof-j995.ts';
import { preloadPractice } from './preload.ts';
import { screwProof } from './screw-proof.ts';
import { stripAreasOneDiameter } from './strip-areas-one-diameter.ts';
import { stripAreasPerInch } from './strip-areas-per-inch.ts';
import { torqueFactors } from './torque-factors.ts';
import { unifiedThreads } from './unified.ts';
import { unifiedLimits } from './unified-limits.ts';

/** Every table about threads, for the page of sources and for the checks that all tables share. */
export const threadTables: readonly Table<unknown>[] = [
  metricCoarse,
  metricBasicDiameters,
  metricLimits,
  unifiedThreads,
  unifiedLimits,
  stripAreasOneDiameter,
  stripAreasPerInch,
  nutProofIso,
  nutProofJ995,
  screwProof,
  torqueFactors,
  preloadPractice,
  minimumEngagement,
  clearanceIso273,
  clearanceAsme,
];
