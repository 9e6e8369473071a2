import type { AlloyEntry } from '../../model/sheet.ts';
import type { Table } from '../../model/table.ts';
import { hrb, judged, rm, rowsOf, strengthLimit } from './row.ts';

const family = 'carbon-steel';
const mark = 'derived';
const hrbFromStrength = true;
const source = 'strength from memory; hardness judged from it by ISO 18265 Table A.1';

const plain = rowsOf({ family, standard: 'EN 10111', mark, hrbFromStrength, source: `EN 10111, ${source}` });

const hslas = rowsOf({
  family,
  hrbFromStrength,
  standard: 'ASTM A1011, A1008',
  mark,
  source: `ASTM A1011 and A1008, least ${source}`,
  note: 'The standards limit the strength only downwards: the lower figure is grade F of the class with the lower strength.',
});

const thermomechanical = rowsOf({
  family,
  hrbFromStrength,
  standard: 'EN 10149-2',
  mark,
  source: `EN 10149-2, ${source}`,
});

const coldRolledHsla = rowsOf({ family, standard: 'EN 10268', mark, hrbFromStrength, source: `EN 10268, ${source}` });

/** Hot-rolled and high-strength low-alloy sheet: their standards have no hardness limit. */
export const hotRolledSteel: Table<AlloyEntry> = {
  id: 'alloys-hot-rolled-steel',
  title: 'Hot-rolled and high-strength low-alloy steel',
  sources: [
    {
      document: 'ASTM A1011 and A1008, ASTM A36, EN 10111, EN 10025-2, EN 10149-2, EN 10268, JIS G3131',
      place: 'tensile strength',
      mark: 'memory',
      note: 'None of them limits hardness.',
    },
    {
      document: 'ISO 18265',
      place: 'Table A.1, hardness from tensile strength',
      mark: 'derived',
      note: 'The standard calls strength its least reliable column.',
    },
  ],
  rows: [
    rowsOf({ family, standard: 'ASTM A1011', mark, hrbFromStrength, source: `ASTM A1011, usual ${source}` })({
      id: 'hrpo-a1011-cs',
      alloy: 'hrpo',
      name: 'hot-rolled CS P&O (A1011)',
      temper: 'hot rolled, pickled and oiled',
      typical: hrb(60),
      ...judged(hrb(72)),
      ...rm(330, 420),
      commercial: true,
      note: 'The standard does not limit the strength: the range is the usual one.',
    }),
    plain({
      id: 'dd11',
      name: 'hot-rolled DD11',
      temper: 'hot rolled',
      typical: hrb(60),
      ...strengthLimit(440),
      commercial: true,
    }),
    plain({
      id: 'dd13',
      name: 'hot-rolled DD13',
      temper: 'hot rolled',
      typical: hrb(55),
      ...strengthLimit(400),
      commercial: true,
    }),
    plain({
      id: 'sphc',
      name: 'hot-rolled SPHC',
      temper: 'hot rolled',
      standard: 'JIS G3131',
      typical: hrb(60),
      rmMinMpa: 270,
      commercial: true,
      source: `JIS G3131, least ${source}`,
    }),
    plain({
      id: 'a36',
      name: 'A36 hot rolled',
      temper: 'hot rolled',
      standard: 'ASTM A36',
      typical: hrb(73),
      ...strengthLimit(550, 400),
      commercial: true,
      source: `ASTM A36, ${source}`,
      note: 'A plate standard, often written for hot-rolled sheet.',
    }),
    plain({
      id: 's235jr',
      name: 'S235JR hot rolled',
      temper: 'hot rolled',
      standard: 'EN 10025-2',
      typical: hrb(70),
      ...strengthLimit(510, 360),
      commercial: true,
      source: `EN 10025-2, ${source}`,
    }),
    hslas({
      id: 'hslas50',
      name: 'HSLA grade 50 [340]',
      temper: 'HSLA',
      typical: hrb(75),
      ...judged(hrb(82)),
      rmMinMpa: 410,
    }),
    hslas({
      id: 'hslas60',
      name: 'HSLA grade 60 [410]',
      temper: 'HSLA',
      typical: hrb(81),
      ...judged(hrb(88)),
      rmMinMpa: 480,
    }),
    hslas({
      id: 'hslas80',
      name: 'HSLA grade 80 [550]',
      temper: 'HSLA',
      typical: hrb(91),
      ...judged(hrb(96)),
      rmMinMpa: 620,
    }),
    thermomechanical({
      id: 's355mc',
      name: 'S355MC',
      temper: 'thermomechanically rolled',
      typical: hrb(79),
      ...strengthLimit(550, 430),
    }),
    thermomechanical({
      id: 's420mc',
      name: 'S420MC',
      temper: 'thermomechanically rolled',
      typical: hrb(84),
      ...strengthLimit(620, 480),
    }),
    thermomechanical({
      id: 's500mc',
      name: 'S500MC',
      temper: 'thermomechanically rolled',
      typical: hrb(90),
      ...strengthLimit(700, 550),
    }),
    coldRolledHsla({
      id: 'hc260la',
      name: 'HC260LA',
      temper: 'cold rolled HSLA',
      typical: hrb(67),
      ...strengthLimit(430, 350),
    }),
    coldRolledHsla({
      id: 'hc340la',
      name: 'HC340LA',
      temper: 'cold rolled HSLA',
      typical: hrb(76),
      ...strengthLimit(510, 410),
    }),
    coldRolledHsla({
      id: 'hc420la',
      name: 'HC420LA',
      temper: 'cold rolled HSLA',
      typical: hrb(83),
      ...strengthLimit(600, 470),
      note: 'One issue of the standard ends at 590 MPa.',
    }),
  ],
};
