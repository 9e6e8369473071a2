import type { AlloyEntry } from '../../../src/core/model/sheet.ts';
import { alloyTables } from '../../../src/core/reference/alloys/index.ts';
import type { Line } from '../compare-table.ts';
import { agrees, isPrintedNumber, readTable } from '../read-table.ts';

/** Outside tables of sheet alloys; how the product answers each of their lines is tested with the hardness of alloys. */
export const alloyFiles = [
  'sheet-alloys-cold-rolled',
  'sheet-alloys-hot-rolled-and-coated',
  'sheet-alloys-stainless',
  'sheet-alloys-aluminium',
  'sheet-alloys-copper-and-titanium',
] as const;

const lines = alloyFiles.flatMap(readTable).map((line) => ({ ...line, id: idOf(line) }) as Line);

/** "5754-H22/H32" is one row of the product, by its first temper. */
function idOf({ id = '' }: Line): string {
  return id.toLowerCase().replace(/\/.*/, '').replaceAll('_', '-');
}

/** A number of the product, and where in the outside tables it may stand. */
interface Stated {
  readonly name: string;
  readonly unit: string;
  readonly value: number;
  readonly what: RegExp;
  readonly columns: readonly string[];
}

/** Lines that may hold a maximum, by where the entry says that it comes from. */
const MAXIMUM: Readonly<Record<AlloyEntry['maxFrom'], RegExp>> = {
  limit: /^lim$/,
  published: /^(typ|hrb_typ|lim)$/,
  strength: /^rm$/,
  judged: /^hrb_max$/,
  none: /^$/,
};

function statedBy({ typical, max, maxFrom, min, rmMinMpa, rmMaxMpa }: AlloyEntry): readonly Stated[] {
  const hardnesses = [
    { name: 'typical', given: typical, what: /^(hrb_)?typ$/, columns: ['value'] },
    { name: 'max', given: max, what: MAXIMUM[maxFrom], columns: ['high', 'value'] },
    { name: 'min', given: min ?? null, what: /^(lim|typ)$/, columns: ['low'] },
  ];
  const strengths = [
    { name: 'least strength', value: rmMinMpa, columns: ['low', 'value'] },
    { name: 'greatest strength', value: rmMaxMpa, columns: ['high', 'value'] },
  ];
  return [
    ...hardnesses.flatMap(({ given, ...rest }) =>
      given ? [{ ...rest, unit: given.scale === 'HB500' ? 'HB' : given.scale, value: given.value }] : [],
    ),
    ...strengths.flatMap(({ value, ...rest }) => (value ? [{ ...rest, unit: 'MPa', value, what: /^rm$/ }] : [])),
  ];
}

/** The outside lines that print the number, or a range whose middle is the typical value. */
function supportOf(id: string, { name, unit, value, what, columns }: Stated): readonly Line[] {
  return lines
    .filter((line) => line.id === id && line.unit === unit && what.test(line.what ?? ''))
    .filter(
      (line) =>
        columns.some((column) => agrees(line[column] ?? '', value)) || (name === 'typical' && isMiddle(line, value)),
    );
}

function isMiddle({ low = '', high = '' }: Line, value: number): boolean {
  return isPrintedNumber(low) && isPrintedNumber(high) && (Number(low) + Number(high)) / 2 === value;
}

/** Numbers that stand nowhere, and why. */
const EXCEPTIONS: Readonly<Record<string, string>> = {
  'dc01ze max': 'the limit of its base metal, DC01 in condition LC',
  '304-18h max': 'no limit anywhere: the upper end of what is typical',
  'cu-r240 max': 'no limit anywhere: the upper end of what is typical',
  '301-fh typical': 'the foot of "HRC 41 or more"',
  '7075-t6 max': 'the conversion ends at HB 160, one point lower',
};

const checks = alloyTables
  .flatMap(({ rows }) => rows)
  .flatMap((entry) =>
    statedBy(entry).map((stated) => ({
      name: `${entry.id} ${stated.name}`,
      text: `${entry.id} ${stated.name} ${stated.unit} ${stated.value}`,
      support: supportOf(entry.id, stated),
      // A row's mark is that of its hardness; where its strength comes from is told in words.
      isMarkedPrinted: entry.mark === 'printed' && !stated.name.endsWith('strength'),
    })),
  );

/** How many numbers of the alloy tables were looked up. */
export const alloyNumbers = checks.length;

export const alloyProblems: readonly string[] = [
  ...checks
    .filter(({ name, support }) => (support.length === 0) !== (EXCEPTIONS[name] !== undefined))
    .map(({ text }) => `${text}: in no outside table, or excused in vain`),
  ...checks
    .filter(({ isMarkedPrinted, support }) => isMarkedPrinted && support.length > 0 && !support.some(isPrinted))
    .map(({ text }) => `${text}: marked printed, which no outside line is`),
  ...Object.keys(EXCEPTIONS)
    .filter((name) => !checks.some((check) => check.name === name))
    .map((name) => `${name}: excused, but not there`),
];

function isPrinted({ mark }: Line): boolean {
  return mark === 'printed';
}
