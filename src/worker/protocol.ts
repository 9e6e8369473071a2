import type { AnswerPlan } from '../core/answers/plan-answers.ts';
import type { AnsweredQuestion, AnswerSheet } from '../core/answers/read-answers.ts';
import type { ListOptions } from '../core/intake/build-list.ts';
import type { ColumnChoices } from '../core/intake/columns.ts';
import type { HeadingSet } from '../core/intake/heading-set.ts';
import type { AuditedLine, AuditedList, Totals } from '../core/model/audited.ts';
import type { WorkRecord } from '../core/model/change-record.ts';
import type { Concession } from '../core/model/concession.ts';
import type { Catalogue } from '../core/model/fastener.ts';
import type { OtherRow } from '../core/model/list.ts';
import type { Verdict } from '../core/model/outcome.ts';
import type { PartEdit } from '../core/model/part-edit.ts';
import type { TextReading } from '../core/model/raw.ts';
import type { ShopSettings } from '../core/model/shop.ts';
import type { ReadBack } from '../core/readback/read-back.ts';
import type { SheetChange } from '../core/remedies/sheet-change.ts';
import type { Swaps } from '../core/remedies/swap.ts';
import type { PressSheet } from '../core/rollup/press.ts';
import type { PressOrder } from '../core/rollup/press-order.ts';
import type { Purchase } from '../core/rollup/purchase.ts';
import type { Question } from '../core/rollup/questions.ts';
import type { Compared } from './compared.ts';
import type { PackedRows } from './packed-rows.ts';

/** A file as the page hands it over: bytes are read in the worker. */
export interface HandedFile {
  readonly name: string;
  readonly data: Blob;
  /** Of a catalogue: what was changed of its parts in the app. */
  readonly edits?: readonly PartEdit[];
  /** The demo catalogue, as long as the user has loaded none. */
  readonly standsIn?: boolean;
}

/** New text for one cell; `column` is 0-based. */
export interface CellEdit {
  readonly row: number;
  readonly column: number;
  readonly text: string;
}

/** A row after an edit: judged, or no fastener. */
export type RowState = { readonly line: AuditedLine } | { readonly other: OtherRow };

/** A part or a row for which swaps are sought. */
export type SwapQuestion = { readonly row: number } | { readonly partNumber: string };

/** What could replace a part, and where its rows stand; for one row also in what other sheet the listed part would hold. */
export interface SwapAnswer extends Swaps {
  readonly sheets: readonly SheetChange[];
}

/** A row before and after a trial edit; a verdict of null: no fastener. */
export interface TriedRow {
  readonly row: number;
  readonly partNumber: string;
  /** One of its cells is edited; else it changes because of another row. */
  readonly edited: boolean;
  readonly before: Verdict | null;
  readonly after: Verdict | null;
  /** What decides it afterwards, in short. */
  readonly decision: string;
}

/** What an edit would do. */
export interface Trial {
  readonly before: Totals;
  readonly after: Totals;
  /** Edited rows, and rows whose verdict changes with them, in file order. */
  readonly rows: readonly TriedRow[];
}

/** Whether an export goes into the workbook that the list came in, into a new one, or into a CSV file. */
export type ExportHow = 'in-place' | 'new' | 'csv';

/** What a list comes to: what to order, press (in the suggested order) and ask. */
export interface Rollups {
  readonly purchase: Purchase;
  readonly press: PressSheet;
  readonly questions: readonly Question[];
}

/** One report as a file. */
export interface ReportAsk {
  readonly which: 'purchase' | 'press' | 'questions';
  readonly format: 'csv' | 'xlsx';
  readonly pressOrder: PressOrder;
  /** Questions that are not asked, by their keys. */
  readonly leftOut: readonly string[];
}

/** An earlier list to compare with, as it was worked on. */
export interface EarlierList {
  readonly file: HandedFile;
  /** The user's choices on where and how to read it; whatever is left out is found. A sheet that it does not have is passed over. */
  readonly options: ListOptions & TextReading;
  /** Texts that the user has put into its cells. */
  readonly cells: readonly CellEdit[];
  /** What was accepted on it; null: what an export of ours has left in its workbook. */
  readonly concessions: readonly Concession[] | null;
}

