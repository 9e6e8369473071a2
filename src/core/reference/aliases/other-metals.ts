import type { Table } from '../../model/table.ts';
import { type Designation, everyTemper, of } from './designation.ts';

const BRONZES = 'Tin bronzes other than C510 run harder in one temper: judged as C510 in any';

/** Names of copper, brass, bronze and titanium sheet. */
export const otherMetalNames: Table<Designation> = {
  id: 'aliases-other-metals',
  title: 'Names of copper, brass, bronze and titanium sheet',
  sources: [
    { document: 'EN 1652 and BS 2870', place: 'CuZn30 = CW505L = CZ106, CuZn37 = CW508L = CZ108', mark: 'printed' },
    { document: 'UNS, DIN, JIS H3100 and GB equivalents', place: 'tables of equivalent grades', mark: 'memory' },
  ],
  rows: [
    everyTemper(
      'c110',
      `
        C110; C11000; C11000 ETP; C1100; C1100P; CDA110; CDA 110; 110 CU; 110 COPPER; COPPER 110; ETP; ETP COPPER;
        Cu-ETP; CW004A; E-Cu58; E-Cu57; ECU; E-CU; T2; C101; T2 COPPER`,
      'memory',
    ),
    of('c110-h02', 'C1100P-1/2H', 'memory', { withTemper: true }),
    of('c110-h04', 'C1100P-H', 'memory', { withTemper: true }),
    of('cu-r200', 'Cu-ETP R200; CW004A R200; Cu-ETP H040', 'memory', { withTemper: true }),
    of('cu-r240', 'Cu-ETP R240; CW004A R240; Cu-ETP H065', 'memory', { withTemper: true }),
    of('cu-r360', 'Cu-ETP R360; CW004A R360; Cu-ETP H110', 'memory', { withTemper: true }),
    everyTemper('c260', 'CuZn30; CW505L; CZ106', 'printed'),
    everyTemper(
      'c260',
      `
        C26000; C260; C2600; C2600P; CDA260; CDA 260; 260 BRASS; BRASS 260; CARTRIDGE BRASS; 70/30; 70/30 BRASS;
        YELLOW BRASS; Ms70; H70; H68; BRASS H70; BRASS H68`,
      'memory',
    ),
    of('cuzn37', 'CuZn37; CW508L; CZ108', 'printed'),
    of(
      'cuzn37',
      `
        C27200; C27000; C272; C268; C26800; C2720P; C2680P; C2801P; C2801; C2680; C2720; Ms63; MS63; COMMON BRASS;
        H62; H63; H65; BRASS H65; BRASS H62; 63/37`,
      'memory',
    ),
    everyTemper(
      'c510',
      'C51000; C510; CuSn5; CW451K; PHOS BRONZE; PH BRONZE; PHOSPHOR BRONZE; PHOSPOR BRONZE; PHOSBRONZE; PB102; C5102P; PBP; PBS; QSn4-0.3',
      'memory',
    ),
    everyTemper(
      'c510',
      'C51900; C52100; C519; C521; CuSn6; CuSn8; CW452K; CW453K; C5191P; C5191; C5212P; QSn6.5-0.1; QSn8-0.3; PB103; PB104',
      'memory',
      { remark: BRONZES },
    ),
    of(
      'ti-gr1',
      'TI GR1; TITANIUM GRADE 1; TITANIUM GR 1; TI GRADE 1; TITANIUM 1; TI-1; 3.7025; R50250; TA1; CP1',
      'memory',
    ),
    of(
      'ti-gr2',
      `
        TI GR2; TITANIUM GRADE 2; TITANIUM GR 2; TITANIUM GR2; TI GRADE 2; GRADE 2 TITANIUM; GR2 TITANIUM;
        TITANIUM 2; CP TI; CP TITANIUM; CP2; TI-2; TI50A; R50400; 3.7035; Ti2; TP340; TA2; JIS CLASS 2;
        B265 GRADE 2; B265 GR 2; ASTM B265 GRADE 2`,
      'memory',
    ),
    of('ti-gr2', 'GR.2; GRADE 2; GR2', 'memory', { needsMetal: true }),
  ],
};
