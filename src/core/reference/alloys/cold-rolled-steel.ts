import type { AlloyEntry } from '../../model/sheet.ts';
import type { Table } from '../../model/table.ts';
import type { Hardness } from '../../units/hardness.ts';
import { hrb, hv, judged, limit, published, rm, rowsOf, type Strength } from './row.ts';

const family = 'carbon-steel';

const astm = rowsOf({
  alloy: 'crs',
  family,
  standard: 'ASTM A1008',
  mark: 'memory',
  source: 'ASTM A366 and A619, withdrawn: limit, printed in a mill summary; typical value and strength from memory',
});

const a109 = rowsOf({
  alloy: 'a109',
  family,
  standard: 'ASTM A109',
  mark: 'memory',
  source: 'ASTM A109/A109M-08 Table 3, printed, for strip over 1.0 mm; typical value and strength from memory',
});

const en10139 = rowsOf({
  alloy: 'dc01',
  family,
  standard: 'EN 10139',
  mark: 'derived',
  source: 'EN 10139, Vickers limits and strength, printed; typical value judged inside them by ASTM E140 Table 2',
});

/** DC01 in a condition with Vickers limits on both sides. */
function workHardened(temper: string, typical: Hardness, [min, max]: readonly [number, number], strength: Strength) {
  const id = `dc01-${temper.toLowerCase()}`;
  return en10139({ id, name: `DC01 ${temper}`, temper, typical, ...limit(hv(max)), min: hv(min), ...strength });
}

const en10130 = rowsOf({
  family,
  standard: 'EN 10130',
  mark: 'derived',
  source: 'EN 10130, strength from memory; hardness judged, no limit in the standard',
  note: 'By strength alone, 330 MPa, ISO 18265 would give HRB 58.',
});

const spcc = rowsOf({ alloy: 'spcc', family, standard: 'JIS G3141', mark: 'memory', source: 'JIS G3141, from memory' });

const mill = rowsOf({
  family,
  standard: 'JIS G3141',
  mark: 'memory',
  source: 'limit from a mill summary, printed; typical value from memory',
  note: 'The limit is a mill’s: the standard as remembered has none for this grade.',
});

