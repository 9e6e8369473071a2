import { describe, expect, it } from 'vitest';
import { type GridLayout, recallLayout, rememberLayout } from '../../src/app/grid-memory.ts';

const LAYOUT: GridLayout = {
  order: ['sender-1', 'sender-0'],
  hidden: ['sender-1'],
  frozen: ['sender-0'],
  widths: { 'sender-0': 120 },
};

function memory(kept: string | null = null) {
  const holder = { kept };
  const open = () => ({
    getItem: () => holder.kept,
    setItem: (_key: string, text: string) => {
      holder.kept = text;
    },
  });
  return { holder, open };
}

describe('the memory of the grid', () => {
  it('gives back the layout of the same headings, and forgets it', () => {
    const { open } = memory();
    rememberLayout(open, 'a', LAYOUT);
    rememberLayout(open, 'b', { ...LAYOUT, hidden: [] });
    expect(recallLayout(open, 'a')).toEqual(LAYOUT);
    rememberLayout(open, 'a', null);
    expect(recallLayout(open, 'a')).toBeNull();
    expect(recallLayout(open, 'b')?.hidden).toEqual([]);
  });

  it('keeps the last fifty lists', () => {
    const { open } = memory();
    for (let list = 0; list < 60; list++) rememberLayout(open, String(list), LAYOUT);
    expect(recallLayout(open, '9')).toBeNull();
    expect(recallLayout(open, '10')).toEqual(LAYOUT);
  });

  it.each([
    '{"broken',
    'null',
    '7',
    '[null, 3, {"key": 1}]',
    '[{"key": "a"}]',
    '[{"key": "a", "layout": []}, {"key": "b"}]',
  ])('is not troubled by %s', (kept) => {
    const layout = recallLayout(memory(kept).open, 'a');
    expect(layout === null || layout.order.length === 0).toBe(true);
  });

  it('leaves out what cannot be', () => {
    const widths = { a: 1e9, b: -5, c: '90', d: 90, e: null };
    const kept = JSON.stringify([{ key: 'a', layout: { order: ['x', 3, 'x'], hidden: 'x', frozen: [null], widths } }]);
    expect(recallLayout(memory(kept).open, 'a')).toEqual({ order: ['x'], hidden: [], frozen: [], widths: { d: 90 } });
  });

  it('does without where the browser forbids it', () => {
    const open = () => {
      throw new Error('forbidden');
    };
    expect(() => rememberLayout(open, 'a', LAYOUT)).not.toThrow();
    expect(recallLayout(open, 'a')).toBeNull();
  });
});
