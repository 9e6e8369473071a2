import type { AlloyEntry } from '../../model/sheet.ts';
import type { Table } from '../../model/table.ts';
import { hrb, hv, judged, rm, rowsOf, strengthLimit } from './row.ts';

const family = 'galvanized-steel';
const temper = 'hot-dip galvanized';
const fromStrength = 'strength from memory; hardness judged from it by ISO 18265 Table A.1';

const a653 = rowsOf({
  alloy: 'gi',
  family,
  standard: 'ASTM A653',
  mark: 'memory',
  source: 'hardness judged by the trade, from memory; ASTM A653 has no limit',
});

const structural = rowsOf({
  family,
  hrbFromStrength: true,
  standard: 'ASTM A653',
  mark: 'derived',
  source: `ASTM A653, least ${fromStrength}`,
});

const en10346 = rowsOf({
  family,
  hrbFromStrength: true,
  standard: 'EN 10346',
  mark: 'derived',
  source: `EN 10346, ${fromStrength}`,
});

/** Zinc-coated steel; Rockwell B goes through the coating, so the base steel is compared. */
export const coatedSteel: Table<AlloyEntry> = {
  id: 'alloys-coated-steel',
  title: 'Galvanized, galvannealed and electro-galvanized steel',
  sources: [
    {
      document: 'ASTM A653, EN 10346, EN 10152, JIS G3302, JIS G3313',
      place: 'tensile strength',
      mark: 'memory',
      note: 'None of them limits hardness. One trade summary gives DX51D+Z 270-420 MPa, which is DX52D; the standard as remembered says 270-500.',
    },
    {
      document: 'ISO 18265',
      place: 'Table A.1, hardness from tensile strength',
      mark: 'derived',
      note: 'The standard calls strength its least reliable column.',
    },
  ],
  rows: [
    a653({ id: 'gi-cs', name: 'galvanized CS (A653)', temper, typical: hrb(58), ...judged(hrb(70)), commercial: true }),
    a653({ id: 'gi-fs', name: 'galvanized FS (A653)', temper, typical: hrb(53), ...judged(hrb(65)), commercial: true }),
    a653({
      id: 'ga-cs',
      alloy: 'ga',
      name: 'galvannealed CS',
      temper: 'galvannealed',
      family: 'galvannealed-steel',
      typical: hrb(58),
      ...judged(hrb(70)),
      commercial: true,
      note: 'The iron-zinc coating is hard and brittle (HV 200-350, from memory); the base steel is compared.',
    }),
    structural({ id: 'gi-ss33', name: 'galvanized SS grade 33 [230]', temper, typical: hrb(62), rmMinMpa: 310 }),
    structural({ id: 'gi-ss40', name: 'galvanized SS grade 40 [275]', temper, typical: hrb(68), rmMinMpa: 380 }),
    structural({ id: 'gi-ss50', name: 'galvanized SS grade 50 [340]', temper, typical: hrb(77), rmMinMpa: 450 }),
    structural({
      id: 'gi-ss80',
      name: 'galvanized SS grade 80 [550]',
      temper: 'full hard, hot-dip galvanized',
      typical: hrb(90),
      rmMinMpa: 570,
      note: 'The standard lets HRB 85 or more stand for the tension test (from memory).',
    }),
    en10346({
      id: 'dx51d',
      name: 'galvanized DX51D',
      temper,
      typical: hrb(58),
      ...strengthLimit(500, 270),
      commercial: true,
      note: 'One trade summary gives 270-420 MPa, which is DX52D.',
    }),
    en10346({
      id: 'dx52d',
      name: 'galvanized DX52D',
      temper,
      typical: hrb(55),
      ...strengthLimit(420, 270),
      commercial: true,
    }),
    en10346({
      id: 'dx53d',
      name: 'galvanized DX53D',
      temper,
      typical: hrb(50),
      ...strengthLimit(380, 270),
      commercial: true,
    }),
    en10346({
      id: 'dx54d',
      name: 'galvanized DX54D',
      temper,
      typical: hrb(47),
      ...strengthLimit(350, 260),
      commercial: true,
    }),
    en10346({ id: 's250gd', name: 'galvanized S250GD', temper, typical: hrb(62), rmMinMpa: 330 }),
    en10346({ id: 's320gd', name: 'galvanized S320GD', temper, typical: hrb(70), rmMinMpa: 390 }),
    en10346({ id: 's350gd', name: 'galvanized S350GD', temper, typical: hrb(74), rmMinMpa: 420 }),
    a653({
      id: 'sgcc',
      alloy: 'sgcc',
      name: 'galvanized SGCC',
      temper,
      standard: 'JIS G3302',
      typical: hrb(60),
      ...judged(hrb(75)),
      rmMinMpa: 270,
      commercial: true,
      source: 'hardness judged by the trade, from memory; JIS G3302 has no limit',
      note: 'The strength is an option.',
    }),
    {
      id: 'secc',
      alloy: 'secc',
      name: 'electro-galvanized SECC',
      temper: 'electro-galvanized',
      family,
      standard: 'JIS G3313',
      typical: hrb(55),
      ...judged(hrb(65)),
      rmMinMpa: 270,
      commercial: true,
      mark: 'derived',
      source: 'taken as its base metal SPCC (JIS G3141, from memory)',
    },
    {
      id: 'dc01ze',
      alloy: 'dc01ze',
      name: 'electro-galvanized DC01+ZE',
      temper: 'electro-galvanized',
      family,
      standard: 'EN 10152',
      typical: hrb(55),
      ...judged(hv(115)),
      ...rm(270, 410),
      commercial: true,
      mark: 'derived',
      source: 'taken as its base metal DC01 (EN 10139, condition LC)',
    },
  ],
};
