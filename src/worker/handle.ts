import { readConcessions } from '../core/concede/read-back.ts';
import { Unreadable } from '../core/model/raw.ts';
import { readFile } from '../io/read-file.ts';
import { writeCsv } from '../io/write/csv.ts';
import type { CellEdit, HandedFile, Message, Phase, Reply, RequestName, Requests, SwapQuestion } from './protocol.ts';
import { rollUp, writeReport } from './rollups.ts';
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
import { findSwapsFor, tryCells } from './trial.ts';

type Send = (reply: Reply, transfer?: Transferable[]) => void;
type Answer<Name extends RequestName> = Promise<Requests[Name]['answer']>;
type Report = (phase: Phase) => (share: number) => void;

/** One worker's list; null until `open` has been answered. */
export interface Desk {
  session: Session | null;
  /** The bytes that the list came in. */
  upload: Uint8Array;
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
    case 'swaps':
      return answerSwaps(desk, message.ask);
    case 'tryEdit':
      return answerTrial(desk, message.ask.cells);
    case 'rollups':
      return answerRollups(desk);
    case 'report':
      return answerReport(desk, message.ask);
    case 'export':
      return exportList(desk, message.ask, report);
  }
}

async function open(
  desk: Desk,
  { list, catalogues, options, reading, shop, remembered }: Requests['open']['ask'],
  report: Report,
): Answer<'open'> {
  const upload = await bytesOf(list);
  const raw = readFile(upload, list.name, { ...reading, onProgress: report('reading') });
  const loaded = importCatalogues(await Promise.all(catalogues.map((file) => read(file, report))));
  desk.session = openSession(raw, loaded, shop, options, report('judging'), remembered);
  desk.upload = upload;
  const { audited } = desk.session;
  return { list: audited, catalogues: loaded, columns: choicesOf(desk.session), taken: readConcessions(raw, audited) };
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

async function answerSwaps(desk: Desk, question: SwapQuestion): Answer<'swaps'> {
  return { swaps: findSwapsFor(current(desk), question) };
}

async function answerTrial(desk: Desk, cells: readonly CellEdit[]): Answer<'tryEdit'> {
  return { trial: tryCells(current(desk), cells) };
}

async function answerRollups(desk: Desk): Answer<'rollups'> {
  return rollUp(current(desk));
}

async function answerReport(desk: Desk, ask: Requests['report']['ask']): Answer<'report'> {
  return { bytes: await writeReport(current(desk), ask) };
}

/** The writing library is as big as the grid, so it is loaded when the first export is asked for. */
async function exportList(
  desk: Desk,
  { date, work, how, escapes }: Requests['export']['ask'],
  report: Report,
): Answer<'export'> {
  const { audited, judged } = current(desk);
  const { parts } = judged.basis;
  report('writing')(0);
  if (how === 'csv') return { bytes: csvBytes(writeCsv(audited, work.concessions, { escapes }), escapes) };
  const { annotateWorkbook } = await import('../io/annotate/annotate-workbook.ts');
  const { writeWorkbook } = await import('../io/write/workbook.ts');
  if (how === 'new') return { bytes: await writeWorkbook(audited, date, parts, work) };
  const annotated = await annotateWorkbook(desk.upload, audited, date, parts, work);
  if ('bytes' in annotated) return annotated;
  return { bytes: await writeWorkbook(audited, date, parts, work), refused: annotated.refused };
}

/** A spreadsheet knows by the mark at the start that it is UTF-8; other programs would take the mark for text. */
function csvBytes(text: string, isForSpreadsheets: boolean): Uint8Array {
  return new TextEncoder().encode(isForSpreadsheets ? `\ufeff${text}` : text);
}

async function read(file: HandedFile, report: Report) {
  return readFile(await bytesOf(file), file.name, { onProgress: report('reading') });
}

async function bytesOf({ data }: HandedFile): Promise<Uint8Array> {
  return new Uint8Array(await data.arrayBuffer());
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
