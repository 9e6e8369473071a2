import { moveAnswers } from '../core/answers/move-answers.ts';
import { planAnswers } from '../core/answers/plan-answers.ts';
import { readAnswers } from '../core/answers/read-answers.ts';
import { withEdits } from '../core/catalogue/with-edits.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import { type RawFile, Unreadable } from '../core/model/raw.ts';
import { holdsConcessions, readBack } from '../core/readback/read-back.ts';
import { readFile } from '../io/read-file.ts';
import { writeCatalogueCsv } from '../io/write/catalogue-csv.ts';
import { writeCsv } from '../io/write/csv.ts';
import { type Comparing, compare, writeComparing } from './comparing.ts';
import { createPauses } from './pauses.ts';
import type { CellEdit, HandedFile, Message, Phase, Reply, RequestName, Requests, SwapQuestion } from './protocol.ts';
import { rollUp, writeReport } from './rollups.ts';
import { takeRowsOut } from './rows-of-answer.ts';
import { sentenceFor } from './sentence-for.ts';
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
import { seekSwapsFor, tryCells } from './trial.ts';

type Send = (reply: Reply, transfer?: Transferable[]) => void;
type Answer<Name extends RequestName> = Promise<Requests[Name]['answer']>;
type Report = (phase: Phase) => (share: number) => void;

/** One worker's list; null until `open` has been answered. */
export interface Desk {
  session: Session | null;
  /** The bytes that the list came in. */
  upload: Uint8Array;
  /** The file that was looked at for answers, until it is opened. */
  seen?: SeenFile | null;
  /** What a worker that compares holds. */
  comparing?: Comparing;
}

/** A file as it was read. */
export interface SeenFile {
  readonly name: string;
  readonly size: number;
  readonly upload: Uint8Array;
  readonly raw: RawFile;
}

/** Answers one message; whatever goes wrong comes back as a sentence. */
export async function handle(desk: Desk, message: Message, send: Send): Promise<void> {
  const { run } = message;
  const report: Report = (phase) => (share) => send({ run, progress: { phase, share } });
  try {
    const answer = await answerTo(desk, message, report);
    sendAnswer(run, answer, send);
  } catch (error) {
    send({ run, sentence: sentenceFor(error) });
  }
}

/** Rows go before the rest of the answer, in pieces. */
function sendAnswer(run: number, answer: Awaited<ReturnType<typeof answerTo>>, send: Send): void {
  const { rest, rows } = takeRowsOut(answer);
  for (const piece of rows) send({ run, rows: piece }, [piece.rows.buffer]);
  send({ run, answer: rest }, 'bytes' in answer ? [answer.bytes.buffer as ArrayBuffer] : []);
}

function answerTo(desk: Desk, message: Message, report: Report) {
  switch (message.name) {
    case 'answers':
      return answerLook(desk, message.ask, report);
    case 'planAnswers':
      return answerPlans(desk, message.ask);
    case 'open':
      return open(desk, message.ask, report);
    case 'catalogues':
      return changeCatalogues(desk, message.ask.catalogues, report);
    case 'catalogueFile':
      return writeCatalogue(message.ask.catalogue);
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
    case 'compare':
      return answerComparison(desk, message.ask, report);
    case 'comparedFile':
      return answerComparedFile(desk, message.ask);
    case 'report':
      return answerReport(desk, message.ask);
    case 'export':
      return exportList(desk, message.ask, report);
  }
}

async function answerLook(desk: Desk, ask: Requests['answers']['ask'], report: Report): Answer<'answers'> {
  desk.seen = await readList(ask, report);
  return { sheet: readAnswers(desk.seen.raw) };
}

async function answerPlans(desk: Desk, { answered, areOwn }: Requests['planAnswers']['ask']): Answer<'planAnswers'> {
  const { file, audited, judged } = current(desk);
  const { parts } = judged.basis;
  const questions = areOwn ? moveAnswers(answered, file, audited) : answered;
  return { plans: planAnswers(audited, questions, (part) => parts.find(part) !== null) };
}

async function readList({ list, reading }: Requests['answers']['ask'], report: Report): Promise<SeenFile> {
  const upload = await bytesOf(list);
  const raw = readFile(upload, list.name, { ...reading, onProgress: report('reading') });
  return { name: list.name, size: list.data.size, upload, raw };
}

