import type { ListOptions } from '../core/intake/build-list.ts';
import type { ColumnChoices } from '../core/intake/columns.ts';
import type { Verdict } from '../core/model/outcome.ts';
import type { TextReading } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import type { CellEdit, HandedFile } from '../worker/protocol.ts';
import { showBase64 } from './base64.ts';
import type { History, Step } from './history.ts';
import type { Fields } from './json-fields.ts';
import type { AppState } from './state.ts';

/** What the file says it is, and the version of its form that this app writes. */
export const PROJECT_APP = 'clinchsheet';
export const PROJECT_VERSION = 1;

/** How the list was read: only what the user chose; everything else is found again. */
export type ProjectOptions = Pick<ListOptions, 'sheet' | 'headerRow'> & ColumnChoices & TextReading;

/** Fields of a project file that this app does not know: kept, and written back where they stood. */
export interface KeptFields {
  readonly top: Fields;
  readonly options: Fields;
}

export const NOTHING_KEPT: KeptFields = { top: {}, options: {} };

/** All of the user's work on one list. The list and the catalogues are held as they came, byte for byte. */
export interface Project {
  /** ISO 8601, in UTC; '' where the file does not say. */
  readonly savedAt: string;
  readonly list: HandedFile;
  /** None: the demo catalogue. */
  readonly catalogues: readonly HandedFile[];
  readonly shop: ShopSettings;
  readonly options: ProjectOptions;
  /** The undo stack, oldest first. */
  readonly steps: readonly Step[];
  /** Steps taken back, the next to be made again last. */
  readonly undone: readonly Step[];
  /** Verdicts shown; none means all rows. */
  readonly filter: readonly Verdict[];
  readonly selectedRow: number | null;
  readonly kept: KeptFields;
}

/** What the app holds about the open list besides the state. */
export interface OpenWork {
  /** The object itself stands for the document: each opening has one of its own. */
  readonly list: HandedFile;
  readonly catalogues: readonly HandedFile[];
  readonly options: ProjectOptions;
  readonly history: History;
  /** The steps, as they are, are in a project file of the user's. */
  readonly isFiled: boolean;
  readonly kept: KeptFields;
}

/** The open work as a project. */
export function toProject(work: OpenWork, state: Pick<AppState, 'shop' | 'filter' | 'selectedRow'>, savedAt: string) {
  const { list, catalogues, options, history, kept } = work;
  const { shop, filter, selectedRow } = state;
  const { done: steps, undone } = history;
  return { savedAt, list, catalogues, shop, options, steps, undone, filter: [...filter], selectedRow, kept };
}

/** The whole project as the text of a file that opens anywhere. */
export async function showProject(project: Project): Promise<string> {
  const list = await withBytes(project.list);
  const catalogues = await Promise.all(project.catalogues.map(withBytes));
  return `${JSON.stringify({ ...frame(project), list, catalogues }, null, 1)}\n`;
}

/**
 * The project without list and catalogues, for a place that holds these beside it. It is asked for after every change, so the text of
 * each step is made once.
 */
export function showProjectAlone(project: Project): string {
  const { steps, undone, ...others } = frame(project);
  const list = (all: readonly Step[]) => `[${all.map(showStep).join(',')}]`;
  return `${JSON.stringify(others).slice(0, -1)},"steps":${list(project.steps)},"undone":${list(project.undone)}}`;
}

const shownSteps = new WeakMap<Step, string>();

function showStep(step: Step): string {
  const text = shownSteps.get(step) ?? JSON.stringify(step);
  shownSteps.set(step, text);
  return text;
}

/** The texts that steps have left in cells: the last of each. */
export function cellsAfter(steps: readonly Step[]): readonly CellEdit[] {
  const edits = steps.flatMap(({ after }) => ('cells' in after ? after.cells : []));
  return [...new Map(edits.map((edit) => [`${edit.row} ${edit.column}`, edit])).values()];
}

/** The app's name stands first, by which a project is told from other files. */
function frame({ savedAt, shop, options, steps, undone, filter, selectedRow, kept }: Project): Fields {
  return {
    app: PROJECT_APP,
    version: PROJECT_VERSION,
    savedAt,
    ...kept.top,
    shop,
    options: { ...kept.options, ...options },
    steps,
    undone,
    filter,
    selectedRow,
  };
}

async function withBytes({ data, ...named }: HandedFile): Promise<Fields> {
  return { ...named, bytesBase64: showBase64(new Uint8Array(await data.arrayBuffer())) };
}
