import { codeLengths, codesOf, LONGEST_CODE, LONGEST_LENGTH_CODE } from './huffman.ts';

const LITERALS = 286;
const DISTANCES = 30;
const END_OF_BLOCK = 256;
const FIRST_LENGTH = 257;
const SHORTEST = 3;
const LONGEST = 258;
/** The order in which lengths of the codes of lengths are written (RFC 1951, 3.2.7). */
const ORDER = [16, 17, 18, 0, 8, 7, 9, 6, 10, 5, 11, 4, 12, 3, 13, 2, 14, 1, 15];
/** How many bits beside its symbol tell which length or distance it is (RFC 1951, 3.2.5). */
const LENGTH_BITS = Uint8Array.from({ length: 29 }, (_, at) => (at < 8 || at === 28 ? 0 : (at - 4) >> 2));
const DISTANCE_BITS = Uint8Array.from({ length: DISTANCES }, (_, at) => (at < 4 ? 0 : (at - 2) >> 1));
const FIRST_LENGTHS = firstOf(LENGTH_BITS, SHORTEST).with(28, LONGEST);
const FIRST_DISTANCES = firstOf(DISTANCE_BITS, 1);
const LENGTH_SYMBOLS = Uint8Array.from({ length: LONGEST + 1 }, (_, length) => symbolOf(FIRST_LENGTHS, length));
/** Distances up to 256 one by one, all others by the 128: no symbol begins in between. */
const NEAR = Uint8Array.from({ length: 257 }, (_, distance) => symbolOf(FIRST_DISTANCES, distance));
const FAR = Uint8Array.from({ length: 256 }, (_, part) => symbolOf(FIRST_DISTANCES, part * 128 + 1));
/** Bits that a block may take at most beside its tokens, and a token. */
const MOST_HEAD = 4096;
const MOST_TOKEN = 48;

/** A byte as it is, or a length and a distance back at which the same bytes stand. */
export function matchToken(length: number, distance: number): number {
  return (length << 16) | (distance - 1);
}

/** Writes tokens as blocks of a deflated stream, each with codes of its own (RFC 1951). */
export class BlockWriter {
  #out = new Uint8Array(0);
  #at = 0;
  #bits = 0;
  #count = 0;

  /** The bytes of a block of the first `length` tokens; a rest of less than a byte waits for the next. */
  write(tokens: Uint32Array, length: number): Uint8Array {
    this.#begin(MOST_HEAD + length * MOST_TOKEN);
    const { literals, distances } = countSymbols(tokens, length);
    const lengths = [codeLengths(literals, LONGEST_CODE), codeLengths(distances, LONGEST_CODE)] as const;
    this.#put(0b100, 3);
    this.#writeLengths(lengths);
    this.#writeTokens(tokens, length, lengths);
    return this.#out.slice(0, this.#at);
  }

  /** The bytes that end the stream: an empty block and what was left over. */
  end(): Uint8Array {
    this.#begin(MOST_HEAD);
    this.#put(0b011, 3);
    this.#put(0, 7);
    this.#put(0, 15);
    return this.#out.slice(0, this.#at);
  }

  #begin(bits: number): void {
    this.#at = 0;
    if (this.#out.length < bits / 8) this.#out = new Uint8Array(Math.ceil(bits / 8));
  }

  /** The lengths of both codes, in a code of their own. */
  #writeLengths([literals, distances]: readonly [Uint8Array, Uint8Array]): void {
    const all = [...literals, ...distances];
    const counts = new Uint32Array(ORDER.length);
    for (const length of all) counts[length]! += 1;
    const lengths = codeLengths(counts, LONGEST_LENGTH_CODE);
    const codes = codesOf(lengths);
    this.#put(LITERALS - 257, 5);
    this.#put(DISTANCES - 1, 5);
    this.#put(ORDER.length - 4, 4);
    for (const symbol of ORDER) this.#put(lengths[symbol]!, 3);
    for (const length of all) this.#put(codes[length]!, lengths[length]!);
  }

  #writeTokens(tokens: Uint32Array, length: number, [literals, distances]: readonly [Uint8Array, Uint8Array]): void {
    const [literalCodes, distanceCodes] = [codesOf(literals), codesOf(distances)];
    for (let at = 0; at < length; at++) {
      const token = tokens[at]!;
      if (token < END_OF_BLOCK) {
        this.#put(literalCodes[token]!, literals[token]!);
        continue;
      }
      const size = LENGTH_SYMBOLS[token >> 16]!;
      this.#put(literalCodes[FIRST_LENGTH + size]!, literals[FIRST_LENGTH + size]!);
      this.#put((token >> 16) - FIRST_LENGTHS[size]!, LENGTH_BITS[size]!);
      const distance = (token & 0xffff) + 1;
      const place = distanceSymbol(distance);
      this.#put(distanceCodes[place]!, distances[place]!);
      this.#put(distance - FIRST_DISTANCES[place]!, DISTANCE_BITS[place]!);
    }
    this.#put(literalCodes[END_OF_BLOCK]!, literals[END_OF_BLOCK]!);
  }

  /** At most 16 bits at once. */
  #put(value: number, count: number): void {
    this.#bits |= value << this.#count;
    this.#count += count;
    if (this.#count < 16) return;
    this.#out[this.#at++] = this.#bits;
    this.#out[this.#at++] = this.#bits >>> 8;
    this.#bits >>>= 16;
    this.#count -= 16;
  }
}

function countSymbols(tokens: Uint32Array, length: number) {
  const literals = new Uint32Array(LITERALS);
  const distances = new Uint32Array(DISTANCES);
  for (let at = 0; at < length; at++) {
    const token = tokens[at]!;
    if (token < END_OF_BLOCK) literals[token]! += 1;
    else {
      literals[FIRST_LENGTH + LENGTH_SYMBOLS[token >> 16]!]! += 1;
      distances[distanceSymbol((token & 0xffff) + 1)]! += 1;
    }
  }
  literals[END_OF_BLOCK] = 1;
  return { literals, distances };
}

function distanceSymbol(distance: number): number {
  return distance <= 256 ? NEAR[distance]! : FAR[(distance - 1) >> 7]!;
}

function firstOf(bits: Uint8Array, first: number): Uint16Array {
  const firsts = new Uint16Array(bits.length);
  for (let at = 0, next = first; at < bits.length; next += 1 << bits[at]!, at++) firsts[at] = next;
  return firsts;
}

/** The last symbol that begins at or before a value. */
function symbolOf(firsts: Uint16Array, value: number): number {
  return Math.max(
    0,
    firsts.findLastIndex((first) => first <= value),
  );
}