/** Cold-rolled low-carbon sheet and strip. */
export const coldRolledSteel: Table<AlloyEntry> = {
  id: 'alloys-cold-rolled-steel',
  title: 'Cold-rolled low-carbon steel',
  sources: [
    {
      document: 'ASTM A366, A619 and A620 (withdrawn; now ASTM A1008)',
      place: 'hardness limits as a mill summary restates them',
      mark: 'printed',
      note: 'ASTM A1008 has no hardness limit of its own. A619 allowed HRB 55, A620 HRB 50.',
    },
    {
      document: 'ASTM A109/A109M-08',
      place: 'Table 3, tempers No. 1 to No. 5',
      mark: 'printed',
      note: 'One restatement prints the No. 5 limits in the No. 4 row; the standard’s own table is followed.',
    },
    {
      document: 'EN 10139',
      place: 'conditions A, LC and C290 to C690',
      mark: 'printed',
      note: 'DC04 LC: Vickers from memory.',
    },
    { document: 'EN 10130', place: 'DC05 and DC06, tensile strength', mark: 'memory' },
    {
      document: 'JIS G3141',
      place: 'temper grades of SPCC',
      mark: 'memory',
      note: 'The Vickers and Rockwell limits lie on the published conversions. SPCD and SPCE limits are a mill’s.',
    },
  ],
  rows: [
    astm({
      id: 'crs-a1008-cs',
      name: 'cold-rolled CS (A1008)',
      temper: 'skin-passed',
      typical: hrb(53),
      ...limit(hrb(60)),
      ...rm(300, 350),
      commercial: true,
      note: 'HRB 60 was the limit of ASTM A366; A1008 states none. Strength is the usual range.',
    }),
    astm({
      id: 'crs-a1008-ds',
      name: 'cold-rolled DS (A1008)',
      temper: 'skin-passed',
      typical: hrb(45),
      ...limit(hrb(55)),
      ...rm(270, 330),
      commercial: true,
      note: 'HRB 55 was the limit of ASTM A619 (A620: HRB 50); A1008 states none. Strength is the usual range.',
    }),

    a109({
      id: 'a109-t1',
      name: 'A109 No. 1 hard',
      temper: 'No. 1 full hard',
      typical: hrb(90),
      min: hrb(84),
      ...rm(550, 550),
      note: 'At least HRB 90 from 1.0 to 1.8 mm, HRB 84 above 1.8 mm. The strength is typical.',
    }),
    a109({
      id: 'a109-t2',
      name: 'A109 No. 2 half hard',
      temper: 'No. 2 half hard',
      typical: hrb(78),
      ...limit(hrb(85)),
      min: hrb(70),
      ...rm(380, 520),
      note: 'At 1.0 mm and below the standard limits HR30T to 63.5-73.5.',
    }),
    a109({
      id: 'a109-t3',
      name: 'A109 No. 3 quarter hard',
      temper: 'No. 3 quarter hard',
      typical: hrb(68),
      ...limit(hrb(75)),
      min: hrb(60),
      ...rm(310, 450),
      note: 'At 1.0 mm and below the standard limits HR30T to 56.5-67.',
    }),
    a109({
      id: 'a109-t4',
      name: 'A109 No. 4 skin rolled',
      temper: 'No. 4 skin rolled',
      typical: hrb(55),
      ...limit(hrb(65)),
      ...rm(290, 370),
      note: 'At 1.0 mm and below HR30T 60 at most. One restatement prints the limits of No. 5 here.',
    }),
    a109({
      id: 'a109-t5',
      name: 'A109 No. 5 dead soft',
      temper: 'No. 5 dead soft',
      typical: hrb(48),
      ...limit(hrb(55)),
      ...rm(260, 340),
      note: 'At 1.0 mm and below HR30T 53 at most. One restatement prints these limits in the row of No. 4.',
    }),

    en10139({
      id: 'dc01-lc',
      name: 'cold-rolled DC01',
      temper: 'LC, skin-passed',
      typical: hrb(55),
      ...limit(hv(115)),
      ...rm(270, 410),
      commercial: true,
    }),
    en10139({
      id: 'dc01-a',
      name: 'DC01 annealed',
      temper: 'A, annealed',
      typical: hrb(50),
      ...limit(hv(105)),
      ...rm(270, 390),
    }),
    workHardened('C290', hrb(62), [95, 125], rm(290, 430)),
    workHardened('C340', hrb(72), [105, 155], rm(340, 490)),
    workHardened('C390', hrb(79), [117, 172], rm(390, 540)),
    workHardened('C440', hrb(83), [135, 185], rm(440, 590)),
    workHardened('C490', hrb(88), [155, 200], rm(490, 640)),
    workHardened('C590', hrb(94), [185, 225], rm(590, 740)),
    en10139({ id: 'dc01-c690', name: 'DC01 C690', temper: 'C690', typical: hrb(98), min: hv(215), rmMinMpa: 690 }),
    en10139({
      id: 'dc03-lc',
      alloy: 'dc03',
      name: 'cold-rolled DC03',
      temper: 'LC, skin-passed',
      typical: hrb(50),
      ...limit(hv(110)),
      ...rm(270, 370),
      commercial: true,
    }),
    en10139({
      id: 'dc03-a',
      alloy: 'dc03',
      name: 'DC03 annealed',
      temper: 'A, annealed',
      typical: hrb(48),
      ...limit(hv(100)),
      ...rm(270, 370),
    }),
    en10139({
      id: 'dc04-lc',
      alloy: 'dc04',
      name: 'cold-rolled DC04',
      temper: 'LC, skin-passed',
      typical: hrb(47),
      ...limit(hv(105)),
      ...rm(270, 350),
      commercial: true,
      source: 'EN 10139, strength printed, Vickers limit from memory; typical value judged below it',
    }),
    en10130({
      id: 'dc05',
      name: 'cold-rolled DC05',
      temper: 'skin-passed',
      typical: hrb(43),
      ...judged(hrb(52)),
      ...rm(270, 330),
      commercial: true,
    }),
    en10130({
      id: 'dc06',
      name: 'cold-rolled DC06',
      temper: 'skin-passed',
      typical: hrb(43),
      ...judged(hrb(52)),
      ...rm(270, 330),
      commercial: true,
      note: 'By strength alone, 330 MPa, ISO 18265 would give HRB 58. Up to 350 MPa in one issue of the standard.',
    }),

    spcc({
      id: 'spcc-s',
      name: 'cold-rolled SPCC',
      temper: 'S, temper rolled',
      typical: hrb(55),
      ...limit(hrb(65)),
      rmMinMpa: 270,
      commercial: true,
      note: 'HRB 65 or HV 115 as remembered; a mill summary says HRB 60. The strength is an option.',
    }),
    spcc({
      id: 'spcc-a',
      name: 'SPCC annealed',
      temper: 'A, annealed',
      typical: hrb(50),
      ...limit(hrb(57)),
      rmMinMpa: 270,
    }),
    spcc({
      id: 'spcc-8',
      name: 'SPCC 1/8 hard',
      temper: '1/8 hard',
      typical: hrb(62),
      ...limit(hrb(71)),
      min: hrb(50),
      ...rm(290, 410),
    }),
    spcc({
      id: 'spcc-4',
      name: 'SPCC 1/4 hard',
      temper: '1/4 hard',
      typical: hrb(73),
      ...limit(hrb(80)),
      min: hrb(65),
      ...rm(370, 490),
    }),
    spcc({
      id: 'spcc-2',
      name: 'SPCC 1/2 hard',
      temper: '1/2 hard',
      typical: hrb(82),
      ...limit(hrb(89)),
      min: hrb(74),
      ...rm(440, 590),
    }),
    spcc({ id: 'spcc-1', name: 'SPCC full hard', temper: 'full hard', typical: hrb(92), min: hrb(85), rmMinMpa: 550 }),
    mill({
      id: 'spcd',
      name: 'cold-rolled SPCD',
      temper: 'temper rolled',
      typical: hrb(50),
      ...published(hrb(55)),
      rmMinMpa: 270,
      commercial: true,
    }),
    mill({
      id: 'spce',
      name: 'cold-rolled SPCE',
      temper: 'temper rolled',
      typical: hrb(45),
      ...published(hrb(50)),
      rmMinMpa: 270,
      commercial: true,
    }),
  ],
};
