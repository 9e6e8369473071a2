import { writeFileSync } from 'node:fs';
import Papa from 'papaparse';
import { catalogueCells } from './make/catalogue.ts';
import { revisionACells } from './make/revision-a.ts';
import { workbookBytes } from './make/workbook.ts';

// Writes the invented demo files beside this script; run it with `npx tsx sample-data/make-demo.ts`. Two runs give the same bytes.
writeFileSync(beside('demo-catalogue.csv'), csv(catalogueCells()));
writeFileSync(beside('recorder-cabinet.csv'), csv(revisionACells()));
writeFileSync(beside('recorder-cabinet.xlsx'), await workbookBytes());

function beside(name: string): URL {
  return new URL(name, import.meta.url);
}

function csv(cells: readonly (readonly string[])[]): string {
  return `${Papa.unparse(
    cells.map((row) => [...row]),
    { delimiter: ',', newline: '\n' },
  )}\n`;
}
