import type { Table } from '../../model/table.ts';

export interface ClearanceAsmeRow {
  /** Screw size: "#8", "1/4". */
  readonly size: string;
  readonly closeDrill: string;
  readonly closeIn: number;
  readonly normalDrill: string;
  readonly normalIn: number;
  readonly looseDrill: string;
  readonly looseMinIn: number;
  readonly looseMaxIn: number;
}

/** Clearance holes for inch screws; tolerances H12, H13 and H14. */
export const clearanceAsme: Table<ClearanceAsmeRow> = {
  id: 'clearance-asme-b18-2-8',
  title: 'Clearance holes for inch screws',
  sources: [
    {
      document: 'ASME B18.2.8-1999 (R2017)',
      place: 'close, normal and loose fit',
      mark: 'printed',
      note: 'Three texts agree on the drills; the limits of the loose fit were read in one handbook.',
    },
  ],
  rows: [
    {
      size: '#2',
      closeDrill: '3/32',
      closeIn: 0.094,
      normalDrill: '#38',
      normalIn: 0.102,
      looseDrill: '#32',
      looseMinIn: 0.116,
      looseMaxIn: 0.126,
    },
    {
      size: '#4',
      closeDrill: '#31',
      closeIn: 0.12,
      normalDrill: '#30',
      normalIn: 0.1285,
      looseDrill: '#27',
      looseMinIn: 0.144,
      looseMaxIn: 0.156,
    },
    {
      size: '#5',
      closeDrill: '9/64',
      closeIn: 0.141,
      normalDrill: '5/32',
      normalIn: 0.156,
      looseDrill: '11/64',
      looseMinIn: 0.172,
      looseMaxIn: 0.184,
    },
    {
      size: '#6',
      closeDrill: '#23',
      closeIn: 0.154,
      normalDrill: '#18',
      normalIn: 0.1695,
      looseDrill: '#13',
      looseMinIn: 0.185,
      looseMaxIn: 0.197,
    },
    {
      size: '#8',
      closeDrill: '#15',
      closeIn: 0.18,
      normalDrill: '#9',
      normalIn: 0.196,
      looseDrill: '#3',
      looseMinIn: 0.213,
      looseMaxIn: 0.225,
    },
    {
      size: '#10',
      closeDrill: '#5',
      closeIn: 0.2055,
      normalDrill: '#2',
      normalIn: 0.221,
      looseDrill: 'B',
      looseMinIn: 0.238,
      looseMaxIn: 0.25,
    },
    {
      size: '1/4',
      closeDrill: '17/64',
      closeIn: 0.266,
      normalDrill: '9/32',
      normalIn: 0.281,
      looseDrill: '19/64',
      looseMinIn: 0.297,
      looseMaxIn: 0.311,
    },
    {
      size: '5/16',
      closeDrill: '21/64',
      closeIn: 0.328,
      normalDrill: '11/32',
      normalIn: 0.344,
      looseDrill: '23/64',
      looseMinIn: 0.359,
      looseMaxIn: 0.373,
    },
    {
      size: '3/8',
      closeDrill: '25/64',
      closeIn: 0.391,
      normalDrill: '13/32',
      normalIn: 0.406,
      looseDrill: '27/64',
      looseMinIn: 0.422,
      looseMaxIn: 0.438,
    },
  ],
};
