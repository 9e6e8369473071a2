import type { HandedFile } from '../worker/protocol.ts';
import type { PartsChange } from './history.ts';

/** Files under names of their own, by which a step finds its catalogue again: the second "nuts.csv" becomes "nuts (2).csv". */
export function namedApart(loaded: readonly HandedFile[], added: readonly HandedFile[]): readonly HandedFile[] {
  const taken = new Set(loaded.map(({ name }) => name));
  return added.map((file) => {
    let name = file.name;
    for (let count = 2; taken.has(name); count++) name = file.name.replace(/(\.[^.]*)?$/, ` (${count})$1`);
    taken.add(name);
    return { ...file, name };
  });
}

/** The files with other edits of the parts of one of them; as they are where that one is not loaded any more. */
export function withPartEdits(files: readonly HandedFile[], { catalogue, edits }: PartsChange): readonly HandedFile[] {
  return files.map((file) => (file.name === catalogue ? { ...file, edits } : file));
}

/** Files that are the user's: the demo catalogue that only stands in counts once it has been edited. */
export function usersFiles(files: readonly HandedFile[]): readonly HandedFile[] {
  return files.filter(({ standsIn, edits = [] }) => !standsIn || edits.length > 0);
}
