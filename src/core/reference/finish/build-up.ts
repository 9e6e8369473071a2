import type { Mark, Table } from '../../model/table.ts';

export interface BuildUpRow {
  readonly id: string;
  readonly finish: string;
  /** Growth of the surface, per side. */
  readonly minUm: number;
  /** Null: the standard sets only a least thickness. */
  readonly maxUm: number | null;
  readonly document: string;
  readonly mark: Mark;
}

/** How far a finish closes a hole or thickens a sheet, per side. */
export const finishBuildUp: Table<BuildUpRow> = {
  id: 'finish-build-up',
  title: 'Build-up of finishes per side',
  sources: [
    {
      document: 'ASTM B633, QQ-P-416F',
      place: 'thickness classes',
      mark: 'printed',
      note: 'Least thickness on significant surfaces; holes and recesses are normally exempt.',
    },
    { document: 'Coating trade press', place: 'powder coat thickness', mark: 'printed' },
    {
      document: 'MIL-A-8625, MIL-DTL-5541',
      place: 'film thickness',
      mark: 'memory',
      note: 'Type II films of 2 to 25 µm grow the surface by a third to a half of that, type III films of 13 to 115 µm by about half.',
    },
  ],
  rows: [
    {
      id: 'zinc-sc1',
      finish: 'zinc, service condition 1 (Fe/Zn 5)',
      minUm: 5,
      maxUm: null,
      document: 'ASTM B633',
      mark: 'printed',
    },
    {
      id: 'zinc-sc2',
      finish: 'zinc, service condition 2 (Fe/Zn 8)',
      minUm: 8,
      maxUm: null,
      document: 'ASTM B633',
      mark: 'printed',
    },
    {
      id: 'zinc-sc3',
      finish: 'zinc, service condition 3 (Fe/Zn 12)',
      minUm: 12,
      maxUm: null,
      document: 'ASTM B633',
      mark: 'printed',
    },
    {
      id: 'zinc-sc4',
      finish: 'zinc, service condition 4 (Fe/Zn 25)',
      minUm: 25,
      maxUm: null,
      document: 'ASTM B633',
      mark: 'printed',
    },
    {
      id: 'cadmium-class-3',
      finish: 'cadmium, class 3',
      minUm: 5.1,
      maxUm: null,
      document: 'QQ-P-416F',
      mark: 'printed',
    },
    {
      id: 'cadmium-class-2',
      finish: 'cadmium, class 2',
      minUm: 7.6,
      maxUm: null,
      document: 'QQ-P-416F',
      mark: 'printed',
    },
    {
      id: 'cadmium-class-1',
      finish: 'cadmium, class 1',
      minUm: 12.7,
      maxUm: null,
      document: 'QQ-P-416F',
      mark: 'printed',
    },
    { id: 'powder', finish: 'powder coat', minUm: 50, maxUm: 127, document: 'Coating trade press', mark: 'printed' },
    {
      id: 'powder-hard-to-cover',
      finish: 'powder coat, colours that cover badly',
      minUm: 75,
      maxUm: 90,
      document: 'Coating trade press',
      mark: 'printed',
    },
    {
      id: 'powder-mild-interior',
      finish: 'powder coat, mild interior, least',
      minUm: 25,
      maxUm: null,
      document: 'Coating trade press',
      mark: 'printed',
    },
    {
      id: 'powder-exterior',
      finish: 'powder coat, exterior, least',
      minUm: 60,
      maxUm: null,
      document: 'Coating trade press',
      mark: 'printed',
    },
    { id: 'anodise-ii', finish: 'anodise type II', minUm: 0.7, maxUm: 12.5, document: 'MIL-A-8625', mark: 'memory' },
    { id: 'anodise-iii', finish: 'anodise type III', minUm: 6.5, maxUm: 57.5, document: 'MIL-A-8625', mark: 'memory' },
    {
      id: 'chem-film',
      finish: 'chemical conversion film',
      minUm: 0,
      maxUm: 1,
      document: 'MIL-DTL-5541',
      mark: 'memory',
    },
  ],
};
