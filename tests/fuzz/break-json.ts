import type { Random } from './random.ts';

const ODD: readonly unknown[] = [
  null,
  true,
  '',
  'x',
  0,
  -1,
  1.5,
  1e308,
  [],
  {},
  [[]],
  { __proto__: 1 },
  '2025-13-45',
  'constructor',
  '💥',
  Number.MAX_SAFE_INTEGER,
];

/** JSON text with a value, a key or its letters changed. */
export function breakJson(value: unknown, random: Random): string {
  const text = JSON.stringify(breakValue(value, random, 6));
  if (!random.oneIn(4)) return text;
  const at = random.below(text.length);
  return random.oneOf([
    text.slice(0, at),
    text.slice(0, at) + text.slice(at + 1),
    `${text.slice(0, at)}${random.oneOf(['"', '{', ']', '\\', '\u0000', ','])}${text.slice(at)}`,
  ]);
}

function breakValue(value: unknown, random: Random, depth: number): unknown {
  if (depth === 0 || random.oneIn(4) || typeof value !== 'object' || value === null) return random.oneOf(ODD);
  if (Array.isArray(value)) {
    if (value.length === 0 || random.oneIn(4)) return [...value, random.oneOf(ODD)];
    const at = random.below(value.length);
    return value.with(at, breakValue(value[at], random, depth - 1));
  }
  const keys = Object.keys(value);
  const key =
    keys.length === 0 || random.oneIn(6) ? random.oneOf(['__proto__', 'x', 'constructor']) : random.oneOf(keys);
  const fields = value as Record<string, unknown>;
  if (random.oneIn(5)) return Object.fromEntries(Object.entries(fields).filter(([name]) => name !== key));
  return { ...fields, [key]: breakValue(fields[key], random, depth - 1) };
}
