import { partKey } from '../catalogue/part-key.ts';
import { renumberFacts } from '../concede/renumber-facts.ts';
import { nameKey } from '../intake/tree-row.ts';
import type { AuditedList } from '../model/audited.ts';
import type { Concession } from '../model/concession.ts';
import type { RawTable } from '../model/raw.ts';
import { type ConcessionCell, isAlike, parseConcessionCell } from './concession-cell.ts';
import { type EarlierRows, rowNow } from './earlier-rows.ts';
import { cellsByHeading } from './latest-sheet.ts';

/** A concession that is not taken over, and why. */
export interface LostConcession extends Pick<Concession, 'says' | 'reason' | 'by' | 'date'> {
  readonly partNumber: string;
  /** Its row in the file before the export, as written there. */
  readonly former: string;
  readonly why: string;
}

/** What a sheet of concessions comes to. */
export interface ReadConcessions {
  /** Each with the row that it stands on now. Whether it still stands is for concede/standing to say. */
  readonly concessions: readonly Concession[];
  readonly lost: readonly LostConcession[];
}

/**
 * Reads a sheet of concessions. A row is found again by the column "Row in file", and must hold the part on the panel; else by part and
 * panel, where only one row had both and only one has. What cannot be placed, or whose hidden cell was damaged, is lost and says why.
 */
export function readConcessions(sheet: RawTable, list: AuditedList, earlier: EarlierRows): ReadConcessions {
  const read = cellsByHeading(sheet).filter((cell) => /^\d+$/.test(cell('Row in file')));
  const results = read.map((cell) => readConcession(cell, list, earlier));
  const taken = results.flatMap((result) => ('row' in result ? result : []));
  const last = new Map(taken.map((concession) => [`${concession.row} ${concession.rule}`, concession]));
  return {
    concessions: [...last.values()].sort((a, b) => a.row - b.row),
    lost: results.flatMap((result) => ('why' in result ? result : [])),
  };
}

function readConcession(
  cell: (heading: string) => string,
  list: AuditedList,
  earlier: EarlierRows,
): Concession | LostConcession {
  const [former, partNumber] = [cell('Row in file'), cell('Part number')];
  const signed = { says: cell('Finding'), reason: cell('Reason'), by: cell('Accepted by'), date: cell('Date') };
  const lost = (why: string): LostConcession => ({ former, partNumber, ...signed, why });
  const kept = parseConcessionCell(cell('For reading back'));
  if (!kept || kept.row !== Number(former) || kept.outcome !== cell('Outcome')) {
    return lost('what it rests on, in the hidden column, is missing or was changed');
  }
  const place = placeOf(kept, partNumber, list, earlier);
  if ('why' in place) return lost(place.why);
  const { rule, outcome } = kept;
  return { row: place.row, rule, outcome, facts: renumberFacts(kept.facts, (one) => rowNow(one, earlier)), ...signed };
}

type Place = { readonly row: number } | { readonly why: string };

function placeOf(
  { row: former, panel, alike }: ConcessionCell,
  partNumber: string,
  list: AuditedList,
  earlier: EarlierRows,
): Place {
  const [row, ...copies] = earlier.now(former);
  const line = list.lines.find((one) => one.row === row)?.line;
  const isSamePart = line !== undefined && partKey(line.partNumber) === partKey(partNumber);
  const isThere = isSamePart && nameKey(line.panel) === panel;
  const wasNotJudged = partNumber === '' && alike === 0;
  if (row !== undefined && copies.length === 0 && (isThere || wasNotJudged)) return { row };
  const same = list.lines.filter((one) => isAlike(one.line, { partNumber, panel }));
  if (alike === 1 && same.length === 1 && same[0]) return { row: same[0].row };
  if (copies.length > 0) return { why: `rows ${[row, ...copies].join(', ')} each say that they were its row` };
  // On a row with another part it lapses by itself, and says which part it was given for.
  if (row !== undefined && !isSamePart && same.length === 0) return { row };
  return { why: whyNowhere(row, isSamePart, same.length) };
}

function whyNowhere(row: number | undefined, isSamePart: boolean, same: number): string {
  if (row !== undefined && isSamePart) return `its row, now ${row}, is on another panel`;
  if (same === 0) return 'no row holds its part on its panel any more';
  const several = same === 1 ? 'its part stood on its panel more than once' : `${same} rows hold its part on its panel`;
  return row === undefined
    ? `the column “Row in file” does not name its row any more, and ${several}`
    : `row ${row}, where it should be, holds another part, and ${several}`;
}
