import type { Table } from '../../model/table.ts';
import { type Designation, everyTemper, of } from './designation.ts';

const NAMED = { withTemper: true } as const;
const WEAK = { needsMetal: true } as const;

/** Names of aluminium sheet. */
export const aluminiumNames: Table<Designation> = {
  id: 'aliases-aluminium',
  title: 'Names of aluminium sheet',
  sources: [
    {
      document: 'EN 573-3 and DIN 1725',
      place: 'numerical and chemical designations',
      mark: 'printed',
      note: '5052, 5754, 5083 and 6082; the others from memory.',
    },
    { document: 'QQ-A-250, JIS H4000, GB/T 3880, BS 1470', place: 'equivalents', mark: 'memory' },
    { document: 'words of lists', place: 'common practice, no source', mark: 'memory' },
  ],
  rows: [
    everyTemper('1100', '1100; A91100; Al99.0Cu; A1100; A1100P; PURE ALUM; PURE ALUMINUM; PURE ALUMINIUM', 'memory'),
    everyTemper('1050a', '1050; 1050A; A1050; A1050P; 3.0255; Al99; Al99.5; 1060; A1060', 'memory', {
      remark: 'Pure aluminium, judged as 1050A',
    }),
    everyTemper('1100', 'L5-1; L3; 1C; 1B', 'memory', WEAK),
    everyTemper('3003', '3003; A3003; A3003P; A93003; AlMn1Cu; 3.0517; AlMnCu; 3A21; LF21; 3103', 'memory'),
    everyTemper('3003', 'N3', 'memory', WEAK),
    everyTemper('5005', '5005; A95005; A5005; A5005P', 'memory'),
    everyTemper('5052', '5052; A95052; AlMg2.5', 'printed'),
    everyTemper('5052', '3.3523; 5A02; LF2; 2L55; A5052; A5052P; QQ-A-250/8', 'memory'),
    of('5052-h32', '5052-32; A5052-32', 'memory', NAMED),
    of('5052-h34', '5052-34', 'memory', NAMED),
    of('5052-h38', '5052-38', 'memory', NAMED),
    of('5052-o', '5052-0; 5052O; A5052P-O', 'memory', NAMED),
    everyTemper('5754', '5754; AlMg3; AL MG3', 'printed'),
    everyTemper('5754', 'A95754; 3.3535; A5754P; A5754; LF3', 'memory'),
    of('5754-o', '5754-0; 5754O', 'memory', NAMED),
    everyTemper('5083', '5083; AlMg4.5Mn0.7; 3.3547; AlMg4.5Mn', 'printed'),
    everyTemper('5083', 'A95083; A5083; A5083P; 5A05; LF4', 'memory'),
    everyTemper('5083', 'N8', 'memory', WEAK),
    of('5083-o', '5083-0; 5083O', 'memory', NAMED),
    everyTemper('6061', '6061; A96061; AlMg1SiCu; 3.3211; A6061; A6061P; LD30; T6061; QQ-A-250/11', 'memory'),
    everyTemper('6061', 'H20', 'memory', WEAK),
    of('6061-o', '6061-0; 6061O', 'memory', NAMED),
    everyTemper('6082', '6082; A96082; 3.2315; HE30', 'printed'),
    everyTemper('6082', 'AlSi1MgMn; AlMgSi1; A6082; A6082P; HS30', 'memory'),
    everyTemper('6082', 'H30', 'memory', WEAK),
    of('6082-o', '6082-0; 6082O', 'memory', NAMED),
    everyTemper(
      '2024',
      '2024; A92024; AlCu4Mg1; 3.1355; AlCuMg2; A2024; A2024P; 2A12; LY12; QQ-A-250/4; DURAL; DURALUMIN',
      'memory',
    ),
    everyTemper('2024', 'L97; DTD', 'memory', WEAK),
    everyTemper(
      '7075',
      '7075; A97075; AlZn5.5MgCu; 3.4365; AlZnMgCu1.5; A7075; A7075P; 7A04; 7A09; LC9; QQ-A-250/12',
      'memory',
    ),
    everyTemper('7075', 'LC4; L95', 'memory', WEAK),
    of('7075-o', '7075-0; 7075O', 'memory', NAMED),
  ],
};
