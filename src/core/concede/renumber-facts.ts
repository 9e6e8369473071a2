/** "row 5", "rows 5 and 7", "rows 5, 7, 9, 12 and 30 more", as checks over the list name rows. */
const ROWS = /\b(rows?) (\d+(?:, \d+)*)(?: and (\d+)(?! more\b)(?!\d))?/g;

/**
 * Facts of a concession (see concede/facts-of) with the rows that their words name put into the numbers of another list. Words that
 * name a row which is not on that list stay as they are. Facts that cannot be read stay too.
 */
export function renumberFacts(facts: string, rowAfter: (row: number) => number | null): string {
  return facts.replace(/\["word\.[^"]*","(?:[^"\\]|\\.)*"\]/g, (fact) => renumberWords(fact, rowAfter));
}

function renumberWords(text: string, rowAfter: (row: number) => number | null): string {
  return text.replace(ROWS, (whole, word: string, list: string, last?: string) => {
    const rows = [...list.split(', '), ...(last === undefined ? [] : [last])].map((row) => rowAfter(Number(row)));
    if (rows.some((row) => row === null)) return whole;
    const sorted = rows.flatMap((row) => row ?? []).sort((a, b) => a - b);
    if (last === undefined) return `${word} ${sorted.join(', ')}`;
    return `${word} ${sorted.slice(0, -1).join(', ')} and ${sorted.at(-1)}`;
  });
}
