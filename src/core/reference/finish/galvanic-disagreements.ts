import type { Table } from '../../model/table.ts';

export interface GalvanicDisagreementRow {
  readonly material: string;
  /** Anodic index; two values where its table gives a range. */
  readonly indexLowV: number;
  readonly indexHighV: number;
  /** An independent list of electrode potentials, shifted so that gold is 0. */
  readonly otherListV: number;
  /** Near: more than 0.03 and less than 0.15 V apart. */
  readonly verdict: 'agree' | 'near' | 'disagree';
}

/** Where the anodic index and an independent list part ways. */
export const galvanicDisagreements: Table<GalvanicDisagreementRow> = {
  id: 'galvanic-disagreements',
  title: 'Anodic index against an independent list',
  sources: [
    {
      document: 'Independent list of electrode potentials',
      place: 'rebased to gold',
      mark: 'printed',
      note: 'Far apart for passive stainless, titanium and chromium: there the screen says least.',
    },
  ],
  rows: [
    { material: 'titanium', indexLowV: 0.3, indexHighV: 0.3, otherListV: 0.12, verdict: 'disagree' },
    { material: 'stainless-300', indexLowV: 0.5, indexHighV: 0.5, otherListV: 0.12, verdict: 'disagree' },
    { material: 'nickel', indexLowV: 0.3, indexHighV: 0.3, otherListV: 0.3, verdict: 'agree' },
    { material: 'copper', indexLowV: 0.35, indexHighV: 0.35, otherListV: 0.44, verdict: 'near' },
    { material: 'brass', indexLowV: 0.4, indexHighV: 0.45, otherListV: 0.52, verdict: 'near' },
    { material: 'tin', indexLowV: 0.65, indexHighV: 0.65, otherListV: 0.67, verdict: 'agree' },
    { material: 'aluminium-2000', indexLowV: 0.75, indexHighV: 0.75, otherListV: 0.81, verdict: 'near' },
    { material: 'cast-iron', indexLowV: 0.85, indexHighV: 0.85, otherListV: 0.82, verdict: 'agree' },
    { material: 'steel', indexLowV: 0.85, indexHighV: 0.85, otherListV: 0.87, verdict: 'agree' },
    { material: 'aluminium', indexLowV: 0.9, indexHighV: 0.9, otherListV: 0.96, verdict: 'near' },
    { material: 'cadmium', indexLowV: 0.95, indexHighV: 0.95, otherListV: 0.97, verdict: 'agree' },
    { material: 'chromium', indexLowV: 0.6, indexHighV: 0.6, otherListV: 1.07, verdict: 'disagree' },
    { material: 'zinc', indexLowV: 1.25, indexHighV: 1.25, otherListV: 1.27, verdict: 'agree' },
    { material: 'magnesium', indexLowV: 1.75, indexHighV: 1.75, otherListV: 1.82, verdict: 'near' },
  ],
};
