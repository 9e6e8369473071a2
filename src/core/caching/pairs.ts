/** Values by two keys. */
export class Pairs<A, B, T> {
  readonly #known = new Map<A, Map<B, T>>();

  /** The value of two keys; `make` gives it the first time. */
  get(a: A, b: B, make: () => T): T {
    let byB = this.#known.get(a);
    if (!byB) {
      byB = new Map();
      this.#known.set(a, byB);
    }
    let value = byB.get(b);
    if (value === undefined) {
      value = make();
      byB.set(b, value);
    }
    return value;
  }
}
