import type { AlloyEntry } from '../../model/sheet.ts';
import type { Table } from '../../model/table.ts';
import { hrb, published, rowsOf } from './row.ts';

const b265 = rowsOf({
  family: 'titanium',
  standard: 'ASTM B265',
  mark: 'memory',
  source: 'ASTM B265, strength printed; typical value from memory',
});

/** Commercially pure titanium sheet. No standard converts its hardness, so only Rockwell B stated as such counts. */
export const titanium: Table<AlloyEntry> = {
  id: 'alloys-titanium',
  title: 'Titanium',
  sources: [
    { document: 'ASTM B265', place: 'tensile strength', mark: 'printed', note: 'No hardness limit.' },
    {
      document: 'ASM material data sheets',
      place: 'titanium grade 2, annealed',
      mark: 'printed',
      note: 'HRB 98 at 430 MPa, 18 points above the typical value that is remembered.',
    },
  ],
  rows: [
    b265({
      id: 'ti-gr1',
      name: 'titanium grade 1',
      temper: 'annealed',
      typical: hrb(70),
      rmMinMpa: 240,
      commercial: true,
    }),
    b265({
      id: 'ti-gr2',
      name: 'titanium grade 2',
      temper: 'annealed',
      typical: hrb(80),
      ...published(hrb(98)),
      rmMinMpa: 345,
      commercial: true,
      source: 'ASTM B265, strength printed; typical value from memory; HRB 98 of an ASM data sheet, printed',
      note: 'Published typical values differ by 18 points: HRB 80 and HRB 98.',
    }),
  ],
};
