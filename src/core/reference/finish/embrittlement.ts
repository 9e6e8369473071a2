import type { Mark, Table } from '../../model/table.ts';

export interface EmbrittlementRow {
  readonly document: string;
  readonly scale: 'HV' | 'HRC' | 'MPa';
  /** Applies above this value; null: no lower end. */
  readonly above: number | null;
  /** Applies up to this value; null: no upper end. */
  readonly below: number | null;
  readonly action: string;
  readonly mark: Mark;
}

/** From which hardness or strength plating asks for care. The documents disagree by edition: all are shown. */
export const embrittlementThresholds: Table<EmbrittlementRow> = {
  id: 'embrittlement-thresholds',
  title: 'Thresholds for hydrogen embrittlement by plating',
  sources: [
    {
      document: 'ISO 4042, ASTM F1941, ASTM B633, QQ-P-416F, SAE J1648',
      place: 'see each row',
      mark: 'printed',
      note: 'Thresholds differ by document and edition: 320, 365 or 390 HV, 39 or 40 HRC, 1000 or 1200 MPa. Each was read in one text.',
    },
  ],
  rows: [
    {
      document: 'ISO 4042:1999, clause 6',
      scale: 'HV',
      above: 320,
      below: null,
      action: 'investigate the process',
      mark: 'printed',
    },
    {
      document: 'ISO 4042:1999, clause 6',
      scale: 'HV',
      above: 365,
      below: null,
      action: 'written agreement between customer and maker',
      mark: 'printed',
    },
    {
      document: 'ISO 4042:2018, 4.4',
      scale: 'HV',
      above: null,
      below: 360,
      action: 'no concern about baking (inferred)',
      mark: 'derived',
    },
    {
      document: 'ISO 4042:2018, 4.4',
      scale: 'HV',
      above: 360,
      below: 390,
      action: 'no baking where the process is verified or the product tested',
      mark: 'printed',
    },
    {
      document: 'ISO 4042:2018, 4.4',
      scale: 'HV',
      above: 390,
      below: null,
      action: 'baking required, except for fasteners never in tension',
      mark: 'printed',
    },
    {
      document: 'ASTM F1941M-05, introduction',
      scale: 'HRC',
      above: 40,
      below: null,
      action: 'electroplating not recommended; nor for case-hardened parts',
      mark: 'printed',
    },
    { document: 'ASTM F1941 (from 2015)', scale: 'HRC', above: 39, below: null, action: 'bake', mark: 'memory' },
    {
      document: 'ASTM B633-19, introduction',
      scale: 'MPa',
      above: null,
      below: 1200,
      action: 'generally not susceptible',
      mark: 'printed',
    },
    {
      document: 'ASTM B633-15, 1.3',
      scale: 'MPa',
      above: 1700,
      below: null,
      action: 'do not electroplate (46 HRC)',
      mark: 'printed',
    },
    {
      document: 'ASTM B633, as restated',
      scale: 'MPa',
      above: 1000,
      below: null,
      action: 'cold-worked parts: stress relief at 190 °C for 4 h before plating',
      mark: 'printed',
    },
    {
      document: 'ASTM B633, as restated',
      scale: 'MPa',
      above: 1200,
      below: null,
      action: 'bake after plating',
      mark: 'printed',
    },
    {
      document: 'QQ-P-416F, 3.2.1',
      scale: 'HRC',
      above: 43,
      below: null,
      action: 'do not plate (200 ksi)',
      mark: 'printed',
    },
    {
      document: 'QQ-P-416F',
      scale: 'HRC',
      above: 36,
      below: null,
      action: 'fasteners: special cleaning (160 ksi)',
      mark: 'printed',
    },
    {
      document: 'SAE J1648, as restated',
      scale: 'HRC',
      above: 40,
      below: null,
      action: 'consider a finish that is not electroplated (390 HV)',
      mark: 'printed',
    },
  ],
};
