import { definedName, quoted } from '../write/book-xml.ts';
import { showColumn } from '../xlsx/address.ts';
import { XmlScanner } from '../xlsx/scan.ts';
import type { Beside } from './place-columns.ts';
import type { SheetSurvey } from './survey.ts';

/**
 * A print area of the sheet's own columns, where its print is made to fit a number of pages across: with ours it would come out tiny.
 * Whole columns, so that rows added later are printed too. Nothing where print does not shrink, or where the user has set an area; that
 * one stays. `index` is the sheet's place among all sheets of the workbook.
 */
export function keptPrintArea(
  workbook: string,
  { name, index }: { readonly name: string; readonly index: number },
  survey: SheetSurvey,
  { drawings }: Beside,
): string | null {
  if (!survey.fitsPages || survey.pagesAcross === 0 || hasPrintArea(workbook, index)) return null;
  const right = drawings.reduce((most, drawing) => Math.max(most, drawing.right), survey.right);
  return definedName('Print_Area', index, `${quoted(name)}!$A:$${showColumn(Math.max(right, 0))}`);
}

function hasPrintArea(workbook: string, index: number): boolean {
  const scanner = new XmlScanner(workbook);
  while (scanner.next()) {
    if (scanner.name !== 'definedName' || scanner.isClose) continue;
    const isArea = scanner.attribute('name')?.toLowerCase() === '_xlnm.print_area';
    if (isArea && Number(scanner.attribute('localSheetId') ?? -1) === index) return true;
  }
  return false;
}
