/** Bits that a code of a deflated block may have at most (RFC 1951, 3.2.7), for its symbols and for their lengths. */
export const LONGEST_CODE = 15;
export const LONGEST_LENGTH_CODE = 7;

/**
 * Lengths of a prefix code in which symbols that are used more have shorter codes, none longer than `longest` bits; 0 for symbols that are
 * not used. There are always at least two codes, as readers expect.
 */
export function codeLengths(counts: Uint32Array, longest: number): Uint8Array {
  const used = usedSymbols(counts);
  const lengths = new Uint8Array(counts.length);
  const depths = limited(depthsOf(used.map((symbol) => Math.max(1, counts[symbol]!))), longest);
  for (const [index, symbol] of used.entries()) lengths[symbol] = depths[index]!;
  return lengths;
}

/** The codes for such lengths (RFC 1951, 3.2.2), their bits turned around, as they are written from the lowest on. */
export function codesOf(lengths: Uint8Array): Uint16Array {
  const next = new Uint16Array(LONGEST_CODE + 2);
  for (const length of lengths) if (length > 0) next[length + 1]! += 1;
  for (let length = 2; length <= LONGEST_CODE + 1; length++) next[length] = (next[length - 1]! + next[length]!) << 1;
  const codes = new Uint16Array(lengths.length);
  for (const [symbol, length] of lengths.entries()) if (length > 0) codes[symbol] = turned(next[length]!++, length);
  return codes;
}

/** By rising count. */
function usedSymbols(counts: Uint32Array): number[] {
  const used = [...counts.keys()].filter((symbol) => counts[symbol]! > 0);
  for (let symbol = 0; used.length < 2; symbol++) if (!used.includes(symbol)) used.push(symbol);
  return used.sort((a, b) => counts[a]! - counts[b]! || a - b);
}

/** Depths of the leaves of a tree in which the two rarest are joined again and again; `weights` rise. */
function depthsOf(weights: readonly number[]): number[] {
  const leaves = weights.length;
  const sums = [...weights];
  const parents = new Array<number>(2 * leaves - 1).fill(0);
  let leaf = 0;
  let inner = leaves;
  for (let node = leaves; node < 2 * leaves - 1; node++) {
    let sum = 0;
    for (let child = 0; child < 2; child++) {
      const isLeaf = leaf < leaves && (inner >= node || sums[leaf]! <= sums[inner]!);
      const rarest = isLeaf ? leaf++ : inner++;
      parents[rarest] = node;
      sum += sums[rarest]!;
    }
    sums.push(sum);
  }
  const depths = new Array<number>(2 * leaves - 1).fill(0);
  for (let node = 2 * leaves - 3; node >= 0; node--) depths[node] = depths[parents[node]!]! + 1;
  return depths.slice(0, leaves);
}

/**
 * Codes that are too long are cut, and the rarest that still have room made longer until all fit; where that went too far, the most used
 * that may are made shorter again: readers want a code in which nothing is left free (Kraft's sum is one).
 */
function limited(depths: number[], longest: number): number[] {
  const room = 2 ** longest;
  let sum = 0;
  for (const [index, depth] of depths.entries()) {
    depths[index] = Math.min(depth, longest);
    sum += room >> depths[index]!;
  }
  for (let index = 0; sum > room; index = (index + 1) % depths.length) {
    if (depths[index]! >= longest) continue;
    depths[index]! += 1;
    sum -= room >> depths[index]!;
  }
  while (sum < room) {
    const index = depths.findLastIndex((depth) => room >> depth <= room - sum);
    sum += room >> depths[index]!;
    depths[index]! -= 1;
  }
  return depths;
}

function turned(code: number, length: number): number {
  let result = 0;
  for (let bit = 0; bit < length; bit++) result |= ((code >> bit) & 1) << (length - 1 - bit);
  return result;
}
