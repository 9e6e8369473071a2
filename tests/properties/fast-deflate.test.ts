import { inflateRawSync } from 'node:zlib';
import fc from 'fast-check';
import { inflateSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import { FastDeflate } from '../../src/io/write/fast-deflate.ts';
import { codeLengths, codesOf } from '../../src/io/write/huffman.ts';

function pack(pieces: readonly Uint8Array[]): Uint8Array {
  const packed: Uint8Array[] = [];
  const deflate = new FastDeflate((bytes) => packed.push(bytes));
  for (const piece of pieces) deflate.push(piece);
  deflate.finish();
  return new Uint8Array(Buffer.concat(packed));
}

/** Unpacked by two readers of their own: the bytes as they were. */
function comesBack(pieces: readonly Uint8Array[]): void {
  const packed = pack(pieces);
  const wanted = Buffer.concat(pieces);
  expect(Buffer.compare(inflateRawSync(packed), wanted)).toBe(0);
  expect(Buffer.compare(inflateSync(packed, { out: new Uint8Array(wanted.length) }), wanted)).toBe(0);
}

/** Bytes without an order, the same each time. */
function random(length: number, seed: number): Uint8Array {
  let state = seed;
  return Uint8Array.from({ length }, () => {
    state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fff_ffff;
    return state >>> 16;
  });
}

describe('bytes packed for speed', () => {
  it('come back, whatever they are and however they are cut', () => {
    const bytes = fc.oneof(
      fc.uint8Array({ maxLength: 400 }),
      fc.array(fc.constantFrom(97, 98), { maxLength: 3000 }).map((codes) => Uint8Array.from(codes)),
      fc.tuple(fc.uint8Array({ minLength: 1, maxLength: 40 }), fc.integer({ min: 1, max: 400 })).map(repeated),
    );
    fc.assert(fc.property(fc.array(bytes, { maxLength: 6 }), comesBack), { numRuns: 500 });
  });

  it.each([
    ['nothing', []],
    ['nothing in pieces', [new Uint8Array(), new Uint8Array()]],
    ['one byte', [Uint8Array.of(7)]],
    ['one byte again and again', [new Uint8Array(200_000).fill(32)]],
    ['bytes without an order, over several blocks', [random(150_000, 1), random(1, 2), random(40_000, 1)]],
    ['the same again at the farthest distance, and one beyond', [random(32_768, 3), random(32_769, 3), random(9, 3)]],
  ])('come back: %s', (_, pieces) => comesBack(pieces));

  it('are not much more than those of a packer that looks further', () => {
    const rows = Array.from(
      { length: 3000 },
      (_, at) => `<row r="${at}"><c r="A${at}" s="4" t="s"><v>${at % 70}</v></c></row>`,
    );
    const bytes = new TextEncoder().encode(rows.join(''));
    expect(pack([bytes]).length).toBeLessThan(bytes.length / 7);
  });
});

describe('codes', () => {
  it.each([7, 15])('of at most %i bits leave nothing free, and none begins another', (longest) => {
    const counts = fc.array(
      fc.oneof(
        fc.nat(5),
        fc.integer({ min: 0, max: 20 }).map((power) => 2 ** power),
      ),
      {
        minLength: 19,
        maxLength: longest === 7 ? 19 : 286,
      },
    );
    fc.assert(
      fc.property(counts, (given) => {
        const lengths = codeLengths(Uint32Array.from(given), longest);
        const used = [...lengths.keys()].filter((symbol) => lengths[symbol]! > 0);
        expect(used.every((symbol) => lengths[symbol]! <= longest)).toBe(true);
        expect(used.reduce((sum, symbol) => sum + 2 ** -lengths[symbol]!, 0)).toBe(1);
        expect(given.every((count, symbol) => count === 0 || lengths[symbol]! > 0)).toBe(true);
        const codes = codesOf(lengths);
        expect(new Set(used.map((symbol) => `${lengths[symbol]} ${codes[symbol]}`)).size).toBe(used.length);
      }),
    );
  });

  it('are cut where counts grow so fast that they would be longer', () => {
    const growing = [1, 1];
    while (growing.length < 30) growing.push(growing.at(-1)! + growing.at(-2)!);
    const lengths = codeLengths(Uint32Array.from(growing), 15);
    expect(Math.max(...lengths)).toBe(15);
    expect(lengths.reduce((sum, length) => sum + 2 ** -length, 0)).toBe(1);
  });
});

function repeated([bytes, times]: readonly [Uint8Array, number]): Uint8Array {
  return new Uint8Array(Buffer.concat(Array.from({ length: times }, () => bytes)));
}
