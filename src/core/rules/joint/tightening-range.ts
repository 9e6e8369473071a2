import { proofLoadN } from '../../calc/proof-load.ts';
import { metricStressAreaMm2, unifiedStressAreaIn2 } from '../../calc/stress-area.ts';
import { tighteningTorque } from '../../calc/tightening-torque.ts';
import { preloadPractice } from '../../reference/threads/preload.ts';
import { screwProof } from '../../reference/threads/screw-proof.ts';
import { torqueFactors } from '../../reference/threads/torque-factors.ts';
import { parseThread, type Thread } from '../../units/thread.ts';
import { pitchOf } from './thread-pitch.ts';

/** Torques between which a screw will be tightened, and why. */
export interface Torque {
  readonly lowNm: number;
  readonly highNm: number;
  readonly because: string;
  readonly cites: readonly string[];
}

const MM2_PER_IN2 = 645.16;

/**
 * Torque that brings a screw of a property class to its usual preload, from oiled to dry. Null where no proof stress or thread is
 * on file. Source: T = K d F with F a share of the proof load.
 */
export function torqueForClass(propertyClass: string, threadText: string): Torque | null {
  const thread = parseThread(threadText);
  const proof = screwProof.rows.find((row) => row.propertyClass === propertyClass.trim());
  const share = preloadPractice.rows.find(({ quantity }) => quantity === 'share of proof load')?.value;
  const area = thread && stressAreaOf(thread);
  const load = proof && area ? proofLoadN(proof.proofStressMpa, area) : null;
  if (!thread || load === null || share === undefined) return null;
  const [least, most] = [factorOf('oiled')?.low, factorOf('dry steel')?.high];
  const low = tighteningTorque(least ?? Number.NaN, thread.majorMm, share * load, 0);
  const high = tighteningTorque(most ?? Number.NaN, thread.majorMm, share * load, 0);
  if (!low || !high) return null;
  return {
    lowNm: low.nominalNm,
    highNm: high.nominalNm,
    because: `${thread.name} class ${propertyClass.trim()} at ${share} of its proof load, nut factor ${least} to ${most}`,
    cites: [torqueFactors.id, preloadPractice.id, screwProof.id],
  };
}

function factorOf(condition: string) {
  return torqueFactors.rows.find((row) => row.condition === condition);
}

function stressAreaOf(thread: Thread): number | null {
  const { system, majorMm, tpi } = thread;
  if (system === 'unified') {
    const squareInches = tpi === null ? null : unifiedStressAreaIn2(majorMm / 25.4, tpi);
    return squareInches === null ? null : squareInches * MM2_PER_IN2;
  }
  return metricStressAreaMm2(majorMm, pitchOf(thread) ?? Number.NaN);
}
