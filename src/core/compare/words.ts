import { foldText } from '../intake/heading-text.ts';

/** Share of the words that two texts have in common, 0 to 1. */
export function shareOfWords(one: string, other: string): number {
  const [left, right] = [wordsOf(one), wordsOf(other)];
  if (left.size === 0 || right.size === 0) return 0;
  const common = [...left].filter((word) => right.has(word)).length;
  return (2 * common) / (left.size + right.size);
}

function wordsOf(text: string): ReadonlySet<string> {
  return new Set(
    foldText(text)
      .split(/[\s,;:()]+/)
      .filter(Boolean),
  );
}
