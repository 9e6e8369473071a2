import type { MoveKey } from './selection.ts';

/** What a key asks for while no cell is being edited. */
export type KeyCommand =
  | { readonly kind: 'move'; readonly key: MoveKey; readonly jump: boolean; readonly extend: boolean }
  | { readonly kind: 'select'; readonly what: 'all' | 'rows' | 'columns' }
  | { readonly kind: 'clear' | 'fill-down' | 'collapse' };

const MOVES: ReadonlySet<string> = new Set<MoveKey>([
  'ArrowUp',
  'ArrowDown',
  'ArrowLeft',
  'ArrowRight',
  'Home',
  'End',
  'PageUp',
  'PageDown',
]);

type Pressed = Pick<KeyboardEvent, 'key' | 'ctrlKey' | 'metaKey' | 'shiftKey' | 'altKey'>;

/** The command of a key; null for keys that are not ours: letters start an edit, Enter and Tab move on. */
export function readKey({ key, ctrlKey, metaKey, shiftKey, altKey }: Pressed): KeyCommand | null {
  const control = ctrlKey || metaKey;
  if (altKey) return null;
  if (isMove(key)) return { kind: 'move', key, jump: control, extend: shiftKey };
  if (key === ' ' && control !== shiftKey) return { kind: 'select', what: shiftKey ? 'rows' : 'columns' };
  if (control) return shiftKey ? null : (CONTROL[key.toLowerCase()] ?? null);
  return PLAIN[key] ?? null;
}

const CONTROL: Readonly<Record<string, KeyCommand>> = {
  a: { kind: 'select', what: 'all' },
  d: { kind: 'fill-down' },
};
const PLAIN: Readonly<Record<string, KeyCommand>> = {
  Delete: { kind: 'clear' },
  Backspace: { kind: 'clear' },
  Escape: { kind: 'collapse' },
};

function isMove(key: string): key is MoveKey {
  return MOVES.has(key);
}
