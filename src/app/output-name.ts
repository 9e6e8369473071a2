/** Longest name of a list that goes into a file name. */
const MOST_CHARACTERS = 120;

/**
 * Name of a file made from a list: the list's own name without its ending, then what was made. Signs that a file system takes for a
 * path or refuses, and marks that turn the writing around, become blanks.
 */
export function outputName(list: string, what: string): string {
  const name = list
    .replace(/\.[^./\\]*$/, '')
    .replace(/(?:\s*[\\/:*?"<>|\p{Cc}\p{Cf}\p{Cs}])+\s*/gu, ' ')
    .replace(/^[\s.]+/, '');
  return `${[...name].slice(0, MOST_CHARACTERS).join('').trimEnd() || 'list'}-${what}`;
}
