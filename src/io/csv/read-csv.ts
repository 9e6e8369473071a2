import { type RawFile, type TextEncoding, Unreadable } from '../../core/model/raw.ts';
import { type ReadOptions, watchReading } from '../options.ts';
import { guessDelimiter, takeSeparatorLine } from './delimiter.ts';
import { createGate, refuseLongLines } from './gate.ts';
import { noticeUnclosed, readRows } from './rows.ts';

/** Text that was already decoded, and what decoding had to say. */
export interface DelimitedText {
  readonly text: string;
  readonly encoding: TextEncoding;
  readonly notice?: string;
}

/**
 * Reads delimited text into one table. Cells are kept as written (not trimmed, not typed), rows keep the number a
 * spreadsheet would show, wholly blank rows are left out.
 * @throws Unreadable when there is no filled cell or more than a list can need, or when the reading was stopped.
 */
export function readCsv(source: DelimitedText, file: string, options: ReadOptions = {}): RawFile {
  const report = watchReading(options, file);
  refuseLongLines(source.text, file);
  const { text, delimiter: named } = takeSeparatorLine(source.text);
  const delimiter = options.delimiter ?? named ?? guessDelimiter(text);
  report(0.1);
  const read = readRows(text, delimiter, () => createGate(file, report));
  report(1);
  if (read.rows.length === 0) throw new Unreadable(`‘${file}’ holds no filled cells; choose the file with your list.`);
  return {
    file,
    format: 'csv',
    tables: [{ name: '', rows: read.rows }],
    encoding: source.encoding,
    delimiter,
    notices: [...(source.notice === undefined ? [] : [{ text: source.notice }]), ...noticeUnclosed(read)],
  };
}
