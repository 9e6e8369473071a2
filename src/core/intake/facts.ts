import { rememberSome } from '../caching/remember.ts';
import { NO_FACTS, type PressedWhen, type WorkFacts } from '../model/facts.ts';
import { namePlating, oneFinish } from './facts-finish.ts';
import { findHoleProcess } from './facts-hole.ts';
import { type AskedLoads, findCellLoads, findLoads } from './facts-loads.ts';
import { type FinishCell, readFinishes, type SheetFinish, type ToldFinishes } from './facts-owner.ts';
import { findEnvironment, findWelding } from './facts-place.ts';
import { findRimWork, namesHole } from './facts-rim.ts';
import { findMating, findScrew } from './facts-screw.ts';
import { findWrongSide, isHoleMasked } from './facts-side.ts';
import { isBlankCell, plainCell } from './size-words.ts';

/** Cells whose words say something of the work and the service; all as listed. */
export interface FactCells {
  readonly finish: string;
  readonly note: string;
  readonly description: string;
  readonly hole: string;
  readonly load: string;
  /** Finish words of the cell that names the sheet's metal. */
  readonly sheetFinish?: string;
  /** Heading over the load cell: it may name the load and its unit. */
  readonly loadHeading?: string;
}

/**
 * What the words of a row say beyond its columns, in English and the obvious German and French. Only what is written counts: what is
 * denied ("do not deburr"), could be two things, or lacks its unit is null.
 */
export function readFacts(cells: FactCells): WorkFacts {
  const finish = plainText(cells.finish);
  const note = plainText(cells.note);
  const description = plainText(cells.description);
  const hole = plainText(cells.hole);
  const load = plainText(cells.load);
  const sheet = plainText(cells.sheetFinish ?? '');
  if (!/\p{L}/u.test(finish + note + description + hole + load + sheet)) {
    return load === '' ? NO_FACTS : { ...NO_FACTS, ...loadFacts(note, load, cells) };
  }
  return {
    ...NO_FACTS,
    ...finishFacts(finish, note, description, sheet),
    ...holeFacts(hole, note, finish, description),
    ...loadFacts(note, load, cells),
    ...serviceFacts(note, finish, description),
  };
}

function readPlainText(text: string): string {
  const plain = text.trim() === '' ? '' : text.split(/\r?\n/).map(plainCell).filter(Boolean).join('\n');
  return isBlankCell(plain) ? '' : plain;
}

type FinishFacts = Pick<
  WorkFacts,
  'sheetFinish' | 'sheetFinishUm' | 'fastenerFinish' | 'pressedWhen' | 'finishUnnamed'
>;

function finishFacts(finish: string, note: string, description: string, sheet: string): FinishFacts {
  const told = [
    finishesIn.finish(finish),
    finishesIn.note(note),
    finishesIn.description(description),
    finishesIn.sheet(sheet),
  ];
  const sheetFinish = findSheetFinish(told);
  const pressedWhen = findPressedWhen(told);
  return {
    sheetFinish: sheetFinish?.kind ?? null,
    sheetFinishUm: sheetFinish?.um ?? null,
    fastenerFinish: oneFinish(told.find(({ fastener }) => fastener.length > 0)?.fastener ?? []),
    pressedWhen,
    finishUnnamed: pressedWhen === 'before-finish' && sheetFinish === null,
  };
}

/** The finish that the order of work is about goes before the others. */
function findSheetFinish(told: readonly ToldFinishes[]): SheetFinish | null {
  const all = told.flatMap(({ sheet }) => sheet);
  const ordered = told.flatMap((cell) => cell.ordered ?? []);
  const kinds = all.map((finish) => finish.kind);
  const meant = oneFinish(ordered.map((finish) => finish.kind)) ?? oneFinish(kinds);
  if (!meant) return null;
  const kind = namePlating(meant, kinds);
  return { kind, um: [...ordered, ...all].find((finish) => finish.kind === kind && finish.um !== null)?.um ?? null };
}

