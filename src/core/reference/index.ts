import type { Mark, Practice, Source, Table } from '../model/table.ts';
import { aliasTables } from './aliases/index.ts';
import { alloyTables } from './alloys/index.ts';
import { familyTable } from './families.ts';
import { fastenerMaterials } from './fastener-materials.ts';
import { finishTables } from './finish/index.ts';
import { formingTables } from './forming/index.ts';
import { hardnessTables } from './hardness/index.ts';
import { holeTables } from './holes/index.ts';
import { practices } from './practices.ts';
import { samplingTables } from './sampling/index.ts';
import { thicknessTables } from './thickness/index.ts';
import { threadTables } from './threads/index.ts';

/** Every reference table of the product, by subject. */
export const referenceTables: readonly { readonly subject: string; readonly tables: readonly Table<unknown>[] }[] = [
  { subject: 'Metal families', tables: [familyTable] },
  { subject: 'Sheet alloys', tables: alloyTables },
  { subject: 'Names of metals', tables: aliasTables },
  { subject: 'Fastener materials', tables: [fastenerMaterials] },
  { subject: 'Hardness', tables: hardnessTables },
  { subject: 'Thickness', tables: thicknessTables },
  { subject: 'Threads', tables: threadTables },
  { subject: 'Holes', tables: holeTables },
  { subject: 'Finish', tables: finishTables },
  { subject: 'Forming', tables: formingTables },
  { subject: 'Sampling', tables: samplingTables },
];

/** What a finding rests on, for showing: a table with its documents, or a practice of the trade. */
export interface Cited {
  readonly id: string;
  readonly title: string;
  readonly sources: readonly Source[];
}

const MARKED_AS_MEMORY: Mark = 'memory';

const cited: ReadonlyMap<string, Cited> = new Map(
  [...referenceTables.flatMap(({ tables }) => tables.map(citedTable)), ...practices.map(citedPractice)].map((entry) => [
    entry.id,
    entry,
  ]),
);

/** The table or practice behind an id that a finding cites. */
export function findCited(id: string): Cited | undefined {
  return cited.get(id);
}

function citedTable({ id, title, sources }: Table<unknown>): Cited {
  return { id, title, sources };
}

function citedPractice({ id, title, note }: Practice): Cited {
  return { id, title, sources: [{ document: note, place: 'the trade', mark: MARKED_AS_MEMORY }] };
}
