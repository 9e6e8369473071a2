import { type CellBook, inlineTexts } from '../write/cell-xml.ts';
import { StyleBook } from '../write/style.ts';
import type { OpenBook } from './open-book.ts';
import { appendStyles, styleOffset } from './patch-styles.ts';

/** How cells of ours refer to their styles in a workbook, and what becomes of its styles. */
export interface OwnStyles {
  readonly book: CellBook;
  /** False: the workbook takes no styles of ours. */
  readonly isOpen: boolean;
  /** The styles part with those of ours that were asked for. */
  readonly xml: () => string;
}

/** Our styles behind those of a workbook; without a styles part to extend, none. Texts stand in their cells. */
export function openStyles(book: OpenBook): OwnStyles {
  const theirs = book.styles === undefined ? '' : book.read(book.styles);
  const offset = theirs === '' ? null : styleOffset(theirs);
  const ours = new StyleBook();
  const styleOf: CellBook['styleOf'] = (style) => (offset === null ? undefined : offset + ours.indexOf(style));
  return {
    book: { styleOf, textOf: inlineTexts() },
    isOpen: offset !== null,
    xml: () => appendStyles(theirs, ours.xml()),
  };
}