async function open(
  desk: Desk,
  { list, catalogues, options, reading, shop, remembered }: Requests['open']['ask'],
  report: Report,
): Answer<'open'> {
  const isSeen = desk.seen?.name === list.name && desk.seen.size === list.data.size;
  const { upload, raw } = (isSeen && desk.seen) || (await readList({ list, reading }, report));
  desk.seen = null;
  const loaded = await loadCatalogues(catalogues, report);
  desk.session = openSession(raw, loaded, shop, options, report('judging'), remembered);
  desk.upload = upload;
  const { audited } = desk.session;
  return { list: audited, catalogues: loaded, columns: choicesOf(desk.session), back: readBack(raw, audited) };
}

async function changeCatalogues(desk: Desk, files: readonly HandedFile[], report: Report): Answer<'catalogues'> {
  const catalogues = await loadCatalogues(files, report);
  if (desk.session) desk.session = withCatalogues(desk.session, catalogues, report('judging'));
  return { list: desk.session?.audited ?? null, catalogues };
}

/** A spreadsheet opens it too, so it gets the mark of UTF-8. */
async function writeCatalogue(catalogue: Catalogue): Answer<'catalogueFile'> {
  return { bytes: csvBytes(writeCatalogueCsv(catalogue), true) };
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
  const session = current(desk);
  const seeking = seekSwapsFor(session, question);
  const pause = createPauses();
  for (;;) {
    const { done, value } = seeking.next();
    if (done) return { swaps: value };
    await pause();
    // The list has changed meanwhile: whoever asked will ask again.
    if (desk.session !== session) return { swaps: null };
  }
}

async function answerTrial(desk: Desk, cells: readonly CellEdit[]): Answer<'tryEdit'> {
  return { trial: tryCells(current(desk), cells) };
}

async function answerRollups(desk: Desk): Answer<'rollups'> {
  return rollUp(current(desk));
}

async function answerComparison(desk: Desk, ask: Requests['compare']['ask'], report: Report): Answer<'compare'> {
  desk.comparing = await compare(desk.comparing, ask, report);
  return desk.comparing.shown;
}

async function answerComparedFile({ comparing }: Desk, ask: Requests['comparedFile']['ask']): Answer<'comparedFile'> {
  return { bytes: await writeComparing(comparing, ask) };
}

async function answerReport(desk: Desk, ask: Requests['report']['ask']): Answer<'report'> {
  return { bytes: await writeReport(current(desk), ask) };
}

/** What writes workbooks is loaded when the first export is asked for. */
async function exportList(
  desk: Desk,
  { date, work, how, escapes }: Requests['export']['ask'],
  report: Report,
): Answer<'export'> {
  const { file, audited, judged } = current(desk);
  const { parts } = judged.basis;
  report('writing')(0);
  if (how === 'csv') return { bytes: csvBytes(writeCsv(audited, work.concessions, { escapes }), escapes) };
  const { annotateWorkbook } = await import('../io/annotate/annotate-workbook.ts');
  const { writeWorkbook } = await import('../io/write/workbook.ts');
  const options = { onProgress: report('writing') };
  if (how === 'new') return { bytes: await writeWorkbook(audited, date, parts, work, null, options) };
  const all = { ...work, hadConcessions: holdsConcessions(file, audited.sheet) };
  const annotated = await annotateWorkbook(desk.upload, audited, date, parts, all, null, { ...options, read: file });
  if ('bytes' in annotated) return annotated;
  return { bytes: await writeWorkbook(audited, date, parts, work, null, options), refused: annotated.refused };
}

/** A spreadsheet knows by the mark at the start that it is UTF-8; other programs would take the mark for text. */
function csvBytes(text: string, isForSpreadsheets: boolean): Uint8Array {
  return new TextEncoder().encode(isForSpreadsheets ? `\ufeff${text}` : text);
}

/** As their files have them, then with the edits of the user. */
async function loadCatalogues(files: readonly HandedFile[], report: Report): Promise<readonly Catalogue[]> {
  const loaded = importCatalogues(await Promise.all(files.map((file) => read(file, report))));
  return loaded.map((catalogue, at) => withEdits(catalogue, files[at]?.edits ?? []));
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