/** Cells that contradict each other say nothing. */
function findPressedWhen(told: readonly ToldFinishes[]): PressedWhen | null {
  const said = new Set(told.flatMap(({ order }) => order?.when ?? []));
  const [when = null] = said.size === 1 ? said : [];
  return when;
}

type HoleFacts = Pick<WorkFacts, 'rimWork' | 'holeProcess' | 'holeMasked' | 'wrongSide'>;

/** A description is about the fastener: of the hole it speaks only where it says so. */
function holeFacts(hole: string, note: string, finish: string, description: string): HoleFacts {
  const aboutHole = aboutHoleIn(description);
  const texts = [hole, note, finish, aboutHole].filter(Boolean);
  return {
    rimWork: rimWorkInHole(hole) ?? texts.map(rimWorkIn).find((word) => word !== null) ?? null,
    holeProcess: holeProcessIn([hole, note, aboutHole].filter(Boolean).join('\n')),
    holeMasked: texts.some(isMaskedIn),
    wrongSide: [note, finish, description].map(wrongSideIn).find((words) => words !== null) ?? null,
  };
}

type LoadFacts = Pick<WorkFacts, 'requiredPushOutN' | 'requiredTorqueOutNm' | 'tighteningNm' | 'screw' | 'matingMm'>;

function loadFacts(note: string, load: string, { description, loadHeading = '' }: FactCells): LoadFacts {
  const asked = [findCellLoads(load, loadHeading), loadsIn(note)];
  const joint = [note, load, aboutScrewIn(plainText(description))].filter(Boolean);
  return {
    requiredPushOutN: firstOf(asked, 'pushOutN'),
    requiredTorqueOutNm: firstOf(asked, 'torqueOutNm'),
    tighteningNm: firstOf(asked, 'tighteningNm'),
    screw: joint.map(screwIn).find((screw) => screw !== null) ?? null,
    matingMm: joint.map(matingIn).find((mm) => mm !== null) ?? null,
  };
}

function firstOf(asked: readonly AskedLoads[], key: keyof AskedLoads): number | null {
  return asked.map((loads) => loads[key]).find((value) => value !== null) ?? null;
}

/** "Clinch nut M4 for screw M4x12": a description that begins with a screw names the fastener itself. */
function aboutScrew(description: string): string {
  return /\b(?:for|with|takes|accepts|f[üu]r|mit|pour|avec)\b.*/isu.exec(description)?.[0] ?? '';
}

function serviceFacts(note: string, finish: string, description: string): Pick<WorkFacts, 'environment' | 'welding'> {
  return {
    environment: environmentIn([note, finish, description].join('\n')),
    welding: weldingIn(note) ?? weldingIn(finish),
  };
}

/** Cells repeat one by one, though seldom all of a row together: each text is looked through once for each thing that it may say. */
const plainText = rememberSome(readPlainText);
const finishesIn: Readonly<Record<FinishCell, (text: string) => ToldFinishes>> = {
  finish: rememberSome((text) => readFinishes(text, 'finish')),
  note: rememberSome((text) => readFinishes(text, 'note')),
  description: rememberSome((text) => readFinishes(text, 'description')),
  sheet: rememberSome((text) => readFinishes(text, 'sheet')),
};
const rimWorkIn = rememberSome((text) => findRimWork(text));
const rimWorkInHole = rememberSome((text) => findRimWork(text, 'hole'));
const aboutHoleIn = rememberSome((text) => (namesHole(text) ? text : ''));
const holeProcessIn = rememberSome(findHoleProcess);
const isMaskedIn = rememberSome(isHoleMasked);
const wrongSideIn = rememberSome(findWrongSide);
const loadsIn = rememberSome(findLoads);
const aboutScrewIn = rememberSome(aboutScrew);
const screwIn = rememberSome(findScrew);
const matingIn = rememberSome(findMating);
const environmentIn = rememberSome(findEnvironment);
const weldingIn = rememberSome(findWelding);
