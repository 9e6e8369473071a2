/** What a key asks for wherever one is on the page. */
export type PageCommand = 'undo' | 'redo' | 'save' | 'help';

/** A key with what is held down beside it. */
export interface Pressed {
  readonly key: string;
  readonly ctrlKey?: boolean;
  readonly metaKey?: boolean;
  readonly shiftKey?: boolean;
  readonly altKey?: boolean;
}

/** The command of a key; null for keys that are not the page's. A field that is typed in, and the list, keep all but F1. */
export function readPageKey(
  { key, ctrlKey, metaKey, shiftKey, altKey }: Pressed,
  where: 'page' | 'list' | 'field',
): PageCommand | null {
  if (key === 'F1') return 'help';
  if (altKey || where === 'field') return null;
  if (!(ctrlKey || metaKey)) return key === '?' && where === 'page' ? 'help' : null;
  const letter = key.toLowerCase();
  if (letter === 'z') return shiftKey ? 'redo' : 'undo';
  if (shiftKey) return null;
  return ({ y: 'redo', s: 'save' }[letter] as PageCommand | undefined) ?? null;
}

/** Where a key was pressed, by the elements that it goes through. */
export function placeOf(path: readonly EventTarget[]): 'page' | 'list' | 'field' {
  const [target] = path;
  const isField = target instanceof Element && target.matches('input:not([type=checkbox]), textarea, select');
  if (isField) return 'field';
  return path.some((one) => one instanceof Element && one.matches('list-grid')) ? 'list' : 'page';
}
