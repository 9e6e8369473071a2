import type { FinishKind } from '../model/facts.ts';
import { parseLength, parseNumber } from '../units/length.ts';
import { findFinishes, type NamedFinish, readFinish } from './facts-finish.ts';
import { chooseOrder, findOrders, type WorkOrder } from './facts-order.ts';
import { isForbiddenSide } from './facts-side.ts';

/** Cells that may name a finish: each speaks of the fastener or of its sheet in its own way. */
export type FinishCell = 'finish' | 'note' | 'description' | 'sheet';

/** The finish of a sheet with its build per side, where written. */
export interface SheetFinish {
  readonly kind: FinishKind;
  readonly um: number | null;
}

/** What one cell says of finishes. */
export interface ToldFinishes {
  readonly sheet: readonly SheetFinish[];
  readonly fastener: readonly FinishKind[];
  readonly order: WorkOrder | null;
  /** The finish of the sheet that the order of work is about. */
  readonly ordered: SheetFinish | null;
}

const NOTHING: ToldFinishes = { sheet: [], fastener: [], order: null, ordered: null };

/**
 * Tells the finishes of the sheet from the fastener's own. A finish is the fastener's unless the words beside it say sheet or panel, the
 * order of work is about it ("zinc plate after assembly"), or only a sheet gets it (powder coat, paint; outside the description of the
 * fastener anodising and chem film too).
 */
export function readFinishes(text: string, cell: FinishCell): ToldFinishes {
  if (text === '') return NOTHING;
  const all = findFinishes(text).filter((finish) => !isForbiddenSide(text, finish));
  const orders = findOrders(text, all, cell !== 'description');
  const order = chooseOrder(orders);
  const isOfSheet = (one: NamedFinish) => orders.some(({ finish }) => finish === one) || isSheets(text, one, cell);
  const sheet = all.filter(isOfSheet);
  const plain = cell === 'finish' && all.length === 0 && !NOT_FILLED_IN.test(text) ? readFinish(text) : null;
  return {
    sheet: sheet.map((finish) => withBuild(text, finish, all)),
    fastener: plain ? [plain] : all.filter((finish) => !sheet.includes(finish)).map(({ kind }) => kind),
    order,
    ordered: order?.finish ? withBuild(text, order.finish, all) : null,
  };
}

/** In a list, unlike a catalogue, these may mean that nobody has thought of it. */
const NOT_FILLED_IN = /^(?:none|blank)\b/i;

const ON_ANY_SHEET: readonly FinishKind[] = ['powder-coat', 'paint'];
const ON_SHEET: readonly FinishKind[] = ['anodised', 'hard-anodised', 'chem-film'];

const SHEET_WORD =
  /(?<![\p{L}])(?:(?:sheets?|panels?)(?!(?: metal)? (?:screws?|fasteners?|nuts?|studs?))|chassis|covers?|brackets?|doors?|enclosures?|cabinets?|weldments?|(?<!(?:zinc|zn|nickel|ni|tin|chrome|cad|cadmium|silver|gold|copper|electro)[ -]?)plates?|(?:base)?blech\p{L}*|geh[äa]use|t[ôo]les?)(?![\p{L}])/iu;
const FASTENER_WORD =
  /(?<![\p{L}])(?:fasteners?|hardware|nuts?|studs?|stand-?offs?|spacers?|inserts?|pins?|screws?|muttern?|bolzen|[ée]crous?)(?![\p{L}])/iu;

function isSheets(text: string, { kind, start, end }: NamedFinish, cell: FinishCell): boolean {
  if (cell === 'sheet') return true;
  const around = clauseAround(text, start, end);
  if (SHEET_WORD.test(around)) return true;
  if (ON_ANY_SHEET.includes(kind)) return true;
  return ON_SHEET.includes(kind) && cell !== 'description' && !FASTENER_WORD.test(around);
}

const BOUNDARY = /[,;\n]|\.(?=\s)|\b(?:for|into|f[üu]r|pour)\b/giu;

/** The words around a place in a text as far as the next comma, sentence or "for". */
function clauseAround(text: string, start: number, end: number): string {
  const before = text.slice(0, start).split(BOUNDARY).at(-1) ?? '';
  const behind = text.slice(end).split(BOUNDARY)[0] ?? '';
  return `${before} ${behind}`;
}

function withBuild(text: string, { kind, start, end }: NamedFinish, all: readonly NamedFinish[]): SheetFinish {
  const next = all.find((other) => other.start >= end)?.start ?? text.length;
  const last = all.findLast((other) => other.end <= start)?.end ?? 0;
  return { kind, um: findBuild(text.slice(end, next)) ?? findBuild(text.slice(last, start)) };
}

const NUMBER = String.raw`(?:\d+(?:[.,]\d+)?|[.,]\d+)`;
const BUILD = new RegExp(
  String.raw`(?<![\d.,])(?:(${NUMBER}) ?(-|to|bis|à|…|\.\.|±|\+\/-) ?)?(${NUMBER}) ?([µμu]m|microns?|[µμ]|mils?|thou|mm|in\b|")(?![\p{L}])`,
  'iu',
);

/** Coatings are thinner than any sheet; what is thicker was not about the coating. */
const THICKEST_UM = 300;

/** Build in micrometres: the upper end of a range. */
function findBuild(text: string): number | null {
  const [, lower, joint, number = '', unit = ''] = BUILD.exec(text) ?? [];
  const spread = joint === '±' || joint === '+/-';
  const value = spread
    ? (parseNumber(lower ?? '') ?? Number.NaN) + (parseNumber(number) ?? Number.NaN)
    : parseNumber(number);
  const mm = value === null ? null : parseLength(`${value} ${/^[µμ]$/.test(unit) ? 'um' : unit}`)?.mm;
  if (typeof mm !== 'number' || mm <= 0 || mm * 1000 > THICKEST_UM) return null;
  return Number((mm * 1000).toPrecision(9));
}
