import type { Worksheet } from 'exceljs';

/** A workbook of one report alone. */
export async function writeReportWorkbook(name: string, write: (sheet: Worksheet) => void): Promise<Uint8Array> {
  const { default: exceljs } = await import('exceljs');
  const workbook = new exceljs.Workbook();
  workbook.creator = 'Clinchsheet';
  write(workbook.addWorksheet(name));
  return new Uint8Array(await workbook.xlsx.writeBuffer());
}
