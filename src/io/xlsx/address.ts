const DOLLAR = 36;

/** 0-based column of a cell reference such as `AB12` or `$AB$12`, which may stand within a text; -1 if it names none. */
export function columnOf(reference: string, start = 0, end = reference.length): number {
  let column = 0;
  for (let at = start; at < end; at++) {
    const code = reference.charCodeAt(at) & ~32;
    if (code >= 65 && code <= 90) column = column * 26 + code - 64;
    else if (reference.charCodeAt(at) !== DOLLAR) break;
  }
  return column - 1;
}

/** Letters of a 0-based column: `A` for 0, `AA` for 26. */
export function showColumn(column: number): string {
  const letter = String.fromCharCode(65 + (column % 26));
  return column < 26 ? letter : showColumn(Math.floor(column / 26) - 1) + letter;
}
