/** From so many rows in a row on, only the first and the last are named. */
const SHORTEST_RUN = 3;

/** Every row of a sorted list by its number: "row 4", "rows 12, 14 and 19", "rows 2 to 9 and 12". None is left out. */
export function nameEveryRow(rows: readonly number[]): string {
  return `${rows.length === 1 ? 'row' : 'rows'} ${listRows(rows)}`;
}

/** The same without the word: "12, 14 and 19". */
export function listRows(rows: readonly number[]): string {
  const parts = runsOf(rows).flatMap((run) =>
    run.length >= SHORTEST_RUN ? [`${run[0]} to ${run.at(-1)}`] : run.map(String),
  );
  return joinNames(parts);
}

/** Names in one phrase: "A", "A and B", "A, B and C". */
export function joinNames(names: readonly string[]): string {
  return names.length < 2 ? names.join('') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;
}

/** A phrase at the beginning of a sentence. */
export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

function runsOf(rows: readonly number[]): readonly (readonly number[])[] {
  const runs: number[][] = [];
  for (const row of rows) {
    const last = runs.at(-1);
    if (last && row === (last.at(-1) ?? row) + 1) last.push(row);
    else runs.push([row]);
  }
  return runs;
}
