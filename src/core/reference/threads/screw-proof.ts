import type { Table } from '../../model/table.ts';

export interface ScrewProofRow {
  readonly propertyClass: string;
  /** Up to 16 mm diameter. */
  readonly proofStressMpa: number;
  /** Least tensile strength. */
  readonly strengthMinMpa: number;
}

/** Proof stress and strength of metric screws up to M16. */
export const screwProof: Table<ScrewProofRow> = {
  id: 'screw-proof-iso-898-1',
  title: 'Proof stress and tensile strength of screws by property class',
  sources: [
    {
      document: 'ISO 898-1',
      place: 'mechanical properties by property class',
      mark: 'memory',
      note: 'From memory, no text read.',
    },
  ],
  rows: [
    { propertyClass: '4.6', proofStressMpa: 225, strengthMinMpa: 400 },
    { propertyClass: '5.8', proofStressMpa: 380, strengthMinMpa: 520 },
    { propertyClass: '8.8', proofStressMpa: 580, strengthMinMpa: 800 },
    { propertyClass: '10.9', proofStressMpa: 830, strengthMinMpa: 1040 },
    { propertyClass: '12.9', proofStressMpa: 970, strengthMinMpa: 1220 },
  ],
};
