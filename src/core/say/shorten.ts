/** The first `most` characters of a text at most, without half of a character that stands as two. */
export function beginningOf(text: string, most: number): string {
  return text.slice(0, most).replace(/[\ud800-\udbff]$/, '');
}

/** A text of at most `most` characters: what is too long ends in three dots. */
export function shorten(text: string, most: number): string {
  return text.length > most ? `${beginningOf(text, most - 1).trimEnd()}…` : text;
}
