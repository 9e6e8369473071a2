import type { PlannedCell } from './sheet-plan.ts';
import type { Style } from './style.ts';
import { textXml } from './xml-text.ts';

/** How cells of a workbook refer to their styles and hold their texts. */
export interface CellBook {
  /** Number of a style; undefined where the workbook takes none of ours. */
  readonly styleOf: (style: Style) => number | undefined;
  /** The end of the start tag and what stands in it for a text. */
  readonly textOf: (text: string) => string;
}

/** A cell at a reference such as `B7`, as XML without prefixes. */
export function cellXml(reference: string, cell: PlannedCell, book: CellBook): string {
  return `<c r="${reference}"${behindReference(cell, book)}`;
}

/** What follows the reference of a cell. */
export function behindReference({ value, style }: PlannedCell, book: CellBook): string {
  const number = book.styleOf(style);
  const start = number === undefined ? '' : ` s="${number}"`;
  if (value === null || value === '') return `${start}/>`;
  if (typeof value === 'number') return Number.isFinite(value) ? `${start}><v>${value}</v></c>` : `${start}/>`;
  return `${start}${book.textOf(value)}</c>`;
}

/** Texts kept once, in the order in which they were first asked for: cells name them by number. */
export class SharedTexts {
  readonly #contents = new Map<string, string>();
  #asked = 0;

  readonly textOf = (text: string): string => {
    this.#asked++;
    const known = this.#contents.get(text);
    if (known !== undefined) return known;
    const content = ` t="s"><v>${this.#contents.size}</v>`;
    this.#contents.set(text, content);
    return content;
  };

  /** The part that holds them, in pieces. */
  *xml(main: string): Generator<string> {
    yield `<sst xmlns="${main}" count="${this.#asked}" uniqueCount="${this.#contents.size}">`;
    for (const text of this.#contents.keys()) yield `<si>${textXml(text)}</si>`;
    yield '</sst>';
  }
}

/** Texts written into their cells, for workbooks whose own table of texts is left alone. */
export function inlineTexts(): CellBook['textOf'] {
  const known = new Map<string, string>();
  return (text) => {
    let content = known.get(text);
    if (content === undefined) {
      content = ` t="inlineStr"><is>${textXml(text)}</is>`;
      if (known.size < MOST_KEPT) known.set(text, content);
    }
    return content;
  };
}

/** Texts written so far that are looked up again rather than made anew. */
const MOST_KEPT = 50_000;
