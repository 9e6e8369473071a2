import type { Locator, Page } from 'playwright-core';

/** What is kept in the page while it is watched. */
interface Watched {
  stallWatch?: { longTaskMs: number; gapMs: number };
  clock?: Promise<number>;
}

/** Runs in the page: begins to note its longest task, and the longest gap between beats that should come every 10 ms. */
export function startStallWatch(): void {
  const watch = { longTaskMs: 0, gapMs: 0 };
  (globalThis as Watched).stallWatch = watch;
  new PerformanceObserver((list) => {
    for (const { duration } of list.getEntries()) watch.longTaskMs = Math.max(watch.longTaskMs, duration);
  }).observe({ type: 'longtask', buffered: false });
  let before = performance.now();
  setInterval(() => {
    const now = performance.now();
    watch.gapMs = Math.max(watch.gapMs, now - before);
    before = now;
  }, 10);
}

/** Runs in the page: the worst since the watch began. */
export function worstStall(): { readonly longTaskMs: number; readonly gapMs: number } {
  return (globalThis as Watched).stallWatch ?? { longTaskMs: Number.NaN, gapMs: Number.NaN };
}

/** Runs in the page: scrolls an element down by 200 px in each frame; milliseconds from frame to frame. */
export function scrollDown(element: Element, frames: number): Promise<readonly number[]> {
  return new Promise((resolve) => {
    const taken: number[] = [];
    let before = 0;
    const step = (now: number) => {
      if (before > 0) taken.push(now - before);
      before = now;
      element.scrollTop += 200;
      if (taken.length < frames) requestAnimationFrame(step);
      else resolve(taken);
    };
    requestAnimationFrame(step);
  });
}

/** Starts a clock at the next press of a key or button; `readClock` gives what it took until the cell was painted with the text. */
export async function startClock(shownIn: Locator, text: string): Promise<void> {
  await shownIn.evaluate(watchCell, text);
}

/** Milliseconds. */
export function readClock(page: Page): Promise<number> {
  return page.evaluate(() => (globalThis as Watched).clock ?? Number.NaN);
}

function watchCell(cell: Element, text: string): void {
  const grid = cell.getRootNode() as ShadowRoot;
  const place = `.ag-row[row-id="${cell.closest('.ag-row')?.getAttribute('row-id')}"] .ag-cell[col-id="${cell.getAttribute('col-id')}"]`;
  let pressed = Number.NaN;
  const press = ({ timeStamp }: Event) => {
    if (Number.isNaN(pressed)) pressed = timeStamp;
  };
  for (const type of ['keydown', 'click']) addEventListener(type, press, { capture: true, once: true });
  (globalThis as Watched).clock = new Promise((resolve) => {
    const look = () => {
      if (Number.isNaN(pressed) || grid.querySelector(place)?.textContent?.trim() !== text) return;
      observer.disconnect();
      requestAnimationFrame(() => {
        const { port1, port2 } = new MessageChannel();
        port1.onmessage = () => resolve(performance.now() - pressed);
        port2.postMessage(null);
      });
    };
    const observer = new MutationObserver(look);
    observer.observe(grid, { subtree: true, childList: true, characterData: true });
  });
}
