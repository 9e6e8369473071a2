import type { Pressed } from '../page-keys.ts';

/** Keys and what they do; `presses` are those of them that the page or the grid takes itself, as a test presses them. */
export interface KeyEntry {
  readonly keys: string;
  readonly does: string;
  readonly presses?: readonly Pressed[];
}

/** Keys that belong to one part of the page, and who takes them. */
export interface KeyGroup {
  readonly title: string;
  readonly takenBy: 'page' | 'grid' | 'others';
  readonly keys: readonly KeyEntry[];
}

const control = (key: string, shiftKey = false): Pressed => ({ key, ctrlKey: true, shiftKey });
const plain = (...keys: readonly string[]): readonly Pressed[] => keys.map((key) => ({ key }));

/** Every key of the app. */
export const KEY_MAP: readonly KeyGroup[] = [
  {
    title: 'Anywhere',
    takenBy: 'page',
    keys: [
      { keys: 'F1, or ? outside fields and list', does: 'this help', presses: plain('F1', '?') },
      { keys: 'Ctrl+Z', does: 'undo', presses: [control('z')] },
      { keys: 'Ctrl+Y, Ctrl+Shift+Z', does: 'redo', presses: [control('y'), control('z', true)] },
      { keys: 'Ctrl+S', does: 'save list, edits, undo and settings as one file', presses: [control('s')] },
    ],
  },
  {
    title: 'In the list, on a cell',
    takenBy: 'grid',
    keys: [
      {
        keys: 'Arrows, Page up, Page down',
        does: 'go from cell to cell',
        presses: plain('ArrowUp', 'ArrowDown', 'ArrowLeft', 'ArrowRight', 'PageUp', 'PageDown'),
      },
      { keys: 'Home, End', does: 'ends of the row', presses: plain('Home', 'End') },
      { keys: 'Ctrl+Home, Ctrl+End', does: 'ends of the list', presses: [control('Home'), control('End')] },
      { keys: 'Ctrl+arrows', does: 'end of the filled cells', presses: [control('ArrowDown'), control('ArrowRight')] },
      {
        keys: 'Shift with any of these',
        does: 'select a block',
        presses: [{ key: 'ArrowDown', shiftKey: true }, control('End', true)],
      },
      { keys: 'Ctrl+A', does: 'select everything', presses: [control('a')] },
      {
        keys: 'Shift+Space, Ctrl+Space',
        does: 'select whole rows, whole columns',
        presses: [{ key: ' ', shiftKey: true }, control(' ')],
      },
      { keys: 'Ctrl+D', does: 'fill down', presses: [control('d')] },
      { keys: 'Delete, Backspace', does: 'clear the block', presses: plain('Delete', 'Backspace') },
      { keys: 'Escape', does: 'back to one cell', presses: plain('Escape') },
    ],
  },
  {
    title: 'In the list, other keys',
    takenBy: 'others',
    keys: [
      { keys: 'Any letter or number', does: 'type into the cell; Enter goes down, Tab right, Escape gives up' },
      { keys: 'Ctrl+C, Ctrl+X, Ctrl+V', does: 'copy, cut, paste a block, also to and from a spreadsheet' },
      { keys: 'Ctrl+F', does: 'find in the list' },
      { keys: 'Ctrl+H', does: 'find and replace' },
      { keys: 'F6, Shift+F6', does: 'to the next part of the page: counts, list, row' },
      { keys: 'Enter on a heading', does: 'sort by it' },
      { keys: 'Alt+Down on a heading', does: 'what the column means, its unit, and which checks read it' },
      { keys: 'Alt+Up on a heading', does: 'filter or hide the column, or keep it in sight' },
      { keys: 'Escape', does: 'close a menu, a dialog or the bar to find' },
    ],
  },
];
