import { MOST_TEXTS } from '../limits.ts';
import { XmlScanner } from './scan.ts';

/** The workbook's text table, and whether it was read to its end. */
export interface SharedStrings {
  readonly texts: readonly string[];
  readonly isComplete: boolean;
  /** There are more texts than are held; the others were not read. */
  readonly isTooLong: boolean;
}

/** Reads the table of shared texts; rich text is joined, pronunciation guides are left out. */
export function readSharedStrings(xml: string | Iterable<string>): SharedStrings {
  const scanner = new XmlScanner(xml);
  const texts: string[] = [];
  let isComplete = false;
  while (texts.length <= MOST_TEXTS && scanner.next()) {
    if (scanner.name === 'sst' && (scanner.isClose || scanner.isEmpty)) isComplete = true;
    if (scanner.name !== 'si' || scanner.isClose) continue;
    texts.push(scanner.isEmpty ? '' : readRichText(scanner, 'si'));
  }
  const isTooLong = texts.length > MOST_TEXTS;
  return { texts, isComplete: isComplete || isTooLong, isTooLong };
}

/**
 * The text of the element just opened (`si` or `is`), up to its end tag: every `t` outside `rPh`, which holds how the
 * text is spoken.
 */
export function readRichText(scanner: XmlScanner, element: string): string {
  let text = '';
  let isPhonetic = false;
  while (scanner.next()) {
    if (scanner.name === 'rPh') isPhonetic = !scanner.isClose && !scanner.isEmpty;
    if (!scanner.isClose) continue;
    if (scanner.name === 't' && !isPhonetic) text += scanner.text();
    if (scanner.name === element) break;
  }
  return unescapeText(text);
}

/** Spreadsheets write characters that XML cannot hold as `_x000D_`, and a literal underscore before such as `_x005F_`. */
export function unescapeText(text: string): string {
  if (!text.includes('_x')) return text;
  return text.replace(/_x([0-9a-f]{4})_/gi, (_, hex: string) => String.fromCharCode(Number.parseInt(hex, 16)));
}
