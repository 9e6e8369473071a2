import type { AnswerPlan } from '../core/answers/plan-answers.ts';
import type { AnswerSheet } from '../core/answers/read-answers.ts';
import { Unreadable } from '../core/model/raw.ts';
import type { WorkerClient } from '../worker/client.ts';
import type { HandedFile } from '../worker/protocol.ts';
import { areForAnotherList, isForOpenList, sayAnotherList } from './answers.ts';
import type { Store } from './store.ts';

/**
 * Shows what the answers of a file would fill into the open list of a worker; false for a file that is to be opened as a list.
 * @throws Unreadable where the file is for another list and holds nothing else.
 */
export async function showAnswers(
  store: Store,
  worker: WorkerClient | null,
  file: HandedFile,
  sheet: AnswerSheet,
): Promise<boolean> {
  if (!isForOpenList(file.name, sheet, worker !== null)) return false;
  const plans = await planAnswers(worker, sheet, false);
  if (!areForAnotherList(plans)) {
    store.set({ dialog: { kind: 'answers', file, plans, isList: !sheet.isAlone } });
    return true;
  }
  if (sheet.isAlone) throw new Unreadable(sayAnotherList(file.name));
  return false;
}

/** Answers in the list's own workbook are shown while there is anything to fill in. */
export async function showOwnAnswers(
  store: Store,
  worker: WorkerClient | null,
  file: HandedFile,
  sheet: AnswerSheet,
): Promise<void> {
  const plans = await planAnswers(worker, sheet, true);
  if (plans.some(({ cells }) => cells.length > 0))
    store.set({ dialog: { kind: 'answers', file, plans, isList: false } });
}

async function planAnswers(
  worker: WorkerClient | null,
  { answered }: AnswerSheet,
  areOwn: boolean,
): Promise<readonly AnswerPlan[]> {
  return (await worker?.ask('planAnswers', { answered, areOwn }))?.plans ?? [];
}
