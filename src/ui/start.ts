import catalogueUrl from '../../sample-data/demo-catalogue.csv?url';
import listUrl from '../../sample-data/recorder-cabinet.xlsx?url';
import { Autosave } from '../app/autosave.ts';
import { Commands } from '../app/commands.ts';
import { keepCatalogues } from '../app/keep-catalogues.ts';
import { Shelf } from '../app/shelf.ts';
import { keepShop } from '../app/shop-memory.ts';
import { Store } from '../app/store.ts';
import type { Surroundings } from '../app/surroundings.ts';
import { startWorker } from '../worker/client.ts';
import { AppRoot } from './app-root.ts';
import { placeOf, readPageKey } from './page-keys.ts';
import { saveFile } from './save-file.ts';
import { keepOffline } from './updates.ts';

const DEMO = {
  list: { url: listUrl, name: 'recorder-cabinet.xlsx' },
  catalogue: { url: catalogueUrl, name: 'demo-catalogue.csv' },
} as const;

const around: Surroundings = {
  startWorker,
  async fetchDemo(which) {
    const response = await fetch(DEMO[which].url);
    if (!response.ok) throw new Error(`The demo file ${DEMO[which].name} could not be loaded: reload the page.`);
    return { name: DEMO[which].name, data: await response.blob() };
  },
  save: saveFile,
  today: () => new Date().toISOString().slice(0, 10),
  memory: () => localStorage,
};

const store = new Store();
keepShop(store, () => localStorage);
const commands = new Commands(store, around);
const shelf = new Shelf(() => indexedDB);
const autosave = new Autosave(store, commands, shelf);
keepCatalogues(store, commands.catalogues, shelf);
document.body.append(new AppRoot().use(store, commands, autosave));
void autosave.showKept();
void keepOffline(store);

document.addEventListener('visibilitychange', () => autosave.flush());
window.addEventListener('beforeunload', (event) => {
  if (!autosave.hasUnsavedWork) return;
  autosave.flush();
  event.preventDefault();
});

document.addEventListener('keydown', (event) => {
  const command = readPageKey(event, placeOf(event.composedPath()));
  if (!command) return;
  event.preventDefault();
  if (command === 'undo') commands.undo();
  else if (command === 'redo') commands.redo();
  else if (command === 'save') commands.saveProject();
  else if (!store.state.dialog) commands.openDialog({ kind: 'help' });
});
