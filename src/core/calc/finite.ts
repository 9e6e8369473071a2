/** The value itself, or null where it is no finite number: what a formula gives outside its range. */
export function finiteOrNull(value: number): number | null {
  return Number.isFinite(value) ? value : null;
}
