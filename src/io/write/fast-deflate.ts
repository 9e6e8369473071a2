import { BlockWriter, matchToken } from './block-writer.ts';

/** Bytes that a match may lie back, and be long. */
const WINDOW = 32_768;
const LONGEST = 258;
/** Shorter matches are not worth their code here, and the bytes that are looked up at once. */
const SHORTEST = 6;
const HASH_BITS = 15;
const TOKENS = 1 << 16;

/**
 * Packs bytes by deflate (RFC 1951), for speed: of earlier places with the same bytes only the last is looked at, and none is noted
 * within a match. On text as repetitive as XML of sheets it is several times faster than a packer that looks further, at nearly its size.
 */
export class FastDeflate {
  readonly #emit: (packed: Uint8Array) => void;
  readonly #blocks = new BlockWriter();
  readonly #tokens = new Uint32Array(TOKENS);
  #length = 0;
  /** Where bytes with a hash stood last, in the bytes held; what was dropped counts as far away. */
  readonly #places = new Int32Array(1 << HASH_BITS).fill(-WINDOW - 1);
  /** The end of what was packed before, and what is being packed. */
  #held = new Uint8Array(0);
  #packed = 0;

  constructor(emit: (packed: Uint8Array) => void) {
    this.#emit = emit;
  }

  push(bytes: Uint8Array): void {
    const kept = Math.min(this.#packed, WINDOW);
    const dropped = this.#packed - kept;
    const held = new Uint8Array(kept + bytes.length);
    held.set(this.#held.subarray(dropped, this.#packed));
    held.set(bytes, kept);
    const places = this.#places;
    for (let at = 0; at < places.length; at++) places[at] = Math.max(places[at]! - dropped, -WINDOW - 1);
    this.#held = held;
    this.#packed = kept;
    this.#pack();
  }

  finish(): void {
    this.#flush();
    this.#emit(this.#blocks.end());
  }

  #pack(): void {
    const held = this.#held;
    const places = this.#places;
    const last = held.length - SHORTEST;
    let at = this.#packed;
    while (at <= last) {
      const hash = hashAt(held, at);
      const before = places[hash]!;
      places[hash] = at;
      const length = before >= 0 && at - before <= WINDOW ? matchLength(held, before, at) : 0;
      if (length < SHORTEST) {
        this.#add(held[at++]!);
        continue;
      }
      this.#add(matchToken(length, at - before));
      at += length;
    }
    while (at < held.length) this.#add(held[at++]!);
    this.#packed = at;
  }

  #add(token: number): void {
    this.#tokens[this.#length++] = token;
    if (this.#length === TOKENS) this.#flush();
  }

  #flush(): void {
    if (this.#length > 0) this.#emit(this.#blocks.write(this.#tokens, this.#length));
    this.#length = 0;
  }
}

/** Of six bytes. */
function hashAt(bytes: Uint8Array, at: number): number {
  const low = bytes[at]! | (bytes[at + 1]! << 8) | (bytes[at + 2]! << 16) | (bytes[at + 3]! << 24);
  const high = bytes[at + 4]! | (bytes[at + 5]! << 8);
  return (Math.imul(low, 0x9e37_79b1) ^ Math.imul(high, 0x85eb_ca6b)) >>> (32 - HASH_BITS);
}

function matchLength(bytes: Uint8Array, before: number, at: number): number {
  const most = Math.min(LONGEST, bytes.length - at);
  let length = 0;
  while (length < most && bytes[before + length] === bytes[at + length]) length++;
  return length;
}
