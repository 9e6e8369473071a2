import type { Zip } from './zip.ts';

const SAVE_AS_XLSX = 'open it in a spreadsheet program and save it as .xlsx';

/** One sentence for a zip that holds no readable workbook: what it is instead, and what to do. */
export function describeOtherPackage(zip: Zip, file: string): string {
  const has = (pattern: RegExp) => zip.names.some((name) => pattern.test(name));
  const openDocument = findOpenDocumentKind(zip);
  if (has(/^xl[\\/]workbook\.bin$/i)) return `‘${file}’ is a binary workbook (.xlsb); ${SAVE_AS_XLSX}.`;
  if (openDocument === 'spreadsheet') return `‘${file}’ is an OpenDocument spreadsheet; ${SAVE_AS_XLSX}.`;
  if (openDocument !== undefined || has(/^word[\\/]/i)) {
    return `‘${file}’ is a text document, not a list; copy its table into a spreadsheet and save that as .xlsx.`;
  }
  if (has(/^ppt[\\/]/i))
    return `‘${file}’ is a presentation, not a list; copy its table into a spreadsheet and save that as .xlsx.`;
  if (has(/\.iwa$/i))
    return `‘${file}’ is a workbook of another kind; export it as .xlsx from the program that made it.`;
  if (has(/^xl[\\/]/i)) return `‘${file}’ is a workbook with its main part missing; ${SAVE_AS_XLSX} again.`;
  return `‘${file}’ is a zip archive without a workbook; unpack it and choose the list inside.`;
}

/** Last word of the media type that OpenDocument files begin with. */
function findOpenDocumentKind(zip: Zip): string | undefined {
  const part = zip.find('mimetype');
  if (part === undefined) return undefined;
  const type = new TextDecoder().decode(zip.read(part).subarray(0, 200));
  return /opendocument\.([a-z]+)/.exec(type)?.[1];
}
