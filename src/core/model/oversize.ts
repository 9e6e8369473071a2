const MEBIBYTE = 1024 * 1024;

/** Bytes of any file that is read: no workbook that is read unpacks to more. */
export const LARGEST_FILE = 250 * MEBIBYTE;

/** One sentence for a file with more bytes than a list can need; nothing for any other. */
export function describeOversize(size: number, file: string, most = LARGEST_FILE): string | undefined {
  if (size <= most) return undefined;
  return `‘${file}’ is larger than ${most / MEBIBYTE} MB, which no list needs; choose the file with your list.`;
}
