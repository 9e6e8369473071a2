import { rememberSome } from '../../caching/remember.ts';
import { findKinds } from '../../intake/description-kind.ts';
import { readFinish } from '../../intake/facts-finish.ts';
import { seemsToBe } from '../../intake/rows.ts';
import type { Fastener, FastenerKind } from '../../model/fastener.ts';
import type { Line } from '../../model/line.ts';
import type { LengthUnit } from '../../model/list.ts';
import { type FastenerMaterialEntry, findFastenerMaterial } from '../../reference/fastener-materials.ts';
import { showLength } from '../../units/length.ts';
import { parseThread } from '../../units/thread.ts';
import { FINISH_NAMES } from '../finish/finish-names.ts';

/** One thing that both the row and the catalogue say of the part. */
export interface Comparison {
  readonly about: 'kind' | 'thread' | 'material' | 'length' | 'finish';
  readonly agrees: boolean;
  /** What the list says, and what the catalogue says. */
  readonly said: string;
  readonly is: string;
  /** Words of the list that say so. */
  readonly quote: string;
}

/** Everything that the words of a row and the catalogue both say of a part. Vague words agree with all that they could mean. */
export function compareDescription(
  line: Line,
  fastener: Fastener,
  metals: readonly FastenerMaterialEntry[],
  units: LengthUnit,
): readonly Comparison[] {
  const compared = [
    compareKind(line.description, fastener.kind),
    compareThread(line, fastener.thread),
    compareMaterial(line, fastener, metals),
    compareLength(line, fastener.lengthMm, units),
    compareFinish(line, fastener.finish),
  ];
  return compared.flatMap((comparison) => comparison ?? []);
}

function compareKind(description: string, kind: FastenerKind | null): Comparison | null {
  if (!kind) return null;
  const kinds = kindsIn(description);
  const other = kinds.length === 0 ? otherHardware(description, kind) : null;
  if (kinds.length === 0 && !other) return null;
  // Floating nuts are pressed in like the rest: "clinch nut" does not deny them.
  const agrees = kinds.includes(kind) || (kind === 'floating nut' && kinds.includes('clinch nut'));
  return {
    about: 'kind',
    agrees,
    said: other ?? (agrees ? kind : kinds.join(' or ')),
    is: kind,
    quote: description.trim(),
  };
}

/** Rows repeat the same few texts. */
const kindsIn = rememberSome(findKinds);
const thingIn = rememberSome((text) => seemsToBe('', text));
const threadIn = rememberSome(parseThread);

/** Hardware that cannot be meant by the name of a press-in part. */
const OTHER_HARDWARE: readonly string[] = ['rivet nut', 'weld nut', 'weld stud', 'hex nut', 'washer', 'rivet', 'screw'];

function otherHardware(description: string, kind: FastenerKind): string | null {
  const thing = thingIn(description);
  const mayBe = thing === 'screw' && kind === 'captive screw';
  return thing && OTHER_HARDWARE.includes(thing) && !mayBe ? thing : null;
}

function compareThread(line: Line, thread: string | null): Comparison | null {
  const said = line.described.thread;
  if (!said || !thread) return null;
  const is = threadIn(thread)?.name ?? thread;
  // "#8" leaves the threads per inch open.
  const agrees = said === is || (said.startsWith('#') && is.startsWith(`${said.slice(1)}-`));
  return { about: 'thread', agrees, said, is, quote: quoteOf(line.thread, threadIn(line.thread) !== null, line) };
}

function compareMaterial(line: Line, fastener: Fastener, metals: readonly FastenerMaterialEntry[]): Comparison | null {
  const said = line.described.materials.flatMap((id) => findFastenerMaterial(id) ?? []);
  if (said.length === 0 || metals.length === 0) return null;
  const own = new Set(metals.map(classOf));
  return {
    about: 'material',
    agrees: said.some((entry) => own.has(classOf(entry))),
    said: nameMetals(said),
    is: fastener.material.text.trim() || nameMetals(metals),
    quote: quoteOf(line.fastenerMaterial, line.fastenerMaterial !== '', line),
  };
}

function classOf({ fastenerClass, family }: FastenerMaterialEntry): string {
  return fastenerClass ?? `other ${family}`;
}

/** One metal by its name, several by what they share: "stainless". */
function nameMetals(entries: readonly FastenerMaterialEntry[]): string {
  const [only, ...more] = entries;
  if (only && more.length === 0) return only.name;
  return [...new Set(entries.map(({ family }) => family.replace('carbon-', '').replace(/-.*/, '')))].join(' or ');
}

/** Lengths closer than this are one length, rounded differently. */
const SAME_LENGTH_MM = 0.05;

function compareLength(line: Line, lengthMm: number | null, units: LengthUnit): Comparison | null {
  const said = line.described.lengthMm;
  if (said === null || lengthMm === null) return null;
  const show = (mm: number) => `${showLength(mm, units)} ${units}`;
  const agrees = Math.abs(said - lengthMm) <= SAME_LENGTH_MM;
  return {
    about: 'length',
    agrees,
    said: show(said),
    is: show(lengthMm),
    quote: quoteOf(line.length, line.length !== '', line),
  };
}

function compareFinish(line: Line, finish: string | null): Comparison | null {
  const said = line.described.finish;
  const is = finish && readFinish(finish);
  if (!said || !is || !finish) return null;
  const quote = quoteOf(line.finish, readFinish(line.finish) === said, line);
  return { about: 'finish', agrees: said === is, said: FINISH_NAMES[said], is: finish.trim(), quote };
}

/** The cell that says it, or else the description. */
function quoteOf(cell: string, says: boolean, { description }: Line): string {
  return (says ? cell : description).trim();
}
