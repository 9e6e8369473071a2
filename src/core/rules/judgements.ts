import type { Judgement } from '../model/finding.ts';
import type { Subject } from './rule.ts';

/** Of so many rows the judgements lie in one array by row number, which takes a fraction of the time that a map does. */
const MANY = 1_000;

/** What a rule over the whole list says of its rows; a row is known by its number. */
export class Judgements {
  readonly #byRow: Judgement[] | Map<number, Judgement>;

  /** `subjects` are the rows that may be judged. */
  constructor(subjects: readonly Subject[]) {
    const last = subjects.at(-1)?.line.row ?? 0;
    // Rows far apart would leave an array nearly empty.
    const isDense = subjects.length >= MANY && last < subjects.length * 8;
    this.#byRow = isDense ? new Array<Judgement>(last + 1) : new Map();
  }

  get({ line }: Subject): Judgement | undefined {
    const rows = this.#byRow;
    return rows instanceof Map ? rows.get(line.row) : rows[line.row];
  }

  set({ line }: Subject, judgement: Judgement): void {
    const rows = this.#byRow;
    if (rows instanceof Map) rows.set(line.row, judgement);
    else rows[line.row] = judgement;
  }

  /** Each judgement once, however many rows it is said of. */
  get different(): ReadonlySet<Judgement> {
    const different = new Set<Judgement>();
    let last: Judgement | undefined;
    this.#byRow.forEach((judgement) => {
      if (judgement !== last) different.add(judgement);
      last = judgement;
    });
    return different;
  }
}
