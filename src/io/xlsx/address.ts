/** 0-based column of a cell reference such as `AB12` or `$AB$12`; -1 if it names none. */
export function columnOf(reference: string): number {
  let column = 0;
  for (let at = 0; at < reference.length; at++) {
    const code = reference.charCodeAt(at) & ~32;
    if (code >= 65 && code <= 90) column = column * 26 + code - 64;
    else if (reference[at] !== '$') break;
  }
  return column - 1;
}

/** Letters of a 0-based column: `A` for 0, `AA` for 26. */
export function showColumn(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : showColumn(Math.floor(column / 26) - 1) + letter;
}
