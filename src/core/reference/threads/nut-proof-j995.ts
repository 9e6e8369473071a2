import type { Table } from '../../model/table.ts';

export interface NutProofJ995Row {
  readonly grade: '2' | '5' | '8';
  readonly style: 'UNC' | 'UNF' | 'any' | 'jam UNC' | 'jam UNF' | 'jam';
  /** Proof load = stress x tensile stress area. */
  readonly proofStressPsi: number;
}

/** Proof stresses of inch nuts. */
export const nutProofJ995: Table<NutProofJ995Row> = {
  id: 'nut-proof-sae-j995',
  title: 'Proof stresses of steel nuts by grade',
  sources: [
    {
      document: 'SAE J995',
      place: 'mechanical requirements',
      mark: 'printed',
      note: 'Five texts agree on full nuts, one was read for jam nuts. Hardness: grades 2 and 5 HRC 32 at most, grade 8 HRC 24 to 32 up to 5/8.',
    },
  ],
  rows: [
    { grade: '2', style: 'any', proofStressPsi: 90_000 },
    { grade: '5', style: 'UNC', proofStressPsi: 120_000 },
    { grade: '5', style: 'UNF', proofStressPsi: 109_000 },
    { grade: '8', style: 'any', proofStressPsi: 150_000 },
    { grade: '5', style: 'jam UNC', proofStressPsi: 72_000 },
    { grade: '5', style: 'jam UNF', proofStressPsi: 65_000 },
    { grade: '8', style: 'jam', proofStressPsi: 90_000 },
  ],
};
