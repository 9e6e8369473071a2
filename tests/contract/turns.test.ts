import { describe, expect, it } from 'vitest';
import { Turns } from '../../src/app/turns.ts';

describe('work in turns', () => {
  it('begins at once where none is under way, and waits where one is', async () => {
    const turns = new Turns();
    const told: string[] = [];
    let finish = () => {};
    const first = turns.take(async () => {
      told.push('first begun');
      await new Promise<void>((resolve) => {
        finish = resolve;
      });
      told.push('first done');
    });
    const second = turns.take(async () => {
      told.push('second');
    });
    expect(told).toEqual(['first begun']);
    finish();
    await Promise.all([first, second]);
    expect(told).toEqual(['first begun', 'first done', 'second']);

    const third = turns.take(async () => {
      told.push('third');
    });
    expect(told.at(-1)).toBe('third');
    await third;
  });

  it('keeps the order of work that is asked for by work', async () => {
    const turns = new Turns();
    const told: number[] = [];
    let inner = Promise.resolve();
    await turns.take(async () => {
      inner = turns.take(async () => {
        told.push(2);
      });
      told.push(1);
    });
    await inner;
    expect(told).toEqual([1, 2]);
  });

  it('goes on after work that failed', async () => {
    const turns = new Turns();
    await expect(turns.take(() => Promise.reject(new Error('no')))).rejects.toThrow('no');
    let isDone = false;
    await turns.take(async () => {
      isDone = true;
    });
    expect(isDone).toBe(true);
  });
});
