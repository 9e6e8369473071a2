/** What a value says, as a plain object: sentences and remedies that are only made when asked for are in it, for comparing. */
export function plain<T>(value: T): T {
  return JSON.parse(JSON.stringify(value));
}
