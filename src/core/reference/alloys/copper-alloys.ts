import type { AlloyEntry } from '../../model/sheet.ts';
import type { Table } from '../../model/table.ts';
import { hrb, hrf, hv, judged, limit, published, rm, rowsOf, strengthLimit } from './row.ts';

const c110 = rowsOf({
  alloy: 'c110',
  family: 'copper',
  standard: 'ASTM B152',
  mark: 'printed',
  source: 'Copper Development Association, typical values, printed',
  note: 'Figures of C12700, silver-bearing tough-pitch sheet, taken for C11000.',
});

const en1652 = rowsOf({
  alloy: 'c110',
  family: 'copper',
  standard: 'EN 1652',
  mark: 'memory',
  source: 'EN 1652, from memory',
});

const c260 = rowsOf({
  alloy: 'c260',
  family: 'brass',
  standard: 'ASTM B36',
  mark: 'memory',
  source: 'hardness from memory; strength Copper Development Association, printed',
});

const anyTemper = rowsOf({
  family: 'brass',
  standard: 'EN 1652',
  mark: 'printed',
  source: 'Copper Development Association Publication 120, Table 16, printed',
  note: 'From soft to hard: ask for the condition.',
});

const c510 = rowsOf({
  alloy: 'c510',
  family: 'bronze',
  standard: 'ASTM B103',
  mark: 'printed',
  source: 'Copper Development Association, typical values, printed; ASTM B103, limits over 0.99 mm, printed',
});

/** Copper, brass and bronze sheet and strip. */
export const copperAlloys: Table<AlloyEntry> = {
  id: 'alloys-copper',
  title: 'Copper, brass and bronze',
  sources: [
    {
      document: 'Copper Development Association, alloy data',
      place: 'C12700, C26000 and C51000, typical properties',
      mark: 'printed',
      note: 'No sheet for C11000 was read: the figures are those of C12700.',
    },
    {
      document: 'EN 1652',
      place: 'Cu-ETP, Vickers and strength by temper',
      mark: 'printed',
      note: 'R240: from memory.',
    },
    {
      document: 'Copper Development Association Publication 120',
      place: 'Table 16, CuZn30 and CuZn37',
      mark: 'printed',
    },
    { document: 'ASTM B36', place: 'C26000, Rockwell B ranges', mark: 'memory', note: 'Low confidence.' },
    { document: 'ASTM B103', place: 'C51000, Rockwell B ranges', mark: 'printed' },
  ],
  rows: [
    c110({ id: 'c110-o', name: 'C110 soft', temper: 'OS025', typical: hrf(45), ...rm(235, 235) }),
    c110({ id: 'c110-h00', name: 'C110 1/8 hard', temper: 'H00', typical: hrb(10), ...rm(250, 250) }),
    c110({
      id: 'c110-h02',
      name: 'C110 half hard',
      temper: 'H02',
      typical: hrb(40),
      ...rm(290, 290),
      commercial: true,
    }),
    c110({ id: 'c110-h04', name: 'C110 hard', temper: 'H04', typical: hrb(50), ...rm(345, 345) }),
    en1652({
      id: 'cu-r200',
      name: 'Cu-ETP R200 soft',
      temper: 'R200/H040',
      ...strengthLimit(250, 200),
      mark: 'printed',
      source: 'EN 1652, printed',
      note: 'HV 40-65 in the standard; with no conversion of Vickers for copper, the strength stands for it.',
    }),
    en1652({
      id: 'cu-r240',
      name: 'Cu-ETP R240 half hard',
      temper: 'R240/H065',
      typical: hrb(40),
      ...judged(hrb(45)),
      ...rm(240, 300),
      note: 'HV 65-95 in the standard, taken as HRB 35-45.',
    }),
    en1652({
      id: 'cu-r360',
      name: 'Cu-ETP R360 hard',
      temper: 'R360/H110',
      typical: hrb(60),
      min: hv(110),
      rmMinMpa: 360,
      mark: 'derived',
      source: 'EN 1652, limit printed; typical value judged from its strength',
    }),
    c260({
      id: 'c260-o',
      name: 'C260 soft',
      temper: 'OS035-OS070',
      typical: hrb(20),
      ...rm(305, 340),
      mark: 'derived',
      source: 'bottom of a mill’s range, printed; HRF 54-68 from memory',
      note: 'HRB 20 or less.',
    }),
    c260({
      id: 'c260-h01',
      name: 'C260 quarter hard',
      temper: 'H01',
      typical: hrb(55),
      ...rm(340, 405),
      note: 'The strength is a mill’s range.',
    }),
    c260({
      id: 'c260-h02',
      name: 'C260 half hard',
      temper: 'H02',
      typical: hrb(70),
      ...limit(hrb(74)),
      min: hrb(56),
      ...rm(395, 460),
      commercial: true,
      note: 'The limits are about HRB 56-74, remembered with low confidence. The strength is a mill’s range.',
    }),
    c260({
      id: 'c260-h04',
      name: 'C260 hard',
      temper: 'H04',
      typical: hrb(82),
      ...rm(525, 525),
      mark: 'printed',
      source: 'top of a mill’s range; strength Copper Development Association, both printed',
    }),
    anyTemper({
      id: 'cuzn30',
      alloy: 'c260',
      name: 'CuZn30 in any temper',
      temper: 'soft to hard',
      ...published(hv(170)),
      min: hv(70),
      ...rm(325, 540),
    }),
    anyTemper({
      id: 'cuzn37',
      name: 'CuZn37 in any temper',
      temper: 'soft to hard',
      ...published(hv(180)),
      min: hv(80),
      ...rm(355, 585),
    }),
    c510({
      id: 'c510-o',
      name: 'C510 soft',
      temper: 'O60',
      typical: hrb(30),
      ...limit(hrb(64)),
      min: hrb(16),
      ...rm(295, 400),
      mark: 'derived',
      note: 'Typical HRB 26-34: the middle is taken.',
    }),
    c510({
      id: 'c510-h02',
      name: 'C510 half hard',
      temper: 'H02',
      typical: hrb(78),
      ...limit(hrb(85)),
      min: hrb(64),
      ...rm(400, 505),
      commercial: true,
      note: 'HRB 60-82 from 0.51 to 0.99 mm.',
    }),
    c510({
      id: 'c510-h04',
      name: 'C510 hard',
      temper: 'H04',
      typical: hrb(87),
      ...limit(hrb(93)),
      min: hrb(86),
      ...rm(525, 625),
      note: 'HRB 84-91 from 0.51 to 0.99 mm.',
    }),
    c510({
      id: 'c510-h06',
      name: 'C510 extra hard',
      temper: 'H06',
      typical: hrb(93),
      ...limit(hrb(96)),
      min: hrb(92),
      ...rm(605, 710),
    }),
  ],
};
