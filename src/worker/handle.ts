import { type TextReading, Unreadable } from '../core/model/raw.ts';
import { readFile } from '../io/read-file.ts';
import type { HandedFile, Message, Phase, Reply, RequestName, Requests } from './protocol.ts';
import {
  choicesOf,
  editCells,
  importCatalogues,
  openSession,
  type Session,
  withCatalogues,
  withColumns,
  withShop,
} from './session.ts';

type Send = (reply: Reply, transfer?: Transferable[]) => void;
type Answer<Name extends RequestName> = Promise<Requests[Name]['answer']>;
type Report = (phase: Phase) => (share: number) => void;

/** One worker's list; null until `open` has been answered. */
export interface Desk {
  session: Session | null;
}

/** Answers one message; whatever goes wrong comes back as a sentence. */
export async function handle(desk: Desk, message: Message, send: Send): Promise<void> {
  const { run } = message;
  const report: Report = (phase) => (share) => send({ run, progress: { phase, share } });
  try {
    const answer = await answerTo(desk, message, report);
    send({ run, answer }, answer && 'bytes' in answer ? [answer.bytes.buffer as ArrayBuffer] : []);
  } catch (error) {
    send({ run, sentence: sentenceFor(error) });
  }
}

function answerTo(desk: Desk, message: Message, report: Report) {
  switch (message.name) {
    case 'open':
      return open(desk, message.ask, report);
    case 'catalogues':
      return changeCatalogues(desk, message.ask.catalogues, report);
    case 'shop':
      return changeShop(desk, message.ask.shop, report);
    case 'columns':
      return changeColumns(desk, message.ask, report);
    case 'edit':
      return edit(desk, message.ask.cells);
    case 'export':
      return exportWorkbook(desk, message.ask.date, report);
  }
}

async function open(
  desk: Desk,
  { list, catalogues, options, reading, shop, remembered }: Requests['open']['ask'],
  report: Report,
): Answer<'open'> {
  const raw = await read(list, report, reading);
  const loaded = importCatalogues(await Promise.all(catalogues.map((file) => read(file, report))));
  desk.session = openSession(raw, loaded, shop, options, report('judging'), remembered);
  return { list: desk.session.audited, catalogues: loaded, columns: choicesOf(desk.session) };
}

async function changeCatalogues(desk: Desk, files: readonly HandedFile[], report: Report): Answer<'catalogues'> {
  const catalogues = importCatalogues(await Promise.all(files.map((file) => read(file, report))));
  if (desk.session) desk.session = withCatalogues(desk.session, catalogues, report('judging'));
  return { list: desk.session?.audited ?? null, catalogues };
}

async function changeShop(desk: Desk, shop: Requests['shop']['ask']['shop'], report: Report): Answer<'shop'> {
  desk.session = withShop(current(desk), shop, report('judging'));
  return { list: desk.session.audited };
}

async function changeColumns(desk: Desk, choices: Requests['columns']['ask'], report: Report): Answer<'columns'> {
  desk.session = withColumns(current(desk), choices, report('judging'));
  return { list: desk.session.audited };
}

async function edit(desk: Desk, cells: Requests['edit']['ask']['cells']): Answer<'edit'> {
  const { session, rows } = editCells(current(desk), cells);
  desk.session = session;
  return { rows, totals: session.audited.totals };
}

/** The writing library is as big as the grid, so it is loaded when the first export is asked for. */
async function exportWorkbook(desk: Desk, date: string, report: Report): Answer<'export'> {
  const { writeWorkbook } = await import('../io/write/workbook.ts');
  report('writing')(0);
  return { bytes: await writeWorkbook(current(desk).audited, date) };
}

async function read({ name, data }: HandedFile, report: Report, reading: TextReading = {}) {
  const bytes = new Uint8Array(await data.arrayBuffer());
  return readFile(bytes, name, { ...reading, onProgress: report('reading') });
}

function current({ session }: Desk): Session {
  if (!session) throw new Unreadable('No list is open. Open a list first.');
  return session;
}

function sentenceFor(error: unknown): string {
  if (error instanceof Unreadable) return error.message;
  const detail = error instanceof Error ? error.message : String(error);
  return `Something went wrong that should not have (${detail}). Your list is as it was; please report this.`;
}
