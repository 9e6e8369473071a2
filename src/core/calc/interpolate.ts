/** A point of a table read as a curve. */
export type Point = readonly [x: number, y: number];

/**
 * Straight lines between the points of a curve, whose x may rise or fall but not turn. Null outside the curve and for
 * anything that is not a number: a table says nothing beyond its ends.
 */
export function interpolate(curve: readonly Point[], x: number): number | null {
  for (const [index, right] of curve.entries()) {
    const left = curve[index - 1] ?? right;
    if (isBetween(x, left[0], right[0])) return at(left, right, x);
  }
  return null;
}

function isBetween(x: number, a: number, b: number): boolean {
  return Math.min(a, b) <= x && x <= Math.max(a, b);
}

function at([x0, y0]: Point, [x1, y1]: Point, x: number): number {
  return x1 === x0 ? y1 : y0 + ((x - x0) / (x1 - x0)) * (y1 - y0);
}

/** The curve of two columns of a table, left out where either is empty. */
export function curveOf<Row>(
  rows: readonly Row[],
  x: (row: Row) => number | null,
  y: (row: Row) => number | null,
): readonly Point[] {
  return rows.flatMap((row) => {
    const point = [x(row), y(row)] as const;
    return point[0] === null || point[1] === null ? [] : [[point[0], point[1]] as const];
  });
}
