import type { MaterialReading } from '../../model/sheet.ts';
import type { Mark } from '../../model/table.ts';

/** Ways of writing one alloy. Letter case, blanks, hyphens and stops between letters make no difference. */
export interface Designation {
  /** Entry ids of the condition in which sheet of this name is sold; several where the words leave it open. */
  readonly entries?: readonly string[];
  /** Instead of `entries`: the alloy whose every temper the words could mean. */
  readonly alloy?: string;
  readonly words: readonly string[];
  /** The words name the temper too. */
  readonly withTemper?: true;
  /** Too short or too common to mean the alloy unless the metal is named beside it. */
  readonly needsMetal?: true;
  /** The words say how the sheet was rolled, which says nothing new beside a named alloy. */
  readonly rolled?: true;
  /** The standard in which it is written, where its hardness limit differs from the entry's. */
  readonly limit?: NonNullable<MaterialReading['writtenLimit']>;
  /** What a careful reader should be told. */
  readonly remark?: string;
  readonly mark: Mark;
}

type Named = Omit<Designation, 'entries' | 'alloy' | 'words' | 'mark'>;

/** Words for entries, separated by semicolons. */
export function of(entries: string, words: string, mark: Mark, more: Named = {}): Designation {
  return { entries: entries.split(' '), words: split(words), mark, ...more };
}

/** Words for an alloy in any temper, separated by semicolons. */
export function everyTemper(alloy: string, words: string, mark: Mark, more: Named = {}): Designation {
  return { alloy, words: split(words), mark, ...more };
}

/** A list written in one string, separated by semicolons. */
export function split(words: string): readonly string[] {
  return words
    .split(';')
    .map((word) => word.trim())
    .filter((word) => word !== '');
}
