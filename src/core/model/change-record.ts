import type { Concession } from './concession.ts';

/** One step of the user's work, as it is told afterwards: who did what, when, and what each cell held before and after. */
export interface ChangeRecord {
  /** ISO time in UTC; '' where it is not known. */
  readonly when: string;
  readonly by: string;
  readonly what: string;
  /** Taken back since. */
  readonly undone: boolean;
  /** Made before the list was opened, as its workbook says. */
  readonly earlier?: boolean;
  readonly details: readonly ChangeDetail[];
}

/** One cell or setting of a step. */
export interface ChangeDetail {
  /** 1-based row in the file; null for what concerns the whole list. */
  readonly row: number | null;
  /** Heading of the column, name of the setting or check. */
  readonly where: string;
  readonly before: string;
  readonly after: string;
}

/** What the user has done and accepted, as it goes out with an export. */
export interface WorkRecord {
  readonly concessions: readonly Concession[];
  /** Oldest first. */
  readonly changes: readonly ChangeRecord[];
  /** Rows in the order in which the user presses them; left out: as suggested. */
  readonly pressOrder?: readonly number[];
  /** The workbook holds a sheet of concessions already: a new one takes its place, even with none left. */
  readonly hadConcessions?: boolean;
}

export const NO_WORK: WorkRecord = { concessions: [], changes: [] };
