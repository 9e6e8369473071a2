import type { OpenMemory } from './shop-memory.ts';

const KEY = 'clinchsheet-name';

/** The name that the user signs with, from an earlier visit; '' where there is none. */
export function recallName(open: OpenMemory): string {
  try {
    return open().getItem(KEY) ?? '';
  } catch {
    return '';
  }
}

/** Keeps the name for the next visit. */
export function rememberName(open: OpenMemory, name: string): void {
  try {
    open().setItem(KEY, name);
  } catch {
    // Without memory the name lives as long as the page.
  }
}
