/** Items that share a key, groups and the items in them in the order in which they first come. */
export function groupBy<T>(items: readonly T[], keyOf: (item: T) => string): readonly (readonly [T, ...T[]])[] {
  const groups = new Map<string, [T, ...T[]]>();
  for (const item of items) {
    const key = keyOf(item);
    const group = groups.get(key);
    if (group) group.push(item);
    else groups.set(key, [item]);
  }
  return [...groups.values()];
}

/** Each text once, blanks left out, in the order in which they first come. */
export function distinct(texts: readonly string[]): readonly string[] {
  return [...new Set(texts.map((text) => text.trim()).filter(Boolean))];
}
