/** Widths of letters in ems, on the safe side of the sans-serif faces that the drawings are shown in. */
const NARROW = 0.34;
const PLAIN = 0.61;
const WIDE = 0.95;
const NARROW_LETTERS = new Set("iljtfrI.,:;'|!()[]- ");

/** About how wide a line of text is, in px; rather too wide than too narrow. */
export function textWidth(text: string, sizePx: number): number {
  return [...text].reduce((sum, letter) => sum + widthOf(letter), 0) * sizePx;
}

function widthOf(letter: string): number {
  if (NARROW_LETTERS.has(letter)) return NARROW;
  if (/[mwMW@%—]/.test(letter) || letter.charCodeAt(0) > 0x2e7f) return WIDE;
  return /[A-Z]/.test(letter) ? 0.7 : PLAIN;
}

/** Lines no wider than that, broken between words; a longer word is broken inside. */
export function wrapText(text: string, sizePx: number, widthPx: number): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(/\s+/).flatMap((word) => breakWord(word, sizePx, widthPx))) {
    const last = lines.at(-1);
    const longer = last === undefined ? word : `${last} ${word}`;
    if (last !== undefined && textWidth(longer, sizePx) <= widthPx) lines[lines.length - 1] = longer;
    else lines.push(word);
  }
  return lines;
}

function breakWord(word: string, sizePx: number, widthPx: number): readonly string[] {
  if (textWidth(word, sizePx) <= widthPx) return [word];
  const pieces = [''];
  for (const letter of word) {
    const longer = `${pieces.at(-1)}${letter}`;
    if (pieces.at(-1) !== '' && textWidth(longer, sizePx) > widthPx) pieces.push(letter);
    else pieces[pieces.length - 1] = longer;
  }
  return pieces;
}
