import { standing } from '../../core/concede/standing.ts';
import type { AuditedLine, AuditedList } from '../../core/model/audited.ts';
import type { Concession } from '../../core/model/concession.ts';
import { groupBy } from '../../core/rollup/group-by.ts';
import { shorten } from '../../core/say/shorten.ts';

/** Longer reasons stand whole on the sheet of concessions. */
const LONGEST_REASON = 80;

/** What is conceded of each row where a concession stands, in short: "pressed and pulled (R. Vale, 2026-11-02)". */
export function concededByRow({ lines }: AuditedList, concessions: readonly Concession[]): ReadonlyMap<number, string> {
  if (concessions.length === 0) return new Map();
  const byRow = new Map(groupBy(concessions, ({ row }) => String(row)).map((group) => [group[0].row, group]));
  return new Map(
    lines.flatMap((line) => {
      const words = conceded(line, byRow.get(line.row) ?? []);
      return words === '' ? [] : [[line.row, words]];
    }),
  );
}

/** Where other checks of the row do not hold either, how many are conceded stands first: "1 of 3: ...". */
function conceded(line: AuditedLine, given: readonly Concession[]): string {
  const stands = given.filter((one) => standing(one, line).kind === 'stands');
  if (stands.length === 0) return '';
  const open = line.findings.filter(({ outcome }) => outcome !== 'holds' && outcome !== 'note').length;
  const share = stands.length < open ? `${stands.length} of ${open}: ` : '';
  return share + stands.map(({ reason, by, date }) => `${inShort(reason)} (${by}, ${date})`).join('; ');
}

function inShort(reason: string): string {
  return shorten(reason.replace(/\s+/g, ' ').trim(), LONGEST_REASON);
}
