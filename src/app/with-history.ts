import { concessionsAfter, type History, pressOrderAfter } from './history.ts';
import { type AppState, withConceded } from './state.ts';

/** The state as steps have left it, besides the cells: what was accepted, the order of pressing, what can be taken back and made again. */
export function withHistory(state: AppState, history: History): Partial<AppState> {
  const [undoName, redoName] = [history.done.at(-1)?.name ?? null, history.undone.at(-1)?.name ?? null];
  const concessions = concessionsAfter(history);
  const rows = withConceded(state.rows, concessions, state.concessions);
  return { history, concessions, pressOrder: pressOrderAfter(history), rows, undoName, redoName };
}
