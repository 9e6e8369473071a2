/** Marks the style elements that the grid makes as its own; a style that came in with a list has no such mark. */
export const STYLE_NONCE = 'grid-styles';
