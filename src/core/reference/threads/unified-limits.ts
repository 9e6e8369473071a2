import type { Table } from '../../model/table.ts';

export interface UnifiedLimitsRow {
  readonly thread: string;
  /** Basic pitch diameter. */
  readonly pitchBasicIn: number;
  /** Basic minor diameter. */
  readonly minorBasicIn: number;
  /** Screw 2A, smallest major diameter. */
  readonly externalMajorMinIn: number;
  /** Screw 2A, smallest pitch diameter. */
  readonly externalPitchMinIn: number;
  /** Nut 2B, largest minor diameter. */
  readonly internalMinorMaxIn: number;
  /** Nut 2B, largest pitch diameter. */
  readonly internalPitchMaxIn: number;
}

/** Limits of size that decide how inch threads strip. */
export const unifiedLimits: Table<UnifiedLimitsRow> = {
  id: 'thread-unified-limits-2a-2b',
  title: 'Unified threads: basic diameters and limits of size, 2A and 2B',
  sources: [
    {
      document: 'ASME B1.1',
      place: 'limits of size, classes 2A and 2B',
      mark: 'memory',
      note: 'From memory; they reproduce every published strip area that was read.',
    },
  ],
  rows: [
    {
      thread: '2-56',
      pitchBasicIn: 0.0744,
      minorBasicIn: 0.0667,
      externalMajorMinIn: 0.0813,
      externalPitchMinIn: 0.0717,
      internalMinorMaxIn: 0.0737,
      internalPitchMaxIn: 0.0772,
    },
    {
      thread: '4-40',
      pitchBasicIn: 0.0958,
      minorBasicIn: 0.0849,
      externalMajorMinIn: 0.1061,
      externalPitchMinIn: 0.0925,
      internalMinorMaxIn: 0.0939,
      internalPitchMaxIn: 0.0991,
    },
    {
      thread: '6-32',
      pitchBasicIn: 0.1177,
      minorBasicIn: 0.1042,
      externalMajorMinIn: 0.1312,
      externalPitchMinIn: 0.1141,
      internalMinorMaxIn: 0.114,
      internalPitchMaxIn: 0.1214,
    },
    {
      thread: '8-32',
      pitchBasicIn: 0.1437,
      minorBasicIn: 0.1302,
      externalMajorMinIn: 0.1571,
      externalPitchMinIn: 0.1399,
      internalMinorMaxIn: 0.139,
      internalPitchMaxIn: 0.1475,
    },
    {
      thread: '10-24',
      pitchBasicIn: 0.1629,
      minorBasicIn: 0.1449,
      externalMajorMinIn: 0.1818,
      externalPitchMinIn: 0.1586,
      internalMinorMaxIn: 0.156,
      internalPitchMaxIn: 0.1672,
    },
    {
      thread: '10-32',
      pitchBasicIn: 0.1697,
      minorBasicIn: 0.1562,
      externalMajorMinIn: 0.1831,
      externalPitchMinIn: 0.1658,
      internalMinorMaxIn: 0.164,
      internalPitchMaxIn: 0.1736,
    },
    {
      thread: '1/4-20',
      pitchBasicIn: 0.2175,
      minorBasicIn: 0.1959,
      externalMajorMinIn: 0.2408,
      externalPitchMinIn: 0.2127,
      internalMinorMaxIn: 0.207,
      internalPitchMaxIn: 0.2223,
    },
    {
      thread: '1/4-28',
      pitchBasicIn: 0.2268,
      minorBasicIn: 0.2113,
      externalMajorMinIn: 0.2425,
      externalPitchMinIn: 0.2225,
      internalMinorMaxIn: 0.22,
      internalPitchMaxIn: 0.2311,
    },
    {
      thread: '5/16-18',
      pitchBasicIn: 0.2764,
      minorBasicIn: 0.2524,
      externalMajorMinIn: 0.3026,
      externalPitchMinIn: 0.2712,
      internalMinorMaxIn: 0.265,
      internalPitchMaxIn: 0.2817,
    },
    {
      thread: '5/16-24',
      pitchBasicIn: 0.2854,
      minorBasicIn: 0.2674,
      externalMajorMinIn: 0.3042,
      externalPitchMinIn: 0.2806,
      internalMinorMaxIn: 0.277,
      internalPitchMaxIn: 0.2902,
    },
    {
      thread: '3/8-16',
      pitchBasicIn: 0.3344,
      minorBasicIn: 0.3073,
      externalMajorMinIn: 0.3643,
      externalPitchMinIn: 0.3287,
      internalMinorMaxIn: 0.321,
      internalPitchMaxIn: 0.3401,
    },
    {
      thread: '3/8-24',
      pitchBasicIn: 0.3479,
      minorBasicIn: 0.3299,
      externalMajorMinIn: 0.3667,
      externalPitchMinIn: 0.343,
      internalMinorMaxIn: 0.34,
      internalPitchMaxIn: 0.3528,
    },
  ],
};
