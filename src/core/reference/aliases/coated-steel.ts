import type { Table } from '../../model/table.ts';
import { type Designation, of } from './designation.ts';

/** Names of zinc-coated steel sheet. */
export const coatedSteelNames: Table<Designation> = {
  id: 'aliases-coated-steel',
  title: 'Names of zinc-coated steel sheet',
  sources: [
    { document: 'EN 10346, JIS G3302 and GB/T 2518', place: 'equivalents', mark: 'printed' },
    { document: 'words of lists', place: 'common practice, no source', mark: 'memory' },
  ],
  rows: [
    of(
      'gi-cs',
      `
        A653 CS; A653 CS TYPE A; A653 CS TYPE B; A653 CS TYPE C; A653 CS-A; A653 CS-B; A653 CS B;
        A653 CS TYPE A/B/C; A653; A526; A527; CQ GALV; GALV CQ; A653M`,
      'memory',
    ),
    of('gi-cs', 'LFQ', 'printed'),
    of('gi-fs', 'A653 FS', 'printed'),
    of('gi-fs', 'A653 FS TYPE A; A653 FS TYPE B; A653 FS-A; A653 FS-B', 'memory'),
    ...['33', '40', '50', '80'].map((grade) =>
      of(
        `gi-ss${grade}`,
        `
        A653 SS GR ${grade}; A653 SS GRADE ${grade}; A653 SS${grade}; A653 GR ${grade}; A653 GRADE ${grade};
        GALV GR ${grade}; GALV SS GR ${grade}`,
        'memory',
      ),
    ),
    of('dx51d', 'DX51D', 'printed'),
    of('dx51d', 'DX51; St02Z; FeP02G; 1.0917; 1.0226', 'memory'),
    of('dx52d', 'DX52D', 'printed'),
    of('dx52d', 'DX52; St03Z; 1.0918; 1.0350; 1.035', 'memory'),
    of('dx53d', 'DX53D', 'printed'),
    of('dx53d', 'DX53; 1.0951; 1.0355', 'memory'),
    of('dx54d', 'DX54D; DX54; 1.0952; 1.0306', 'memory'),
    of('s250gd', 'S250GD; 1.0242', 'memory'),
    of('s320gd', 'S320GD; 1.0250; 1.025', 'memory'),
    of('s350gd', 'S350GD; 1.0529', 'memory'),
    of('sgcc', 'SGCC', 'printed'),
    of('sgcc', 'SGHC', 'memory'),
    of('sgcc', 'SGCD1', 'printed', { remark: 'Drawing quality is softer: judged as SGCC' }),
    of('sgcc', 'SGCD2; SGCD; SGCD3', 'memory', { remark: 'Drawing quality is softer: judged as SGCC' }),
    of(
      'ga-cs',
      `
        GA; G.A.; GALVANNEAL; GALVANEAL; GALVENEAL; GALVANNEALED; GALVANEALED; GALV-ANNEAL; GALVANNEAL STEEL;
        ZINC-IRON; ZINC IRON; A653 GA; A653 CS A25; A653 CS A40; A653 CS A60; A653 A40; A653 A60;
        A653 CS A25/A40/A60; SGAC; JAC270; JAC270C; 合金化亜鉛めっき鋼板`,
      'memory',
    ),
    of(
      'secc',
      `
        EG; EZ; EGI; EGSS; ELECTROGALV; ELECTRO-GALV; ELECTRO-GALVANIZED; ELECTROGALVANISED; ELECTRO-GALVANISED;
        ELECTROZINC; ELECTRO-ZINC; SECC; SECC-N; SECC P; SECC-P; SECC 20/20; SECC-N2; A879; A879 CS; A591; A591 CS;
        SEHC; ELEKTROLYTISCH VERZINKT; GALVANISCH VERZINKT; ELECTROZINGUE; 电镀锌板; 电解板; 電気亜鉛めっき鋼板; 電気亜鉛メッキ鋼板`,
      'memory',
    ),
    of('secc', 'SECD; SECE', 'memory', { remark: 'Drawing quality is softer: judged as SECC' }),
    of('dc01ze', 'DC01ZE', 'memory'),
  ],
};
