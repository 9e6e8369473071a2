import { plainFinding } from '../core/engine/say-finding.ts';
import { firstAlike } from '../core/intake/read-line.ts';
import type { AuditedLine } from '../core/model/audited.ts';
import type { Finding } from '../core/model/finding.ts';
import type { Line } from '../core/model/line.ts';
import type { OtherRow } from '../core/model/list.ts';
import { VERDICTS } from '../core/model/outcome.ts';

/**
 * Some rows of a list on their way from the worker to the page. What rows have in common (texts of cells, readings, findings) is
 * sent once, with the first rows that have it, and goes by its number from then on: a long list comes in pieces that the page can
 * take one by one without a halt, and stays small there.
 */
export interface PackedRows {
  /** New to the receiver; numbered on from those of the pieces before. */
  readonly texts: readonly string[];
  readonly things: readonly (object | null)[];
  readonly findings: readonly Finding[];
  /** Lists of findings by their numbers. */
  readonly findingLists: readonly (readonly number[])[];
  /** For each row its number in the file and `NUMBERS_A_ROW` more, then how many cells it has, and the number of each cell's text. */
  readonly rows: Int32Array<ArrayBuffer>;
  readonly extendedQuantities: readonly (number | null)[];
  readonly others: readonly OtherRow[];
}

/** What a line says, whichever row it is. */
type Said = Omit<Line, 'row' | 'cells' | 'flags'>;

const MOST_ROWS = 2_000;
/** A piece with that much new in it is full. */
const MOST_NEW = 1_500;

/** Cuts rows into pieces. */
export function* packRows(lines: readonly AuditedLine[], others: readonly OtherRow[]): Generator<PackedRows> {
  const packer = new Packer();
  for (const line of lines) {
    packer.add(line);
    if (packer.isFull) yield packer.take([]);
  }
  for (let at = 0; at < others.length; at += MOST_ROWS) yield packer.take(others.slice(at, at + MOST_ROWS));
  yield packer.take([]);
}

/** Puts pieces together again, in the order in which they were cut. */
export class RowAssembly {
  readonly lines: AuditedLine[] = [];
  readonly others: OtherRow[] = [];
  readonly #texts: string[] = [];
  readonly #things: (object | null)[] = [];
  readonly #findings: Finding[] = [];
  readonly #findingLists: (readonly Finding[])[] = [];

  add({ texts, things, findings, findingLists, rows, extendedQuantities, others }: PackedRows): void {
    for (const text of texts) this.#texts.push(text);
    for (const thing of things) this.#things.push(thing);
    for (const finding of findings) this.#findings.push(finding);
    for (const list of findingLists) this.#findingLists.push(list.map((number) => this.#findings[number] as Finding));
    for (const other of others) this.others.push(other);
    let at = 0;
    for (const extendedQuantity of extendedQuantities) {
      const end = at + NUMBERS_A_ROW + 1 + (rows[at + NUMBERS_A_ROW] ?? 0);
      this.lines.push(this.#lineFrom(rows.subarray(at, end), extendedQuantity));
      at = end;
    }
  }

  #lineFrom(numbers: Int32Array, extendedQuantity: number | null): AuditedLine {
    const [
      row = 0,
      said = 0,
      flags = 0,
      list = 0,
      decided = 0,
      fastener = 0,
      sheet = 0,
      requires = 0,
      remedies = 0,
      verdict = 0,
    ] = numbers;
    const cells: string[] = [];
    for (let at = NUMBERS_A_ROW + 1; at < numbers.length; at++)
      cells.push(this.#texts[numbers[at] as number] as string);
    const thing = <T>(number: number) => this.#things[number] as T;
    const line: Line = { ...thing<Said>(said), row, cells, flags: thing<Line['flags']>(flags) };
    const findings = this.#findingLists[list] ?? [];
    return {
      row,
      line,
      verdict: VERDICTS[verdict] ?? 'unknown',
      decidedBy: findings[decided] ?? null,
      findings,
      fastener: thing(fastener),
      sheet: thing(sheet),
      requires: thing(requires),
      quantity: line.quantity.value,
      extendedQuantity,
      remedies: thing(remedies),
    };
  }
}

/** Row, what it says, flags, findings, which of them decides, fastener, sheet, what is required, remedies, verdict. */
const NUMBERS_A_ROW = 10;

class Packer {
  readonly #texts = new Dictionary<string>();
  readonly #things = new Dictionary<object | null>();
  readonly #saids = new Map<Line, Said>();
  readonly #findings = new Dictionary<Finding>();
  readonly #findingLists = new Dictionary<readonly Finding[]>();
  #rows: number[] = [];
  #extendedQuantities: (number | null)[] = [];

  get isFull(): boolean {
    const fresh = this.#things.fresh.length + this.#findings.fresh.length + this.#findingLists.fresh.length;
    return this.#extendedQuantities.length >= MOST_ROWS || fresh >= MOST_NEW;
  }

  add(audited: AuditedLine): void {
    const { line, findings, decidedBy } = audited;
    for (const finding of findings) this.#findings.numberOf(finding);
    const things = [audited.fastener, audited.sheet, audited.requires, audited.remedies];
    this.#rows.push(
      audited.row,
      this.#things.numberOf(this.#saidIn(line)),
      this.#things.numberOf(line.flags),
      this.#findingLists.numberOf(findings),
      decidedBy ? findings.indexOf(decidedBy) : -1,
      ...things.map((thing) => this.#things.numberOf(thing)),
      VERDICTS.indexOf(audited.verdict),
      line.cells.length,
    );
    for (const cell of line.cells) this.#rows.push(this.#texts.numberOf(cell));
    this.#extendedQuantities.push(audited.extendedQuantity);
  }

  take(others: readonly OtherRow[]): PackedRows {
    const lists = this.#findingLists.takeFresh();
    const packed = {
      texts: this.#texts.takeFresh(),
      things: this.#things.takeFresh(),
      findings: this.#findings.takeFresh().map(plainFinding),
      findingLists: lists.map((list) => list.map((finding) => this.#findings.numberOf(finding))),
      rows: Int32Array.from(this.#rows),
      extendedQuantities: this.#extendedQuantities,
      others,
    };
    this.#rows = [];
    this.#extendedQuantities = [];
    return packed;
  }

  /** Lines that say the same share what they say. */
  #saidIn(line: Line): Said {
    const first = firstAlike(line);
    const before = this.#saids.get(first);
    if (before) return before;
    const { row: _, cells: __, flags: ___, ...said } = line;
    this.#saids.set(first, said);
    return said;
  }
}

/** Gives things numbers in the order of first sight, and remembers which have not been sent yet. */
class Dictionary<Thing> {
  readonly #known = new Map<Thing, number>();
  fresh: Thing[] = [];

  numberOf(thing: Thing): number {
    const before = this.#known.get(thing);
    if (before !== undefined) return before;
    const number = this.#known.size;
    this.#known.set(thing, number);
    this.fresh.push(thing);
    return number;
  }

  takeFresh(): readonly Thing[] {
    const { fresh } = this;
    this.fresh = [];
    return fresh;
  }
}