/** What can be asked of a worker. One worker serves one list: `open` comes first, but for a look for answers. */
export interface Requests {
  /** Look whether a file is a question sheet of ours that has come back; null for any other. What was read is kept for `open`. */
  answers: {
    readonly ask: { readonly list: HandedFile; readonly reading: TextReading };
    readonly answer: { readonly sheet: AnswerSheet | null };
  };
  /** What answers would fill into the open list. `areOwn`: they stand in the list's own workbook, with the rows of the file before. */
  planAnswers: {
    readonly ask: { readonly answered: readonly AnsweredQuestion[]; readonly areOwn: boolean };
    readonly answer: { readonly plans: readonly AnswerPlan[] };
  };
  /** Read a list and the catalogues, judge every row. No catalogue of the user's: the demo catalogue is handed in. */
  open: {
    readonly ask: {
      readonly list: HandedFile;
      readonly options: ListOptions;
      /** The user's choices on how to decode and cut a text file; whatever is left out is found. */
      readonly reading: TextReading;
      readonly catalogues: readonly HandedFile[];
      readonly shop: ShopSettings;
      /** Column choices for earlier lists; those for the same headings are taken where `options` has none. */
      readonly remembered: readonly HeadingSet[];
    };
    readonly answer: {
      readonly list: AuditedList;
      readonly catalogues: readonly Catalogue[];
      /** The choices that the columns were read by. */
      readonly columns: ColumnChoices;
      /** What the last export has left in the workbook. */
      readonly back: ReadBack;
    };
  };
  /** Read catalogues and, where a list is open, judge it by them. */
  catalogues: {
    readonly ask: { readonly catalogues: readonly HandedFile[] };
    readonly answer: { readonly list: AuditedList | null; readonly catalogues: readonly Catalogue[] };
  };
  /** A catalogue as it stands, as a table that can be loaded again. */
  catalogueFile: { readonly ask: { readonly catalogue: Catalogue }; readonly answer: { readonly bytes: Uint8Array } };
  /** Judge again with other settings. */
  shop: { readonly ask: { readonly shop: ShopSettings }; readonly answer: { readonly list: AuditedList } };
  /** Read the columns in another way, keep the edits, judge again. */
  columns: { readonly ask: ColumnChoices; readonly answer: { readonly list: AuditedList } };
  /** Put texts into cells and judge what they touch. */
  edit: {
    readonly ask: { readonly cells: readonly CellEdit[] };
    readonly answer: { readonly rows: readonly RowState[]; readonly totals: Totals };
  };
  /** What could be put in place of a part, or of the part of a row; null where the part is not on file. */
  swaps: { readonly ask: SwapQuestion; readonly answer: { readonly swaps: SwapAnswer | null } };
  /** What an edit would do; the list stays as it is. */
  tryEdit: { readonly ask: { readonly cells: readonly CellEdit[] }; readonly answer: { readonly trial: Trial } };
  /** What to order, press and ask by the list as it stands. */
  rollups: { readonly ask: Readonly<Record<string, never>>; readonly answer: Rollups };
  /**
   * Read an earlier list, judge it as the later one was, and tell what differs. A worker that compares serves no open list. Null for
   * `earlier`: the one of the question before, judged as it was.
   */
  compare: {
    readonly ask: {
      readonly earlier: EarlierList | null;
      readonly later: AuditedList;
      /** Those that the later list was judged by. */
      readonly catalogues: readonly Catalogue[];
      readonly remembered: readonly HeadingSet[];
    };
    readonly answer: Compared;
  };
  /** The comparison of the question before as a file. */
  comparedFile: {
    readonly ask: { readonly format: 'csv' | 'xlsx'; readonly date: string };
    readonly answer: { readonly bytes: Uint8Array };
  };
  report: { readonly ask: ReportAsk; readonly answer: { readonly bytes: Uint8Array } };
  /** The judged list as a workbook (the one that it came in, or a new one) or as CSV. */
  export: {
    readonly ask: {
      readonly date: string;
      readonly work: WorkRecord;
      readonly how: ExportHow;
      /** CSV: cells that begin like a formula get an apostrophe. */
      readonly escapes: boolean;
    };
    /** `refused` says why it is a new workbook all the same. */
    readonly answer: { readonly bytes: Uint8Array; readonly refused?: string };
  };
}

export type RequestName = keyof Requests;

/** Page to worker. The run number ties answers to questions; a late answer is dropped. */
export type Message = {
  [Name in RequestName]: { readonly run: number; readonly name: Name; readonly ask: Requests[Name]['ask'] };
}[RequestName];

/** Worker to page. */
export type Reply =
  | { readonly run: number; readonly progress: { readonly phase: Phase; readonly share: number } }
  /** Some of the rows of the answer that follows, which then holds none. */
  | { readonly run: number; readonly rows: PackedRows }
  | { readonly run: number; readonly answer: unknown }
  /** `sentence` is for the user: what, where, what to do. */
  | { readonly run: number; readonly sentence: string };

export type Phase = 'reading' | 'judging' | 'comparing' | 'writing';
