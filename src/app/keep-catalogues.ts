import type { HandedFile } from '../worker/protocol.ts';
import type { Catalogues } from './catalogues.ts';
import type { KeptCatalogues, Shelf } from './shelf.ts';
import type { Store } from './store.ts';

/** Starts with the catalogues of the last visit, and keeps every change of them for the next one. */
export function keepCatalogues(store: Store, catalogues: Catalogues, shelf: Shelf): void {
  let stamp: string | null = null;
  const recall = async () => {
    const kept = await shelf.takeCatalogues().catch(() => null);
    stamp = kept?.stamp ?? null;
    const files = await readable(kept);
    if (files.length > 0) catalogues.recall(files);
  };
  const keep = async (files: readonly HandedFile[]) => {
    const saved = await shelf.putCatalogues(files, stamp).catch(() => null);
    if (saved === null) complain(store, files);
    else stamp = saved;
  };
  let turn = recall();
  catalogues.onChange((files) => {
    store.set({ recalled: [] });
    turn = turn.then(() => keep(files));
  });
}

/** Those whose bytes are still there. */
async function readable(kept: KeptCatalogues | null): Promise<readonly HandedFile[]> {
  const looks = (kept?.files ?? []).map(async (file) => {
    await file.data.slice(0, 1).arrayBuffer();
    return file;
  });
  return (await Promise.allSettled(looks)).flatMap((look) => (look.status === 'fulfilled' ? look.value : []));
}

/** A file that nobody has edited can be loaded again. */
function complain(store: Store, files: readonly HandedFile[]): void {
  if (files.every(({ edits = [] }) => edits.length === 0)) return;
  const text =
    'Your edits of the catalogue are not kept for the next visit, as this browser has no room or another tab has kept other catalogues: save the catalogue to a file before you leave.';
  store.set({ message: { kind: 'error', text } });
}
