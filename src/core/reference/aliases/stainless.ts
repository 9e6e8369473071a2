import type { Table } from '../../model/table.ts';
import { type Designation, of } from './designation.ts';

const JIS_90 = { limit: { standard: 'JIS G4305', max: { scale: 'HRB', value: 90 } } } as const;
const JIS_88 = { limit: { standard: 'JIS G4305', max: { scale: 'HRB', value: 88 } } } as const;
const EN_NONE = { limit: { standard: 'EN 10088-2', max: null } } as const;
const NAMED = { withTemper: true } as const;
const FAMILY_18_8 = '18-8 names 302, 303, 304 or 305 in fasteners: as sheet it is taken as 304';
const HARD_301 = '301-14h 301-12h 301-34h 301-fh';

/** Names of stainless steel sheet. */
export const stainlessNames: Table<Designation> = {
  id: 'aliases-stainless',
  title: 'Names of stainless steel sheet',
  sources: [
    {
      document: 'EN 10088-1, AISI, JIS, GB and BS equivalents',
      place: 'tables of equivalent grades',
      mark: 'printed',
      note: '304 to 316 in several scripts; L grades, 430 and 410 mostly from memory.',
    },
    { document: 'words of lists', place: 'common practice, no source', mark: 'memory' },
  ],
  rows: [
    of('304', '304; T304; TP304; T-304; STS304; V2A; 304S15; 304S31; EN58E; 06Cr19Ni10; S30408; 08X18H10', 'printed'),
    of('304', 'TYPE 304', 'memory'),
    of('304', 'SAE 30304; 30304; AMS 5513; S30400; 0Cr18Ni9; 0Cr19Ni9; X5CrNi18 9', 'memory'),
    of('304', '18-8; 18/8; 18/10', 'printed', { remark: FAMILY_18_8 }),
    of('304', '18-10', 'memory', { remark: FAMILY_18_8 }),
    of('304', 'SUS304', 'printed', JIS_90),
    of('304', '1.4301; 4301; X5CrNi18-10; X5CrNi1810', 'printed', EN_NONE),
    of('304', '14301', 'memory', EN_NONE),
    of('304l', '304L; 304 L; T304L; TP304L; S30403; 022Cr19Ni10; 00Cr19Ni10; 304S11', 'memory'),
    of('304l', 'SUS304L', 'memory', JIS_90),
    of('304l', 'X2CrNi18-9; X2CrNi19-11; 1.4307; 1.4306; 14307; 4307; 4306', 'memory', EN_NONE),
    of('301', '301; 301S21; SUS301', 'printed'),
    of('301', 'T301', 'memory'),
    of('301', 'S30100; S30110; 12Cr17Ni7; 1Cr17Ni7', 'memory'),
    of('301', '1.4310', 'printed', EN_NONE),
    of('301', '14310; 4310; X10CrNi18-8; X12CrNi17 7; X12CrNi17-7', 'memory', EN_NONE),
    of('301', '1.431', 'memory', { ...EN_NONE, remark: '1.431 is read as 1.4310, its last zero lost' }),
    of('301csp-12h 301csp-34h 301csp-h', 'SUS301-CSP; 301-CSP; 301CSP', 'memory'),
    of('301csp-12h', 'SUS301-CSP 1/2H; 301-CSP-1/2H', 'memory', NAMED),
    of('301csp-34h', 'SUS301-CSP 3/4H; 301-CSP-3/4H', 'memory', NAMED),
    of('301csp-h', 'SUS301-CSP H; 301-CSP-H', 'memory', NAMED),
    of(HARD_301, 'SPRING STAINLESS; STAINLESS SPRING STEEL; STAINLESS SPRING', 'memory', {
      remark: 'Taken as 301 in any hard temper',
    }),
    of('301-fh', '301-H', 'memory', NAMED),
    of('316', '316; 316S31; EN58J; 06Cr17Ni12Mo2; 0Cr17Ni12Mo2; S31608', 'printed'),
    of('316', 'T316; TP316', 'memory'),
    of('316', 'S31600; V4A; MARINE GRADE; MARINE GRADE STAINLESS', 'memory'),
    of('316', 'SUS316', 'printed', JIS_90),
    of('316', '1.4401', 'printed', EN_NONE),
    of('316', '14401; 4401; X5CrNiMo17-12-2; X5CrNiMo17 12 2; X5CrNiMo17122', 'memory', EN_NONE),
    of('316l', '316L; 316 L; T316L; S31603; 022Cr17Ni12Mo2; 00Cr17Ni14Mo2; 316S11', 'memory'),
    of('316l', 'SUS316L', 'memory', JIS_90),
    of('316l', '1.4404; 1.4432; 1.4435; 14404; 4404; X2CrNiMo17-12-2; X2CrNiMo17 13 2', 'memory', EN_NONE),
    of('430', '430; T430; S43000; 10Cr17; S11710; 1Cr17; 430S17; FERRITIC SS; FERRITIC STAINLESS', 'memory'),
    of('430', 'SUS430', 'memory', JIS_88),
    of('430', '1.4016; 14016; 4016; X6Cr17', 'memory', EN_NONE),
    of('410', '410; S41000; 1.4006; X12Cr13; X10Cr13; SUS410; 12Cr13; S41010; 1Cr13; 410S21', 'memory'),
    of('409', '409; S40900; SUS409', 'memory'),
  ],
};
