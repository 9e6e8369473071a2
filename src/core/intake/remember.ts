/** Texts that are kept; enough for the different rows of one long list. */
const MOST = 4000;

/**
 * The same pure function of some cells, worked out once for cells that say the same: rows of one part repeat panel after panel. When
 * too much is kept, it starts anew.
 */
export function rememberCells<Cells extends object, T>(read: (cells: Cells) => T): (cells: Cells) => T {
  const known = new Map<string, T>();
  return (cells) => {
    const key = JSON.stringify(cells);
    const before = known.get(key);
    if (before !== undefined) return before;
    if (known.size >= MOST) known.clear();
    const reading = read(cells);
    known.set(key, reading);
    return reading;
  };
}
