import type { Mark, Table } from '../../model/table.ts';

export interface ScatterContributionRow {
  readonly contribution: string;
  /** Size in Rockwell B points, from the smallest to the largest case; null where the source states it in other terms. */
  readonly hrbPoints: readonly [number, number] | null;
  /** As a share of the converted value, where the source states it so. */
  readonly percent: number | null;
  readonly where: string;
  readonly source: string;
  readonly mark: Mark;
}

/** What is known of the scatter of converted hardness: the ground for the working figures. */
export const scatterContributions: Table<ScatterContributionRow> = {
  id: 'hardness-scatter-contributions',
  title: 'Known contributions to the scatter of a converted hardness',
  sources: [
    {
      document: 'NBS Technologic Paper 334 (1927) and Research Paper RP185 (1930)',
      place: 'Abstracts',
      mark: 'printed',
      note: 'ISO 18265 and ASTM E140 give no numeric uncertainty for the Rockwell B range; ISO found its data too few for regression.',
    },
    { document: 'ASTM E18-05', place: 'Note on carbide balls', mark: 'printed' },
    { document: 'ISO 6508-2, ASTM E18', place: 'Permissible error on reference blocks', mark: 'memory' },
  ],
  rows: [
    {
      contribution: 'Brinell against Rockwell B, many metals: very few results beyond 10 % in HB',
      hrbPoints: [3, 7],
      percent: 10,
      where: '0.10 (130 - HRB): 3 points at HRB 100, 5 at 80, 7 at 60',
      source: 'NBS Technologic Paper 334, Research Paper RP185; points calculated',
      mark: 'derived',
    },
    {
      contribution: 'Tensile strength from Rockwell',
      hrbPoints: null,
      percent: 15,
      where: 'many metals',
      source: 'NBS Technologic Paper 334, Research Paper RP185',
      mark: 'printed',
    },
    {
      contribution: 'Two tables for steel, HV to HRB',
      hrbPoints: [0, 1.9],
      percent: null,
      where: 'HV 100 to 240',
      source: 'ASTM E140 Table 2 against ISO 18265 Table A.1',
      mark: 'derived',
    },
    {
      contribution: 'Two tables for steel, HB to HRB',
      hrbPoints: [0, 3.8],
      percent: null,
      where: '0 to 1 above HB 145, 3.8 at HB 105',
      source: 'ASTM E140 Table 2 against ISO 18265 Table A.1',
      mark: 'derived',
    },
    {
      contribution: 'Austenitic against other steel, same HB',
      hrbPoints: [1.4, 1.6],
      percent: null,
      where: 'HB 187 to 217',
      source: 'ASTM E140 Table 5 against Table 2',
      mark: 'derived',
    },
    {
      contribution: 'Two conversions of aluminium HB 95',
      hrbPoints: [4, 4],
      percent: null,
      where: 'HRB 56 against 60',
      source: 'ASTM E140 Table 9 against ASM data sheet',
      mark: 'memory',
    },
    {
      contribution: 'Carbide ball reads lower than steel ball',
      hrbPoints: [0, 1],
      percent: null,
      where: 'Rockwell B',
      source: 'ASTM E18-05',
      mark: 'printed',
    },
    {
      contribution: 'Machine error allowed on blocks',
      hrbPoints: [1, 4],
      percent: null,
      where: '1.0 to 1.5 in ASTM E18, 2 to 4 in ISO 6508-2 by range',
      source: 'ASTM E18, ISO 6508-2',
      mark: 'memory',
    },
  ],
};
