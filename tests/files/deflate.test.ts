import { inflateRawSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { deflateText } from '../../src/io/write/deflate.ts';
import { crc32 } from '../../src/io/xlsx/crc32.ts';

const unpacked = (bytes: Uint8Array) => inflateRawSync(bytes).toString();

describe('packing a text', () => {
  it.each([
    ['nothing', []],
    ['one piece', ['<row r="1"/>']],
    ['pieces with characters of two, three and four bytes', ['Ø 5 ×', '', ' ≥ 1.5 mm', ' 🔩']],
    ['many short pieces', Array.from({ length: 50_000 }, (_, row) => `<row r="${row}"/>`)],
    ['a piece longer than what is packed at once', ['x'.repeat(300_000), 'y'.repeat(70_000)]],
  ])('gives back %s, with length and checksum', async (_, pieces) => {
    const text = pieces.join('');
    const { bytes, crc, size } = await deflateText(pieces);
    expect(unpacked(bytes)).toBe(text);
    const plain = new TextEncoder().encode(text);
    expect([crc, size]).toEqual([crc32(plain, 0), plain.length]);
  });

  it('gives the same bytes each time', async () => {
    const pieces = Array.from({ length: 20_000 }, (_, row) => `<c r="A${row}"><v>${(row * 7919) % 1000}</v></c>`);
    expect((await deflateText(pieces)).bytes).toEqual((await deflateText(pieces)).bytes);
  });

  it('passes on what goes wrong while the text is made', async () => {
    function* failing(): Generator<string> {
      yield 'x'.repeat(200_000);
      yield 'y'.repeat(200_000);
      throw new Error('enough');
    }
    await expect(deflateText(failing())).rejects.toThrow('enough');
  });
});
